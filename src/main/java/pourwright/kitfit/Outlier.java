package pourwright.kitfit;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * Finds one reading that does not belong to the others: a slip of the eye or of the pen.
 *
 * <p>Each of the readings that fit worst is left out in turn. The externally studentized residual is held against
 * Student's t at 1 % over all readings (Bonferroni); source: Cook and Weisberg, Residuals and Influence in Regression,
 * 1982. With few readings that test has little power, so a reading also goes when the rest then fits as well as the gauge
 * can be read and the one lies five of its errors off.
 */
final class Outlier {

    private static final double FALSE_ALARM = 0.01;

    /** Fewer readings than this plus the parameters leave no way to say which one is wrong. */
    private static final int SPARE = 3;

    private static final int WORST_TRIED = 6;
    private static final double FAR_OFF = 5;
    private static final double FITS_WELL = 1.5;

    private Outlier() {}

    /**
     * The index of the odd reading, or -1.
     *
     * @param residuals  how far each reading lies off the fit to all, in its errors
     * @param chiSquare  sum of squares of a fit to a set
     * @param parameters how many numbers the fit has
     */
    static int in(ReadingSet set, double[] residuals, ToDoubleFunction<ReadingSet> chiSquare, int parameters) {
        int n = set.size();
        int degrees = n - 1 - parameters;
        if (n < parameters + SPARE) {
            return -1;
        }
        double all = chiSquare.applyAsDouble(set);
        int odd = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i : candidates(residuals)) {
            double rest = chiSquare.applyAsDouble(set.without(i));
            if (rest < least) {
                least = rest;
                odd = i;
            }
        }
        double gain = all - least;
        double t = StudentT.twoSided(1 - FALSE_ALARM / n, degrees);
        boolean stands = gain * degrees > t * t * least && gain > t;
        boolean alone = gain > FAR_OFF * FAR_OFF && least < FITS_WELL * degrees;
        return stands || alone ? odd : -1;
    }

    private static Set<Integer> candidates(double[] residuals) {
        Set<Integer> tried = new TreeSet<>();
        // The ends pull a curve to themselves, so their residuals can look small.
        tried.add(0);
        tried.add(residuals.length - 1);
        boolean[] taken = new boolean[residuals.length];
        for (int turn = 0; turn < WORST_TRIED; turn++) {
            int worst = 0;
            for (int i = 0; i < residuals.length; i++) {
                if (!taken[i] && (taken[worst] || Math.abs(residuals[i]) > Math.abs(residuals[worst]))) {
                    worst = i;
                }
            }
            taken[worst] = true;
            tried.add(worst);
        }
        return tried;
    }
}
