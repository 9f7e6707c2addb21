package pourwright.units;

/**
 * One part of a ratio as typed.
 *
 * @param high the second number of "40-45", else equal to {@code low}
 * @param unit the unit it was given in, or ""
 */
record RatioTerm(double low, double high, PartName name, String unit, boolean about) {
    boolean ranged() {
        return low != high;
    }

    double middle() {
        return low + (high - low) / 2;
    }

    boolean sound() {
        return low > 0 && high >= low;
    }
}
