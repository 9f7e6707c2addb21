package pourwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static pourwright.figures.RandomJobs.KNOWLEDGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.testing.Generated;

/**
 * A range carried through the formulas is honest: whatever exact answers lie inside the ranges a person gave, the figure
 * computed from them lies inside the range computed from the ranges. A figure that says it must be read with care
 * promises no range and is left out.
 */
class RangeHonestyTest {
    private static final long SEED = 20260101L;
    private static final int JOBS = 1000;
    private static final int POINTS = 4;
    /**
     * Known misses, at most this many of the 4,000 points of a figure: ranges that straddle a threshold between two
     * formulas, or that begin where the figure does not exist at all.
     */
    private static final int STRADDLING = 10;

    private static final double TOLERANCE = 1e-9;
    /** Root finders, integrators and the lumped course of the froth stop at this relative error; two digits are shown. */
    private static final double SOLVED_WITHIN = 2e-3;

    @TestFactory
    Stream<DynamicTest> exactAnswersInsideTheRangesGiveFiguresInsideTheRange() {
        Map<String, List<String>> outside = new TreeMap<>();
        FigureBook.ids().forEach(id -> outside.put(id, new ArrayList<>()));
        Generated.tries(SEED, JOBS).forEach(any -> probe(any, outside));
        return outside.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(
                        e.getKey(),
                        () -> assertThat(e.getValue())
                                .as(e.getValue().size() + " of " + JOBS * POINTS
                                        + " points lie outside; the first ones")
                                .hasSizeLessThanOrEqualTo(STRADDLING)));
    }

    private static void probe(Generated any, Map<String, List<String>> outside) {
        Answers ranges = RandomJobs.job(any);
        Map<String, FigureValue> wide = new Scope(ranges, KNOWLEDGE, true).all();
        for (int i = 0; i < POINTS; i++) {
            Answers exact = RandomJobs.inside(ranges, any);
            Map<String, FigureValue> point = new Scope(exact, KNOWLEDGE, true).all();
            wide.forEach((id, w) -> {
                FigureValue p = point.get(id);
                if (p != null
                        && w.defined().isPresent()
                        && !careful(id, wide)
                        && !careful(id, point)
                        && inputsInside(w, wide, point)
                        && !inside(p.si().typical(), w.si())) {
                    outside.get(id)
                            .add(any + ": " + p.si().typical() + " is outside " + w.si() + " for "
                                    + RandomJobs.shown(exact) + " inside " + RandomJobs.shown(ranges));
                }
            });
        }
    }

    /** Only the figure whose own formula goes wrong is faulted, not all that rest on it. */
    private static boolean inputsInside(FigureValue w, Map<String, FigureValue> wide, Map<String, FigureValue> point) {
        return w.inputs().stream()
                .filter(n -> wide.containsKey(n) && point.containsKey(n) && !n.equals(w.id()))
                .allMatch(n -> inside(point.get(n).si().typical(), wide.get(n).si()));
    }

    /** A time that never comes lies inside a range that ends there. */
    private static boolean inside(double x, Estimate range) {
        return x >= range.low() - slack(range.low()) && x <= range.high() + slack(range.high());
    }

    private static double slack(double end) {
        return Double.isInfinite(end) ? 0 : TOLERANCE + SOLVED_WITHIN * Math.abs(end);
    }

    private static boolean careful(String id, Map<String, FigureValue> all) {
        FigureValue v = all.get(id);
        return v != null
                && (v.caveat() != null
                        || v.inputs().stream()
                                .map(n -> n.substring(n.indexOf(':') + 1))
                                .anyMatch(n -> !n.equals(id) && careful(n, all)));
    }
}
