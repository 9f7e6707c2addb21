package pourwright.kitfit;

import pourwright.physics.Require;

/**
 * The chamber that is tested, and what it is read with.
 *
 * @param volumeM3    volume of the chamber with all that is open to it, m3, above zero
 * @param localAirPa  local air pressure, Pa, above zero
 * @param gaugeStepPa smallest difference that can be read on the gauge, Pa; zero when it is not known
 * @param roomK       temperature of the room, K; used only to compare a level with the vapour pressure of water
 */
public record TestChamber(double volumeM3, double localAirPa, double gaugeStepPa, double roomK) {

    /** Room temperature when none is said, K: 20 °C, common practice. */
    public static final double USUAL_ROOM_K = 293.15;

    /**
     * Checks the chamber.
     *
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public TestChamber {
        Require.positive("chamber volume", volumeM3, "m3");
        Require.positive("local air pressure", localAirPa, "Pa absolute");
        Require.zeroOrMore("step of the gauge", gaugeStepPa, "Pa");
        Require.positive("room temperature", roomK, "K");
    }
}
