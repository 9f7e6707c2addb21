package pourwright.physics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;

/**
 * Time to pump through a hose: the integral of V dp / (T(p) - Q), written so that it is smooth.
 *
 * <p>The variable is w = ln(m - mf), with m the mean pressure in the hose and mf the one where the pump balances the gas load.
 * In w the integrand V p'(m) (m - mf) / (T - Q) has no pole, even when the target almost touches the floor.
 * It changes only where the hose or the flow regime changes, over about one unit of w.
 *
 * <p>Gauss-Legendre panels of fixed width take Hipparchus's points and weights.
 * Its adaptive integrators would repeat the whole range for a tolerance that this integrand meets at once.
 */
final class PumpedIntegral {

    /** Widest panel in w; with six points the error is below 1e-8 of the time. */
    private static final double WIDEST_PANEL = 1.0;

    private static final Rule SIX_POINTS = new Rule(6);

    /** Enough for the short steps of a table, a tenth of a panel wide. */
    private static final Rule THREE_POINTS = new Rule(3);

    private final PumpedLine pumped;
    private final double volumeM3;
    private final double floorMeanPa;
    /** +1 when the chamber is above its floor and falls, -1 when it is below and rises. */
    private final double side;

    PumpedIntegral(PumpedLine pumped, double volumeM3, double floorMeanPa, double side) {
        this.pumped = pumped;
        this.volumeM3 = volumeM3;
        this.floorMeanPa = floorMeanPa;
        this.side = side;
    }

    /** Mean pressure in the hose at a distance, given as its logarithm, from the floor, Pa. */
    double meanPa(double logDistance) {
        return floorMeanPa + side * Math.exp(logDistance);
    }

    /** Seconds for the distance from the floor to fall by one e-fold, at that distance. */
    double secondsPerEFold(double logDistance) {
        double meanPa = meanPa(logDistance);
        return volumeM3 * pumped.chamberSlope(meanPa) / pumped.flowAboveFloorPerPa(meanPa, floorMeanPa);
    }

    /** Time between two distances from the floor, given as logarithms, s. */
    double timeS(double logFar, double logNear) {
        int panels = (int) Math.max(1, Math.ceil((logFar - logNear) / WIDEST_PANEL));
        double width = (logFar - logNear) / panels;
        double sumS = 0;
        for (int panel = 0; panel < panels; panel++) {
            sumS += panelS(logNear + panel * width, width, SIX_POINTS);
        }
        return sumS;
    }

    /** Time over one step of a table, much narrower than a panel, s. */
    double shortStepS(double logFar, double logNear) {
        return panelS(logNear, logFar - logNear, THREE_POINTS);
    }

    private double panelS(double logNear, double width, Rule rule) {
        double half = width / 2;
        double middle = logNear + half;
        double sum = 0;
        for (int i = 0; i < rule.point.length; i++) {
            sum += rule.weight[i] * secondsPerEFold(middle + half * rule.point[i]);
        }
        return sum * half;
    }

    /** Points and weights of a Gauss-Legendre rule on -1 to 1, copied once so that the loop touches plain arrays. */
    private static final class Rule {
        private final double[] point;
        private final double[] weight;

        Rule(int points) {
            GaussIntegrator rule = GaussPoints.legendre(points, -1, 1);
            point = new double[points];
            weight = new double[points];
            for (int i = 0; i < points; i++) {
                point[i] = rule.getPoint(i);
                weight[i] = rule.getWeight(i);
            }
        }
    }
}
