package pourwright.kitfit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pourwright.physics.Require;

/**
 * Effective speed and base pressure of a kit, from readings while it pumps down.
 *
 * <p>The model is p = pb + (p1 - pb) exp(-S t / V): constant speed S at the chamber, constant gas load.
 * Source: Ryans and Roper, Process Vacuum System Design and Operation, 1986, evacuation with gas load. It is the closed
 * form of {@link pourwright.physics.PumpDown} without a hose; a hose makes S fall with pressure, which gives
 * {@link PumpDownVerdict#NOT_ONE_SPEED} when the readings show it. The clock may start at any moment of the fall.
 *
 * @param verdict                what the readings tell
 * @param speedM3PerS            effective speed at the chamber, m3/s; unknown when the readings cannot tell
 * @param basePa                 pressure the chamber tends to, Pa absolute; unknown when the readings cannot tell
 * @param gasLoadPaM3PerS        speed times base pressure, Pa m3/s: the load if the pump itself had no limit, so the most
 *                               that leak and outgassing can be
 * @param earlySpeedM3PerS       speed over the upper half of the fall, on a logarithm of pressure, m3/s
 * @param lateSpeedM3PerS        speed over the lower half, m3/s; well below the early one when a hose throttles
 * @param highestPa              highest reading used, Pa
 * @param lowestPa               lowest reading used, Pa
 * @param used                   how many readings were used
 * @param leftOut                the one reading that does not belong to the rest, if there is one
 * @param misfit                 mean square distance of readings from the fit, in their expected errors; about 1 is good
 */
public record PumpDownFit(
        PumpDownVerdict verdict,
        Fitted speedM3PerS,
        Fitted basePa,
        Fitted gasLoadPaM3PerS,
        Fitted earlySpeedM3PerS,
        Fitted lateSpeedM3PerS,
        double highestPa,
        double lowestPa,
        int used,
        Optional<Reading> leftOut,
        double misfit) {

    /** Fewest different times that give three numbers and an error. */
    public static final int FEWEST_READINGS = 4;

    private static final double CONFIDENCE = 0.95;
    private static final int PARAMETERS = 3;

    /** The weather moves the barometer by about this share (common practice). */
    private static final double WEATHER = 0.03;

    /** A fall within so many errors is none. */
    private static final double NO_FALL_SIGMAS = 4;

    /** A fall over fewer steps than this is a staircase. */
    private static final int FEWEST_STEPS = 4;

    /** A base pressure is told when its interval is no wider than itself; a speed, when the ends differ twofold at most. */
    private static final double WIDEST_BASE = 1;

    private static final double WIDEST_SPEED = 2;

    /** Mean square misfit beyond which the shape is in doubt, and the share of sign changes that chance would give. */
    private static final double BAD_MISFIT = 4;

    private static final double FEW_SIGN_CHANGES = 1.0 / 3;

    /** Turns of fitting and weighting; errors change by less than a percent after the second. */
    private static final int WEIGHTINGS = 3;

    /**
     * Fits readings from a gauge of unknown step.
     *
     * @param readings   the readings, in any order
     * @param volumeM3   volume of the chamber, m3, above zero
     * @param localAirPa local air pressure, Pa, above zero
     * @return the fit, with a verdict when the readings cannot tell
     * @throws pourwright.physics.PhysicsException when the volume or air pressure is not above zero
     */
    public static PumpDownFit of(List<Reading> readings, double volumeM3, double localAirPa) {
        return of(readings, new TestChamber(volumeM3, localAirPa, 0, TestChamber.USUAL_ROOM_K));
    }

    /**
     * Fits readings.
     *
     * @param readings the readings, in any order
     * @param chamber  the chamber and its gauge
     * @return the fit, with a verdict when the readings cannot tell
     * @throws pourwright.physics.PhysicsException when something is missing
     */
    public static PumpDownFit of(List<Reading> readings, TestChamber chamber) {
        Require.given("list of readings", readings);
        Require.given("chamber", chamber);
        ReadingSet all = ReadingSet.of(readings, chamber.gaugeStepPa());
        PumpDownVerdict refusal = refusal(all, chamber);
        if (refusal != null) {
            return refused(refusal, all, Optional.empty());
        }
        ExponentialFit first = weighted(all);
        if (first == null) {
            return refused(PumpDownVerdict.RANGE_TOO_SMALL, all, Optional.empty());
        }
        int odd = Outlier.in(all, residuals(all, first), PumpDownFit::chiSquare, PARAMETERS);
        if (odd < 0) {
            return judged(all, first, chamber, Optional.empty());
        }
        ReadingSet rest = all.without(odd);
        Optional<Reading> leftOut = Optional.of(all.reading(odd));
        refusal = refusal(rest, chamber);
        ExponentialFit second = refusal == null ? weighted(rest) : null;
        return second == null
                ? refused(refusal == null ? PumpDownVerdict.RANGE_TOO_SMALL : refusal, rest, leftOut)
                : judged(rest, second, chamber, leftOut);
    }

    private static PumpDownVerdict refusal(ReadingSet set, TestChamber chamber) {
        if (set.differentTimes() < FEWEST_READINGS) {
            return PumpDownVerdict.TOO_FEW_READINGS;
        }
        if (set.highestPa() > chamber.localAirPa() * (1 + WEATHER) + 2 * set.stepPa) {
            return PumpDownVerdict.ABOVE_LOCAL_AIR;
        }
        double fallPa = set.earlyPa() - set.latePa();
        if (fallPa <= NO_FALL_SIGMAS * set.sigmaPa(set.earlyPa(), 0)) {
            return fallPa > 0 && fallPa < FEWEST_STEPS * set.stepPa
                    ? PumpDownVerdict.GAUGE_STEPS
                    : PumpDownVerdict.DO_NOT_FALL;
        }
        if (set.differentPressures() < FEWEST_STEPS || fallPa < FEWEST_STEPS * set.stepPa || standsAndJumps(set)) {
            return PumpDownVerdict.GAUGE_STEPS;
        }
        return null;
    }

    /** A fall slows down all the way, so a gauge that stands for three readings and then drops has been stuck. */
    private static boolean standsAndJumps(ReadingSet set) {
        int from = 0;
        for (int i = 1; i < set.size(); i++) {
            if (set.pressures[i] == set.pressures[from]) {
                continue;
            }
            double stoodS = set.times[i - 1] - set.times[from];
            if (i - from >= 3 && stoodS > 0) {
                double hiddenPa = 3 * set.sigmaPa(set.pressures[from], 0) + set.stepPa;
                double dropPa = set.pressures[from] - set.pressures[i];
                if (dropPa - hiddenPa > hiddenPa * (set.times[i] - set.times[i - 1]) / stoodS) {
                    return true;
                }
            }
            from = i;
        }
        return false;
    }

    private static ExponentialFit weighted(ReadingSet set) {
        double[] sigmas = new double[set.size()];
        for (int i = 0; i < sigmas.length; i++) {
            sigmas[i] = set.sigmaPa(set.pressures[i], 0);
        }
        ExponentialFit fit = ExponentialFit.of(set.times, set.pressures, sigmas, false, 0);
        for (int turn = 1; turn < WEIGHTINGS && fit != null; turn++) {
            fit = ExponentialFit.of(set.times, set.pressures, sigmas(set, fit), false, 0);
        }
        return fit;
    }

    private static double[] sigmas(ReadingSet set, ExponentialFit fit) {
        double[] sigmas = new double[set.size()];
        for (int i = 0; i < sigmas.length; i++) {
            double pressurePa = Math.max(0, fit.valueAt(set.times[i]));
            sigmas[i] = set.sigmaPa(pressurePa, fit.ratePerS() * Math.max(0, pressurePa - fit.level()));
        }
        return sigmas;
    }

    private static double chiSquare(ReadingSet set) {
        ExponentialFit fit = weighted(set);
        return fit == null ? Double.POSITIVE_INFINITY : fit.chiSquare();
    }

    private static double[] residuals(ReadingSet set, ExponentialFit fit) {
        double[] off = sigmas(set, fit);
        for (int i = 0; i < off.length; i++) {
            off[i] = (set.pressures[i] - fit.valueAt(set.times[i])) / off[i];
        }
        return off;
    }

    private static PumpDownFit judged(
            ReadingSet set, ExponentialFit fit, TestChamber chamber, Optional<Reading> leftOut) {
        int degrees = set.size() - PARAMETERS;
        double quantile = StudentT.twoSided(CONFIDENCE, degrees);
        double misfit = fit.chiSquare() / degrees;
        // The errors are those of hand and eye, early ones mostly from timing. A good fit does not make them smaller.
        double scale = Math.max(1, misfit);
        double volumeM3 = chamber.volumeM3();
        Fitted speed = Fitted.positive(volumeM3 * fit.ratePerS(), Math.sqrt(scale * fit.logRateVariance()), quantile);
        double stepPa = set.stepErrorPa();
        Fitted base =
                Fitted.notNegative(fit.level(), Math.sqrt(scale * fit.levelVariance() + stepPa * stepPa), quantile);
        double loadError = fit.level() > 0
                ? Math.sqrt(scale * fit.levelTimesRateVariance() + stepPa * stepPa / (fit.level() * fit.level()))
                : Double.POSITIVE_INFINITY;
        double load = speed.value() * base.value();
        Fitted gasLoad = fit.level() > 0
                ? Fitted.positive(load, loadError, quantile)
                : new Fitted(0, speed.value() * base.standardError(), 0, speed.high() * base.high());
        Fitted early = speedOver(set, fit, volumeM3, true);
        Fitted late = speedOver(set, fit, volumeM3, false);
        return new PumpDownFit(
                verdict(speed, base, misfit, residuals(set, fit)),
                speed,
                base,
                gasLoad,
                early,
                late,
                set.highestPa(),
                Arrays.stream(set.pressures).min().getAsDouble(),
                set.size(),
                leftOut,
                misfit);
    }

    private static PumpDownVerdict verdict(Fitted speed, Fitted base, double misfit, double[] residuals) {
        if (!(speed.high() <= WIDEST_SPEED * speed.low())) {
            return PumpDownVerdict.SPEED_NOT_TOLD;
        }
        int changes = 0;
        for (int i = 1; i < residuals.length; i++) {
            changes += residuals[i] * residuals[i - 1] < 0 ? 1 : 0;
        }
        if (misfit > BAD_MISFIT && changes <= FEW_SIGN_CHANGES * (residuals.length - 1) + 1) {
            return PumpDownVerdict.NOT_ONE_SPEED;
        }
        return base.value() > 0 && base.high() - base.low() <= WIDEST_BASE * base.value()
                ? PumpDownVerdict.ENOUGH
                : PumpDownVerdict.RANGE_TOO_SMALL;
    }

    /** Speed from a straight line through ln(p - base), over the upper or the lower half of the fall. */
    private static Fitted speedOver(ReadingSet set, ExponentialFit fit, double volumeM3, boolean upper) {
        double[] logs = new double[set.size()];
        double[] errors = new double[set.size()];
        double[] times = new double[set.size()];
        double most = Math.log(Math.max(Double.MIN_NORMAL, fit.swing()));
        int last = 0;
        for (int i = 0; i < set.size(); i++) {
            double abovePa = set.pressures[i] - fit.level();
            double sigmaPa = set.sigmaPa(set.pressures[i], fit.ratePerS() * Math.max(0, abovePa));
            if (abovePa > 2 * sigmaPa) {
                times[last] = set.times[i];
                logs[last] = Math.log(abovePa);
                errors[last++] = sigmaPa / abovePa;
            }
        }
        if (last == 0) {
            return Fitted.UNKNOWN;
        }
        double half = (most + logs[last - 1]) / 2;
        int count = 0;
        for (int i = 0; i < last; i++) {
            if (logs[i] >= half == upper) {
                times[count] = times[i];
                logs[count] = logs[i];
                errors[count++] = errors[i];
            }
        }
        if (count < 3) {
            return Fitted.UNKNOWN;
        }
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        LinearFit line = LinearFit.of(
                new double[][] {ones, Arrays.copyOf(times, count)},
                Arrays.copyOf(logs, count),
                Arrays.copyOf(errors, count));
        if (line == null || line.parameter(1) >= 0) {
            return Fitted.UNKNOWN;
        }
        double scale = Math.max(1, line.chiSquare() / (count - 2));
        double ratePerS = -line.parameter(1);
        return Fitted.positive(
                volumeM3 * ratePerS,
                Math.sqrt(scale * line.covariance(1, 1)) / ratePerS,
                StudentT.twoSided(CONFIDENCE, count - 2));
    }

    private static PumpDownFit refused(PumpDownVerdict verdict, ReadingSet set, Optional<Reading> leftOut) {
        return new PumpDownFit(
                verdict,
                Fitted.UNKNOWN,
                Fitted.UNKNOWN,
                Fitted.UNKNOWN,
                Fitted.UNKNOWN,
                Fitted.UNKNOWN,
                set.highestPa(),
                Arrays.stream(set.pressures).min().orElse(Double.NaN),
                set.size(),
                leftOut,
                Double.NaN);
    }
}
