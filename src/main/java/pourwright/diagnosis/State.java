package pourwright.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.knowledge.MaterialClass;
import pourwright.rulebook.Conclusion;

/**
 * Where a diagnosis stands after some answers.
 *
 * @param answers what was said
 * @param material the class, or null when it is not known
 * @param evidence all evidence, before the strongest of each fact is taken
 * @param unsettled questions whose answers contradict another's: they do not count
 */
record State(
        Answers answers,
        MaterialClass material,
        EvidenceTable table,
        Belief belief,
        List<Evidence> evidence,
        SortedSet<String> ruledOut,
        List<Contradiction> contradictions,
        Set<String> unsettled,
        Map<String, FigureValue> figures,
        List<Conclusion> conclusions,
        Set<String> assumed) {}
