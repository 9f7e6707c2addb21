package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class PumpDownTest {

    private static final double ATM_PA = 101_325;
    private static final double FT3_M3 = 0.3048 * 0.3048 * 0.3048;
    private static final double MIN_S = 60;
    private static final double INHG_PA = 3386.388640;
    private static final double PA_PER_MBAR = 100;
    private static final double M3_PER_L = 1e-3;

    /** The vectors for the combined model carry four digits, the longest times four. */
    private static final double VECTOR_PERCENT = 0.05;

    /** The promise of the method's description. */
    private static final double PROMISED_PERCENT = 1e-6;

    private static final double ROUNDING_PERCENT = 1e-9;

    private static double idealS(double volumeM3, double startPa, double targetPa, double speedM3PerS) {
        return PumpDown.timeS(volumeM3, startPa, targetPa, new Pump(speedM3PerS, 0), VacuumLine.NONE, 0);
    }

    @Test
    void givesThePublishedIdealTimes() {
        // 10 ft3, 1 ft3/min, 1 to 0.0001 atm: 92.1 min (92.1034 recomputed); de Nevers, Fluid Mechanics for Chemical
        // Engineers, 3rd ed. 2005, ex. 3.7.
        assertThat(idealS(10 * FT3_M3, ATM_PA, 1e-4 * ATM_PA, FT3_M3 / MIN_S) / MIN_S)
                .isCloseTo(92.1034, within(5e-5));
        // 6 ft3, 4 ft3/min, 30 to 6 inHg absolute: 2.41 min; to 0.5 inHg: 6.14 min; Esposito, Fluid Power with
        // Applications, ex. 14.6.
        double tankS = idealS(6 * FT3_M3, 30 * INHG_PA, 6 * INHG_PA, 4 * FT3_M3 / MIN_S);
        assertThat(tankS / MIN_S).isCloseTo(2.41, within(0.005));
        double deepS = idealS(6 * FT3_M3, 30 * INHG_PA, 0.5 * INHG_PA, 4 * FT3_M3 / MIN_S);
        assertThat(deepS / MIN_S).isCloseTo(6.14, within(0.005));
        // 1 m3, 0.1 m3/s, 1000 to 500 mbar 6.9 s, to 10 mbar 46 s; engineeringtoolbox, vacuum evacuation time.
        assertThat(idealS(1, 1e5, 5e4, 0.1)).isCloseTo(6.9, within(0.05));
        assertThat(idealS(1, 1e5, 1e3, 0.1)).isCloseTo(46, within(0.1));
        // Four suction cups, 0.15 m3 from 101 to 58.34 kPa in 1 min need 0.0824 m3/min; Esposito, ex. 14.7.
        assertThat(idealS(0.15, 101e3, 58.34e3, 0.0824 / MIN_S)).isCloseTo(60, within(0.1));
        // 500 L to 1 mbar in 10 min from 1013 mbar needs 20.8 m3/h; "Fundamentals of vacuum technology", ch. 2 (from
        // memory).
        assertThat(idealS(0.5, 1013e2, 100, 20.8 / 3600)).isCloseTo(600, within(2.0));
    }

    @Test
    void givesThePublishedTimesWithAnUltimatePressure() {
        // "Fundamentals of vacuum technology", nomogram fig. 9.7 (from memory). Example 1: 2000 L, 60 m3/h, 1000 to
        // 0.1 mbar, ultimate 0.03 mbar: 1100 s with a read-off error of 15 %; exact form 1148 s.
        double nomogramS = PumpDown.timeS(2, 1e5, 10, new Pump(60.0 / 3600, 3), VacuumLine.NONE, 0);
        assertThat(nomogramS).isCloseTo(1100, withinPercentage(15)).isCloseTo(1148, within(0.6));
        // Second stage: 55.5 L/s, ultimate 0.004 mbar, 20 to 0.01 mbar: 290 s.
        assertThat(PumpDown.timeS(2, 2000, 1, new Pump(0.0555, 0.4), VacuumLine.NONE, 0))
                .isCloseTo(290, withinPercentage(1));
    }

    @Test
    void givesThePublishedLeakFloor() {
        // Same tank, leak of 0.0001 lbm/min of air at 0.075 lbm/ft3: steady at 0.001333 atm; de Nevers, ex. 3.8.
        double leak = 0.0001 / 0.075 * FT3_M3 / MIN_S * ATM_PA;
        Pump pump = new Pump(FT3_M3 / MIN_S, 0);
        double floorPa = PumpDown.reachablePressurePa(pump, VacuumLine.NONE, leak, ATM_PA);
        assertThat(floorPa / ATM_PA).isCloseTo(0.001333, within(5e-7));
        assertThat(PumpDown.timeS(10 * FT3_M3, ATM_PA, 0.0013 * ATM_PA, pump, VacuumLine.NONE, leak))
                .isInfinite();
        // A load of 0.2 mbar L/s on 2 L/s adds 0.10 mbar (computed).
        assertThat(PumpDown.reachablePressurePa(new Pump(2e-3, 50), VacuumLine.NONE, 0.02, ATM_PA))
                .isCloseTo(60, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // 30 L, 2 L/s, from 1013.25 mbar, hose 150 cm: bore mm (0 none), ultimate mbar, load mbar L/s, target mbar, s.
        // Exact integrals computed independently, conductance at the MEAN of chamber and pump-inlet pressure.
        "0, 0, 0, 100, 34.74",
        "0, 0, 0, 50, 45.13",
        "0, 0, 0, 10, 69.27",
        "0, 0, 0, 1, 103.81",
        "0, 0.5, 0, 100, 34.80",
        "0, 0.5, 0, 50, 45.28",
        "0, 0.5, 0, 10, 70.04",
        "0, 0.5, 0, 1, 114.20",
        "0, 0.5, 0.2, 100, 34.82",
        "0, 0.5, 0.2, 50, 45.31",
        "0, 0.5, 0.2, 10, 70.19",
        "0, 0.5, 0.2, 1, 117.55",
        "10, 0, 0, 100, 35.04",
        "10, 0, 0, 50, 45.77",
        "10, 0, 0, 10, 72.74",
        "10, 0, 0, 1, 147.55",
        "6, 0, 0, 100, 37.16",
        "6, 0, 0, 50, 50.45",
        "6, 0, 0, 10, 103.1",
        "6, 0, 0, 1, 519.6",
        "6, 0.1, 0.05, 10, 103.575",
        "4, 0, 0, 100, 49.0",
        "4, 0, 0, 50, 78.7",
        "4, 0, 0, 10, 286.4",
        "4, 0, 0, 1, 2256"
    })
    void givesTheVectorsOfTheCombinedModel(
            double boreMm, double ultimateMbar, double loadMbarLPerS, double targetMbar, double expectedS) {
        VacuumLine line = boreMm == 0 ? VacuumLine.NONE : new VacuumLine(boreMm / 1000, 1.5);
        assertThat(PumpDown.timeS(
                        30 * M3_PER_L,
                        ATM_PA,
                        targetMbar * PA_PER_MBAR,
                        new Pump(2 * M3_PER_L, ultimateMbar * PA_PER_MBAR),
                        line,
                        loadMbarLPerS * M3_PER_L * PA_PER_MBAR))
                .isCloseTo(expectedS, withinPercentage(boreMm == 4 ? 2 * VECTOR_PERCENT : VECTOR_PERCENT));
    }

    @Test
    void agreesWithAnAdaptiveIntegralOverPressure() {
        // Second way to the same number: a library integrator over ln p, with the flow from the solved balance.
        Generated.tries(51, 60).forEach(some -> {
            Pump pump = new Pump(some.logUniform(2e-4, 5e-3), some.pick(0.0, some.logUniform(1, 100)));
            VacuumLine line = new VacuumLine(some.logUniform(0.004, 0.03), some.logUniform(0.3, 3));
            double load = some.pick(0.0, some.logUniform(1e-4, 0.02));
            double floorPa = PumpDown.reachablePressurePa(pump, line, load, ATM_PA);
            double targetPa = Math.min(5e4, 1.5 * floorPa + some.logUniform(20, 1e4));
            double expectedS = new IterativeLegendreGaussIntegrator(16, 1e-10, 1e-10)
                    .integrate(
                            1_000_000,
                            logPa -> 0.03 * Math.exp(logPa) / (PumpLine.throughput(Math.exp(logPa), pump, line) - load),
                            Math.log(targetPa),
                            Math.log(ATM_PA));
            assertThat(PumpDown.timeS(0.03, ATM_PA, targetPa, pump, line, load))
                    .as("%s", some)
                    .isCloseTo(expectedS, withinPercentage(PROMISED_PERCENT));
        });
    }

    @Test
    void obeysTheLawsOfPumpingDown() {
        Generated.tries(52, 300).forEach(some -> {
            double volumeM3 = some.logUniform(0.001, 0.2);
            Pump pump = new Pump(some.logUniform(2e-4, 1e-2), some.pick(0.0, some.logUniform(1, 200)));
            VacuumLine line =
                    some.pick(VacuumLine.NONE, new VacuumLine(some.logUniform(0.003, 0.03), some.logUniform(0.3, 4)));
            double load = some.pick(0.0, some.logUniform(1e-4, 0.05));
            double floorPa = PumpDown.reachablePressurePa(pump, line, load, ATM_PA);
            double targetPa = floorPa + some.logUniform(0.01, 0.5) * (ATM_PA - floorPa);
            double betweenPa = some.uniform(targetPa, ATM_PA);
            double timeS = PumpDown.timeS(volumeM3, ATM_PA, targetPa, pump, line, load);
            if (floorPa >= ATM_PA) {
                return;
            }
            assertThat(timeS).as("%s", some).isPositive().isFinite();
            assertThat(PumpDown.timeS(volumeM3, ATM_PA, ATM_PA, pump, line, load))
                    .isZero();
            assertThat(PumpDown.timeS(2 * volumeM3, ATM_PA, targetPa, pump, line, load))
                    .isCloseTo(2 * timeS, withinPercentage(ROUNDING_PERCENT));
            assertThat(PumpDown.timeS(volumeM3, ATM_PA, betweenPa, pump, line, load)
                            + PumpDown.timeS(volumeM3, betweenPa, targetPa, pump, line, load))
                    .as("%s adds", some)
                    .isCloseTo(timeS, withinPercentage(PROMISED_PERCENT));
            assertThat(PumpDown.timeS(volumeM3, ATM_PA, targetPa * 0.999 + floorPa * 0.001, pump, line, load))
                    .as("%s deeper", some)
                    .isGreaterThan(timeS);
            assertThat(PumpDown.timeS(volumeM3, ATM_PA, targetPa, pump, line, load + 1e-4))
                    .as("%s load", some)
                    .isGreaterThan(timeS);
            assertThat(PumpDown.timeS(volumeM3, ATM_PA, floorPa, pump, line, load))
                    .isInfinite();
            assertThat(PumpDown.timeS(volumeM3, ATM_PA, floorPa * 0.9, pump, line, load))
                    .isInfinite();
        });
    }

    @Test
    void aBiggerBoreOrAShorterHoseNeverTakesLonger() {
        Generated.tries(53, 300).forEach(some -> {
            Pump pump = new Pump(some.logUniform(2e-4, 1e-2), some.pick(0.0, 20.0));
            double boreM = some.logUniform(0.003, 0.03);
            double lengthM = some.logUniform(0.3, 4);
            double targetPa = some.logUniform(50, 5e4);
            double timeS = PumpDown.timeS(0.03, ATM_PA, targetPa, pump, new VacuumLine(boreM, lengthM), 0);
            assertThat(PumpDown.timeS(0.03, ATM_PA, targetPa, pump, new VacuumLine(1.1 * boreM, lengthM), 0))
                    .as("%s", some)
                    .isLessThan(timeS);
            assertThat(PumpDown.timeS(0.03, ATM_PA, targetPa, pump, new VacuumLine(boreM, lengthM / 1.1), 0))
                    .as("%s", some)
                    .isLessThan(timeS);
            assertThat(PumpDown.timeS(0.03, ATM_PA, targetPa, pump, VacuumLine.NONE, 0))
                    .as("%s", some)
                    .isLessThan(timeS);
        });
    }

    @Test
    void idealTimesDependOnOnePressureRatioOnly() {
        // Every decade costs 2.303 V/S without an ultimate pressure, and more with one.
        assertThat(idealS(0.03, 1e5, 1e4, 2e-3)).isCloseTo(Math.log(10) * 15, withinPercentage(ROUNDING_PERCENT));
        assertThat(idealS(0.03, 1e3, 1e2, 2e-3)).isCloseTo(Math.log(10) * 15, withinPercentage(ROUNDING_PERCENT));
        assertThat(idealS(0.03, 1e5, 1e4, 4e-3)).isCloseTo(Math.log(10) * 7.5, withinPercentage(ROUNDING_PERCENT));
        assertThat(PumpDown.timeS(0.03, 1e3, 1e2, new Pump(2e-3, 10), VacuumLine.NONE, 0))
                .isGreaterThan(PumpDown.timeS(0.03, 1e4, 1e3, new Pump(2e-3, 10), VacuumLine.NONE, 0))
                .isGreaterThan(Math.log(10) * 15);
    }

    @Test
    void growsWithoutBoundTowardsTheFloor() {
        Pump pump = new Pump(2e-3, 10);
        VacuumLine line = new VacuumLine(0.006, 1.5);
        double floorPa = PumpDown.reachablePressurePa(pump, line, 0.005, ATM_PA);
        double before = 0;
        double step = 0;
        for (double distance = 1; distance > 1e-10; distance /= 10) {
            double timeS = PumpDown.timeS(0.03, ATM_PA, floorPa * (1 + distance), pump, line, 0.005);
            assertThat(timeS).isFinite().isGreaterThan(before);
            step = timeS - before;
            before = timeS;
        }
        // Near the floor the fall is exponential: each decade of distance costs 2.303 V over the slope of the flow
        // there.
        double slope =
                (PumpLine.throughput(floorPa * 1.0001, pump, line) - PumpLine.throughput(floorPa * 0.9999, pump, line))
                        / (floorPa * 0.0002);
        assertThat(step).isCloseTo(Math.log(10) * 0.03 / slope, withinPercentage(0.01));
    }

    @Test
    void theFloorIsWhereTheFlowEqualsTheLoad() {
        Generated.tries(54, 300).forEach(some -> {
            Pump pump = new Pump(some.logUniform(2e-4, 1e-2), some.pick(0.0, some.logUniform(1, 200)));
            VacuumLine line = new VacuumLine(some.logUniform(0.003, 0.03), some.logUniform(0.3, 4));
            double load = some.logUniform(1e-5, 0.5);
            double floorPa = PumpDown.reachablePressurePa(pump, line, load, 1e9);
            assertThat(PumpLine.throughput(floorPa, pump, line)).as("%s", some).isCloseTo(load, withinPercentage(1e-6));
            assertThat(floorPa).isGreaterThan(PumpDown.reachablePressurePa(pump, VacuumLine.NONE, load, 1e9));
            assertThat(PumpDown.reachablePressurePa(pump, line, load, ATM_PA)).isEqualTo(Math.min(floorPa, ATM_PA));
        });
        assertThat(PumpDown.reachablePressurePa(new Pump(2e-3, 5), new VacuumLine(0.006, 1.5), 0, ATM_PA))
                .isCloseTo(5, withinPercentage(ROUNDING_PERCENT));
        assertThat(PumpDown.reachablePressurePa(new Pump(2e-3, 0), new VacuumLine(0.006, 1.5), 0, ATM_PA))
                .isZero();
    }

    @Test
    void aLeakCannotRaiseTheChamberAboveTheBarometer() {
        assertThat(PumpDown.reachablePressurePa(new Pump(1e-4, 0), VacuumLine.NONE, 1000, 95_000))
                .isEqualTo(95_000);
        assertThat(PumpDown.reachablePressurePa(new Pump(1e-4, 0), new VacuumLine(0.004, 2), 1000, 95_000))
                .isEqualTo(95_000);
        assertThat(PumpDown.timeS(0.03, 95_000, 90_000, new Pump(1e-4, 0), VacuumLine.NONE, 1000))
                .isInfinite();
        assertThat(PumpDown.timeS(0.03, 95_000, 90_000, new Pump(1e-4, 0), new VacuumLine(0.004, 2), 1000))
                .isInfinite();
    }

    @Test
    void vacuumBoxWithOutgassingReachesThePublishedPressure() {
        // Steel box of 100 cm side, 2e-8 Torr L/(s cm2), 500 L/s: load 1.2e-3 Torr L/s, 2.4e-6 Torr; supplier knowledge
        // base.
        double torrPa = 101_325.0 / 760;
        double load = 6 * 100 * 100 * 2e-8 * torrPa * M3_PER_L;
        assertThat(load / (torrPa * M3_PER_L)).isCloseTo(1.2e-3, withinPercentage(ROUNDING_PERCENT));
        assertThat(PumpDown.reachablePressurePa(new Pump(0.5, 0), VacuumLine.NONE, load, ATM_PA) / torrPa)
                .isCloseTo(2.4e-6, withinPercentage(ROUNDING_PERCENT));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        Pump pump = new Pump(2e-3, 10);
        for (VacuumLine line : new VacuumLine[] {VacuumLine.NONE, new VacuumLine(0.006, 1)}) {
            assertThatThrownBy(() -> PumpDown.timeS(bad, 1e5, 1e3, pump, line, 0))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining("volume");
            assertThatThrownBy(() -> PumpDown.timeS(1, bad, 1e3, pump, line, 0))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining("start");
            assertThatThrownBy(() -> PumpDown.timeS(1, 1e5, bad, pump, line, 0))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining("target");
            assertThatThrownBy(() -> PumpDown.timeS(1, 1e5, 1e3, pump, line, bad))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining("gas load");
            assertThatThrownBy(() -> PumpDown.reachablePressurePa(pump, line, bad, 1e5))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining("gas load");
            assertThatThrownBy(() -> PumpDown.reachablePressurePa(pump, line, 0, bad))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining("barometer");
        }
    }

    @Test
    void refusesWhatIsMissingOrZero() {
        Pump pump = new Pump(2e-3, 10);
        assertThatThrownBy(() -> PumpDown.timeS(0, 1e5, 1e3, pump, VacuumLine.NONE, 0))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.timeS(1, 1e5, 1e3, null, VacuumLine.NONE, 0))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.timeS(1, 1e5, 1e3, pump, null, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.reachablePressurePa(null, VacuumLine.NONE, 0, 1e5))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.reachablePressurePa(pump, null, 0, 1e5))
                .isInstanceOf(PhysicsException.class);
    }
}
