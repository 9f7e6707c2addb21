package pourwright.physics;

/**
 * Turns gauge readings into absolute pressures and back.
 * A gauge that measures against local air cannot show a vacuum deeper than the local barometer.
 */
public final class Gauge {

    private Gauge() {}

    /**
     * Absolute pressure behind a gauge reading: reading, barometer - reading, or barometer + reading.
     * Exact to rounding; the accuracy is that of the gauge. Source: definition, ISO 80000-4.
     *
     * <p>A reading below local air is given without a sign and lies between zero and the barometer.
     * A reading above local air may be negative, down to minus the barometer.
     *
     * @param readingPa   what the gauge shows, Pa
     * @param kind        what its zero means
     * @param barometerPa local air pressure, Pa
     * @return absolute pressure, Pa, zero or more
     * @throws PhysicsException when the reading is impossible here (the message says the most that is possible),
     *                          or an input is not a number
     */
    public static double absolutePa(double readingPa, GaugeKind kind, double barometerPa) {
        Checked.finite("gauge reading", readingPa, "Pa");
        Checked.positive("barometer", barometerPa, "Pa");
        switch (Checked.given("kind of gauge", kind)) {
            case ABSOLUTE:
                if (readingPa < 0) {
                    throw new PhysicsException("An absolute gauge cannot show " + Checked.text(readingPa, "Pa")
                            + "; the least that is possible is 0 Pa.");
                }
                return readingPa;
            case BELOW_LOCAL_AIR:
                if (readingPa < 0) {
                    throw new PhysicsException("A reading below local air is given without a sign, from 0 Pa to "
                            + Checked.text(barometerPa, "Pa") + "; got " + Checked.text(readingPa, "Pa") + ".");
                }
                if (readingPa > barometerPa) {
                    throw new PhysicsException("A gauge cannot show " + Checked.text(readingPa, "Pa")
                            + " below local air here; the most that is possible is "
                            + Checked.text(deepestBelowLocalAirPa(barometerPa), "Pa") + ".");
                }
                return barometerPa - readingPa;
            default:
                if (readingPa < -barometerPa) {
                    throw new PhysicsException("A gauge cannot show " + Checked.text(-readingPa, "Pa")
                            + " less than local air here; the most that is possible is "
                            + Checked.text(deepestBelowLocalAirPa(barometerPa), "Pa") + ".");
                }
                return barometerPa + readingPa;
        }
    }

    /**
     * The deepest reading a gauge against local air can show: the barometer itself, a perfect vacuum.
     * Source: definition, ISO 80000-4.
     *
     * @param barometerPa local air pressure, Pa
     * @return deepest possible reading, Pa below local air
     * @throws PhysicsException when the barometer is not a number above zero
     */
    public static double deepestBelowLocalAirPa(double barometerPa) {
        return Checked.positive("barometer", barometerPa, "Pa");
    }

    /**
     * What a gauge shows at an absolute pressure; the reverse of {@link #absolutePa}.
     *
     * @param absolutePa  absolute pressure, Pa, zero or more
     * @param kind        what the gauge's zero means
     * @param barometerPa local air pressure, Pa
     * @return reading, Pa
     * @throws PhysicsException when the pressure is negative, when a gauge that reads below local air is asked for
     *                          a pressure above it, or when an input is not a number
     */
    public static double readingPa(double absolutePa, GaugeKind kind, double barometerPa) {
        Checked.zeroOrMore("absolute pressure", absolutePa, "Pa");
        Checked.positive("barometer", barometerPa, "Pa");
        switch (Checked.given("kind of gauge", kind)) {
            case ABSOLUTE:
                return absolutePa;
            case BELOW_LOCAL_AIR:
                if (absolutePa > barometerPa) {
                    throw new PhysicsException("A gauge that reads below local air cannot show "
                            + Checked.text(absolutePa, "Pa") + " absolute here; the most that is possible is "
                            + Checked.text(barometerPa, "Pa") + ".");
                }
                return barometerPa - absolutePa;
            default:
                return absolutePa - barometerPa;
        }
    }
}
