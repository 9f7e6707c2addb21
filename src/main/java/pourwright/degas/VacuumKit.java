package pourwright.degas;

import pourwright.physics.Pump;
import pourwright.physics.Require;
import pourwright.physics.VacuumLine;

/**
 * The chamber and what empties it.
 *
 * @param freeM3      volume of the chamber that is free once vessel and mix stand in it, m3
 * @param pump        the pump
 * @param line        the hose
 * @param leakPaM3PerS leak and outgassing, Pa m3/s
 * @param airPa       absolute local air pressure, Pa
 * @param lowestPa    absolute pressure below which the operator lets air in, Pa; zero when never
 */
public record VacuumKit(double freeM3, Pump pump, VacuumLine line, double leakPaM3PerS, double airPa, double lowestPa) {

    /**
     * Checks the kit.
     *
     * @throws pourwright.physics.PhysicsException when something is missing, not a number or out of its range
     */
    public VacuumKit {
        Require.positive("free volume of the chamber", freeM3, "m3");
        Require.given("pump", pump);
        Require.given("vacuum line", line);
        Require.zeroOrMore("leak", leakPaM3PerS, "Pa m3/s");
        Require.positive("air pressure", airPa, "Pa absolute");
        Require.within("lowest pressure to go to", lowestPa, 0, airPa, "Pa absolute");
    }
}
