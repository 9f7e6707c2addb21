package pourwright.teach;

import java.util.List;
import java.util.Map;
import pourwright.facts.Answer;
import pourwright.knowledge.Question;

/** Makes the questions of an exercise. They are read as the questions of an interview are. */
final class Parts {
    private Parts() {}

    /** A question with these choices: id to what is read. */
    static Question choice(String id, String ask, String help, Map<String, String> choices) {
        return question(
                id,
                ask,
                "choice",
                help,
                null,
                null,
                null,
                null,
                null,
                choices.entrySet().stream()
                        .map(e -> new Question.Choice(e.getKey(), e.getValue(), List.of()))
                        .toList());
    }

    /** A question for a quantity. */
    static Question quantity(
            String id, String ask, String help, String quantity, String unit, double min, double max, String example) {
        return question(id, ask, "quantity", help, quantity, unit, min, max, example, List.of());
    }

    private static Question question(
            String id,
            String ask,
            String kind,
            String help,
            String quantity,
            String unit,
            Double min,
            Double max,
            String example,
            List<Question.Choice> choices) {
        return new Question(
                id,
                "exercise",
                ask,
                kind,
                help,
                quantity,
                unit,
                min,
                max,
                example,
                null,
                choices,
                null,
                true,
                false,
                id,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** The id that was chosen, or nothing. */
    static String chosen(Answer reply) {
        return reply instanceof Answer.Choice c ? c.id() : "";
    }

    static void count(List<Answer> replies, List<Question> parts) {
        if (replies.size() != parts.size()) {
            throw new IllegalArgumentException(
                    "an exercise of " + parts.size() + " parts got " + replies.size() + " replies");
        }
    }
}
