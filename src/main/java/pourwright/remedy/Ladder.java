package pourwright.remedy;

import java.util.ArrayList;
import java.util.List;

/** Round values between what is and how far a workshop goes, the smallest change first. */
public final class Ladder {
    /** Rungs of one decade: values that people say, about a tenth apart. Common practice of round numbers. */
    private static final double[] ROUND = {
        1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9
    };

    /** Nearer than this a rung is no change. */
    private static final double SAME = 0.02;

    private Ladder() {}

    /** Values above zero, each about a tenth from the last. */
    public static List<Double> byRatio(double from, double to) {
        List<Double> rungs = new ArrayList<>();
        if (!(from > 0 && to > 0) || from == to) {
            return rungs;
        }
        boolean up = to > from;
        int least = (int) Math.floor(Math.log10(Math.min(from, to)));
        int most = (int) Math.floor(Math.log10(Math.max(from, to)));
        for (int decade = least; decade <= most; decade++) {
            for (double round : ROUND) {
                double v = scaled(round, decade);
                if (up ? v > from * (1 + SAME) && v <= to : v < from * (1 - SAME) && v >= to) {
                    rungs.add(v);
                }
            }
        }
        if (!up) {
            java.util.Collections.reverse(rungs);
        }
        return rungs;
    }

    /** Whole degrees. */
    public static List<Double> byDegree(double from, double to) {
        List<Double> rungs = new ArrayList<>();
        if (to > from) {
            for (double v = Math.floor(from) + 1; v <= to; v++) {
                rungs.add(v);
            }
        } else {
            for (double v = Math.ceil(from) - 1; v >= to; v--) {
                rungs.add(v);
            }
        }
        return rungs;
    }

    /** Times ten or over ten without the dust of binary fractions, so that a rung is written as people write it. */
    private static double scaled(double round, int decade) {
        double tenths = Math.round(round * 10);
        return decade > 0 ? tenths * Math.pow(10, decade - 1) : tenths / Math.pow(10, 1 - decade);
    }
}
