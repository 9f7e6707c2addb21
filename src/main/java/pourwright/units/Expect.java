package pourwright.units;

/**
 * What a question takes.
 *
 * @param unit the question's own unit, also of {@code min} and {@code max}
 * @param example one answer to show
 * @param bareAccepted whether a number without a unit is taken in the question's own unit without asking
 * @param gauge whether the sign of a pressure is ignored, as on a dial that shows below or above local air
 */
public record Expect(
        Dimension dimension, String unit, double min, double max, String example, boolean bareAccepted, boolean gauge) {

    /** A question whose range ends here or lower is about a room: nobody works in a hotter one. Common practice. */
    private static final double WARMEST_ROOM_K = 273.15 + 45;

    /** Length questions that reach this far are about height above the sea. Common practice. */
    private static final double ALTITUDE_M = 1000;

    /** A pressure question that starts here or higher is about the air outside. Common practice. */
    private static final double LEAST_AIR_PA = 10000;

    UnitDef own() {
        return UnitBook.need(unit, dimension);
    }

    boolean room() {
        return dimension == Dimension.TEMPERATURE && own().toSi(max) <= WARMEST_ROOM_K + 1e-9;
    }

    boolean altitude() {
        return dimension == Dimension.LENGTH && own().toSi(max) >= ALTITUDE_M;
    }

    /** A pressure pot is asked about in bar or psi above local air. */
    boolean pot() {
        return dimension == Dimension.PRESSURE
                && (own().symbol().equals("bar") || own().symbol().equals("psi"));
    }

    /** A question for a pressure itself, counted from nothing; a rise may be zero, a pressure may not. */
    boolean level() {
        return dimension == Dimension.PRESSURE && !gauge && !pot() && min > 0;
    }

    /** A question about the air outside, as a barometer shows it. */
    boolean outsideAir() {
        return level() && own().toSi(min) >= LEAST_AIR_PA;
    }

    /** Whether the value lies in the range; a part in 10⁹ is forgiven, as conversion rounds. */
    boolean fits(double si) {
        double v = own().fromSi(si);
        double slack = 1e-9 * Math.max(Math.abs(v), 1e-9);
        return v >= min - slack && v <= max + slack;
    }
}
