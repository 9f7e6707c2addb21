package pourwright.physics;

/**
 * Checks of inputs for packages that build on this one, so that they refuse in the same words.
 * Each method returns the value it was given, or throws a {@link PhysicsException} that names value, unit and expectation.
 */
public final class Require {

    private Require() {}

    /**
     * An ordinary number.
     *
     * @param what  what it is, in plain words
     * @param value the value
     * @param unit  its unit, or an empty text
     * @return the value
     * @throws PhysicsException when it is not a number or infinite
     */
    public static double finite(String what, double value, String unit) {
        return Checked.finite(what, value, unit);
    }

    /**
     * An ordinary number above zero.
     *
     * @param what  what it is, in plain words
     * @param value the value
     * @param unit  its unit, or an empty text
     * @return the value
     * @throws PhysicsException when it is not a number or not above zero
     */
    public static double positive(String what, double value, String unit) {
        return Checked.positive(what, value, unit);
    }

    /**
     * An ordinary number, zero or more.
     *
     * @param what  what it is, in plain words
     * @param value the value
     * @param unit  its unit, or an empty text
     * @return the value
     * @throws PhysicsException when it is not a number or negative
     */
    public static double zeroOrMore(String what, double value, String unit) {
        return Checked.zeroOrMore(what, value, unit);
    }

    /**
     * A number between two limits, both allowed.
     *
     * @param what  what it is, in plain words
     * @param value the value
     * @param low   lowest value allowed
     * @param high  highest value allowed
     * @param unit  its unit, or an empty text
     * @return the value
     * @throws PhysicsException when it is not a number or outside the limits
     */
    public static double within(String what, double value, double low, double high, String unit) {
        return Checked.within(what, value, low, high, unit);
    }

    /**
     * A thing that was given at all.
     *
     * @param what  what it is, in plain words
     * @param thing the thing
     * @param <T>   its kind
     * @return the thing
     * @throws PhysicsException when it is missing
     */
    public static <T> T given(String what, T thing) {
        return Checked.given(what, thing);
    }
}
