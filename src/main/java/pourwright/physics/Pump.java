package pourwright.physics;

/**
 * A vacuum pump of constant speed that stops at its ultimate pressure.
 *
 * @param speedM3PerS speed at the pump's inlet, m3/s, above zero
 * @param ultimatePa  lowest pressure at its closed inlet, Pa, zero or more
 */
public record Pump(double speedM3PerS, double ultimatePa) {

    /**
     * Checks the figures.
     *
     * @throws PhysicsException when the speed is not a number above zero or the ultimate pressure is negative
     */
    public Pump {
        Checked.positive("pump speed", speedM3PerS, "m3/s");
        Checked.zeroOrMore("ultimate pressure", ultimatePa, "Pa");
    }
}
