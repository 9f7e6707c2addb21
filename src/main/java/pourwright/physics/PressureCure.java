package pourwright.physics;

/**
 * What a pressure pot does to a bubble: it shrinks it, and gas going into solution is left out.
 * A pressure pot's dial reads above local air, so the local air must be known.
 */
public final class PressureCure {

    private PressureCure() {}

    /**
     * Volume of a bubble under pressure over its volume in local air, air / (air + gauge), at constant temperature.
     * Source: Boyle's law; within 1 % for dry air in bubbles above 0.1 mm, where surface tension is small.
     *
     * @param gaugePa pot pressure above local air, Pa, zero or more
     * @param airPa   local air pressure, Pa, above zero
     * @return volume ratio, above 0 and up to 1
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double volumeRatio(double gaugePa, double airPa) {
        Checked.zeroOrMore("pot pressure", gaugePa, "Pa");
        Checked.positive("air pressure", airPa, "Pa");
        return airPa / (airPa + gaugePa);
    }

    /**
     * Diameter of a bubble under pressure over its diameter in local air: the cube root of {@link #volumeRatio}.
     * Source and limits: as there.
     *
     * @param gaugePa pot pressure above local air, Pa, zero or more
     * @param airPa   local air pressure, Pa, above zero
     * @return diameter ratio, above 0 and up to 1
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double diameterRatio(double gaugePa, double airPa) {
        return Math.cbrt(volumeRatio(gaugePa, airPa));
    }
}
