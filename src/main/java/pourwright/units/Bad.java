package pourwright.units;

/**
 * The text was not accepted.
 *
 * @param sentence what was read, what is accepted and one example
 */
public record Bad(String sentence) implements Reading, RatioReading {}
