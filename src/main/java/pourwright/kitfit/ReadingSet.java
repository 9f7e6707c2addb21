package pourwright.kitfit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Readings in order of time, counted from the first, with the error each of them has. */
final class ReadingSet {

    /**
     * Error of a gauge reading when nothing is known of the gauge, as a share of the pressure: common practice for a
     * gauge read with care. Residuals then scale it.
     */
    private static final double SHARE_ERROR = 0.01;

    /** Error of a time taken by hand, s: common practice. */
    private static final double TIME_ERROR_S = 0.5;

    /** An even spread over one step has this standard deviation, in steps: 1 over the root of 12. */
    private static final double STEP_ERROR = 1 / Math.sqrt(12);

    /** No gauge tells less than this share of the highest reading; it keeps weights finite where a reading is zero. */
    private static final double LEAST_SHARE = 1e-6;

    final double[] times;
    final double[] pressures;
    final double stepPa;
    final double startS;

    private ReadingSet(double[] times, double[] pressures, double stepPa, double startS) {
        this.times = times;
        this.pressures = pressures;
        this.stepPa = stepPa;
        this.startS = startS;
    }

    static ReadingSet of(List<Reading> readings, double gaugeStepPa) {
        List<Reading> sorted = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::timeS))
                .toList();
        double[] times = new double[sorted.size()];
        double[] pressures = new double[sorted.size()];
        double startS = sorted.isEmpty() ? 0 : sorted.get(0).timeS();
        double least = Double.POSITIVE_INFINITY;
        boolean zero = false;
        for (int i = 0; i < times.length; i++) {
            times[i] = sorted.get(i).timeS() - startS;
            pressures[i] = sorted.get(i).pressurePa();
            zero |= pressures[i] == 0;
            if (pressures[i] > 0) {
                least = Math.min(least, pressures[i]);
            }
        }
        // A gauge of unknown step that shows zero tells no less than its smallest other reading.
        boolean unknown = gaugeStepPa == 0 && zero && least < Double.POSITIVE_INFINITY;
        return new ReadingSet(times, pressures, unknown ? least : gaugeStepPa, startS);
    }

    int size() {
        return times.length;
    }

    boolean stepKnown() {
        return stepPa > 0;
    }

    /** How many different times there are: two readings at one time tell no more of a course than one. */
    int differentTimes() {
        int count = 0;
        for (int i = 0; i < times.length; i++) {
            if (i == 0 || times[i] > times[i - 1]) {
                count++;
            }
        }
        return count;
    }

    int differentPressures() {
        return (int) Arrays.stream(pressures).distinct().count();
    }

    double spanS() {
        return times[times.length - 1];
    }

    /** Standard error of a reading of this pressure, while the pressure changes at this rate. */
    double sigmaPa(double pressurePa, double ratePaPerS) {
        double step = stepPa * STEP_ERROR;
        double share = SHARE_ERROR * pressurePa;
        double timing = TIME_ERROR_S * ratePaPerS;
        double least = LEAST_SHARE * highestPa();
        return Math.sqrt(step * step + share * share + timing * timing + least * least);
    }

    /** What the steps of the gauge add to a level however often it is read, Pa. */
    double stepErrorPa() {
        return stepPa * STEP_ERROR;
    }

    double highestPa() {
        double most = 0;
        for (double p : pressures) {
            most = Math.max(most, p);
        }
        return most;
    }

    /** Middle of the first few readings, so that one wrong reading does not decide. */
    double earlyPa() {
        return middle(0, Math.max(1, Math.min(3, size() / 2)));
    }

    /** Middle of the last few readings. */
    double latePa() {
        return middle(size() - Math.max(1, Math.min(3, size() / 2)), size());
    }

    ReadingSet without(int index) {
        double[] otherTimes = new double[size() - 1];
        double[] otherPressures = new double[size() - 1];
        for (int i = 0, j = 0; i < size(); i++) {
            if (i != index) {
                otherTimes[j] = times[i];
                otherPressures[j++] = pressures[i];
            }
        }
        double shiftS = otherTimes[0];
        for (int i = 0; i < otherTimes.length; i++) {
            otherTimes[i] -= shiftS;
        }
        return new ReadingSet(otherTimes, otherPressures, stepPa, startS + shiftS);
    }

    Reading reading(int index) {
        return new Reading(startS + times[index], pressures[index]);
    }

    private double middle(int from, int to) {
        double[] some = Arrays.copyOfRange(pressures, from, to);
        Arrays.sort(some);
        return some[some.length / 2];
    }
}
