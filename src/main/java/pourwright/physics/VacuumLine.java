package pourwright.physics;

/**
 * The hose between chamber and pump, as one long round tube.
 *
 * @param boreM   inner diameter, m, above zero
 * @param lengthM length, m, above zero
 */
public record VacuumLine(double boreM, double lengthM) {

    /** No hose at all: the pump sits on the chamber and nothing holds the gas back. */
    public static final VacuumLine NONE = new VacuumLine(Double.POSITIVE_INFINITY, 0);

    /**
     * Checks the sizes.
     *
     * @throws PhysicsException when the bore or the length is not a number above zero
     */
    public VacuumLine {
        boolean nothing = boreM == Double.POSITIVE_INFINITY && lengthM == 0;
        if (!nothing) {
            Checked.positive("bore", boreM, "m");
            Checked.positive("length", lengthM, "m");
        }
    }

    /**
     * Whether there is no hose to hold the gas back.
     *
     * @return true for {@link #NONE} and its equals
     */
    public boolean unrestricted() {
        return lengthM == 0;
    }
}
