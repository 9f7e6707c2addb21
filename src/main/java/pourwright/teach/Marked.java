package pourwright.teach;

import java.util.List;

/**
 * An exercise that was marked.
 *
 * @param marks one for each part
 * @param misconceptions ids of what the replies show to be believed
 */
public record Marked(List<Mark> marks, List<String> misconceptions) {
    public Marked {
        marks = List.copyOf(marks);
        misconceptions = List.copyOf(misconceptions);
    }

    /** True when every part is right. */
    public boolean right() {
        return marks.stream().allMatch(Mark::right);
    }

    /**
     * How one part was answered.
     *
     * @param part id of the part
     * @param right whether the advisor agrees
     * @param best what the advisor says: ids of choices, or the value in words
     * @param because why, as sentences, each with the rule it comes from where one does
     */
    public record Mark(String part, boolean right, List<String> best, List<Reason> because) {
        public Mark {
            best = List.copyOf(best);
            because = List.copyOf(because);
        }
    }

    /**
     * One reason.
     *
     * @param say the sentence
     * @param rule the id of the rule, or empty
     * @param seen the question whose answer it is about, or empty
     */
    public record Reason(String say, String rule, String seen) {
        Reason(String say, String rule) {
            this(say, rule, "");
        }
    }
}
