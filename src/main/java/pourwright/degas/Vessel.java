package pourwright.degas;

import pourwright.physics.Require;

/**
 * What holds the mix and takes heat from it.
 *
 * @param areaM2           area through which heat leaves, m2, zero or more; zero is a perfect flask
 * @param lossWPerM2K      heat lost per area and kelvin to the room, W/(m2 K), zero or more
 * @param capacityJPerK    heat the vessel itself takes up, J/K, zero or more
 */
public record Vessel(double areaM2, double lossWPerM2K, double capacityJPerK) {

    /** Loss of a thin cup in still air, W/(m2 K): free convection and radiation, each about 5. Common practice. */
    public static final double STILL_AIR = 10;

    /** Loss from nothing: all heat stays in the mix. */
    public static final Vessel PERFECT_FLASK = new Vessel(0, 0, 0);

    /**
     * Checks the vessel.
     *
     * @throws pourwright.physics.PhysicsException when a value is not a number or negative
     */
    public Vessel {
        Require.zeroOrMore("area of the vessel", areaM2, "m2");
        Require.zeroOrMore("heat loss", lossWPerM2K, "W/(m2 K)");
        Require.zeroOrMore("heat capacity of the vessel", capacityJPerK, "J/K");
    }

    /**
     * A thin cup filled as high as it is wide, in still air: what a pot life is usually rated in.
     *
     * @param volumeM3 volume of the mix, m3, above zero
     * @return the cup, losing heat through wall, bottom and surface
     * @throws pourwright.physics.PhysicsException when the volume is not above zero
     */
    public static Vessel cupAsHighAsWide(double volumeM3) {
        Require.positive("volume of the mix", volumeM3, "m3");
        double diameterM = Math.cbrt(4 * volumeM3 / Math.PI);
        return cup(diameterM, volumeM3);
    }

    /**
     * A thin cup in still air.
     *
     * @param diameterM inner diameter, m, above zero
     * @param volumeM3  volume of the mix, m3, above zero
     * @return the cup, losing heat through wetted wall, bottom and surface
     * @throws pourwright.physics.PhysicsException when a size is not above zero
     */
    public static Vessel cup(double diameterM, double volumeM3) {
        Require.positive("diameter of the cup", diameterM, "m");
        Require.positive("volume of the mix", volumeM3, "m3");
        double floorM2 = Math.PI * diameterM * diameterM / 4;
        return new Vessel(2 * floorM2 + Math.PI * diameterM * volumeM3 / floorM2, STILL_AIR, 0);
    }

    /**
     * Resistance to heat inside the mix over that at its surface, loss × (volume / area) / conductivity.
     * Below 0.1 the mix has one temperature; well above 1 its core is much hotter than this model says.
     * Source: Biot number, any textbook of heat transfer.
     *
     * @param volumeM3            volume of the mix, m3, above zero
     * @param conductivityWPerMK  heat conductivity of the mix, W/(m K), above zero
     * @return Biot number, no unit
     */
    public double biot(double volumeM3, double conductivityWPerMK) {
        Require.positive("volume of the mix", volumeM3, "m3");
        Require.positive("heat conductivity", conductivityWPerMK, "W/(m K)");
        return areaM2 == 0 ? 0 : lossWPerM2K * volumeM3 / (areaM2 * conductivityWPerMK);
    }

    /**
     * Heat lost per kelvin between the mean temperature of the mix and the room. The resistance inside adds a third of
     * the Biot number, as for a slab whose profile is a parabola (from memory).
     */
    double lossWPerK(double volumeM3, double conductivityWPerMK) {
        return areaM2 * lossWPerM2K / (1 + biot(volumeM3, conductivityWPerMK) / 3);
    }
}
