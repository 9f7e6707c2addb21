package pourwright.physics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * How froth rises, crests and falls while a chamber is pumped out. A lumped model of one column of froth.
 *
 * <p>The gas left, n, starts at 1. The height is h0 × min(cap, 1 + φ n (p0/p - 1)); gas beyond the cap breaks at
 * once, since packed bubbles break at a gas fraction of about 0.80. Bubbles of each size leave through the top at e v
 * per area, e their own gas fraction: dn_i/dt = -n_i v_i / height. v_i is the speed factor times the Stokes speed of
 * the swollen bubble, d = d_i (p0/p)^(1/3). The life of a draining film gives the same scale: viscosity / (density ×
 * g × radius) times a logarithm of about 7 is the life of one layer of bubbles (scaling of Debregeas, de Gennes and
 * Brochard-Wyart, Science 279:1704, 1998; from memory). One diameter in that life is 1.29 times the Stokes speed.
 *
 * <p>Sizes: the volume of gas is spread log-normally about the volume median, in seven classes. At the cap bubbles
 * break in the mix in which they leave anyway, as n_i d_i²: only the top layer breaks. A bubble reaches that layer
 * from one diameter below, and its film lives as 1/d. So the coarse go first, but not the coarse alone. In decaying
 * foam the large bubbles live about half as long as the small ones (Ildoo Kim, Size distribution of decaying foam
 * bubbles, arXiv:2506.18049, 2025); there, all bubbles lie at the surface, so only the 1/d is left.
 *
 * <p>Trust times within a factor of about 2. Casters expect a mix of 20 Pa s to crest in 1 to 3.5 min and to have
 * begun its fall by 4 min. With bubbles of 2.5 mm in 60 to 80 mm of it, pumped to 3 mbar, this model crests at 1.2 min
 * in a chamber emptied in 30 s. It is late in one emptied in 3 min: the crest is at 4.5 to 5 min, the fall begins at
 * 5 to 5.5 min. Over 10 to 40 Pa s and 1 to 4 mm, half the cases miss: up to 2.6 times late in the slow chamber with
 * fine bubbles, a fifth early in the fast one with coarse bubbles. The likely cause: each size is held well mixed over
 * the height, so the last of it lingers. A column that never mixes would crest at 3.4 min in the slow chamber (70 mm).
 * The crest height in a slow chamber hangs on the sizes and is a rough guess; for a cup use {@link Froth#factor}.
 *
 * <p>Left out: the weight of the liquid, boiling, cure, gas out of solution, bubbles that merge. The weight counts when
 * the chamber nears its share, 4 mbar at half of 70 mm: it lowers a slow crest by a tenth and brings it a tenth
 * sooner. Valid while the swollen bubble stays within {@link Bubble#STOKES_LIMIT_REYNOLDS}, so for thick mixes, about
 * 5 Pa s and more with bubbles of millimetres. The coarsest classes may pass it; they hold little gas, and not long.
 */
public final class FrothCourse {

    /** Beyond this no fall is looked for, s: two hours, longer than any pull. */
    public static final double HORIZON_S = 7200;

    /** The height factor at which a person first sees the froth rise. */
    public static final double FIRST_RISE_FACTOR = 1.2;

    /**
     * Geometric standard deviation of the bubble sizes as usual: bubbles stirred into a thick liquid spread over about
     * a factor of three to either side of the median. Source: from memory.
     */
    public static final double TYPICAL_SIZE_SPREAD = 1.8;

    /** Spread beyond which the classes of size no longer stand for the whole. */
    private static final double MOST_SPREAD = 2;

    /** Share of the rise below the maximum that still counts as the crest: less than an eye sees. */
    private static final double CREST_BAND = 0.01;

    /** Share of the rise that is lost when the fall has begun. */
    private static final double FALL_BEGUN = 0.10;

    /** Share of the rise that is left when the froth counts as fallen. */
    private static final double FALLEN = 0.25;

    /** First step, s, and growth of the step with time: usual times and heights are then good to half a percent. */
    private static final double FIRST_STEP_S = 0.1;
    private static final double STEP_PER_TIME = 0.016;

    /** Scale, s, on which steps grow faster still: after half an hour mostly a slow fall is left. */
    private static final double SLOW_FROM_S = 1800;

    /** At most this share of the gas leaves in one step, so thin liquids are followed too. */
    private static final double MOST_LOSS_PER_STEP = 0.1;

    /** With less gas than this left, nothing that can be seen is still to come. */
    private static final double NO_GAS_LEFT = 1e-4;

    private static final int USUAL_STEPS = 320;

    private FrothCourse() {
    }

    /**
     * What the froth starts from.
     *
     * @param depthM          height h0 of the mix before the pull, m
     * @param viscosityPaS    viscosity of the mix, Pa s
     * @param density         density of the mix, kg/m3
     * @param airFraction     air stirred in, φ, share of the volume at air pressure, 0 to 1
     * @param bubbleDiameterM diameter d0 of the bubbles at air pressure, m; half the gas is in larger ones
     * @param airPa           absolute local air pressure p0, Pa
     * @param floorPa         absolute pressure below which the operator does not go, Pa
     * @param cap             largest height factor that holds together, 1 or more
     * @param speedFactor     rise speed over the Stokes speed: 1 for dirty bubbles to 1.5 for clean ones
     * @param sizeSpread      geometric standard deviation of the sizes, by volume: 1 for one size, to 2
     */
    public record Case(double depthM, double viscosityPaS, double density, double airFraction, double bubbleDiameterM,
            double airPa, double floorPa, double cap, double speedFactor, double sizeSpread) {

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
            Checked.within("spread of bubble sizes", sizeSpread, 1, MOST_SPREAD, "");
        }

        /**
         * The same with {@link #TYPICAL_SIZE_SPREAD}.
         *
         * @throws PhysicsException when an input is not a number, negative or out of range
         */
        public Case(double depthM, double viscosityPaS, double density, double airFraction, double bubbleDiameterM,
                double airPa, double floorPa, double cap, double speedFactor) {
            this(depthM, viscosityPaS, density, airFraction, bubbleDiameterM, airPa, floorPa, cap, speedFactor,
                    TYPICAL_SIZE_SPREAD);
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
        Gas gas = new Gas(start.sizeSpread);
        // Plain second-order steps (Heun) by hand: a library integrator with event search costs ten times the time.
        double timeS = 0;
        double pressurePa = chamberPa(start, pressure, 0);
        double risePerGas = risePerGas(start, pressurePa);
        gas.breakDownTo((start.cap - 1) / risePerGas);
        double factor = factor(start, risePerGas * gas.left());
        double depthsPerS = start.speedFactor / start.depthM
                * Bubble.stokesRiseMPerS(start.bubbleDiameterM, start.density, 0, start.viscosityPaS);
        double heightsPerS = depthsPerS * swell(start, pressurePa) / factor;
        trace.add(timeS, factor, gas.left());
        while (timeS < HORIZON_S && gas.left() > NO_GAS_LEFT && !trace.fallen()) {
            double usualStepS = FIRST_STEP_S + STEP_PER_TIME * timeS * (1 + timeS / SLOW_FROM_S);
            double lossPerS = heightsPerS * gas.lossPerHeight();
            double stepS = stepScale * Math.min(usualStepS, MOST_LOSS_PER_STEP / lossPerS);
            timeS = Math.min(timeS + stepS, HORIZON_S);
            stepS = timeS - trace.lastTimeS();
            pressurePa = chamberPa(start, pressure, timeS);
            risePerGas = risePerGas(start, pressurePa);
            double heightsNow = depthsPerS * swell(start, pressurePa);
            double guess = gas.left() / (1 + lossPerS * stepS);
            double heightsAtEnd = heightsNow / factor(start, risePerGas * guess);
            gas.rise((heightsPerS + heightsAtEnd) / 2 * stepS);
            gas.breakDownTo((start.cap - 1) / risePerGas);
            factor = factor(start, risePerGas * gas.left());
            heightsPerS = heightsNow / factor;
            trace.add(timeS, factor, gas.left());
        }
        return trace.course();
    }

    private static double chamberPa(Case start, DoubleUnaryOperator pressure, double timeS) {
        double pressurePa = Checked.positive("chamber pressure", pressure.applyAsDouble(timeS), "Pa absolute");
        return Math.min(start.airPa, Math.max(start.floorPa, pressurePa));
    }

    /** Rise over the height of the mix if no gas had left: Boyle's law. */
    private static double risePerGas(Case start, double pressurePa) {
        return start.airFraction * (start.airPa / pressurePa - 1);
    }

    private static double factor(Case start, double rise) {
        return Math.min(start.cap, 1 + rise);
    }

    /** Rise speed over that at air pressure: the square of the swelling in diameter. */
    private static double swell(Case start, double pressurePa) {
        double inDiameter = Math.cbrt(start.airPa / pressurePa);
        return inDiameter * inDiameter;
    }

    /**
     * The gas left in each class of bubble size, as shares of all gas at the start. Seven classes stand even steps of
     * one standard deviation apart on the logarithm of size, with the shares of a normal curve. This follows the gas
     * left to 3 % of itself until a fiftieth is left. Seven classes of equal share miss the time by 12 % where 4 % is
     * left, as at a fall.
     */
    static final class Gas {

        private static final int EACH_SIDE = 3;

        /** Up to this argument the short form of exp(-x) is good to 1e-8; it costs a fifth of the long one. */
        private static final double SHORT_EXP_LIMIT = 0.1;

        /** A class with less of the gas left than this goes at once, to save time. */
        private static final double NOTHING_LEFT = 1e-6;

        /** How near to the cap breaking must come, relative: far below what can be seen. */
        private static final double AT_CAP = 1e-7;

        /** Column heights that a class rises while the median rises one: its diameter over the median, squared. */
        private final double[] pace = new double[2 * EACH_SIDE + 1];
        private final double[] left = new double[2 * EACH_SIDE + 1];
        /** The classes that still hold gas; the coarse ones, at the end, empty first. */
        private int filled = left.length;
        private double sum;
        private double lossPerHeight;
        private double risenOut;
        private double broken;

        Gas(double sizeSpread) {
            double all = 0;
            for (int i = 0; i < left.length; i++) {
                int sigmas = i - EACH_SIDE;
                pace[i] = Math.pow(sizeSpread, 2 * sigmas);
                left[i] = Math.exp(-sigmas * sigmas / 2.0);
                all += left[i];
            }
            for (int i = 0; i < left.length; i++) {
                left[i] /= all;
            }
            leave(0);
        }

        /** Gas left, 0 to 1. */
        double left() {
            return sum;
        }

        /** Share of the gas left that leaves while the median bubble rises one column height, at the present mix. */
        double lossPerHeight() {
            return lossPerHeight;
        }

        /** Gas that has risen out so far, 0 to 1. */
        double risenOut() {
            return risenOut;
        }

        /** Gas broken at the cap so far, 0 to 1. */
        double broken() {
            return broken;
        }

        /** Lets the gas go that leaves while the median bubble rises this many column heights. */
        void rise(double heights) {
            risenOut += leave(heights);
        }

        /** Breaks bubbles, in the mix in which they leave, until no more gas than this is left. */
        void breakDownTo(double most) {
            // Newton on the logarithm of the gas left, which is convex: it nears the root from one side only.
            while (sum > most * (1 + AT_CAP)) {
                broken += leave(Math.log(sum / most) / lossPerHeight);
            }
        }

        private double leave(double heights) {
            double gone = 0;
            double newSum = 0;
            double loss = 0;
            for (int i = 0; i < filled; i++) {
                double before = left[i];
                double after = before * decay(pace[i] * heights);
                left[i] = after;
                gone += before - after;
                newSum += after;
                loss += pace[i] * after;
            }
            while (filled > 1 && left[filled - 1] < NOTHING_LEFT * newSum) {
                filled--;
                gone += left[filled];
                newSum -= left[filled];
                loss -= pace[filled] * left[filled];
                left[filled] = 0;
            }
            sum = newSum;
            lossPerHeight = loss / newSum;
            return gone;
        }

        /** exp(-x) for x of zero or more. */
        private static double decay(double x) {
            if (x > SHORT_EXP_LIMIT) {
                return Math.exp(-x);
            }
            double even = 12 + x * x;
            return (even - 6 * x) / (even + 6 * x);
        }
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
