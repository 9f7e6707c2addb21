package pourwright.ask;

import pourwright.facts.Answer;
import pourwright.facts.Answers;

/**
 * One answer as it could be.
 *
 * @param question id of the question
 * @param answer the answer
 * @param typed as a person types it; null for "don't know"
 * @param grade what kind of change it is, the likeliest to be made first
 * @param far how far it is from the answer as it is: steps of a grid; 0 for a choice
 */
public record Setting(String question, Answer answer, String typed, Grade grade, int far) {
    /** Kinds of changes. */
    public enum Grade {
        /** Of what the person does or uses. */
        OWN,
        /** From an answer to "don't know". */
        UNKNOWN,
        /** Of the liquid itself. */
        NATURE
    }

    /** The answers with this one in them. */
    public Answers in(Answers answers) {
        return answers.with(question, answer, typed);
    }
}
