package pourwright.physics;

/** The force of air on the lid of a chamber or pot. */
public final class Lid {

    private Lid() {}

    /**
     * Force on a round opening, F = pi d^2 dp / 4; the same for a flat and a domed lid.
     * Source: definition of pressure, exact.
     *
     * @param diameterM            diameter of the opening at the seal, m, above zero
     * @param pressureDifferencePa pressure difference across the lid, Pa, zero or more
     * @return force, N
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double forceN(double diameterM, double pressureDifferencePa) {
        Checked.positive("lid diameter", diameterM, "m");
        Checked.zeroOrMore("pressure difference", pressureDifferencePa, "Pa");
        return Math.PI * diameterM * diameterM / 4 * pressureDifferencePa;
    }
}
