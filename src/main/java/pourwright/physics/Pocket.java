package pourwright.physics;

/** Air in a blind pocket of a mould that is degassed full of liquid and then let back to air. */
public final class Pocket {

    private Pocket() {}

    /**
     * Air that is left in a blind pocket after the chamber is back at air pressure:
     * volume × (chamber + density g head + 2 sigma/r_mouth) / (air + density g head + 2 sigma/r_final),
     * r_final the radius of a sphere of the residue. Tension holds back air at the mouth, and squeezes the rest.
     * Valid when liquid covers the mouth throughout, still flows at release, and wets the wall; dry air only.
     * Source: Boyle's law with head and Laplace pressure.
     *
     * @param volumeM3       volume of the pocket, m3
     * @param chamberPa      lowest absolute chamber pressure, Pa, not above the air pressure
     * @param airPa          absolute local air pressure, Pa
     * @param density        density of the liquid, kg/m3
     * @param headM          depth of liquid over the pocket's mouth, m
     * @param sigma          surface tension, N/m
     * @param mouthDiameterM width of the mouth, m
     * @return volume left, m3, never more than the pocket
     * @throws PhysicsException when an input is not a number, negative or out of range
     */
    public static double residueM3(
            double volumeM3,
            double chamberPa,
            double airPa,
            double density,
            double headM,
            double sigma,
            double mouthDiameterM) {
        Checked.positive("pocket volume", volumeM3, "m3");
        Checked.positive("air pressure", airPa, "Pa absolute");
        Checked.within("chamber pressure", chamberPa, 0, airPa, "Pa absolute");
        Checked.positive("liquid density", density, "kg/m3");
        Checked.zeroOrMore("head over the pocket", headM, "m");
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        Checked.positive("width of the pocket's mouth", mouthDiameterM, "m");
        double headPa = density * Constants.G * headM;
        double keptPa = chamberPa + headPa + 4 * sigma / mouthDiameterM;
        if (keptPa == 0) {
            return 0;
        }
        // The fixed point is the swelling law of a bubble that holds the kept gas: pressure r³ + 2 sigma r² = content.
        double content = keptPa * volumeM3 * 3 / (4 * Math.PI);
        double radiusM = Bubble.radiusM(airPa + headPa, sigma, content);
        return Math.min(volumeM3, 4 * Math.PI / 3 * radiusM * radiusM * radiusM);
    }

    /**
     * Diameter of a sphere of a volume: what the eye compares.
     *
     * @param volumeM3 volume, m3, zero or more
     * @return diameter, m
     * @throws PhysicsException when the volume is not a number or negative
     */
    public static double equivalentDiameterM(double volumeM3) {
        Checked.zeroOrMore("volume", volumeM3, "m3");
        return Math.cbrt(6 * volumeM3 / Math.PI);
    }
}
