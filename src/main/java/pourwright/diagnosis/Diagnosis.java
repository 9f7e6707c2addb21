package pourwright.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import pourwright.advice.Finding;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.rulebook.Conclusion;

/**
 * What a bad part seems to suffer from.
 *
 * @param answers what was said
 * @param ranked possible causes, the most likely first
 * @param ruledOut causes that the class of material or the way of working makes impossible
 * @param contradictions answers that cannot both be true
 * @param fits false when the picture fits none of the causes well
 * @param parting the observation that would part the first two causes, if one would
 * @param findings cautions and questions to settle
 * @param figures figures of the job as it was done, by id
 * @param conclusions all that the rules concluded, sorted
 * @param assumed questions whose class range or default stood in for an answer
 * @param unasked observations that nobody made
 */
public record Diagnosis(
        Answers answers,
        List<RankedCause> ranked,
        SortedSet<String> ruledOut,
        List<Contradiction> contradictions,
        boolean fits,
        Optional<Parting> parting,
        List<Finding> findings,
        Map<String, FigureValue> figures,
        List<Conclusion> conclusions,
        Set<String> assumed,
        List<String> unasked) {
    /**
     * The observation that parts the first two causes.
     *
     * @param question its id
     * @param forFirst the answer that would speak most for the first cause
     * @param forSecond the answer that would speak most for the second
     */
    public record Parting(String question, String forFirst, String forSecond) {}

    /**
     * An answer that would put another cause first.
     *
     * @param question the question's id
     * @param choice what the answer would be
     * @param cause the id of the cause that would then lead
     */
    public record Otherwise(String question, String choice, String cause) {}

    /**
     * Observations that would put one given cause first.
     *
     * @param cause the id of the cause
     * @param sets the smallest sets found, each enough by itself; none when the cause leads already or none was found
     * @param tried how many diagnoses were made for it
     */
    public record Wish(String cause, List<List<Otherwise>> sets, int tried) {
        public Wish {
            sets = List.copyOf(sets);
        }
    }

    /** Ids of the rules that fired, sorted, each once. */
    public List<String> rulesFired() {
        return conclusions.stream().map(c -> c.rule().id()).distinct().sorted().toList();
    }
}
