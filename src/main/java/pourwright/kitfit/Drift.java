package pourwright.kitfit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import pourwright.physics.Require;

/**
 * Whether one measured quantity of a kit drifts over the months.
 *
 * <p>The slope is the median of the slopes of all pairs, so one odd measurement does not turn it. Source: Theil, Proc. K.
 * Ned. Akad. Wet. 53, 1950; Sen, J. Am. Stat. Assoc. 63:1379, 1968, with Sen's interval. Whether it is more than chance
 * is told by Kendall's count of pairs (Rank Correlation Methods, 1948): exact without ties, else the normal curve with
 * the usual corrections. Four measurements are the fewest for which chance can fall below one in ten.
 *
 * @param verdict        what the history shows
 * @param perYear        slope, unit of the quantity per year, with a 90 % interval
 * @param chance         probability of an order at least as clear by chance alone, 0 to 1
 * @param measurements   how many there are, on different days
 */
public record Drift(Verdict verdict, Fitted perYear, double chance, int measurements) {

    /** What the history of a quantity shows. */
    public enum Verdict {
        /** Fewer than four days. */
        TOO_FEW,
        /** It gets better. */
        IMPROVING,
        /** No drift that is more than chance. */
        STEADY,
        /** It gets worse. */
        WORSE
    }

    /** Which way is good. */
    public enum Good {
        /** More is better: a pump's speed. */
        HIGH,
        /** Less is better: a base pressure or a leak. */
        LOW
    }

    /**
     * One measurement.
     *
     * @param day   day number, counted from any day
     * @param value the value, in the unit of the quantity
     */
    public record Measured(long day, double value) {

        /**
         * Checks the measurement.
         *
         * @throws pourwright.physics.PhysicsException when the value is not a number
         */
        public Measured {
            Require.finite("measured value", value, "");
        }
    }

    /** Fewest days with a measurement. */
    public static final int FEWEST = 4;

    /** A drift counts when chance makes one as clear in less than one history of ten. */
    private static final double SIGNIFICANCE = 0.10;

    private static final double DAYS_PER_YEAR = 365.25;

    /** Half-width of the interval in standard deviations of Kendall's count: 90 % of the normal curve. */
    private static final double NORMAL_90 = 1.6449;

    /**
     * The drift of a history.
     *
     * @param history the measurements, in any order
     * @param good    which way is good
     * @return the drift
     * @throws pourwright.physics.PhysicsException when something is missing
     */
    public static Drift of(List<Measured> history, Good good) {
        Require.given("history", history);
        Require.given("direction that is good", good);
        List<Measured> sorted =
                history.stream().sorted(Comparator.comparingLong(Measured::day)).toList();
        int days = (int) sorted.stream().mapToLong(Measured::day).distinct().count();
        if (days < FEWEST) {
            return new Drift(Verdict.TOO_FEW, Fitted.UNKNOWN, 1, days);
        }
        double[] slopes = pairSlopes(sorted);
        Kendall kendall = Kendall.of(sorted);
        double slope = median(slopes);
        // Sen's interval: so many pair slopes to either side of the middle as Kendall's count may be off by chance.
        double reach = NORMAL_90 * Math.sqrt(kendall.variance());
        int low = (int) Math.floor((slopes.length - reach) / 2);
        int high = (int) Math.ceil((slopes.length + reach) / 2);
        double lowSlope = slopes[Math.max(0, low)];
        double highSlope = slopes[Math.min(slopes.length - 1, high)];
        double standardError = (highSlope - lowSlope) / (2 * NORMAL_90);
        Fitted perYear = new Fitted(slope, standardError, lowSlope, highSlope).times(DAYS_PER_YEAR);
        Verdict verdict;
        if (kendall.chance() >= SIGNIFICANCE || slope == 0) {
            verdict = Verdict.STEADY;
        } else {
            verdict = slope > 0 == (good == Good.HIGH) ? Verdict.IMPROVING : Verdict.WORSE;
        }
        return new Drift(verdict, perYear, kendall.chance(), days);
    }

    private static double[] pairSlopes(List<Measured> sorted) {
        double[] slopes = new double[sorted.size() * (sorted.size() - 1) / 2];
        int count = 0;
        for (int i = 0; i < sorted.size(); i++) {
            for (int j = i + 1; j < sorted.size(); j++) {
                long days = sorted.get(j).day() - sorted.get(i).day();
                if (days > 0) {
                    slopes[count++] = (sorted.get(j).value() - sorted.get(i).value()) / days;
                }
            }
        }
        slopes = Arrays.copyOf(slopes, count);
        Arrays.sort(slopes);
        return slopes;
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
