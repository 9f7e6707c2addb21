package pourwright.figures;

import pourwright.facts.Estimate;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** Where a figure's formula holds, as far as the job's own values can tell. */
@FunctionalInterface
interface Holds {
    /** Nothing in a job's values can show that it does not hold. */
    Holds ALWAYS = (job, own) -> "";

    /**
     * Why the figure must be read with care in this job, in one plain sentence; empty when nothing is wrong.
     *
     * @param job the job
     * @param own the figure's own range, SI
     */
    String broken(Scope job, Estimate own);

    /** Both hold; the first that does not is said. */
    default Holds and(Holds other) {
        return (job, own) -> {
            String mine = broken(job, own);
            return mine.isEmpty() ? other.broken(job, own) : mine;
        };
    }

    /**
     * An input lies between two SI values.
     *
     * @param known what is known, and what it means beyond
     */
    static Holds inside(String input, Dimension d, double low, double high, String known) {
        return (job, own) -> job.get(input)
                .map(v -> outside(input, v.si(), d, low, high, known))
                .orElse("");
    }

    /** The figure itself lies between two SI values. */
    static Holds itself(String name, Dimension d, double low, double high, String known) {
        return (job, own) -> outside(name, own, d, low, high, known);
    }

    private static String outside(String name, Estimate e, Dimension d, double low, double high, String known) {
        if (e.typical() < low || e.typical() > high) {
            return name + " is " + shown(e.typical(), d) + ": " + known;
        }
        if (e.low() < low || e.high() > high) {
            double end = e.low() < low ? e.low() : e.high();
            return "part of the range lies outside, where " + name + " is " + shown(end, d) + ": " + known;
        }
        return "";
    }

    private static String shown(double si, Dimension d) {
        return Show.quantity(si, Show.bestUnit(si, d), d);
    }
}
