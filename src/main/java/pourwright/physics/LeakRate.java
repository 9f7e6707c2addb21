package pourwright.physics;

/** The leak of a closed chamber, from how fast its pressure rises. */
public final class LeakRate {

    private LeakRate() {}

    /**
     * Gas that enters a closed chamber, q = V dp / dt.
     * A true leak rises on a straight line; outgassing bends over, and then this is only an average.
     * Source: definition of a leak rate; 1 mbar L/s raises one litre by one millibar in one second.
     *
     * @param volumeM3 volume of the closed chamber, m3, above zero
     * @param risePa   pressure rise dp, Pa, zero or more
     * @param timeS    time dt it took, s, above zero
     * @return leak rate, Pa m3/s (0.1 Pa m3/s is 1 mbar L/s)
     * @throws PhysicsException when an input is not a number or out of its range
     */
    public static double paM3PerS(double volumeM3, double risePa, double timeS) {
        Checked.positive("chamber volume", volumeM3, "m3");
        Checked.zeroOrMore("pressure rise", risePa, "Pa");
        Checked.positive("time", timeS, "s");
        return volumeM3 * risePa / timeS;
    }
}
