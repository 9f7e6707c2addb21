package pourwright.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.rulebook.Conclusion;

/**
 * Everything one consultation found.
 *
 * @param answers what was said
 * @param verdict about the job as described
 * @param findings advice, strongest first
 * @param figures every figure and quantity, by id
 * @param timetable minute by minute
 * @param methods ways of working that were chosen
 * @param refused ways of working that were ruled out
 * @param needs questions worth asking, answered or not, in the order a person finds natural
 * @param conclusions all that the rules concluded, sorted
 * @param assumed questions whose class range or default stood in for an answer
 * @param unasked questions that matter and have no answer at all
 * @param uncomputed figures whose inputs lie outside the formula, with the reason
 */
public record Consultation(
        Answers answers,
        Verdict verdict,
        List<Finding> findings,
        Map<String, FigureValue> figures,
        List<Step> timetable,
        Set<String> methods,
        Set<String> refused,
        List<Need> needs,
        List<Conclusion> conclusions,
        Set<String> assumed,
        List<String> unasked,
        Map<String, String> uncomputed) {
    /** A figure or quantity by id. */
    public Optional<FigureValue> figure(String id) {
        return Optional.ofNullable(figures.get(id));
    }

    /** Ids of the rules that fired, sorted, each once. */
    public List<String> rulesFired() {
        return conclusions.stream().map(c -> c.rule().id()).distinct().sorted().toList();
    }

    /** The finding of that id. */
    public Optional<Finding> finding(String id) {
        return findings.stream().filter(f -> f.id().equals(id)).findFirst();
    }
}
