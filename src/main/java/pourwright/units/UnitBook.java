package pourwright.units;

/** Conversion at the edges: between a unit a person uses and the SI unit used inside. */
public final class UnitBook {
    private UnitBook() {}

    /**
     * The value in the dimension's SI unit.
     *
     * @throws IllegalArgumentException if the unit is not one of this dimension
     */
    public static double toSi(double value, String unit, Dimension d) {
        return need(unit, d).toSi(value);
    }

    /**
     * The SI value in that unit.
     *
     * @throws IllegalArgumentException if the unit is not one of this dimension
     */
    public static double fromSi(double si, String unit, Dimension d) {
        return need(unit, d).fromSi(si);
    }

    /** Whether the word or symbol is a unit of that dimension. */
    public static boolean knows(String unit, Dimension d) {
        return find(unit, d) != null;
    }

    /** Whether the unit counts from local air, as a gauge does. */
    public static boolean gauge(String unit, Dimension d) {
        return need(unit, d).gauge();
    }

    /** The unit's symbol, without what it is counted from. */
    public static String plain(String unit, Dimension d) {
        return need(unit, d).symbol();
    }

    static UnitDef need(String unit, Dimension d) {
        UnitDef found = find(unit, d);
        if (found == null) {
            throw new IllegalArgumentException("'" + unit + "' is not a unit of " + d.id());
        }
        return found;
    }

    static UnitDef find(String unit, Dimension d) {
        UnitDef[] all = UnitTable.BY_KEY.get(Spelling.key(unit));
        return all == null ? null : pick(all, d);
    }

    static UnitDef pick(UnitDef[] all, Dimension d) {
        for (UnitDef u : all) {
            if (u.dimension() == d) {
                return u;
            }
        }
        return null;
    }
}
