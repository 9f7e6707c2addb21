package pourwright.degas;

import pourwright.physics.Require;

/**
 * One pull: the vessel in the chamber and when its valves are turned. Times count from the start of the stage.
 *
 * @param vessel       what holds the mix and takes its heat
 * @param surfaceM2    free surface of the mix, m2: what the froth rises over
 * @param heightM      height of the vessel over its floor, m
 * @param roomK        temperature of the room, K
 * @param openAtS      when the pump valve is opened, s
 * @param pumpedS      how long the pump stays on, s
 * @param releaseS     how long letting the air back takes, s
 * @param pourAfterS   time from air pressure to the pour, or to the end of the stage, s
 * @param visibleM     smallest bubble, under local air pressure, that counts as seen in the part, m
 */
public record Stage(
        Vessel vessel,
        double surfaceM2,
        double heightM,
        double roomK,
        double openAtS,
        double pumpedS,
        double releaseS,
        double pourAfterS,
        double visibleM) {

    /**
     * Checks the stage.
     *
     * @throws pourwright.physics.PhysicsException when something is missing, not a number or out of its range
     */
    public Stage {
        Require.given("vessel", vessel);
        Require.positive("surface of the mix", surfaceM2, "m2");
        Require.positive("height of the vessel", heightM, "m");
        Require.positive("temperature of the room", roomK, "K");
        Require.zeroOrMore("time before the valve is opened", openAtS, "s");
        Require.positive("time under the pump", pumpedS, "s");
        Require.positive("time to let air in", releaseS, "s");
        Require.zeroOrMore("time to the pour", pourAfterS, "s");
        Require.positive("smallest bubble seen", visibleM, "m");
    }

    double endS() {
        return openAtS + pumpedS + releaseS + pourAfterS;
    }
}
