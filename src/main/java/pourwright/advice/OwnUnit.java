package pourwright.advice;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/** The unit a person likes for a figure: the one asked for, or the one they typed for the same kind of quantity. */
final class OwnUnit {
    /** People who type one of these read all of them; the unit that suits the size is then better. */
    private static final Set<String> SCALED =
            Set.of("mg", "g", "kg", "t", "µm", "mm", "cm", "m", "mL", "cL", "dL", "L", "m³");

    /** A number outside these is hard to read, whatever the unit. */
    private static final double LEAST_SHOWN = 0.01;

    private static final double MOST_SHOWN = 1e5;

    private OwnUnit() {}

    /**
     * A unit that was asked for, when it is one of that kind.
     *
     * @throws BadAnswer when it is not
     */
    static String wanted(String unit, Dimension d) {
        if (d == Dimension.NUMBER) {
            throw new BadAnswer("in", "This figure is a plain number: it has no unit. Leave --in out.");
        }
        if (!UnitBook.knows(unit, d)) {
            String shown = unit.length() > 20 ? unit.substring(0, 20) + "…" : unit;
            throw new BadAnswer(
                    "in", "\"" + shown + "\" is not a unit of " + d.kind() + ". Usual: " + d.usualUnits() + ".");
        }
        if (UnitBook.gauge(unit, d)) {
            throw new BadAnswer(
                    "in",
                    "Pressures are shown absolute. Name the unit alone, for example --in " + UnitBook.plain(unit, d)
                            + ".");
        }
        return unit;
    }

    /** The unit typed for an answer that the figure rests on, where it suits the figure. */
    static Optional<String> of(FigureValue v, Answers answers) {
        Dimension d = v.dimension();
        if (d == Dimension.TIME || d == Dimension.NUMBER || d == Dimension.FRACTION) {
            return Optional.empty();
        }
        for (Map.Entry<String, Answers.Given> e : answers.all().entrySet()) {
            if (v.answers().contains(e.getKey())
                    && e.getValue().answer() instanceof Answer.Quantity q
                    && e.getValue().raw() instanceof String raw
                    && raw.chars().anyMatch(Character::isLetter)
                    && UnitBook.knows(q.unit(), d)) {
                String unit = UnitBook.plain(q.unit(), d);
                if (!SCALED.contains(unit) && readable(v, unit)) {
                    return Optional.of(unit);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean readable(FigureValue v, String unit) {
        double shown = Math.abs(UnitBook.fromSi(v.si().typical(), unit, v.dimension()));
        return v.dimension() == Dimension.TEMPERATURE || shown >= LEAST_SHOWN && shown < MOST_SHOWN;
    }
}
