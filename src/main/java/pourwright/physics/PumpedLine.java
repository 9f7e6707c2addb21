package pourwright.physics;

/**
 * Pump and hose in steady flow, with every quantity an explicit function of one number.
 *
 * <p>The balance S (pp - pu) = C(m) (p - pp) with m = (p + pp)/2 cannot be solved for the inlet pressure pp in closed form.
 * Written in the mean pressure m it can: p - pp = 2 (m - pp), so pp = (S pu + 2 C m)/(S + 2 C) and p = 2 m - pp.
 * Chamber pressure, gas flow and their slopes are then plain fractions of m, all rising with m.
 * Pump-down integrates over m, and only the end points need a root.
 *
 * <p>The roots use Newton's method and no library solver.
 * The slope is known exactly and nearly constant, so three or four steps reach the last digit in about 0.1 microseconds.
 */
final class PumpedLine {

    /** Newton stops when a step is below this share of the mean pressure: two units in the last place. */
    private static final double ROUNDING = 4.5e-16;

    /** Far above the four steps that are needed; it only guards against a step that hops between two neighbours. */
    private static final int MOST_STEPS = 60;

    private final double speedM3PerS;
    private final double ultimatePa;
    private final double viscousPerPa;
    private final double molecularM3PerS;
    private final double upperPerPa;
    private final double lowerPerPa;
    /** The molecular term's slope is minus this over (1 + lower m)^2. */
    private final double fallPerPa;

    PumpedLine(Pump pump, VacuumLine line) {
        double boreM = line.boreM();
        speedM3PerS = pump.speedM3PerS();
        ultimatePa = pump.ultimatePa();
        viscousPerPa = TubeConductance.viscousM3PerS(boreM, line.lengthM(), 1);
        molecularM3PerS = TubeConductance.molecularM3PerS(boreM, line.lengthM());
        upperPerPa = TubeConductance.KNUDSEN_UPPER * boreM;
        lowerPerPa = TubeConductance.KNUDSEN_LOWER * boreM;
        fallPerPa = molecularM3PerS * (lowerPerPa - upperPerPa);
    }

    /** Conductance of the hose at a mean pressure, m3/s. */
    double conductanceM3PerS(double meanPa) {
        return viscousPerPa * meanPa + molecularM3PerS * (1 + upperPerPa * meanPa) / (1 + lowerPerPa * meanPa);
    }

    /** Chamber pressure that belongs to a mean pressure, Pa. */
    double chamberPa(double meanPa) {
        double conductance = conductanceM3PerS(meanPa);
        return meanPa + speedM3PerS * (meanPa - ultimatePa) / (speedM3PerS + 2 * conductance);
    }

    /** Gas flow that belongs to a mean pressure, Pa m3/s; negative below the ultimate pressure. */
    double throughputPaM3PerS(double meanPa) {
        double conductance = conductanceM3PerS(meanPa);
        return 2 * speedM3PerS * conductance * (meanPa - ultimatePa) / (speedM3PerS + 2 * conductance);
    }

    /** Slope of the chamber pressure, without unit; between 0.75 and 2. */
    double chamberSlope(double meanPa) {
        return 2 - inletSlope(meanPa);
    }

    /**
     * Flow above that at a floor, divided by the distance in mean pressure, m3/s.
     * The quotient is worked out by hand, so nothing cancels when the two pressures are close.
     */
    double flowAboveFloorPerPa(double meanPa, double floorMeanPa) {
        double here = conductanceM3PerS(meanPa);
        double atFloor = conductanceM3PerS(floorMeanPa);
        double sumHere = speedM3PerS + 2 * here;
        double conductanceRise =
                viscousPerPa - fallPerPa / ((1 + lowerPerPa * meanPa) * (1 + lowerPerPa * floorMeanPa));
        return 2
                * speedM3PerS
                / sumHere
                * (here + (floorMeanPa - ultimatePa) * speedM3PerS * conductanceRise / (speedM3PerS + 2 * atFloor));
    }

    /** Mean pressure in the hose at a chamber pressure, Pa. */
    double meanAtChamberPa(double chamberPa) {
        // Start from the root with the molecular term held at its low-pressure value: a quadratic in x = pp - pu,
        // in the form of its root that does not cancel.
        double drop = chamberPa - ultimatePa;
        double a = viscousPerPa / 2;
        double b = viscousPerPa * ultimatePa + molecularM3PerS + speedM3PerS;
        double c = a * (chamberPa + ultimatePa) * drop + molecularM3PerS * drop;
        double inletRisePa = 2 * c / (b + Math.sqrt(Math.max(0, b * b + 4 * a * c)));
        double meanPa = (chamberPa + ultimatePa + inletRisePa) / 2;
        for (int step = 0; step < MOST_STEPS; step++) {
            double changePa = (chamberPa - chamberPa(meanPa)) / chamberSlope(meanPa);
            meanPa += changePa;
            if (Math.abs(changePa) <= ROUNDING * meanPa) {
                break;
            }
        }
        return meanPa;
    }

    /** Mean pressure in the hose at a steady gas flow, Pa. */
    double meanAtThroughput(double flowPaM3PerS) {
        if (flowPaM3PerS == 0) {
            return ultimatePa;
        }
        // The pump's inlet sits at pu + Q/S; the pressure drop along the hose is a quadratic with the molecular term
        // held.
        double inletPa = ultimatePa + flowPaM3PerS / speedM3PerS;
        double b = viscousPerPa * inletPa + molecularM3PerS;
        double dropPa = 2 * flowPaM3PerS / (b + Math.sqrt(b * b + 2 * viscousPerPa * flowPaM3PerS));
        double meanPa = inletPa + dropPa / 2;
        for (int step = 0; step < MOST_STEPS; step++) {
            double slope = speedM3PerS * inletSlope(meanPa);
            double changePa = (flowPaM3PerS - throughputPaM3PerS(meanPa)) / slope;
            meanPa += changePa;
            if (Math.abs(changePa) <= ROUNDING * meanPa) {
                break;
            }
        }
        return meanPa;
    }

    /** Smallest change of the mean pressure over which the conductance changes by its own size, Pa. */
    double scaleOfChangePa(double meanPa) {
        return meanPa + Math.min(1 / lowerPerPa, molecularM3PerS / viscousPerPa);
    }

    private double inletSlope(double meanPa) {
        double lower = 1 + lowerPerPa * meanPa;
        double conductance = viscousPerPa * meanPa + molecularM3PerS * (1 + upperPerPa * meanPa) / lower;
        double conductanceSlope = viscousPerPa - fallPerPa / (lower * lower);
        double sum = speedM3PerS + 2 * conductance;
        return 2 * (conductance + conductanceSlope * speedM3PerS * (meanPa - ultimatePa) / sum) / sum;
    }
}
