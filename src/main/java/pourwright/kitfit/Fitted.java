package pourwright.kitfit;

/**
 * A value from a fit, in the unit its owner names.
 *
 * @param value         the best value
 * @param standardError its standard error; infinite when the readings do not tell
 * @param low           lower end of the 95 % interval
 * @param high          upper end of the 95 % interval
 */
public record Fitted(double value, double standardError, double low, double high) {

    /** Nothing is known. */
    public static final Fitted UNKNOWN =
            new Fitted(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** A value that cannot be negative, with an interval even on a plain scale. */
    static Fitted notNegative(double value, double standardError, double quantile) {
        return new Fitted(
                value, standardError, Math.max(0, value - quantile * standardError), value + quantile * standardError);
    }

    /** A value above zero, with an interval even on a logarithmic scale. */
    static Fitted positive(double value, double relativeError, double quantile) {
        double factor = Math.exp(quantile * relativeError);
        return new Fitted(value, value * relativeError, value / factor, value * factor);
    }

    /**
     * Whether there is a value at all.
     *
     * @return false for {@link #UNKNOWN}
     */
    public boolean known() {
        return !Double.isNaN(value);
    }

    /**
     * Whether another value lies inside the interval.
     *
     * @param other the other value, in the same unit
     * @return true when it does
     */
    public boolean covers(double other) {
        return other >= low && other <= high;
    }

    /** The same times a factor above zero. */
    Fitted times(double factor) {
        return new Fitted(value * factor, standardError * factor, low * factor, high * factor);
    }
}
