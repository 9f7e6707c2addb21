package pourwright.console;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import pourwright.alike.Picture;
import pourwright.facts.Answers;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** What a conversation is about: which question comes next, and what it ends in. */
public interface Job {
    /** The word of the command line, also the prompt once the result is shown. */
    String word();

    /** What a conversation about a word is called. */
    static String called(String word) {
        return switch (word) {
            case "diagnose" -> "diagnosis";
            case "vents" -> "search for trapped air";
            case "kit" -> "test of the kit";
            default -> word;
        };
    }

    /** Everything known, with every question this job can ask. */
    Knowledge knowledge();

    /** True when the remembered kit belongs to it. */
    boolean usesKit();

    /** True when nothing can be asked about the result: the conversation is over once it is shown. */
    default boolean endsWithItsResult() {
        return false;
    }

    /** Makes ready what the second question will need, while the person reads the first. */
    default void prepare() {}

    /**
     * The next question, or none when everything that matters is answered.
     *
     * @throws pourwright.advice.BadAnswer when two answers cannot both be true
     */
    Optional<Interviewer.Next> next(Answers answers);

    /** The questions whose answers matter now; all that were answered unless the job knows better. */
    default Set<String> relevant(Answers answers) {
        return answers.all().keySet();
    }

    /** What the answer to a question would settle, as lines; none where it cannot be tried. */
    default List<String> settles(Question question, Answers answers, int width) {
        return List.of();
    }

    /** Why it is too early for a result, as one sentence; none when there can be one. */
    Optional<String> tooEarly(Answers answers);

    /** Questions to ask again since their answers contradict each other, with the sentence that says so. */
    default Optional<Doubt> doubt(Answers answers) {
        return Optional.empty();
    }

    /** How to begin in the person's own words, or none when the job begins with questions. */
    default Optional<String> invitation(Answers answers) {
        return Optional.empty();
    }

    /** What a line in the person's own words says. */
    default Heard hear(String text) {
        return new Heard(Answers.NONE, List.of(), List.of());
    }

    /** What a line says that answers no question but changes the job, such as "I mixed it 4 minutes ago"; none usually. */
    default Optional<Heard> aside(String line, Answers answers) {
        return Optional.empty();
    }

    /** What the workshop has of the material that was just named, to be confirmed in one line; none usually. */
    default Optional<Heard> atHand(Answers answers) {
        return Optional.empty();
    }

    /** The person said that what was heard is right. */
    default void agreed() {}

    /**
     * What matters about these answers, to find cases like them; none where no case is kept.
     *
     * @throws pourwright.advice.BadAnswer when the answers cannot be
     */
    default Optional<Picture> picture(Answers answers) {
        return Optional.empty();
    }

    /** The result for these answers. */
    Result result(Answers answers, int width, boolean plain);

    /**
     * Answers that cannot both be true.
     *
     * @param say the sentence that asks which is right
     * @param questions ids of the questions
     */
    record Doubt(String say, List<String> questions) {}

    /**
     * Answers picked out of a line.
     *
     * @param answers the answers
     * @param lines what to read back; none when nothing was understood
     * @param leftOut what was not understood
     */
    record Heard(Answers answers, List<String> lines, List<String> leftOut) {}

    /** What a conversation ends in, and what can be asked about it. */
    interface Result {
        /** The first page. */
        List<String> first();

        /** The last line of the first page: what can be asked next. */
        String next();

        /** Every word that {@link #say} answers, with what follows it, for help and completion. */
        List<String> words();

        /** The lines for a word, or none when it is no word here. */
        Optional<List<String>> say(String verb, String rest);

        /**
         * Does a word that holds a dialogue of its own; false when it is none.
         *
         * @param keep takes an answer, by question, that is kept at once
         */
        default boolean live(String verb, Door door, BiConsumer<String, String> keep) {
            return false;
        }

        /** True when the advice is to stop. */
        boolean stop();

        /** The case as the text of its file. */
        String caseText(String name);
    }
}
