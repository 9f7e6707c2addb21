package pourwright.degas;

import java.util.ArrayList;
import java.util.List;

/** The course of a degas as it is followed, and the moments in it, with the same marks as {@code FrothCourse}. */
final class Trace {

    private static final double FIRST_RISE = 0.2;
    private static final double CREST_BAND = 0.01;
    private static final double FALL_BEGUN = 0.10;
    private static final double FALLEN = 0.25;

    private final List<DegasSample> samples = new ArrayList<>();
    private final double restM;
    private final double openS;
    private double mostRiseM;
    private double lowestPa = Double.POSITIVE_INFINITY;
    private double peakK;
    /** Samples up to here were under the pump. */
    private int pumped;

    Trace(double restM, double openS) {
        this.restM = restM;
        this.openS = openS;
    }

    void add(DegasSample sample, boolean underPump) {
        samples.add(sample);
        mostRiseM = Math.max(mostRiseM, sample.heightM() - restM);
        lowestPa = Math.min(lowestPa, sample.pressurePa());
        peakK = Math.max(peakK, sample.temperatureK());
        if (underPump) {
            pumped = samples.size();
        }
    }

    List<DegasSample> samples() {
        return samples;
    }

    double lowestPa() {
        return lowestPa;
    }

    double peakK() {
        return peakK;
    }

    double crestM() {
        return restM + mostRiseM;
    }

    double firstRiseS() {
        return firstAbove(restM * (1 + FIRST_RISE));
    }

    double crestS() {
        return mostRiseM <= 0 ? Double.POSITIVE_INFINITY : lastAbove((1 - CREST_BAND) * mostRiseM, true);
    }

    double fallBegunS() {
        return lastAbove((1 - FALL_BEGUN) * mostRiseM, false);
    }

    double fallenS() {
        return lastAbove(FALLEN * mostRiseM, false);
    }

    double firstAbove(double heightM) {
        for (int i = 1; i < pumped; i++) {
            if (samples.get(i).heightM() >= heightM) {
                return crossingS(i, heightM);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The time at which the rise last falls below a level under the pump; the fall at the release does not count. */
    private double lastAbove(double riseM, boolean stillThere) {
        if (mostRiseM <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double heightM = restM + riseM;
        int last = pumped - 1;
        if (samples.get(last).heightM() >= heightM) {
            return stillThere ? samples.get(last).timeS() - openS : Double.POSITIVE_INFINITY;
        }
        while (last > 0 && samples.get(last - 1).heightM() < heightM) {
            last--;
        }
        return last == 0 ? Double.POSITIVE_INFINITY : crossingS(last, heightM);
    }

    private double crossingS(int i, double heightM) {
        DegasSample before = samples.get(i - 1);
        DegasSample here = samples.get(i);
        double share = here.heightM() == before.heightM()
                ? 0
                : (heightM - before.heightM()) / (here.heightM() - before.heightM());
        return before.timeS() + share * (here.timeS() - before.timeS()) - openS;
    }
}
