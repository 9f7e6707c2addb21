package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.advice.Facts;
import pourwright.facts.Said;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.Verb;

/**
 * What each answer to each observation would say about each cause, in one class of material. Drawn from the rules by
 * firing them once over every choice together: a rule of evidence reads one observation, so none disturbs another. With
 * it the next question is chosen in milliseconds.
 */
public final class EvidenceTable {
    private final Map<String, List<Evidence>> byAnswer;
    private final Map<String, List<String>> ruledOutBy;

    private EvidenceTable(Map<String, List<Evidence>> byAnswer, Map<String, List<String>> ruledOutBy) {
        this.byAnswer = byAnswer;
        this.ruledOutBy = ruledOutBy;
    }

    /**
     * Draws the table.
     *
     * @param material the class, or null when it is not known
     */
    public static EvidenceTable draw(DiagnosticKnowledge k, MaterialClass material) {
        List<Object> facts = new ArrayList<>();
        if (material != null) {
            facts.add(Facts.material(material));
        }
        for (Question q : k.observations()) {
            q.choices().forEach(c -> facts.add(new Said(q.id(), c.id())));
        }
        Reader reader = new Reader(k);
        Map<String, List<Evidence>> byAnswer = new HashMap<>();
        Map<String, List<String>> ruledOutBy = new HashMap<>();
        for (Conclusion c : RuleBook.diagnosis().fire(facts, k.base().leftOut())) {
            if (c.said().size() != 1) {
                continue;
            }
            String answer = key(c.said().get(0).question(), c.said().get(0).choice());
            if (c.verb() == Verb.RULES_OUT) {
                ruledOutBy.computeIfAbsent(answer, a -> new ArrayList<>()).add(c.target());
            }
            reader.evidence(c)
                    .ifPresent(e -> byAnswer.computeIfAbsent(answer, a -> new ArrayList<>())
                            .add(e));
        }
        return new EvidenceTable(byAnswer, ruledOutBy);
    }

    /** The evidence that this answer would be. */
    public List<Evidence> of(String question, String choice) {
        return Collections.unmodifiableList(byAnswer.getOrDefault(key(question, choice), List.of()));
    }

    /** The causes that this answer would rule out. */
    public List<String> ruledOut(String question, String choice) {
        return Collections.unmodifiableList(ruledOutBy.getOrDefault(key(question, choice), List.of()));
    }

    private static String key(String question, String choice) {
        return question + '=' + choice;
    }
}
