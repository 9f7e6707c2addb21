package pourwright.physics;

/**
 * How much air a long round tube lets through at 20 C, from thick viscous flow to single molecules.
 * Conductance is throughput divided by pressure difference, so its unit is m3/s.
 *
 * <p>Limits: the tube is long (length well above ten bores) and the flow laminar.
 * Near atmospheric pressure in a thin hose the flow is turbulent, and these figures are too high;
 * {@link #reynolds} tells when. Accuracy in laminar flow: about 5 % (common practice).
 */
public final class TubeConductance {

    /**
     * Coefficient of viscous flow for air at 20 C, 1/(Pa s).
     * It is 135 in the trade's units (cm, mbar, L/s), and pi / (128 eta) with eta = 1.82e-5 Pa s gives 134.9.
     */
    static final double VISCOUS_COEFFICIENT = 1350.0;

    /** Coefficient of molecular flow for air at 20 C, m/s; 12.1 in cm and L/s. */
    static final double MOLECULAR_COEFFICIENT = 121.0;

    /** Slope above the line in Knudsen's correction, 1/(m Pa), the same number as 1/(cm mbar). */
    static final double KNUDSEN_UPPER = 192.0;

    /** Slope below the line in Knudsen's correction, 1/(m Pa). */
    static final double KNUDSEN_LOWER = 237.0;

    /** Viscosity of air at 20 C, Pa s; the value behind the coefficient of viscous flow. */
    private static final double AIR_VISCOSITY_PA_S = 1.82e-5;

    /** Density of air at 20 C divided by its pressure, kg/(m3 Pa): M / (R T) with M = 28.9647 g/mol. */
    private static final double AIR_DENSITY_PER_PA = 0.0289647 / (Constants.GAS_CONSTANT * 293.15);

    private TubeConductance() {}

    /**
     * Conductance at any pressure (Knudsen), C = 1350 d^4 p/l + 121 (d^3/l)(1 + 192 d p)/(1 + 237 d p).
     * It has a minimum near d p = 0.0043 m Pa, so it does not always grow with pressure.
     * Source: pump makers' handbook "Fundamentals of vacuum technology", eq. 1.26.
     *
     * @param boreM          inner diameter d, m
     * @param lengthM        length l, m
     * @param meanPressurePa mean p of the pressures at the two ends, Pa
     * @return conductance, m3/s
     * @throws PhysicsException when the bore or length is not above zero, or the pressure is negative
     */
    public static double m3PerS(double boreM, double lengthM, double meanPressurePa) {
        double boreByPressure = boreM * meanPressurePa;
        return viscousM3PerS(boreM, lengthM, meanPressurePa)
                + molecularM3PerS(boreM, lengthM)
                        * (1 + KNUDSEN_UPPER * boreByPressure)
                        / (1 + KNUDSEN_LOWER * boreByPressure);
    }

    /**
     * Conductance in laminar viscous flow, C = 1350 d^4 p/l (Hagen-Poiseuille); holds for p d above 0.6 Pa m.
     * Source: as {@link #m3PerS}, first term.
     *
     * @param boreM          inner diameter d, m
     * @param lengthM        length l, m
     * @param meanPressurePa mean p of the pressures at the two ends, Pa
     * @return conductance, m3/s
     * @throws PhysicsException when the bore or length is not above zero, or the pressure is negative
     */
    public static double viscousM3PerS(double boreM, double lengthM, double meanPressurePa) {
        checkTube(boreM, lengthM);
        Checked.zeroOrMore("mean pressure", meanPressurePa, "Pa");
        double squareM2 = boreM * boreM;
        return VISCOUS_COEFFICIENT * squareM2 * squareM2 * meanPressurePa / lengthM;
    }

    /**
     * Conductance in molecular flow, C = 121 d^3/l; holds for p d below 0.013 Pa m.
     * Source: as {@link #m3PerS}, second term at zero pressure.
     *
     * @param boreM   inner diameter d, m
     * @param lengthM length l, m
     * @return conductance, m3/s
     * @throws PhysicsException when the bore or length is not above zero
     */
    public static double molecularM3PerS(double boreM, double lengthM) {
        checkTube(boreM, lengthM);
        return MOLECULAR_COEFFICIENT * boreM * boreM * boreM / lengthM;
    }

    /**
     * Reynolds number of air at 20 C in the tube, Re = 4 T (M / (R T20)) / (pi d eta); the same at both ends.
     * Above about 2300 the flow turns turbulent and the laminar conductance is too high.
     * Source: definition, with the mass flow from the ideal gas law.
     *
     * @param throughputPaM3PerS gas flow T, Pa m3/s
     * @param boreM              inner diameter d, m
     * @return Reynolds number, without unit
     * @throws PhysicsException when the flow is negative or the bore is not above zero
     */
    public static double reynolds(double throughputPaM3PerS, double boreM) {
        Checked.zeroOrMore("gas flow", throughputPaM3PerS, "Pa m3/s");
        Checked.positive("bore", boreM, "m");
        return 4 * throughputPaM3PerS * AIR_DENSITY_PER_PA / (Math.PI * boreM * AIR_VISCOSITY_PA_S);
    }

    private static void checkTube(double boreM, double lengthM) {
        Checked.positive("bore", boreM, "m");
        Checked.positive("length", lengthM, "m");
    }
}
