package pourwright.kitfit;

import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.PumpLine;
import pourwright.physics.Require;
import pourwright.physics.VacuumLine;

/**
 * What explains the base pressure and the speed of a kit: pump, hose, leak, or gas from inside.
 *
 * <p>At the base the pump takes away what comes in, so pb = pu + Q/S with S at the chamber. The part Q/S of the leak and
 * the rated pu of the pump are taken from it; what remains comes from outgassing, vapour or a pump below its rating.
 * Source: steady state of the evacuation with gas load (Ryans and Roper, 1986). The expected speed is that of the rated
 * pump through its hose, {@link PumpLine#effectiveSpeedM3PerS}. Shares are plain numbers: what counts as too much is not
 * decided here.
 *
 * @param basePa             base pressure, Pa absolute
 * @param leakPartPa         part of it that the leak explains, Q/S, Pa
 * @param gasPartPa          part that outgassing or vapour explains, Pa: the rest of the gas at the start of the rise
 *                           test; unknown when that test does not split it
 * @param pumpPartPa         rated ultimate pressure of the pump, Pa
 * @param unexplainedPa      what remains, Pa; its interval may reach below zero, and then nothing remains for sure
 * @param expectedSpeedM3PerS speed of the rated pump through its hose at the middle of the fall, m3/s
 * @param hoseShare          expected speed over the rated speed of the pump, 0 to 1
 * @param speedShare         effective over expected speed; near 1 for a sound pump
 * @param lateOverEarly      speed over the lower half of the fall over that of the upper half; unknown where not read
 * @param main               the largest of the parts of the base pressure
 * @param mainIsSure         whether that part is larger than every other beyond the intervals
 */
public record KitState(
        Fitted basePa,
        Fitted leakPartPa,
        Fitted gasPartPa,
        double pumpPartPa,
        Fitted unexplainedPa,
        double expectedSpeedM3PerS,
        double hoseShare,
        Fitted speedShare,
        Fitted lateOverEarly,
        Part main,
        boolean mainIsSure) {

    /** A part of the base pressure. */
    public enum Part {
        /** Gas through a leak. */
        LEAK,
        /** Gas from inside: walls, something wet, a rest of resin. */
        GAS_FROM_INSIDE,
        /** The pump's own rated limit: the kit is as good as its pump. */
        PUMP_LIMIT,
        /** Neither: a pump below its rating, or a gauge that reads high. */
        UNEXPLAINED
    }

    /**
     * Puts the two tests together.
     *
     * @param fall  the fitted pump-down; its speed and base pressure must be known
     * @param rise  the rate-of-rise test, done in the same chamber
     * @param rated the pump as rated
     * @param line  the hose, or {@link VacuumLine#NONE}
     * @return the state
     * @throws PhysicsException when something is missing or the pump-down could not be fitted
     */
    public static KitState of(PumpDownFit fall, RateOfRise rise, Pump rated, VacuumLine line) {
        Require.given("pump-down", fall);
        Require.given("rate of rise", rise);
        Require.given("pump", rated);
        Require.given("vacuum line", line);
        if (!fall.speedM3PerS().known() || !fall.basePa().known()) {
            throw new PhysicsException("The pump-down has no speed and base pressure: " + fall.verdict() + ".");
        }
        Fitted base = fall.basePa();
        Fitted leak = over(rise.leakPaM3PerS(), fall.speedM3PerS());
        Fitted allGas = over(rise.startRatePaM3PerS(), fall.speedM3PerS());
        Fitted inside = splits(rise) && leak.known() ? minus(allGas, leak) : Fitted.UNKNOWN;
        double pumpPa = Math.min(rated.ultimatePa(), base.value());
        Fitted explained = inside.known() ? allGas : leak;
        Fitted rest = explained.known() ? shifted(minusPlain(base, explained), -pumpPa) : shifted(base, -pumpPa);
        // The speed is judged where it was measured: at the middle of the fall on a logarithm of pressure.
        double lowPa = Math.max(fall.lowestPa(), Math.max(base.value(), rated.ultimatePa()) * 2);
        double middlePa = Math.sqrt(Math.max(lowPa, fall.highestPa()) * lowPa);
        Pump ideal = new Pump(rated.speedM3PerS(), 0);
        double expected = PumpLine.effectiveSpeedM3PerS(middlePa, ideal, line);
        double[] parts = {value(leak), value(inside), pumpPa, value(rest)};
        int main = 0;
        for (int i = 1; i < parts.length; i++) {
            main = parts[i] > parts[main] ? i : main;
        }
        return new KitState(
                base,
                leak,
                inside,
                pumpPa,
                rest,
                expected,
                expected / rated.speedM3PerS(),
                fall.speedM3PerS().times(1 / expected),
                over(fall.lateSpeedM3PerS(), fall.earlySpeedM3PerS()),
                Part.values()[main],
                sure(main, leak, inside, pumpPa, rest));
    }

    private static boolean splits(RateOfRise rise) {
        return switch (rise.verdict()) {
            case LEAK, BOTH, OUTGASSING -> true;
            default -> false;
        };
    }

    private static boolean sure(int main, Fitted leak, Fitted inside, double pumpPa, Fitted rest) {
        Fitted pump = new Fitted(pumpPa, 0, pumpPa, pumpPa);
        Fitted[] parts = {leak, inside, pump, rest};
        for (int i = 0; i < parts.length; i++) {
            // A part that no test told could be the larger one.
            if (i != main && !(parts[i].high() < parts[main].low())) {
                return false;
            }
        }
        return true;
    }

    private static double value(Fitted part) {
        return part.known() ? part.value() : 0;
    }

    /** A quotient of two values above zero; their errors are independent. */
    private static Fitted over(Fitted top, Fitted bottom) {
        if (!top.known() || !bottom.known()) {
            return Fitted.UNKNOWN;
        }
        double value = top.value() / bottom.value();
        double relative = bottom.standardError() / bottom.value();
        double error = Math.hypot(top.standardError() / bottom.value(), value * relative);
        double below = Math.hypot((top.value() - top.low()) / bottom.value(), value - top.value() / bottom.high());
        double above = Math.hypot((top.high() - top.value()) / bottom.value(), top.value() / bottom.low() - value);
        return new Fitted(value, error, Math.max(0, value - below), value + above);
    }

    private static Fitted minus(Fitted all, Fitted part) {
        Fitted plain = minusPlain(all, part);
        return new Fitted(
                Math.max(0, plain.value()), plain.standardError(), Math.max(0, plain.low()), Math.max(0, plain.high()));
    }

    private static Fitted minusPlain(Fitted all, Fitted part) {
        double value = all.value() - part.value();
        double below = Math.hypot(all.value() - all.low(), part.high() - part.value());
        double above = Math.hypot(all.high() - all.value(), part.value() - part.low());
        return new Fitted(value, Math.hypot(all.standardError(), part.standardError()), value - below, value + above);
    }

    private static Fitted shifted(Fitted value, double by) {
        return new Fitted(value.value() + by, value.standardError(), value.low() + by, value.high() + by);
    }
}
