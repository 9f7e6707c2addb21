package pourwright.physics;

import java.util.Arrays;

/**
 * Pressure in a chamber over time while the pump runs, cheap to ask many times.
 *
 * <p>Without a hose the closed form p = pf + (p0 - pf) exp(-S t / V) is used.
 * With a hose a table holds w = ln|m - mf| against time, and a cubic with exact slopes joins its rows;
 * see {@link PumpedIntegral} for w. Below the last row the fall is exponential, and the last slope carries on.
 * The pressure is good to 1e-5 of its distance from the floor. Instances never change, so threads may share them.
 */
public final class PumpDownCourse {

    /** Widest step of the table in w; it sets the error of the cubic. */
    private static final double WIDEST_STEP = 0.125;

    /** The table ends where the conductance is constant to this share, so that the fall is exponential. */
    private static final double CONSTANT_SHARE = 1e-6;

    private final double startPa;
    private final double floorPa;
    private final double highestPa;
    /** Time constant V/S, used without a hose, s. */
    private final double timeConstantS;

    private final PumpedLine pumped;
    private final PumpedIntegral integral;
    private final double[] timeS;
    private final double[] logDistance;
    /** Slope of w over time at the rows, 1/s, below zero. */
    private final double[] slopePerS;

    PumpDownCourse(
            double volumeM3, double startPa, Pump pump, VacuumLine line, double gasLoadPaM3PerS, double highestPa) {
        this.startPa = startPa;
        this.highestPa = highestPa;
        this.timeConstantS = volumeM3 / pump.speedM3PerS();
        if (line.unrestricted()) {
            floorPa = PumpDown.floorPa(pump, gasLoadPaM3PerS);
            pumped = null;
            integral = null;
            timeS = null;
            logDistance = null;
            slopePerS = null;
            return;
        }
        pumped = new PumpedLine(pump, line);
        double floorMeanPa = pumped.meanAtThroughput(gasLoadPaM3PerS);
        floorPa = pumped.chamberPa(floorMeanPa);
        double distancePa = pumped.meanAtChamberPa(startPa) - floorMeanPa;
        integral = new PumpedIntegral(pumped, volumeM3, floorMeanPa, Math.signum(distancePa));
        if (startPa == floorPa || distancePa == 0) {
            timeS = new double[0];
            logDistance = timeS;
            slopePerS = timeS;
            return;
        }
        double first = Math.log(Math.abs(distancePa));
        double last = Math.min(first, Math.log(CONSTANT_SHARE * pumped.scaleOfChangePa(floorMeanPa)));
        int steps = (int) Math.max(1, Math.ceil((first - last) / WIDEST_STEP));
        timeS = new double[steps + 1];
        logDistance = new double[steps + 1];
        slopePerS = new double[steps + 1];
        for (int row = 0; row <= steps; row++) {
            logDistance[row] = first + (last - first) * row / steps;
            slopePerS[row] = -1 / integral.secondsPerEFold(logDistance[row]);
            timeS[row] = row == 0 ? 0 : timeS[row - 1] + integral.shortStepS(logDistance[row - 1], logDistance[row]);
        }
    }

    /**
     * Pressure after a time of pumping. Source and limits: as {@link PumpDown#timeS}.
     *
     * @param afterS time since the pump valve opened, s, zero or more; infinity gives the floor
     * @return pressure, Pa
     * @throws PhysicsException when the time is negative or not a number
     */
    public double pressurePaAt(double afterS) {
        if (!(afterS >= 0)) {
            throw new PhysicsException("The time must be zero or more, got " + afterS + " s.");
        }
        double pressurePa;
        if (afterS == 0) {
            pressurePa = startPa;
        } else if (pumped == null) {
            pressurePa = floorPa + (startPa - floorPa) * Math.exp(-afterS / timeConstantS);
        } else if (timeS.length == 0 || afterS == Double.POSITIVE_INFINITY) {
            pressurePa = floorPa;
        } else {
            pressurePa = pumped.chamberPa(integral.meanPa(logDistanceAt(afterS)));
        }
        return Math.min(highestPa, pressurePa);
    }

    /**
     * The pressure the chamber tends to, Pa; the reachable pressure of {@link PumpDown#reachablePressurePa}.
     *
     * @return floor, Pa
     */
    public double floorPa() {
        return Math.min(highestPa, floorPa);
    }

    private double logDistanceAt(double afterS) {
        int last = timeS.length - 1;
        if (afterS >= timeS[last]) {
            return logDistance[last] + slopePerS[last] * (afterS - timeS[last]);
        }
        int found = Arrays.binarySearch(timeS, afterS);
        int low = found >= 0 ? found : -found - 2;
        double spanS = timeS[low + 1] - timeS[low];
        double u = (afterS - timeS[low]) / spanS;
        double v = 1 - u;
        // Cubic Hermite form: values and slopes at both rows.
        return v * v * (logDistance[low] * (1 + 2 * u) + slopePerS[low] * spanS * u)
                + u * u * (logDistance[low + 1] * (1 + 2 * v) - slopePerS[low + 1] * spanS * v);
    }
}
