package pourwright.knowledge;

import java.util.List;
import java.util.Map;

/**
 * One lesson of the course.
 *
 * @param id stable id, the end of the file's name
 * @param order its place in the course, from 1
 * @param title what it is about, in a line
 * @param says what it teaches, a few short paragraphs
 * @param terms words of the trade it uses, each in the glossary
 * @param experiments what is tried in it, computed while the learner looks on
 * @param misconceptions ids of what beginners often believe about it
 * @param exercises what its exercises are drawn from
 * @param rules rules worth reading afterwards
 * @param sources keys of the sources
 */
public record Lesson(
        String id,
        int order,
        String title,
        List<String> says,
        List<String> terms,
        List<Experiment> experiments,
        List<String> misconceptions,
        List<Drill> exercises,
        List<String> rules,
        List<String> sources) {
    /**
     * Something to vary, and what is computed from it.
     *
     * @param says what the experiment is
     * @param answers the answers that stay as they are, as a person types them
     * @param vary the question whose answer the learner changes
     * @param first its answer to begin with
     * @param then the answer for which the learner foretells what happens
     * @param figures the figures shown for each answer; none where the odds of causes are shown instead
     * @param foretell what the learner is asked to foretell: whether the first figure grows or shrinks
     * @param notice what is to be learned from it
     */
    public record Experiment(
            String says,
            Map<String, String> answers,
            String vary,
            String first,
            String then,
            List<String> figures,
            String foretell,
            String notice) {
        /** True when it shows what a diagnosis makes of an observation. */
        public boolean ofCauses() {
            return figures.isEmpty();
        }
    }

    /**
     * Where exercises of one kind are drawn from.
     *
     * @param kind what the learner is asked
     * @param topics topics of the rules that decide it; for a job
     * @param causes the causes it may be about, none for any; for a bad part
     * @param figure the figure to work out; for a number
     * @param answers answers that every job gets for it, as a person types them; for a number
     * @param slips usual ways to get a number wrong
     */
    public record Drill(
            Kind kind,
            List<String> topics,
            List<String> causes,
            String figure,
            Map<String, String> answers,
            List<Slip> slips) {
        /** What the learner is asked. */
        public enum Kind {
            /** What to do with a job. */
            JOB,
            /** What spoiled a part. */
            CAUSE,
            /** How much it is. */
            NUMBER
        }
    }

    /**
     * A usual way to get a number wrong: the number that comes out when an answer is left out or taken otherwise.
     *
     * @param without the question that is forgotten
     * @param as what it is taken for instead, or nothing when it is left out
     * @param misconception id of what the learner then believes
     */
    public record Slip(String without, String as, String misconception) {}

    /**
     * What beginners often believe.
     *
     * @param id stable id
     * @param belief what they say
     * @param truth what is so
     * @param shown what shows it when it is computed, or null
     * @param rules rules against which somebody speaks who goes on regardless
     * @param chosen causes that are named by who believes it
     * @param instead the causes that it hides
     * @param source a key of the sources
     */
    public record Misconception(
            String id,
            String belief,
            String truth,
            Shown shown,
            List<String> rules,
            List<String> chosen,
            List<String> instead,
            String source) {}

    /**
     * A figure that shows that a belief is wrong.
     *
     * @param figure its id
     * @param answers the answers it is computed from, as a person types them
     */
    public record Shown(String figure, Map<String, String> answers) {}
}
