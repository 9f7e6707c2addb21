package pourwright.teach;

import java.util.List;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Question;

/** A job or a bad part to judge. */
public interface Exercise {
    /** What the learner is asked. */
    Lesson.Drill.Kind kind();

    /** The case it was drawn from. */
    Told from();

    /** The answers that are told, in order; what they hold was varied. */
    Answers answers();

    /** What is asked, one question after the other; none of them is one of an interview. */
    List<Question> parts();

    /** True when the names that could be answered are not shown. */
    default boolean unaided() {
        return false;
    }

    /**
     * Marks the replies, one for each part; "don't know" is a reply that is not right.
     *
     * @throws IllegalArgumentException when their number is not that of the parts
     */
    Marked mark(List<Answer> replies);
}
