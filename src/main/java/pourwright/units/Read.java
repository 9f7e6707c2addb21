package pourwright.units;

/**
 * A quantity that was understood.
 *
 * @param lowSi low end in the SI unit of the dimension; equal to the high end for an exact value
 * @param typicalSi the value, or the middle of a range
 * @param highSi high end
 * @param about whether the person said "about"; an "about" value carries ±15 %
 * @param range whether two ends were given
 * @param unit the person's unit, "mbar abs" when the person said what a pressure is counted from
 * @param echo what was read, in that unit, to be shown back
 */
public record Read(
        double lowSi, double typicalSi, double highSi, boolean about, boolean range, String unit, String echo)
        implements Reading {}
