package pourwright.facts;

/**
 * A range of one quantity in its SI unit: low, typical and high. The high end may be infinite (a time that never comes).
 *
 * @param low the smallest plausible value
 * @param typical the value to plan with
 * @param high the largest plausible value
 */
public record Estimate(double low, double typical, double high) {
    /** @throws IllegalArgumentException when a value is not a number or the order is wrong */
    public Estimate {
        if (!(low <= typical && typical <= high)) {
            throw new IllegalArgumentException("a range must be ordered: " + low + ", " + typical + ", " + high);
        }
    }

    /** A value known exactly. */
    public static Estimate exactly(double value) {
        return new Estimate(value, value, value);
    }

    /** True when low, typical and high are one. */
    public boolean exact() {
        return low == high;
    }
}
