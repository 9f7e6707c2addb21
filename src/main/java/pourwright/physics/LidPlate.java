package pourwright.physics;

/**
 * Stress and sag of a flat clear lid: a round plate resting on its rim under even pressure.
 *
 * <p>Source: Roark's Formulas for Stress and Strain, circular plates, simply supported edge, uniform load; from memory.
 * Valid for span above ten times the thickness and sag below half the thickness; beyond that both figures are too high.
 */
public final class LidPlate {

    private LidPlate() {}

    /**
     * Greatest stress, at the centre, 3 (3 + nu) dp a^2 / (8 t^2), with a = span / 2.
     * Source and limits: as in the class description.
     *
     * @param spanM                free span between supports, m, above zero
     * @param thicknessM           plate thickness t, m, above zero
     * @param pressureDifferencePa pressure difference dp, Pa, zero or more
     * @param poissonRatio         Poisson's ratio nu of the plate, 0 to 0.5
     * @return tensile stress on the side away from the pressure, Pa
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double maxStressPa(
            double spanM, double thicknessM, double pressureDifferencePa, double poissonRatio) {
        check(spanM, thicknessM, pressureDifferencePa, poissonRatio);
        double radiusOverThickness = spanM / (2 * thicknessM);
        return 3 * (3 + poissonRatio) / 8 * pressureDifferencePa * radiusOverThickness * radiusOverThickness;
    }

    /**
     * Sag at the centre, (5 + nu)/(1 + nu) dp a^4 / (64 D), with D = E t^3 / (12 (1 - nu^2)) and a = span / 2.
     * Source and limits: as in the class description.
     *
     * @param spanM                free span between supports, m, above zero
     * @param thicknessM           plate thickness t, m, above zero
     * @param pressureDifferencePa pressure difference dp, Pa, zero or more
     * @param youngPa              Young's modulus E of the plate, Pa, above zero
     * @param poissonRatio         Poisson's ratio nu of the plate, 0 to 0.5
     * @return sag, m
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double centreDeflectionM(
            double spanM, double thicknessM, double pressureDifferencePa, double youngPa, double poissonRatio) {
        check(spanM, thicknessM, pressureDifferencePa, poissonRatio);
        Checked.positive("Young's modulus", youngPa, "Pa");
        double radiusM = spanM / 2;
        double stiffnessNm = youngPa * thicknessM * thicknessM * thicknessM / (12 * (1 - poissonRatio * poissonRatio));
        return (5 + poissonRatio)
                / (1 + poissonRatio)
                * pressureDifferencePa
                * radiusM
                * radiusM
                * radiusM
                * radiusM
                / (64 * stiffnessNm);
    }

    private static void check(double spanM, double thicknessM, double pressureDifferencePa, double poissonRatio) {
        Checked.positive("span", spanM, "m");
        Checked.positive("plate thickness", thicknessM, "m");
        Checked.zeroOrMore("pressure difference", pressureDifferencePa, "Pa");
        Checked.within("Poisson's ratio", poissonRatio, 0, 0.5, "");
    }
}
