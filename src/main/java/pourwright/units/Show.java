package pourwright.units;

/**
 * Printing of quantities. Number and unit are joined by U+00A0, a space at which lines are not broken.
 * The text is the same on every machine, and {@link QuantityReader} reads it back within the shown rounding.
 */
public final class Show {
    static final char JOIN = '\u00a0';

    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;

    private Show() {}

    /** The value in that unit, with three digits that count. */
    public static String quantity(double si, String unit, Dimension d) {
        UnitDef u = UnitBook.need(unit, d);
        double v = u.fromSi(si);
        return Double.isFinite(v) ? joined(NumberText.shown(v), u) : endless(v);
    }

    /** "4.1 L (3.1 to 5.2)", with digits that suit the spread; one number when the ends look the same. */
    public static String range(double lowSi, double typicalSi, double highSi, String unit, Dimension d) {
        UnitDef u = UnitBook.need(unit, d);
        double low = u.fromSi(lowSi);
        double typical = u.fromSi(typicalSi);
        double high = u.fromSi(highSi);
        double spread = Math.abs(high - low);
        if (!Double.isFinite(low) || !Double.isFinite(typical) || !Double.isFinite(high)) {
            return quantity(typicalSi, unit, d) + " (" + bound(low) + " to " + bound(high) + ")";
        }
        if (spread < 1e-9 * Math.max(Math.abs(low), Math.abs(high))) {
            return quantity(typicalSi, unit, d);
        }
        // Two digits of the spread: more would be show, fewer would hide it.
        int exponent = (int) Math.floor(Math.log10(spread)) - 1;
        String lowText = NumberText.stepped(low, exponent);
        String highText = NumberText.stepped(high, exponent);
        if (lowText.equals(highText)) {
            return quantity(typicalSi, unit, d);
        }
        return joined(NumberText.stepped(typical, exponent), u) + " (" + lowText + " to " + highText + ")";
    }

    /** The unit people use for a value of that size. */
    public static String bestUnit(double si, Dimension d) {
        double size = Math.abs(si);
        return switch (d) {
            case TIME -> size < 90 ? "s" : size <= 90 * MINUTE_S ? "min" : "h";
            case MASS -> size > 0 && size < 1e-4 ? "mg" : size < 1 ? "g" : "kg";
            case VOLUME -> size < 1e-3 ? "mL" : size < 1 ? "L" : "m³";
            case LENGTH -> size > 0 && size < 1e-5 ? "µm" : size < 1 ? "mm" : "m";
            case PRESSURE -> size < 1e6 ? "mbar" : "bar";
            case TEMPERATURE -> "°C";
            case FLOW, CONDUCTANCE -> "L/s";
            case LEAK -> "mbar L/s";
            case VISCOSITY -> size < 1 ? "mPa·s" : "Pa·s";
            case DENSITY -> "kg/m³";
            case FRACTION -> "%";
            case FORCE -> size < 1e4 ? "N" : "kN";
            case SPEED -> size < 1e-4 ? "mm/min" : size < 1 ? "mm/s" : "m/s";
            case ENERGY_PER_MOLE -> "kJ/mol";
            case SURFACE_TENSION -> "mN/m";
            case TEMPERATURE_DIFFERENCE -> "K";
            case NUMBER -> "1";
        };
    }

    /** "5:20" (minutes and seconds), and "1 h 05 min" from an hour on, for timetables. */
    public static String time(double seconds) {
        if (!Double.isFinite(seconds) || Math.abs(seconds) > 1e15) {
            return endless(seconds);
        }
        long whole = Math.round(Math.abs(seconds));
        String sign = seconds < 0 && whole > 0 ? "-" : "";
        if (whole < HOUR_S) {
            return sign + whole / 60 + ":" + two(whole % 60);
        }
        long minutes = Math.round(Math.abs(seconds) / MINUTE_S);
        return sign + minutes / 60 + JOIN + "h" + JOIN + two(minutes % 60) + JOIN + "min";
    }

    /** A moment on the clock of a plan: "-4:00" before mixing, hours from the sixth on, "never" where it does not come. */
    public static String clock(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "never";
        }
        // From there on a clock of minutes says nothing more.
        return seconds >= 6 * HOUR_S ? quantity(seconds, "h", Dimension.TIME) : time(seconds);
    }

    static String joined(String number, UnitDef unit) {
        return unit.symbol().equals("1") ? number : number + JOIN + unit.shown().replace(' ', JOIN);
    }

    private static String two(long n) {
        return n < 10 ? "0" + n : Long.toString(n);
    }

    private static String bound(double v) {
        return Double.isFinite(v) ? NumberText.shown(v) : endless(v);
    }

    /** A figure without an end or without a value must not look like a number. */
    static String endless(double v) {
        return Double.isNaN(v) ? "unknown" : "without limit";
    }
}
