package pourwright.units;

/**
 * A mix ratio that was understood.
 *
 * @param first parts of the first component (A, the base, the resin)
 * @param second parts of the second component
 * @param by "weight", "volume" or "" when not said
 * @param percent whether it was given as a percentage
 * @param echo what was read, to be shown back
 */
public record Ratio(double first, double second, String by, boolean percent, String echo) implements RatioReading {}
