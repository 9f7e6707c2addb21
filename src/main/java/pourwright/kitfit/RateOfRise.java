package pourwright.kitfit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pourwright.physics.Constants;
import pourwright.physics.LeakRate;
import pourwright.physics.Require;
import pourwright.physics.VapourPressure;
import pourwright.physics.Volatile;

/**
 * What lets the pressure rise in a chamber that is shut off from its pump.
 *
 * <p>A leak lets in the same gas all the time while the pressure is below half the local air, since the flow through it is
 * then choked; so p = p1 + Q t / V. Outgassing and vapour slow down toward a level: p = p1 + D (1 - exp(-k t)). Both add.
 * Source: the rate-of-rise test of pump makers' handbooks ("Fundamentals of vacuum technology", leak detection, pressure
 * rise method; from memory). Readings above half the local air are left out.
 *
 * <p>First the bend of a parabola is judged: (slope at the start - slope at the end) / mean slope. It is 0 for a leak and
 * 2 for a curve that has gone flat. Only a rise that surely bends is split into its two parts.
 *
 * <p>Left out: gas from walls that dies away as 1/t. It looks like a level with a small leak. A second test after more
 * pumping tells: a leak stays the same, outgassing is less.
 *
 * @param verdict             what the rise comes from
 * @param leakPaM3PerS        leak, Pa m3/s; only its upper end means anything where the verdict says so
 * @param startRatePaM3PerS   all gas that comes in at the first reading, Pa m3/s
 * @param levelPa             level that the rise without its leak tends to, Pa absolute; unknown for a straight rise
 * @param timeConstantS       time in which the bent part loses 63 % of what is still to come, s
 * @param bend                bend of the rise, 0 straight, 2 gone flat
 * @param hiddenTimeConstantS outgassing slower than this would look straight in these readings, s
 * @param waterPa             vapour pressure of water at the temperature of the room, Pa
 * @param mayBeWater          whether the level may be that of water
 * @param nextReadingS        time after the first reading, s, at which one more reading would tell more
 * @param used                how many readings were used
 * @param leftOut             the one reading that does not belong to the rest, if there is one
 */
public record RateOfRise(
        RiseVerdict verdict,
        Fitted leakPaM3PerS,
        Fitted startRatePaM3PerS,
        Fitted levelPa,
        Fitted timeConstantS,
        Fitted bend,
        double hiddenTimeConstantS,
        double waterPa,
        boolean mayBeWater,
        OptionalDouble nextReadingS,
        int used,
        Optional<Reading> leftOut) {

    /** Fewest different times that show a bend and its error. */
    public static final int FEWEST_READINGS = 4;

    private static final double CONFIDENCE = 0.95;
    private static final int CURVE_PARAMETERS = 3;
    private static final int BOTH_PARAMETERS = 4;

    /** Above this share of the local air the flow through a leak is no longer choked and slows down. */
    private static final double CHOKED_SHARE = 0.5;

    private static final double NO_RISE_SIGMAS = 4;

    /** A bend below this cannot be seen by eye: the end is then at least three quarters as steep as the start. */
    private static final double STRAIGHT_BEND = 0.3;

    /** A leak below this share of all gas at the start does not matter beside the outgassing. */
    private static final double SMALL_LEAK = 0.2;

    /** A wet wall may be a kelvin off the room, which is 6 % in the vapour pressure of water. */
    private static final double WALL_SHARE = 0.06;

    /** After five time constants less than a hundredth of the bent part is left. */
    private static final double SETTLED = 5;

    private static final double SHORTEST_EXTENSION = 2;
    private static final double LONGEST_EXTENSION = 20;
    private static final double NO_RISE_EXTENSION = 4;

    /**
     * Judges readings from a gauge of unknown step in a room of 20 °C at sea level.
     *
     * @param readings the readings, in any order
     * @param volumeM3 volume of the closed chamber, m3, above zero
     * @return what they tell
     * @throws pourwright.physics.PhysicsException when the volume is not above zero
     */
    public static RateOfRise of(List<Reading> readings, double volumeM3) {
        return of(readings, new TestChamber(volumeM3, Constants.STANDARD_ATMOSPHERE_PA, 0, TestChamber.USUAL_ROOM_K));
    }

    /**
     * Judges readings.
     *
     * @param readings the readings, in any order
     * @param chamber  the chamber, its gauge and its room
     * @return what they tell
     * @throws pourwright.physics.PhysicsException when something is missing, or water has no vapour pressure at the
     *                                             temperature of the room
     */
    public static RateOfRise of(List<Reading> readings, TestChamber chamber) {
        Require.given("list of readings", readings);
        Require.given("chamber", chamber);
        double waterPa = VapourPressure.saturationPa(Volatile.WATER, chamber.roomK());
        List<Reading> choked = readings.stream()
                .filter(r -> r.pressurePa() <= CHOKED_SHARE * chamber.localAirPa())
                .toList();
        ReadingSet all = ReadingSet.of(choked, chamber.gaugeStepPa());
        if (all.differentTimes() < FEWEST_READINGS) {
            return new Judge(all, chamber.volumeM3(), waterPa, Optional.empty()).nothing(RiseVerdict.TOO_FEW_READINGS);
        }
        ExponentialFit curve = curve(all);
        if (curve != null && all.highestPa() - all.pressures[0] > 0) {
            double[] residuals = new double[all.size()];
            for (int i = 0; i < residuals.length; i++) {
                residuals[i] = (all.pressures[i] - curve.valueAt(all.times[i])) / all.sigmaPa(all.pressures[i], 0);
            }
            int odd = Outlier.in(all, residuals, RateOfRise::chiSquare, CURVE_PARAMETERS);
            if (odd >= 0) {
                ReadingSet rest = all.without(odd);
                return new Judge(rest, chamber.volumeM3(), waterPa, Optional.of(all.reading(odd))).judged();
            }
        }
        return new Judge(all, chamber.volumeM3(), waterPa, Optional.empty()).judged();
    }

    private static ExponentialFit curve(ReadingSet set) {
        return ExponentialFit.of(set.times, set.pressures, sigmas(set), false, Double.NEGATIVE_INFINITY);
    }

    private static double chiSquare(ReadingSet set) {
        ExponentialFit fit = curve(set);
        return fit == null ? Double.POSITIVE_INFINITY : fit.chiSquare();
    }

    /** Errors of the readings; the timing counts with the mean rate of rise, which is near enough for weights. */
    private static double[] sigmas(ReadingSet set) {
        double ratePaPerS = Math.abs(set.latePa() - set.earlyPa()) / set.spanS();
        double[] sigmas = new double[set.size()];
        for (int i = 0; i < sigmas.length; i++) {
            // One line, not each reading, gives the size of the error, or low readings would count too much.
            double smoothPa = set.earlyPa() + (set.latePa() - set.earlyPa()) * set.times[i] / set.spanS();
            sigmas[i] = set.sigmaPa(Math.max(0, smoothPa), ratePaPerS);
        }
        return sigmas;
    }

    /** The judging of one set of readings. */
    private static final class Judge {
        private final ReadingSet set;
        private final double volumeM3;
        private final double waterPa;
        private final Optional<Reading> leftOut;

        Judge(ReadingSet set, double volumeM3, double waterPa, Optional<Reading> leftOut) {
            this.set = set;
            this.volumeM3 = volumeM3;
            this.waterPa = waterPa;
            this.leftOut = leftOut;
        }

        RateOfRise nothing(RiseVerdict verdict) {
            return result(
                    verdict,
                    Fitted.UNKNOWN,
                    Fitted.UNKNOWN,
                    Fitted.UNKNOWN,
                    Fitted.UNKNOWN,
                    Fitted.UNKNOWN,
                    OptionalDouble.empty());
        }

        RateOfRise judged() {
            if (set.differentTimes() < FEWEST_READINGS) {
                return nothing(RiseVerdict.TOO_FEW_READINGS);
            }
            double[] sigmas = sigmas(set);
            Fitted straight = straightPaM3PerS(sigmas);
            double risePa = set.latePa() - set.earlyPa();
            if (Math.abs(risePa) <= NO_RISE_SIGMAS * set.sigmaPa(set.latePa(), 0)) {
                return result(
                        RiseVerdict.NO_RISE_SEEN,
                        straight,
                        straight,
                        Fitted.UNKNOWN,
                        Fitted.UNKNOWN,
                        Fitted.UNKNOWN,
                        OptionalDouble.of(NO_RISE_EXTENSION * set.spanS()));
            }
            if (risePa < 0) {
                return nothing(RiseVerdict.FALLS);
            }
            Fitted bend = bend(sigmas);
            if (bend.high() < 0) {
                return result(
                        RiseVerdict.STEEPENS,
                        Fitted.UNKNOWN,
                        straight,
                        Fitted.UNKNOWN,
                        Fitted.UNKNOWN,
                        bend,
                        OptionalDouble.empty());
            }
            if (bend.low() > 0) {
                return bent(sigmas, bend);
            }
            if (bend.high() < STRAIGHT_BEND) {
                return result(
                        RiseVerdict.LEAK,
                        straight,
                        straight,
                        Fitted.UNKNOWN,
                        Fitted.UNKNOWN,
                        bend,
                        OptionalDouble.empty());
            }
            double longer = (bend.high() - bend.low()) / STRAIGHT_BEND;
            double factor = Math.min(LONGEST_EXTENSION, Math.max(SHORTEST_EXTENSION, longer));
            return result(
                    RiseVerdict.CANNOT_TELL,
                    new Fitted(straight.value(), straight.standardError(), 0, straight.high()),
                    straight,
                    Fitted.UNKNOWN,
                    Fitted.UNKNOWN,
                    bend,
                    OptionalDouble.of(factor * set.spanS()));
        }

        private Fitted straightPaM3PerS(double[] sigmas) {
            double[] ones = new double[set.size()];
            Arrays.fill(ones, 1);
            LinearFit line = LinearFit.of(new double[][] {ones, set.times}, set.pressures, sigmas);
            int degrees = set.size() - 2;
            return gasRate(
                    line.parameter(1),
                    Math.sqrt(scale(line.chiSquare(), degrees) * line.covariance(1, 1)),
                    StudentT.twoSided(CONFIDENCE, degrees));
        }

        /** Bend of a parabola over the span, with the error of its middle slope carried along. */
        private Fitted bend(double[] sigmas) {
            double[] ones = new double[set.size()];
            double[] shares = new double[set.size()];
            double[] squares = new double[set.size()];
            for (int i = 0; i < shares.length; i++) {
                ones[i] = 1;
                shares[i] = set.times[i] / set.spanS();
                squares[i] = shares[i] * (1 - shares[i]);
            }
            // p = a + m u + h u (1 - u): m is the mean slope, and h the difference of slopes over two.
            LinearFit curve = LinearFit.of(new double[][] {ones, shares, squares}, set.pressures, sigmas);
            double mean = curve.parameter(1);
            double value = 2 * curve.parameter(2) / mean;
            int degrees = set.size() - CURVE_PARAMETERS;
            double variance = 4 * curve.covariance(2, 2)
                    - 4 * value * curve.covariance(1, 2)
                    + value * value * curve.covariance(1, 1);
            double error = Math.sqrt(scale(curve.chiSquare(), degrees) * variance) / mean;
            double quantile = StudentT.twoSided(CONFIDENCE, degrees);
            return new Fitted(value, error, value - quantile * error, value + quantile * error);
        }

        private RateOfRise bent(double[] sigmas, Fitted bend) {
            ExponentialFit curve = curve(set);
            if (curve == null) {
                return nothing(RiseVerdict.CANNOT_TELL);
            }
            int degrees = set.size() - CURVE_PARAMETERS;
            double curveScale = scale(curve.chiSquare(), degrees);
            double quantile = StudentT.twoSided(CONFIDENCE, degrees);
            Fitted level = new Fitted(
                    curve.level(),
                    Math.sqrt(curveScale * curve.levelVariance()),
                    curve.level() - quantile * Math.sqrt(curveScale * curve.levelVariance()),
                    curve.level() + quantile * Math.sqrt(curveScale * curve.levelVariance()));
            Fitted time =
                    Fitted.positive(1 / curve.ratePerS(), Math.sqrt(curveScale * curve.logRateVariance()), quantile);
            double startSlope = -curve.swing() * curve.ratePerS();
            double endSlope = startSlope * Math.exp(-curve.ratePerS() * set.spanS());
            Fitted start = gasRate(startSlope, startSlope * bend.standardError() / 2, quantile);
            OptionalDouble next =
                    OptionalDouble.of(Math.max(SHORTEST_EXTENSION * set.spanS(), SETTLED / curve.ratePerS()));
            ExponentialFit both = set.differentTimes() < BOTH_PARAMETERS + 2
                    ? null
                    : ExponentialFit.of(set.times, set.pressures, sigmas, true, Double.NEGATIVE_INFINITY);
            if (both == null || both.slopeVariance() == Double.POSITIVE_INFINITY || both.swing() >= 0) {
                // A leak is never steeper than the end of the rise.
                Fitted most =
                        new Fitted(0, Double.POSITIVE_INFINITY, 0, paM3PerS(endSlope) + start.high() - start.value());
                return result(RiseVerdict.BENDS_LEAK_NOT_TOLD, most, start, level, time, bend, next);
            }
            int bothDegrees = set.size() - BOTH_PARAMETERS;
            double bothScale = scale(both.chiSquare(), bothDegrees);
            double bothQuantile = StudentT.twoSided(CONFIDENCE, bothDegrees);
            Fitted leak = gasRate(both.slope(), Math.sqrt(bothScale * both.slopeVariance()), bothQuantile);
            double bothStart = both.slope() - both.swing() * both.ratePerS();
            if (leak.low() > 0) {
                double levelError = Math.sqrt(bothScale * both.levelVariance());
                return result(
                        RiseVerdict.BOTH,
                        leak,
                        gasRate(bothStart, bothStart * bend.standardError() / 2, bothQuantile),
                        new Fitted(
                                both.level(),
                                levelError,
                                both.level() - bothQuantile * levelError,
                                both.level() + bothQuantile * levelError),
                        Fitted.positive(
                                1 / both.ratePerS(), Math.sqrt(bothScale * both.logRateVariance()), bothQuantile),
                        bend,
                        OptionalDouble.empty());
            }
            boolean small = leak.high() < SMALL_LEAK * start.value();
            return result(
                    small ? RiseVerdict.OUTGASSING : RiseVerdict.BENDS_LEAK_NOT_TOLD,
                    leak,
                    start,
                    level,
                    time,
                    bend,
                    small ? OptionalDouble.empty() : next);
        }

        /** Factor on the squared errors: a known step is only widened; else the readings tell, if there are enough. */
        private double scale(double chiSquare, int degrees) {
            double misfit = chiSquare / degrees;
            return set.stepKnown() || degrees < CURVE_PARAMETERS ? Math.max(1, misfit) : misfit;
        }

        private Fitted gasRate(double slopePaPerS, double errorPaPerS, double quantile) {
            double value = Math.max(0, slopePaPerS);
            double high = Math.max(value, slopePaPerS + quantile * errorPaPerS);
            double low = Math.max(0, slopePaPerS - quantile * errorPaPerS);
            return new Fitted(paM3PerS(value), paM3PerS(errorPaPerS), paM3PerS(low), paM3PerS(high));
        }

        private double paM3PerS(double slopePaPerS) {
            return LeakRate.paM3PerS(volumeM3, slopePaPerS, 1);
        }

        private RateOfRise result(
                RiseVerdict verdict,
                Fitted leak,
                Fitted start,
                Fitted level,
                Fitted time,
                Fitted bend,
                OptionalDouble next) {
            // A bend as large as the interval is wide can hide, also where chance has put the middle below zero.
            double hiddenBend = Math.max(bend.high(), (bend.high() - bend.low()) / 2);
            double hiddenS = bend.known() && hiddenBend > 0 ? set.spanS() / hiddenBend : Double.NaN;
            boolean water = level.known()
                    && level.low() <= waterPa * (1 + WALL_SHARE)
                    && level.high() >= waterPa * (1 - WALL_SHARE);
            return new RateOfRise(
                    verdict, leak, start, level, time, bend, hiddenS, waterPa, water, next, set.size(), leftOut);
        }
    }
}
