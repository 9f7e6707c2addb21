package pourwright.kitfit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Synthetic readings of invented kits, with the noise of a real gauge. */
final class Kits {

    static final double AIR_PA = 101_325;

    private Kits() {}

    /** What a gauge with a share error and a step shows of a course. */
    static List<Reading> read(DoubleUnaryOperator course, double[] timesS, double share, double stepPa, long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (double timeS : timesS) {
            double shownPa = course.applyAsDouble(timeS) * (1 + share * random.nextGaussian());
            if (stepPa > 0) {
                shownPa = stepPa * Math.round(shownPa / stepPa);
            }
            readings.add(new Reading(timeS, Math.max(0, shownPa)));
        }
        return readings;
    }

    static double[] evenly(double toS, int count) {
        double[] timesS = new double[count];
        for (int i = 0; i < count; i++) {
            timesS[i] = toS * i / (count - 1);
        }
        return timesS;
    }
}
