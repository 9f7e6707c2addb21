package pourwright.kitfit;

import pourwright.physics.Require;

/**
 * One look at the gauge.
 *
 * @param timeS      time on a clock that runs through the whole test, s; its zero does not matter
 * @param pressurePa absolute pressure in the chamber, Pa, zero or more
 */
public record Reading(double timeS, double pressurePa) {

    /**
     * Checks the reading.
     *
     * @throws pourwright.physics.PhysicsException when a value is not a number or the pressure is negative
     */
    public Reading {
        Require.finite("time of a reading", timeS, "s");
        Require.zeroOrMore("pressure read", pressurePa, "Pa absolute");
    }
}
