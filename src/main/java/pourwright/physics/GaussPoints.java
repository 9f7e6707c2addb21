package pourwright.physics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.util.Pair;

/**
 * Gauss-Legendre rules. They are taken from the rule factory itself: the library's general factory also prepares
 * high-precision constants, which more than doubled the time of a first consultation.
 */
final class GaussPoints {
    private GaussPoints() {}

    /** A rule of that many points on an interval. */
    static GaussIntegrator legendre(int points, double from, double to) {
        Pair<double[], double[]> rule = new LegendreRuleFactory().getRule(points);
        double half = (to - from) / 2;
        double middle = (to + from) / 2;
        double[] at = rule.getFirst().clone();
        double[] weight = rule.getSecond().clone();
        for (int i = 0; i < points; i++) {
            at[i] = middle + half * at[i];
            weight[i] *= half;
        }
        return new GaussIntegrator(at, weight);
    }
}
