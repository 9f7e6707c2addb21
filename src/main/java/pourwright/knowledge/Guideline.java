package pourwright.knowledge;

import pourwright.units.UnitBook;

/**
 * A threshold of trade practice, by name.
 *
 * @param value the number, in {@code unit}
 * @param unit a unit the unit book knows
 * @param source a key of the sources
 * @param note what it is for, one plain sentence
 * @param safety true when it may be tightened by a workshop but never loosened
 * @param tighter which way is tighter for a safety guideline: {@code lower} or {@code higher}; null otherwise
 * @param owner {@code pourwright}, or {@code workshop} when an overlay set it; not read from the file
 * @param si the number in SI
 */
public record Guideline(
        double value,
        String unit,
        String source,
        String note,
        boolean safety,
        String tighter,
        String owner,
        double si) {
    public Guideline {
        owner = owner == null ? "pourwright" : owner;
        if (safety && !"lower".equals(tighter) && !"higher".equals(tighter)) {
            throw new IllegalArgumentException("a safety guideline says which way is tighter: lower or higher");
        }
    }

    Guideline(double value, String unit, String source, String note, boolean safety, String tighter, String owner) {
        this(
                value,
                unit,
                source,
                note,
                safety,
                tighter,
                owner,
                UnitBook.toSi(value, unit, Knowledge.dimensionOf(unit)));
    }
}
