package pourwright.physics;

/**
 * How long a chamber takes to empty, and how deep it gets.
 *
 * <p>The gas load (leak and outgassing together) is taken as constant, the chamber as dry, and the air as staying at 20 C.
 * Wet walls and froth make the true time longer, usually by 1.3 to 1.8 (common practice).
 */
public final class PumpDown {

    private PumpDown() {}

    /**
     * Time to pump from one pressure to another, t = integral of V dp / (T(p) - Q).
     * Without a hose it is (V/S) ln((p0 - pf)/(p1 - pf)), with pf = pu + Q/S.
     * Source: Ryans and Roper, Process Vacuum System Design and Operation, 1986, evacuation with gas load;
     * T(p) as in {@link PumpLine#throughput}. The integral is good to 1e-8 of the time, the model to 20 or 30 %
     * down to ten times the ultimate pressure (common practice).
     *
     * @param volumeM3         free volume V of the chamber, m3, above zero
     * @param startPa          pressure at the start p0, Pa, zero or more
     * @param targetPa         pressure wanted p1, Pa, zero or more
     * @param pump             the pump
     * @param line             the hose
     * @param gasLoadPaM3PerS  leak and outgassing Q, Pa m3/s, zero or more
     * @return time, s; 0 when the target is not below the start;
     *         {@link Double#POSITIVE_INFINITY} when the target is at or below the pressure that can be reached
     * @throws PhysicsException when an input is not a number, out of its range, or missing
     */
    public static double timeS(
            double volumeM3, double startPa, double targetPa, Pump pump, VacuumLine line, double gasLoadPaM3PerS) {
        checkChamber(volumeM3, startPa, pump, line, gasLoadPaM3PerS);
        Checked.zeroOrMore("target pressure", targetPa, "Pa");
        if (targetPa >= startPa) {
            return 0;
        }
        if (line.unrestricted()) {
            double floorPa = floorPa(pump, gasLoadPaM3PerS);
            return targetPa <= floorPa
                    ? Double.POSITIVE_INFINITY
                    : volumeM3 / pump.speedM3PerS() * Math.log((startPa - floorPa) / (targetPa - floorPa));
        }
        PumpedLine pumped = new PumpedLine(pump, line);
        double floorMeanPa = pumped.meanAtThroughput(gasLoadPaM3PerS);
        // The comparison is made in chamber pressure too, so that it agrees to the last digit with the reachable
        // pressure.
        double nearPa = pumped.meanAtChamberPa(targetPa) - floorMeanPa;
        if (targetPa <= pumped.chamberPa(floorMeanPa) || nearPa <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double farPa = pumped.meanAtChamberPa(startPa) - floorMeanPa;
        return new PumpedIntegral(pumped, volumeM3, floorMeanPa, 1).timeS(Math.log(farPa), Math.log(nearPa));
    }

    /**
     * Lowest pressure the chamber can reach: where the gas flow T(p) equals the gas load Q, but never above the barometer.
     * A leak stops filling the chamber when both sides are equal.
     * Source: steady state of {@link #timeS}; without a hose it is pu + Q/S.
     *
     * @param pump            the pump
     * @param line            the hose
     * @param gasLoadPaM3PerS leak and outgassing Q, Pa m3/s, zero or more
     * @param barometerPa     local air pressure, Pa, above zero
     * @return reachable pressure, Pa
     * @throws PhysicsException when an input is not a number, out of its range, or missing
     */
    public static double reachablePressurePa(Pump pump, VacuumLine line, double gasLoadPaM3PerS, double barometerPa) {
        Checked.given("pump", pump);
        Checked.given("vacuum line", line);
        Checked.zeroOrMore("gas load", gasLoadPaM3PerS, "Pa m3/s");
        Checked.positive("barometer", barometerPa, "Pa");
        if (line.unrestricted()) {
            return Math.min(barometerPa, floorPa(pump, gasLoadPaM3PerS));
        }
        PumpedLine pumped = new PumpedLine(pump, line);
        return Math.min(barometerPa, pumped.chamberPa(pumped.meanAtThroughput(gasLoadPaM3PerS)));
    }

    /**
     * The whole course of pressure over time, for callers that ask at many times.
     * From below the reachable pressure it rises; a leak cannot take it above the barometer, which
     * {@link #course(double, double, Pump, VacuumLine, double, double)} knows and this method does not.
     * Source and limits: as {@link #timeS}.
     *
     * @param volumeM3        free volume of the chamber, m3, above zero
     * @param startPa         pressure at the start, Pa, zero or more
     * @param pump            the pump
     * @param line            the hose
     * @param gasLoadPaM3PerS leak and outgassing, Pa m3/s, zero or more
     * @return the course
     * @throws PhysicsException when an input is not a number, out of its range, or missing
     */
    public static PumpDownCourse course(
            double volumeM3, double startPa, Pump pump, VacuumLine line, double gasLoadPaM3PerS) {
        checkChamber(volumeM3, startPa, pump, line, gasLoadPaM3PerS);
        return new PumpDownCourse(volumeM3, startPa, pump, line, gasLoadPaM3PerS, Double.POSITIVE_INFINITY);
    }

    /**
     * The whole course of pressure over time, held at the barometer when the gas load outruns the pump.
     * Source and limits: as {@link #timeS}.
     *
     * @param volumeM3        free volume of the chamber, m3, above zero
     * @param startPa         pressure at the start, Pa, zero to the barometer
     * @param pump            the pump
     * @param line            the hose
     * @param gasLoadPaM3PerS leak and outgassing, Pa m3/s, zero or more
     * @param barometerPa     local air pressure, Pa, above zero
     * @return the course
     * @throws PhysicsException when an input is not a number, out of its range, or missing
     */
    public static PumpDownCourse course(
            double volumeM3, double startPa, Pump pump, VacuumLine line, double gasLoadPaM3PerS, double barometerPa) {
        checkChamber(volumeM3, startPa, pump, line, gasLoadPaM3PerS);
        Checked.positive("barometer", barometerPa, "Pa");
        Checked.within("pressure at the start", startPa, 0, barometerPa, "Pa");
        return new PumpDownCourse(volumeM3, startPa, pump, line, gasLoadPaM3PerS, barometerPa);
    }

    /** Floor of a chamber without a hose, pu + Q/S, Pa. */
    static double floorPa(Pump pump, double gasLoadPaM3PerS) {
        return pump.ultimatePa() + gasLoadPaM3PerS / pump.speedM3PerS();
    }

    private static void checkChamber(double volumeM3, double startPa, Pump pump, VacuumLine line, double gasLoad) {
        Checked.positive("chamber volume", volumeM3, "m3");
        Checked.zeroOrMore("pressure at the start", startPa, "Pa");
        Checked.given("pump", pump);
        Checked.given("vacuum line", line);
        Checked.zeroOrMore("gas load", gasLoad, "Pa m3/s");
    }
}
