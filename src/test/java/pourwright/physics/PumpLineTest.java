package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class PumpLineTest {

    private static final double M3_PER_L = 1e-3;
    private static final double PA_PER_MBAR = 100;

    /** The vectors print thousandths of a litre per second. */
    private static final double PRINTED_L_PER_S = 0.00051;

    /** Two ways to the same root, each with its own rounding. */
    private static final double SAME_ROOT_PERCENT = 1e-7;

    @ParameterizedTest
    @CsvSource({
        // Bore mm (hose 150 cm, pump 2 L/s), then effective speed in L/s at 1000, 100, 10 and 1 mbar: exact solutions
        // of
        // S pp = C((p+pp)/2)(p-pp) with Knudsen's conductance at the MEAN pressure, computed independently.
        "10, 1.996, 1.956, 1.607, 0.475",
        "6, 1.966, 1.687, 0.549, 0.072",
        "4, 1.834, 0.914, 0.119, 0.016"
    })
    void givesTheEffectiveSpeedsOfThinHoses(double boreMm, double at1000, double at100, double at10, double at1) {
        Pump pump = new Pump(2 * M3_PER_L, 0);
        VacuumLine line = new VacuumLine(boreMm / 1000, 1.5);
        double[] expected = {at1000, at100, at10, at1};
        double chamberPa = 1000 * PA_PER_MBAR;
        for (double lPerS : expected) {
            assertThat(PumpLine.effectiveSpeedM3PerS(chamberPa, pump, line) / M3_PER_L)
                    .isCloseTo(lPerS, within(PRINTED_L_PER_S));
            chamberPa /= 10;
        }
    }

    @Test
    void givesAThreeCfmPumpThroughSixMillimetres() {
        // 1.42 L/s through 6 mm x 1 m leaves 0.68 L/s at 10 mbar and 1.25 L/s at 65 mbar (computed, two digits).
        Pump pump = new Pump(1.416e-3, 0);
        VacuumLine line = new VacuumLine(0.006, 1);
        assertThat(PumpLine.effectiveSpeedM3PerS(1000, pump, line)).isCloseTo(0.68e-3, within(0.006e-3));
        assertThat(PumpLine.effectiveSpeedM3PerS(6500, pump, line)).isCloseTo(1.25e-3, within(0.006e-3));
    }

    @Test
    void givesTheSeriesLawWhereTheConductanceIsConstant() {
        // Molecular line in series, Levenspiel ch. 4 example: resistances 1.1 + 81.5 + 5 s/m3 give 0.0114 m3/s.
        double boreM = 0.01;
        double lengthM = TubeConductance.MOLECULAR_COEFFICIENT * boreM * boreM * boreM * (1.1 + 81.5);
        double chamberPa = 1e-5;
        assertThat(PumpLine.effectiveSpeedM3PerS(chamberPa, new Pump(0.2, 0), new VacuumLine(boreM, lengthM)))
                .isCloseTo(0.0114, within(5e-5));
    }

    @Test
    void agreesWithABracketedRootOfTheBalance() {
        Generated.tries(41, 400).forEach(some -> {
            Pump pump = new Pump(some.logUniform(1e-4, 1e-2), some.pick(0.0, some.logUniform(0.01, 1000)));
            VacuumLine line = new VacuumLine(some.logUniform(0.002, 0.04), some.logUniform(0.2, 5));
            double chamberPa = pump.ultimatePa() + some.logUniform(0.1, 1e5);
            double inletRisePa = new BracketingNthOrderBrentSolver(1e-16, 1e-12 * chamberPa, 5)
                    .solve(
                            500,
                            x -> {
                                double inletPa = pump.ultimatePa() + x;
                                return pump.speedM3PerS() * x
                                        - TubeConductance.m3PerS(
                                                        line.boreM(), line.lengthM(), (chamberPa + inletPa) / 2)
                                                * (chamberPa - inletPa);
                            },
                            0,
                            chamberPa - pump.ultimatePa());
            assertThat(PumpLine.throughput(chamberPa, pump, line))
                    .as("%s", some)
                    .isCloseTo(pump.speedM3PerS() * inletRisePa, withinPercentage(1e-3));
        });
    }

    @Test
    void balancesPumpAndHose() {
        Generated.tries(42, 400).forEach(some -> {
            Pump pump = new Pump(some.logUniform(1e-4, 1e-2), some.logUniform(0.01, 1000));
            VacuumLine line = new VacuumLine(some.logUniform(0.002, 0.04), some.logUniform(0.2, 5));
            double chamberPa = pump.ultimatePa() * (1 + some.logUniform(0.1, 1e3));
            double flow = PumpLine.throughput(chamberPa, pump, line);
            double inletPa = pump.ultimatePa() + flow / pump.speedM3PerS();
            double dropPa = flow / TubeConductance.m3PerS(line.boreM(), line.lengthM(), (chamberPa + inletPa) / 2);
            assertThat(inletPa + dropPa).as("%s", some).isCloseTo(chamberPa, withinPercentage(SAME_ROOT_PERCENT));
        });
    }

    @Test
    void aHoseOnlyEverSlowsAndABetterHoseSlowsLess() {
        Generated.tries(43, 300).forEach(some -> {
            Pump pump = new Pump(some.logUniform(1e-4, 1e-2), 0);
            double boreM = some.logUniform(0.002, 0.03);
            double lengthM = some.logUniform(0.2, 5);
            double chamberPa = some.logUniform(1, 1e5);
            double speed = PumpLine.effectiveSpeedM3PerS(chamberPa, pump, new VacuumLine(boreM, lengthM));
            assertThat(speed).as("%s", some).isPositive().isLessThan(pump.speedM3PerS());
            assertThat(PumpLine.effectiveSpeedM3PerS(chamberPa, pump, new VacuumLine(1.2 * boreM, lengthM)))
                    .isGreaterThan(speed);
            assertThat(PumpLine.effectiveSpeedM3PerS(chamberPa, pump, new VacuumLine(boreM, 1.2 * lengthM)))
                    .isLessThan(speed);
            assertThat(PumpLine.throughput(1.01 * chamberPa, pump, new VacuumLine(boreM, lengthM)))
                    .isGreaterThan(speed * chamberPa);
        });
    }

    @Test
    void tendsToThePumpAlone() {
        Pump pump = new Pump(2e-3, 50);
        assertThat(PumpLine.throughput(1000, pump, VacuumLine.NONE)).isCloseTo(2e-3 * 950, withinPercentage(1e-10));
        assertThat(PumpLine.throughput(1000, pump, new VacuumLine(1, 0.01)))
                .isCloseTo(2e-3 * 950, withinPercentage(1e-6));
        assertThat(VacuumLine.NONE.unrestricted()).isTrue();
        assertThat(new VacuumLine(1, 0.01).unrestricted()).isFalse();
    }

    @Test
    void givesNoFlowAtTheUltimatePressureAndBackFlowBelow() {
        Pump pump = new Pump(2e-3, 50);
        VacuumLine line = new VacuumLine(0.006, 1.5);
        assertThat(PumpLine.throughput(50, pump, line)).isZero();
        assertThat(PumpLine.throughput(50, pump, VacuumLine.NONE)).isZero();
        assertThat(PumpLine.throughput(10, pump, line)).isNegative();
        assertThat(PumpLine.throughput(0, pump, line)).isNegative();
        assertThat(PumpLine.throughput(0, new Pump(2e-3, 0), line)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        Pump pump = new Pump(2e-3, 50);
        assertThatThrownBy(() -> PumpLine.throughput(bad, pump, VacuumLine.NONE))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpLine.effectiveSpeedM3PerS(bad, pump, VacuumLine.NONE))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new Pump(bad, 0))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("speed");
        assertThatThrownBy(() -> new Pump(1, bad))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("ultimate");
    }

    @Test
    void refusesWhatIsMissingOrZero() {
        Pump pump = new Pump(2e-3, 50);
        assertThatThrownBy(() -> new Pump(0, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpLine.effectiveSpeedM3PerS(0, pump, VacuumLine.NONE))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpLine.throughput(1, null, VacuumLine.NONE)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpLine.throughput(1, pump, null)).isInstanceOf(PhysicsException.class);
    }
}
