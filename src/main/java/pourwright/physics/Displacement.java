package pourwright.physics;

/** Volumes from what can be measured with a rule or a scale. */
public final class Displacement {

    private Displacement() {}

    /**
     * Volume of a box, l w h. Source: geometry, exact.
     *
     * @param lengthM length, m, zero or more
     * @param widthM  width, m, zero or more
     * @param heightM height, m, zero or more
     * @return volume, m3
     * @throws PhysicsException when an input is not a number or is negative
     */
    public static double boxM3(double lengthM, double widthM, double heightM) {
        return Checked.zeroOrMore("length", lengthM, "m")
                * Checked.zeroOrMore("width", widthM, "m")
                * Checked.zeroOrMore("height", heightM, "m");
    }

    /**
     * Volume of an upright cylinder, pi d^2 h / 4. Source: geometry, exact.
     *
     * @param diameterM diameter, m, zero or more
     * @param heightM   height, m, zero or more
     * @return volume, m3
     * @throws PhysicsException when an input is not a number or is negative
     */
    public static double cylinderM3(double diameterM, double heightM) {
        return Math.PI
                / 4
                * Checked.zeroOrMore("diameter", diameterM, "m")
                * diameterM
                * Checked.zeroOrMore("height", heightM, "m");
    }

    /**
     * Volume of a mass, m / density: a weighed model, or the water that it displaces. Source: definition of density, exact.
     *
     * @param massKg  mass, kg, zero or more
     * @param density density, kg/m3, above zero
     * @return volume, m3
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double volumeFromMassM3(double massKg, double density) {
        return Checked.zeroOrMore("mass", massKg, "kg") / Checked.positive("density", density, "kg/m3");
    }
}
