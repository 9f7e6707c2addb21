package pourwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static pourwright.figures.RandomJobs.KNOWLEDGE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.physics.PhysicsException;
import pourwright.testing.Generated;

/**
 * A formula that declares how it moves with an input really moves that way, over the whole range the input has in a job
 * and wherever the other inputs stand. Ranges are only right where this holds.
 */
class FigureDirectionsTest {
    private static final long SEED = 20260202L;
    private static final int JOBS = 600;
    private static final double TOLERANCE = 1e-9;
    /** Root finders, integrators and the lumped course of the froth stop at this relative error; two digits are shown. */
    private static final double SOLVED_WITHIN = 2e-3;

    /**
     * The froth's times come from an unmixed column of several bubble sizes: which size crests last changes with the job,
     * so a direction holds for the whole and not to the last per cent. The figures are trusted within a factor of two.
     */
    private static final double FROTH_WITHIN = 0.06;

    private static double within(FigureDef def) {
        return def.id().startsWith("froth-") ? FROTH_WITHIN : SOLVED_WITHIN;
    }

    @TestFactory
    Stream<DynamicTest> aDeclaredDirectionHolds() {
        Map<String, Map<String, String>> against = new TreeMap<>();
        FigureBook.ids().forEach(id -> against.put(id, new TreeMap<>()));
        Generated.tries(SEED, JOBS).forEach(any -> {
            Answers answers = RandomJobs.job(any);
            Scope scope = new Scope(answers, KNOWLEDGE, true);
            scope.all();
            FigureBook.all().forEach(def -> probe(def, scope, any, against.get(def.id())));
        });
        return against.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(
                        e.getKey(),
                        () -> assertThat(e.getValue())
                                .as("inputs against their declared direction")
                                .isEmpty()));
    }

    private static void probe(FigureDef def, Scope scope, Generated any, Map<String, String> against) {
        for (Formula way : def.formulas()) {
            Optional<List<Estimate>> inputs = way.when().test(scope) ? inputs(way, scope) : Optional.empty();
            if (inputs.isEmpty()) {
                continue;
            }
            double[] x = new double[way.inputs().size()];
            for (int i = 0; i < x.length; i++) {
                x[i] = pick(inputs.get().get(i), any);
            }
            for (int i = 0; i < x.length; i++) {
                Input.Direction direction = way.inputs().get(i).direction();
                Estimate e = inputs.get().get(i);
                if (direction == Input.Direction.FREE || direction == Input.Direction.TYPICAL || e.exact()) {
                    continue;
                }
                double a = pick(e, any);
                double b = pick(e, any);
                double[] small = x.clone();
                double[] large = x.clone();
                small[i] = Math.min(a, b);
                large[i] = Math.max(a, b);
                double ySmall = at(way, scope, small);
                double yLarge = at(way, scope, large);
                double rise = yLarge - ySmall;
                double slack = TOLERANCE + within(def) * Math.max(Math.abs(ySmall), Math.abs(yLarge));
                boolean wrong = direction == Input.Direction.UP ? rise < -slack : rise > slack;
                if (Double.isInfinite(rise)) {
                    wrong = direction == Input.Direction.UP ? rise < 0 : rise > 0;
                }
                if (wrong) {
                    against.putIfAbsent(
                            way.inputs().get(i).name() + " " + direction,
                            any + ": from " + small[i] + " to " + large[i] + " the result goes from " + ySmall + " to "
                                    + yLarge + " at " + Arrays.toString(x));
                }
            }
            return;
        }
    }

    private static Optional<List<Estimate>> inputs(Formula way, Scope scope) {
        List<Estimate> all = new ArrayList<>();
        for (Input i : way.inputs()) {
            Optional<FigureValue> v = scope.get(i.name());
            if (v.isEmpty() && i.neutral() == null) {
                return Optional.empty();
            }
            all.add(v.map(FigureValue::si).orElseGet(() -> Estimate.exactly(i.neutral())));
        }
        return Optional.of(all);
    }

    private static double pick(Estimate e, Generated any) {
        return e.exact() || Double.isInfinite(e.high())
                ? e.low()
                : any.pick(e.low(), e.high(), any.uniform(e.low(), e.high()));
    }

    /** Not a number outside the formula's validity: nothing is promised there. */
    private static double at(Formula way, Scope scope, double[] x) {
        try {
            return way.of().apply(scope, x);
        } catch (PhysicsException e) {
            return Double.NaN;
        }
    }
}
