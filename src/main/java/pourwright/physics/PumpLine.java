package pourwright.physics;

/**
 * What a pump still does through its hose.
 * The conductance is taken at the mean of the chamber and pump-inlet pressures.
 * Taking it at the chamber pressure instead would make a thin hose look a third faster at 1 mbar.
 */
public final class PumpLine {

    private PumpLine() {}

    /**
     * Gas flow out of the chamber, T = S (pp - pu), where the inlet pressure pp solves S (pp - pu) = C((p + pp)/2) (p - pp).
     * Without a hose pp = p. Below the ultimate pressure pu the flow is negative: the pump lets gas back.
     * Valid for air near 20 C in laminar flow; source: continuity, with the conductance of {@link TubeConductance#m3PerS}.
     *
     * @param chamberPa pressure p in the chamber, Pa, zero or more
     * @param pump      the pump, with speed S and ultimate pressure pu
     * @param line      the hose, with conductance C
     * @return gas flow, Pa m3/s
     * @throws PhysicsException when the pressure is negative or something is missing
     */
    public static double throughput(double chamberPa, Pump pump, VacuumLine line) {
        Checked.zeroOrMore("chamber pressure", chamberPa, "Pa");
        Checked.given("pump", pump);
        if (Checked.given("vacuum line", line).unrestricted()) {
            return pump.speedM3PerS() * (chamberPa - pump.ultimatePa());
        }
        PumpedLine pumped = new PumpedLine(pump, line);
        return pumped.throughputPaM3PerS(pumped.meanAtChamberPa(chamberPa));
    }

    /**
     * Pump speed felt at the chamber, T/p; never above the pump's own speed.
     * Source and limits: as {@link #throughput}.
     *
     * @param chamberPa pressure p in the chamber, Pa, above zero
     * @param pump      the pump
     * @param line      the hose
     * @return effective speed, m3/s; negative below the ultimate pressure
     * @throws PhysicsException when the pressure is not above zero or something is missing
     */
    public static double effectiveSpeedM3PerS(double chamberPa, Pump pump, VacuumLine line) {
        Checked.positive("chamber pressure", chamberPa, "Pa");
        return throughput(chamberPa, pump, line) / chamberPa;
    }
}
