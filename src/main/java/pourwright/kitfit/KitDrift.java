package pourwright.kitfit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import pourwright.physics.Require;

/**
 * Whether a kit gets better or worse over its history: speed, base pressure and leak, each with its own drift.
 *
 * @param overall worse when any of the three is; improving when any is and none is worse; too few when none can be told
 * @param speed   drift of the effective speed, m3/s per year
 * @param base    drift of the base pressure, Pa per year
 * @param leak    drift of the leak rate, Pa m3/s per year
 */
public record KitDrift(Drift.Verdict overall, Drift speed, Drift base, Drift leak) {

    /**
     * What was measured on one day; empty where it was not.
     *
     * @param day          day number, counted from any day
     * @param speedM3PerS  effective speed, m3/s
     * @param basePa       base pressure, Pa absolute
     * @param leakPaM3PerS leak rate, Pa m3/s
     */
    public record Test(long day, OptionalDouble speedM3PerS, OptionalDouble basePa, OptionalDouble leakPaM3PerS) {

        /**
         * Checks the test.
         *
         * @throws pourwright.physics.PhysicsException when something is missing
         */
        public Test {
            Require.given("speed", speedM3PerS);
            Require.given("base pressure", basePa);
            Require.given("leak rate", leakPaM3PerS);
        }
    }

    /**
     * The drift of a kit's history.
     *
     * @param history the tests, in any order
     * @return the drift
     * @throws pourwright.physics.PhysicsException when the history is missing
     */
    public static KitDrift of(List<Test> history) {
        Require.given("history", history);
        Drift speed = of(history, Test::speedM3PerS, Drift.Good.HIGH);
        Drift base = of(history, Test::basePa, Drift.Good.LOW);
        Drift leak = of(history, Test::leakPaM3PerS, Drift.Good.LOW);
        List<Drift.Verdict> all = List.of(speed.verdict(), base.verdict(), leak.verdict());
        Drift.Verdict overall = Drift.Verdict.TOO_FEW;
        if (all.contains(Drift.Verdict.WORSE)) {
            overall = Drift.Verdict.WORSE;
        } else if (all.contains(Drift.Verdict.IMPROVING)) {
            overall = Drift.Verdict.IMPROVING;
        } else if (all.contains(Drift.Verdict.STEADY)) {
            overall = Drift.Verdict.STEADY;
        }
        return new KitDrift(overall, speed, base, leak);
    }

    private static Drift of(List<Test> history, Function<Test, OptionalDouble> what, Drift.Good good) {
        return Drift.of(
                history.stream()
                        .filter(t -> what.apply(t).isPresent())
                        .map(t -> new Drift.Measured(t.day(), what.apply(t).getAsDouble()))
                        .toList(),
                good);
    }
}
