package pourwright.teach;

import pourwright.advice.OneFigure;
import pourwright.facts.Answers;
import pourwright.units.Dimension;

/** A figure as a lesson shows it. */
final class InUnits {
    private InUnits() {}

    /**
     * The figure: a pressure that counts from true zero in mbar, since inches would pass for what a dial shows; all else in
     * the usual units.
     *
     * @throws pourwright.advice.BadAnswer when it cannot be computed
     */
    static OneFigure.Result of(OneFigure one, Answers answers) {
        boolean level = one.definition().dimension() == Dimension.PRESSURE
                && !one.definition().id().endsWith("-reading");
        return one.of(answers, level ? "mbar" : null);
    }
}
