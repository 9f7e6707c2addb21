package pourwright.advice;

import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.Scope;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** Says what cannot be, and what the most would be, in the person's own unit. */
public final class Impossible {
    private Impossible() {}

    /**
     * A reading no gauge can show is the person's to mend, not a figure to leave out.
     *
     * @throws BadAnswer naming the reading and what the most would be
     */
    public static void check(Scope scope, Answers answers, Knowledge knowledge) {
        if (scope.failures().containsKey("absolute-pressure")) {
            throw reading(scope, answers, knowledge);
        }
    }

    static BadAnswer reading(Scope scope, Answers answers, Knowledge knowledge) {
        String unit = answers.get("gauge-reading").orElse(null) instanceof Answer.Quantity q
                        && !q.unit().isEmpty()
                ? q.unit()
                : "inHg";
        double air = scope.get("barometric-pressure").orElseThrow().si().typical();
        String read = ((Answer.Quantity) answers.get("gauge-reading").orElseThrow()).echo();
        return new BadAnswer(
                "gauge-reading",
                "A gauge that counts from local air cannot show " + read + " here: the most would be "
                        + Show.quantity(air, unit, Dimension.PRESSURE)
                        + ", the whole of the local air. Check the reading, the altitude and the kind of gauge.");
    }
}
