package pourwright.physics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * How froth rises, crests and falls while a chamber is pumped out: one column of froth that nothing stirs.
 *
 * <p>The gas left, n, starts at 1. The height is h0 × min(cap, 1 + A n), A = φ (p0/p - 1) by Boyle's law. A bubble
 * rises through the liquid at v: the speed factor times the Stokes speed of the swollen bubble, d = d_i (p0/p)^(1/3).
 *
 * <p>The column is not mixed. The liquid creeps (Reynolds number far below 1), so no eddies carry bubbles back down.
 * Each size starts uniform over the height and leaves from below, as a suspension of equal grains settles in a jar:
 * below its trailing front there is none of it, above it as much as ever. So a size is gone at a definite time.
 * Heights are counted as shares of the liquid, which neither swells nor leaves. Where the gas fraction is e, a front
 * passes v (1 - e)/h0 of the liquid per second, which is v/(h0 F), F = 1/(1 - e) the local swelling. With x_i the
 * share passed, dx_i/dt = v_i/(h0 F), and 1 - x_i of the size is left. Equal bubbles at constant pressure then leave
 * linearly in time, exactly. F is that of the froth and not height/h0: clear liquid below does not thin the froth.
 *
 * <p>With several sizes F is taken at the top, where the gas leaves: 1 + A × the gas of all sizes not yet gone. This
 * leaves out that fine bubbles crowd a little behind a coarse front. Following every size over the height, with no
 * such simplification, gives a crest and a fall 8 to 10 % earlier in a chamber emptied in 3 min.
 *
 * <p>Gas beyond the cap breaks at once, since packed bubbles break at a gas fraction of about 0.80. It thins each size
 * in proportion to n_i d_i²: only the top layer breaks, a bubble reaches it from one diameter below, and its film
 * lives as 1/d. So the coarse go first, but not the coarse alone. In decaying foam the large bubbles live about half
 * as long as the small ones (Ildoo Kim, Size distribution of decaying foam bubbles, arXiv:2506.18049, 2025); there,
 * all bubbles lie at the surface, so only the 1/d is left. The life of a draining film gives the scale of v too:
 * viscosity / (density × g × radius) times a logarithm of about 7 is the life of one layer of bubbles (scaling of
 * Debregeas, de Gennes and Brochard-Wyart, Science 279:1704, 1998; from memory). One diameter in that life is 1.29
 * times the Stokes speed.
 *
 * <p>Trust times within a factor of about 2. Casters expect a mix of 20 Pa s to crest in 1 to 3.5 min and to have
 * begun its fall by 4 min. With bubbles of 2.5 mm in 60 to 80 mm of it, pumped to 3 mbar, this model crests at 1.1 to
 * 1.2 min in a chamber emptied in 30 s. It is late in one emptied in 3 min: the crest is at 3.6 to 4.3 min, the fall
 * begins at 4.1 to 4.8 min. Over 10 to 40 Pa s and 1 to 4 mm, four cases in ten miss: up to 2.3 times late in the slow
 * chamber with fine bubbles, a third early in the fast one with coarse bubbles. The crest height in a slow chamber
 * hangs on the sizes and is a rough guess; for a cup use {@link Froth#factor}.
 *
 * <p>Left out: bubbles that hinder each other, the weight of the liquid, boiling, cure, gas out of solution, bubbles
 * that merge. The weight counts when the chamber nears its share, 4 mbar at half of 70 mm. Valid while the swollen
 * bubble stays within {@link Bubble#STOKES_LIMIT_REYNOLDS}, so for thick mixes, about 5 Pa s and more with bubbles of
 * millimetres. The coarsest sizes may pass it; they hold little gas, and not long.
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

    /** First step, s, and growth of the step with time: with the classes, usual times are then good to 2 percent. */
    private static final double FIRST_STEP_S = 0.05;

    private static final double STEP_PER_TIME = 0.02;

    /** Scale, s, on which steps grow faster still: after half an hour mostly a slow fall is left. */
    private static final double SLOW_FROM_S = 1800;

    /** At most this share of the gas leaves in one step, so thin liquids are followed too. */
    private static final double MOST_LOSS_PER_STEP = 0.1;

    /** With less gas than this left, nothing that can be seen is still to come. */
    private static final double NO_GAS_LEFT = 1e-4;

    private static final int USUAL_STEPS = 320;

    private FrothCourse() {}

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
    public record Case(
            double depthM,
            double viscosityPaS,
            double density,
            double airFraction,
            double bubbleDiameterM,
            double airPa,
            double floorPa,
            double cap,
            double speedFactor,
            double sizeSpread) {

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
        public Case(
                double depthM,
                double viscosityPaS,
                double density,
                double airFraction,
                double bubbleDiameterM,
                double airPa,
                double floorPa,
                double cap,
                double speedFactor) {
            this(
                    depthM,
                    viscosityPaS,
                    density,
                    airFraction,
                    bubbleDiameterM,
                    airPa,
                    floorPa,
                    cap,
                    speedFactor,
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
    public record Course(
            double firstRiseS,
            double crestS,
            double crestFactor,
            double fallBegunS,
            double fallenS,
            double gasLeftAtFallen) {}

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
        double depthsPerS = start.speedFactor
                / start.depthM
                * Bubble.stokesRiseMPerS(start.bubbleDiameterM, start.density, 0, start.viscosityPaS);
        double heightsPerS = depthsPerS * swell(start, pressurePa) / (1 + risePerGas * gas.atTop());
        trace.add(timeS, factor, gas.left());
        while (timeS < HORIZON_S && gas.left() > NO_GAS_LEFT && !trace.fallen()) {
            double usualStepS = FIRST_STEP_S + STEP_PER_TIME * timeS * (1 + timeS / SLOW_FROM_S);
            double lossPerS = heightsPerS * gas.outflowPerHeight() / gas.left();
            double stepS = stepScale * Math.min(usualStepS, MOST_LOSS_PER_STEP / lossPerS);
            timeS = Math.min(timeS + stepS, HORIZON_S);
            stepS = timeS - trace.lastTimeS();
            pressurePa = chamberPa(start, pressure, timeS);
            risePerGas = risePerGas(start, pressurePa);
            double depthsNowPerS = depthsPerS * swell(start, pressurePa);
            // The sizes at the top change little in a step, so those at its start serve for its end.
            double atEndPerS = depthsNowPerS / (1 + risePerGas * gas.atTop());
            gas.rise((heightsPerS + atEndPerS) / 2 * stepS);
            gas.breakDownTo((start.cap - 1) / risePerGas);
            factor = factor(start, risePerGas * gas.left());
            heightsPerS = depthsNowPerS / (1 + risePerGas * gas.atTop());
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
     * The gas left, by bubble size, as shares of all gas at the start. The sizes lie in even classes on the logarithm
     * of size, with the shares of a normal curve. Within a class the gas is spread evenly on that logarithm, so a class
     * goes from its coarse end on. Classes of one size each would empty with a jerk and shift the crest by a tenth.
     * Over 10 to 40 Pa s and 1 to 4 mm, against 121 classes: times good to 4 %, heights to 1 %.
     */
    static final class Gas {

        private static final int EACH_SIDE = 6;
        private static final int CLASSES = 2 * EACH_SIDE + 1;

        /** Width of a class in standard deviations. */
        private static final double WIDTH = 0.5;

        /** Part of the variance that lies between the classes; the rest is that of an even spread within each. */
        private static final double BETWEEN_CLASSES = 1 - WIDTH * WIDTH / 12;

        /** Up to this argument the short form of exp(-x) is good to 1e-8; it costs a fifth of the long one. */
        private static final double SHORT_EXP_LIMIT = 0.1;

        /** How near to the cap breaking must come, relative: far below what can be seen. */
        private static final double AT_CAP = 1e-7;

        /** Rise of a bubble over that of the median one, its diameter over the median, squared: fine end of a class. */
        private final double[] finePace = new double[CLASSES];

        private final double[] coarsePace = new double[CLASSES];
        private final double[] meanPace = new double[CLASSES];
        /** Gas of the class above its front, for a whole column of it: what has not broken. */
        private final double[] unbroken = new double[CLASSES];
        /** Natural logarithm of coarse over fine pace. */
        private final double logWidth;
        /** The classes that still hold gas; the coarse ones, at the end, empty first. */
        private int filled = unbroken.length;
        /** The classes at the fine end of which none has left, with sums of their gas, gas × pace, gas × pace². */
        private int whole;

        private double wholeGas;
        private double wholeByPace;
        private double wholeByPaceSquared;
        private double passed;
        private double atTop;
        private double outflowPerHeight;
        private double left;
        private double breakingPerLeft;

        Gas(double sizeSpread) {
            logWidth = 2 * WIDTH * Math.log(sizeSpread);
            double all = 0;
            for (int i = 0; i < unbroken.length; i++) {
                double sigmas = (i - EACH_SIDE) * WIDTH;
                finePace[i] = Math.pow(sizeSpread, 2 * sigmas - WIDTH);
                coarsePace[i] = Math.pow(sizeSpread, 2 * sigmas + WIDTH);
                meanPace[i] = logWidth == 0 ? 1 : (coarsePace[i] - finePace[i]) / logWidth;
                unbroken[i] = Math.exp(-sigmas * sigmas / (2 * BETWEEN_CLASSES));
                all += unbroken[i];
            }
            for (int i = 0; i < unbroken.length; i++) {
                unbroken[i] /= all;
            }
            sumWhole();
            measure();
        }

        /** Gas left, 0 to 1. */
        double left() {
            return left;
        }

        /** The gas if the whole column were as its top layer is, 0 to 1: only the sizes that are gone are missing. */
        double atTop() {
            return atTop;
        }

        /** Gas that leaves while the front of the median bubble passes one height of the mix, at the present mix. */
        double outflowPerHeight() {
            return outflowPerHeight;
        }

        /** Moves the fronts while that of the median bubble passes this share of the liquid. */
        void rise(double heights) {
            passed += heights;
            measure();
        }

        /** Breaks bubbles, the coarse ones faster as they rise faster, until no more gas than this is left. */
        void breakDownTo(double most) {
            // Newton on the logarithm of the gas left, which is convex: it nears the root from one side only.
            while (left > most * (1 + AT_CAP)) {
                double heights = Math.log(left / most) / breakingPerLeft;
                for (int i = 0; i < filled; i++) {
                    unbroken[i] *= decay(meanPace[i] * heights);
                }
                sumWhole();
                measure();
            }
        }

        private void sumWhole() {
            whole = filled;
            while (whole > 0 && coarsePace[whole - 1] * passed > 1) {
                whole--;
            }
            wholeGas = 0;
            wholeByPace = 0;
            wholeByPaceSquared = 0;
            for (int i = 0; i < whole; i++) {
                double byPace = unbroken[i] * meanPace[i];
                wholeGas += unbroken[i];
                wholeByPace += byPace;
                wholeByPaceSquared += byPace * meanPace[i];
            }
        }

        private void measure() {
            while (filled > 0 && finePace[filled - 1] * passed >= 1) {
                filled--;
            }
            if (whole > 0 && coarsePace[whole - 1] * passed > 1) {
                sumWhole();
            }
            double top = wholeGas;
            double outflow = wholeByPace;
            double breaking = wholeByPace - passed * wholeByPaceSquared;
            if (whole < filled) {
                // The coarse end is gone; what is left reaches up to the pace whose front is at the top now.
                double perLog = unbroken[whole] / logWidth;
                double topHere = -perLog * Math.log(finePace[whole] * passed);
                double outflowHere = perLog * (1 / passed - finePace[whole]);
                top += topHere;
                outflow += outflowHere;
                breaking += meanPace[whole] * (topHere - passed * outflowHere);
            }
            atTop = top;
            outflowPerHeight = outflow;
            left = Math.max(0, top - passed * outflow);
            breakingPerLeft = breaking / left;
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
            return new Course(
                    firstAbove(FIRST_RISE_FACTOR - 1),
                    lastAbove((1 - CREST_BAND) * most, lastTimeS()),
                    1 + most,
                    lastAbove((1 - FALL_BEGUN) * most, never),
                    fallenS,
                    gasAtEnd);
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
