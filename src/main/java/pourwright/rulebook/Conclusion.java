package pourwright.rulebook;

import java.util.List;
import java.util.SortedSet;
import pourwright.facts.Said;

/**
 * One thing a rule concluded, with what it rested on.
 *
 * @param rule the rule
 * @param verb what kind of conclusion
 * @param target the method, caution, question or cause it is about; empty for a finding
 * @param say the sentence, with figures in braces, or the strength of evidence; empty for a caution or a need
 * @param answers ids of the questions it rests on
 * @param figures ids of the figures it compared
 * @param methods ways of working it took as given
 * @param said the choices it rests on
 */
public record Conclusion(
        RuleCard rule,
        Verb verb,
        String target,
        String say,
        SortedSet<String> answers,
        SortedSet<String> figures,
        SortedSet<String> methods,
        List<Said> said) {}
