package pourwright.units;

/**
 * A low end, a value and a high end in one unit, as a person means them.
 *
 * @param said how value or range are shown back where that is more than numbers and one unit, such as "5 ft 3 in"; else null
 */
record Span(double low, double typical, double high, UnitDef unit, boolean about, boolean range, String said) {
    /** "About" is ±15 %: common practice for a figure given from memory. */
    static final double ABOUT_SHARE = 0.15;

    /** A temperature near 0 °C is still not known to better than this; common practice. */
    private static final double ABOUT_LEAST_K = 1;

    Span(double low, double typical, double high, UnitDef unit, boolean about, boolean range) {
        this(low, typical, high, unit, about, range, null);
    }

    boolean finite() {
        return Double.isFinite(low) && Double.isFinite(typical) && Double.isFinite(high);
    }

    Span withUnit(UnitDef other) {
        return new Span(low, typical, high, other, about, range);
    }

    /** Without its sign, as a gauge is read; a tolerance wider than the value ends at nought. */
    Span unsigned() {
        if (low >= 0 && low <= high) {
            return this;
        }
        if (range) {
            double a = Math.abs(low);
            double b = Math.abs(high);
            return new Span(Math.min(a, b), a / 2 + b / 2, Math.max(a, b), unit, about, true);
        }
        double value = Math.abs(typical);
        double by = (high - low) / 2;
        double least = low == high ? value : Math.max(0, value - by);
        return new Span(least, value, low == high ? value : value + by, unit, about, false);
    }

    /** With the ±15 % that "about" stands for; a range has its own ends already. */
    Span widened() {
        if (!about || range || low != high) {
            return this;
        }
        double by = ABOUT_SHARE * Math.abs(typical);
        if (unit.dimension() == Dimension.TEMPERATURE) {
            // The share is one of the Celsius figure, so that the same temperature in °F or K means the same.
            double celsius = unit.toSi(typical) - 273.15;
            by = Math.max(ABOUT_LEAST_K, ABOUT_SHARE * Math.abs(celsius)) / unit.stepSi(1);
        }
        return new Span(typical - by, typical, typical + by, unit, true, false, said);
    }

    /** With three digits that count, for a value nobody typed. */
    String rounded() {
        String end = Show.joined(NumberText.shown(high), unit);
        return low == high ? end : NumberText.shown(low) + " to " + end;
    }

    /** Numbers and unit as they could be typed again. */
    String typedAgain() {
        String end = Show.joined(NumberText.echoed(high), unit);
        String value = said != null && (range || low == high)
                ? said
                : low != high ? NumberText.echoed(low) + " to " + end : Show.joined(NumberText.echoed(typical), unit);
        return about ? "about " + value : value;
    }

    /** Shown back: with the ends an "about" or a tolerance stands for. */
    String echo() {
        if (range || low == high) {
            return typedAgain();
        }
        String value = said != null ? said : Show.joined(NumberText.echoed(typical), unit);
        return (about ? "about " : "") + value + " (" + NumberText.end(low) + " to " + NumberText.end(high) + ")";
    }
}
