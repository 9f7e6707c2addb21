package pourwright.physics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * How froth rises, crests and falls while a chamber is pumped out. A lumped model of one column of froth.
 *
 * <p>The gas left, n, starts at 1. The height is h0 × min(cap, 1 + φ n (p0/p - 1)); gas beyond the cap breaks at
 * once, since packed bubbles break at a gas fraction of about 0.80. Gas leaves through the top at e v per area, e the
 * gas fraction: dn/dt = -n v / height. v is the speed factor times the Stokes speed of the swollen bubble,
 * d = d0 (p0/p)^(1/3). The life of a draining film gives the same scale: viscosity / (density × g × radius) times a
 * logarithm of about 7 is the life of one layer of bubbles (scaling of Debregeas, de Gennes and Brochard-Wyart,
 * Science 279:1704, 1998; from memory). One diameter in that life is 1.29 times the Stokes speed.
 *
 * <p>Trust times within a factor of about 2. One bubble size stands for all: real mixes keep fine bubbles longer, so
 * in a slowly emptied chamber the real crest is higher than this one. For the size of a cup use {@link Froth#factor}.
 * Valid while the swollen bubble stays within {@link Bubble#STOKES_LIMIT_REYNOLDS}, so for thick mixes, about
 * 5 Pa s and more with bubbles of millimetres. Boiling, cure and gas out of solution are left out.
 */
public final class FrothCourse {

    /** Beyond this no fall is looked for, s: two hours, longer than any pull. */
    public static final double HORIZON_S = 7200;

    /** The height factor at which a person first sees the froth rise. */
    public static final double FIRST_RISE_FACTOR = 1.2;

    /** Share of the rise below the maximum that still counts as the crest: less than an eye sees. */
    private static final double CREST_BAND = 0.01;

    /** Share of the rise that is lost when the fall has begun. */
    private static final double FALL_BEGUN = 0.10;

    /** Share of the rise that is left when the froth counts as fallen. */
    private static final double FALLEN = 0.25;

    /** First step, s, and growth of the step with time: about 270 steps to 90 s, 450 to two hours. */
    private static final double FIRST_STEP_S = 0.06;
    private static final double STEP_PER_TIME = 0.01;

    /** Scale, s, on which steps grow faster still: after ten minutes mostly a slow fall is left. */
    private static final double SLOW_FROM_S = 600;

    /** At most this share of the gas leaves in one step, so thin liquids are followed too. */
    private static final double MOST_LOSS_PER_STEP = 0.1;

    /** With less gas than this left, nothing that can be seen is still to come. */
    private static final double NO_GAS_LEFT = 1e-4;

    private static final int USUAL_STEPS = 512;

    private FrothCourse() {
    }

    /**
     * What the froth starts from.
     *
     * @param depthM          height h0 of the mix before the pull, m
     * @param viscosityPaS    viscosity of the mix, Pa s
     * @param density         density of the mix, kg/m3
     * @param airFraction     air stirred in, φ, share of the volume at air pressure, 0 to 1
     * @param bubbleDiameterM diameter d0 of the bubbles at air pressure, m
     * @param airPa           absolute local air pressure p0, Pa
     * @param floorPa         absolute pressure below which the operator does not go, Pa
     * @param cap             largest height factor that holds together, 1 or more
     * @param speedFactor     rise speed over the Stokes speed: 1 for dirty bubbles to 1.5 for clean ones
     */
    public record Case(double depthM, double viscosityPaS, double density, double airFraction, double bubbleDiameterM,
            double airPa, double floorPa, double cap, double speedFactor) {

        /** @throws PhysicsException when an input is not a number, negative or out of range */
        public Case {
            Checked.positive("depth", depthM, "m");
            Checked.positive("viscosity", viscosityPaS, "Pa s");
            Checked.positive("liquid density", density, "kg/m3");
            Checked.within("air fraction", airFraction, 0, 1, "");
            Checked.positive("bubble diameter", bubbleDiameterM, "m");
            Checked.positive("air pressure", airPa, "Pa absolute");
            Checked.positive("lowest pressure to go to", floorPa, "Pa absolute");
            Froth.checkedFactor("largest froth factor", cap);
            Checked.positive("speed factor", speedFactor, "");
        }
    }

    /**
     * What the froth does; times count from the opening of the pump valve.
     *
     * @param firstRiseS     time at which the height passes 1.2 times the mix, s; infinite if it never does
     * @param crestS         last time within 1 % of the largest rise, s; infinite without any rise; two hours if the
     *                       froth still stands there then
     * @param crestFactor    largest height over the height of the mix
     * @param fallBegunS     time at which 10 % of the rise is lost again, s; infinite if not within two hours
     * @param fallenS        time at which a quarter of the rise is left, s; infinite if not within two hours
     * @param gasLeftAtFallen share of the gas that is left then (or at two hours), 0 to 1
     */
    public record Course(double firstRiseS, double crestS, double crestFactor, double fallBegunS, double fallenS,
            double gasLeftAtFallen) {
    }

    /**
     * Follows the froth from the opening of the pump valve until it has fallen, two hours at most.
     * If a chamber is emptied in stages, the course ends when the first froth has fallen.
     *
     * @param start    what the froth starts from
     * @param pressure absolute chamber pressure, Pa, as a function of time since the valve was opened, s
     * @return the course
     * @throws PhysicsException when the pressure is not a number above zero at some time
     */
    public static Course of(Case start, DoubleUnaryOperator pressure) {
        return of(start, pressure, 1);
    }

    /** The same with every step multiplied, so that a test can halve it. */
    static Course of(Case start, DoubleUnaryOperator pressure, double stepScale) {
        Trace trace = new Trace();
        // Plain second-order steps (Heun) by hand: a library integrator with event search costs ten times the time.
        double timeS = 0;
        double pressurePa = chamberPa(start, pressure, 0);
        double gas = keptUnderCap(start, pressurePa, 1);
        double factor = factor(start, pressurePa, gas);
        double speed = start.speedFactor
                * Bubble.stokesRiseMPerS(start.bubbleDiameterM, start.density, 0, start.viscosityPaS);
        double lossPerS = speed * swell(start, pressurePa) / (start.depthM * factor);
        trace.add(timeS, factor, gas);
        while (timeS < HORIZON_S && gas > NO_GAS_LEFT && !trace.fallen()) {
            double usualStepS = FIRST_STEP_S + STEP_PER_TIME * timeS * (1 + timeS / SLOW_FROM_S);
            double stepS = stepScale * Math.min(usualStepS, MOST_LOSS_PER_STEP / lossPerS);
            timeS = Math.min(timeS + stepS, HORIZON_S);
            stepS = timeS - trace.lastTimeS();
            pressurePa = chamberPa(start, pressure, timeS);
            double speedNow = speed * swell(start, pressurePa) / start.depthM;
            double guess = keptUnderCap(start, pressurePa, gas / (1 + lossPerS * stepS));
            double lossAtEnd = speedNow / factor(start, pressurePa, guess);
            gas = keptUnderCap(start, pressurePa, gas * Math.exp(-(lossPerS + lossAtEnd) / 2 * stepS));
            factor = factor(start, pressurePa, gas);
            lossPerS = speedNow / factor;
            trace.add(timeS, factor, gas);
        }
        return trace.course();
    }

    private static double chamberPa(Case start, DoubleUnaryOperator pressure, double timeS) {
        double pressurePa = Checked.positive("chamber pressure", pressure.applyAsDouble(timeS), "Pa absolute");
        return Math.min(start.airPa, Math.max(start.floorPa, pressurePa));
    }

    private static double factor(Case start, double pressurePa, double gas) {
        return 1 + start.airFraction * gas * (start.airPa / pressurePa - 1);
    }

    /** The gas that the packed froth can hold at this pressure; what is beyond breaks at once. */
    private static double keptUnderCap(Case start, double pressurePa, double gas) {
        double risePerGas = start.airFraction * (start.airPa / pressurePa - 1);
        return gas * risePerGas > start.cap - 1 ? (start.cap - 1) / risePerGas : gas;
    }

    /** Rise speed over that at air pressure: the square of the swelling in diameter. */
    private static double swell(Case start, double pressurePa) {
        double inDiameter = Math.cbrt(start.airPa / pressurePa);
        return inDiameter * inDiameter;
    }

    /** The heights passed so far. */
    private static final class Trace {
        private double[] times = new double[USUAL_STEPS];
        private double[] rises = new double[USUAL_STEPS];
        private double[] gases = new double[USUAL_STEPS];
        private int count;
        private double most;

        private void add(double timeS, double factor, double gas) {
            if (count == times.length) {
                times = Arrays.copyOf(times, 2 * count);
                rises = Arrays.copyOf(rises, 2 * count);
                gases = Arrays.copyOf(gases, 2 * count);
            }
            times[count] = timeS;
            rises[count] = factor - 1;
            gases[count] = gas;
            most = Math.max(most, factor - 1);
            count++;
        }

        private double lastTimeS() {
            return times[count - 1];
        }

        private boolean fallen() {
            return most > 0 && rises[count - 1] < FALLEN * most;
        }

        private Course course() {
            double gasAtEnd = gases[count - 1];
            double never = Double.POSITIVE_INFINITY;
            if (most == 0) {
                return new Course(never, never, 1, never, never, gasAtEnd);
            }
            double fallenS = fallen() ? crossing(count - 1, FALLEN * most) : never;
            if (fallen()) {
                double share = (fallenS - times[count - 2]) / (times[count - 1] - times[count - 2]);
                gasAtEnd = gases[count - 2] + share * (gases[count - 1] - gases[count - 2]);
            }
            return new Course(firstAbove(FIRST_RISE_FACTOR - 1), lastAbove((1 - CREST_BAND) * most, lastTimeS()),
                    1 + most, lastAbove((1 - FALL_BEGUN) * most, never), fallenS, gasAtEnd);
        }

        private double firstAbove(double rise) {
            for (int i = 1; i < count; i++) {
                if (rises[i] >= rise) {
                    return crossing(i, rise);
                }
            }
            return Double.POSITIVE_INFINITY;
        }

        /** The time at which the rise last falls below a level, or what to say when it still stands above it. */
        private double lastAbove(double rise, double ifStillThere) {
            if (rises[count - 1] >= rise) {
                return ifStillThere;
            }
            int last = count - 1;
            while (rises[last - 1] < rise) {
                last--;
            }
            return crossing(last, rise);
        }

        /** The time between step i - 1 and step i at which the rise passes a level, on a straight line. */
        private double crossing(int i, double rise) {
            double share = (rise - rises[i - 1]) / (rises[i] - rises[i - 1]);
            return times[i - 1] + share * (times[i] - times[i - 1]);
        }
    }
}
