package pourwright.knowledge;

import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/**
 * One number of the trade with its provenance, as it stands in a knowledge file.
 *
 * @param low the low end, in {@code unit}
 * @param typical the value to plan with
 * @param high the high end
 * @param unit a unit the unit book knows
 * @param source a key of the sources
 * @param note one plain sentence, or null
 * @param basis class range or data sheet; not read from the file
 */
public record Value(double low, double typical, double high, String unit, String source, String note, Basis basis) {
    public Value {
        basis = basis == null ? Basis.CLASS : basis;
        if (!(low <= typical && typical <= high)) {
            throw new IllegalArgumentException("low, typical and high must be in that order");
        }
    }

    /** The range in SI. */
    public Estimate si(Dimension dimension) {
        return new Estimate(
                UnitBook.toSi(low, unit, dimension),
                UnitBook.toSi(typical, unit, dimension),
                UnitBook.toSi(high, unit, dimension));
    }

    /** The same value with another basis. */
    public Value with(Basis other) {
        return new Value(low, typical, high, unit, source, note, other);
    }
}
