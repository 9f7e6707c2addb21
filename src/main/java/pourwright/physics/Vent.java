package pourwright.physics;

/** Air and liquid through a vent hole. */
public final class Vent {

    /** Viscosity of air at 20 °C, Pa s (handbook value, from memory; 2.5 % per 15 K). */
    public static final double AIR_VISCOSITY_PA_S = 1.82e-5;

    /** Density of air at 20 °C and sea level, kg/m3 (handbook value, from memory). */
    public static final double AIR_DENSITY = 1.20;

    /**
     * Entrance and exit loss in units of half density × mean speed squared: 2.0 for the motion of a laminar stream,
     * lost at the exit, and 0.2 for the entrance. From memory; books give 2.2 to 2.3 together (Langhaar 1942: 2.28).
     * Within that range it is the value that meets the common-practice table of vent flows; 2.28 gives 2 % less.
     */
    public static final double END_LOSS = 2.2;

    private Vent() {}

    /**
     * Flow of air through a straight vent: pressure = 128 viscosity length flow / (π d⁴) + end loss × density v² / 2.
     * Valid for air at workshop temperature near atmospheric pressure, laminar flow (Reynolds number below 2000) and
     * pressures of a few hundred pascal; within about 10 %.
     * Source: Hagen-Poiseuille with entrance and exit loss.
     *
     * @param boreM   bore d, m
     * @param lengthM length, m
     * @param dpPa    pressure difference, Pa, zero or more
     * @return flow, m3/s
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double airFlowM3PerS(double boreM, double lengthM, double dpPa) {
        Checked.positive("bore", boreM, "m");
        Checked.positive("length", lengthM, "m");
        Checked.zeroOrMore("pressure difference", dpPa, "Pa");
        if (dpPa == 0) {
            return 0;
        }
        double bore4 = Math.pow(boreM, 4);
        double wall = wallPaM4(lengthM) / bore4;
        double ends = endsPaM4() / bore4;
        // The root of ends q² + wall q = dp, in the form that keeps its digits when the wall rules.
        return 2 * dpPa / (wall + Math.sqrt(wall * wall + 4 * ends * dpPa));
    }

    /**
     * The smallest bore that lets a flow of air through. Both losses go as 1/d⁴, so the answer is closed:
     * d⁴ = (128 viscosity length flow / π + end loss × 8 density flow² / π²) / pressure.
     *
     * @param airFlowM3PerS flow of air, m3/s, zero or more
     * @param lengthM       length, m
     * @param dpPa          pressure difference at hand, Pa, zero or more
     * @return bore, m; zero without flow; infinite when there is a flow but no pressure
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double smallestBoreM(double airFlowM3PerS, double lengthM, double dpPa) {
        Checked.zeroOrMore("air flow", airFlowM3PerS, "m3/s");
        Checked.positive("length", lengthM, "m");
        Checked.zeroOrMore("pressure difference", dpPa, "Pa");
        if (airFlowM3PerS == 0) {
            return 0;
        }
        double lossPaM4 = airFlowM3PerS * (wallPaM4(lengthM) + endsPaM4() * airFlowM3PerS);
        return Math.sqrt(Math.sqrt(lossPaM4 / dpPa));
    }

    /**
     * Flow of liquid out through a vent: Hagen-Poiseuille, see {@link Flow#tubeM3PerS}.
     *
     * @param boreM        bore, m
     * @param lengthM      length, m
     * @param dpPa         pressure difference, Pa, zero or more
     * @param viscosityPaS viscosity of the liquid, Pa s
     * @return flow, m3/s; too high for a thin liquid in a wide, short vent, where the ends matter as well
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double liquidLossM3PerS(double boreM, double lengthM, double dpPa, double viscosityPaS) {
        return Flow.tubeM3PerS(boreM, lengthM, dpPa, viscosityPaS);
    }

    /** Wall loss × d⁴ for a flow of one m3/s. */
    private static double wallPaM4(double lengthM) {
        return 128 * AIR_VISCOSITY_PA_S * lengthM / Math.PI;
    }

    /** End loss × d⁴ for a flow of one m3/s; it grows with the square of the flow. */
    private static double endsPaM4() {
        return 8 * END_LOSS * AIR_DENSITY / (Math.PI * Math.PI);
    }
}
