package pourwright.physics;

/** The push of a liquid on the wall of a mould. */
public final class SideWall {

    private SideWall() {}

    /**
     * Pressure of a resting liquid on the wall at a depth, over the pressure of the air: density g depth.
     * Source: hydrostatics.
     *
     * @param density density of the liquid, kg/m3
     * @param depthM  depth under the surface, m
     * @return pressure, Pa
     * @throws PhysicsException when the density is not above zero or the depth is negative
     */
    public static double pressurePa(double density, double depthM) {
        Checked.positive("liquid density", density, "kg/m3");
        Checked.zeroOrMore("depth", depthM, "m");
        return density * Constants.G * depthM;
    }
}
