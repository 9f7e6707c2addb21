package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class TubeConductanceTest {

    private static final double M3_PER_L = 1e-3;
    private static final double M_PER_CM = 1e-2;
    private static final double PA_PER_MBAR = 100;

    /** The vectors carry five or six digits. */
    private static final double VECTOR_PERCENT = 0.006;

    /** A handful of roundings. */
    private static final double ROUNDING_PERCENT = 1e-10;

    @ParameterizedTest
    @CsvSource({
        // bore cm, length cm, pressure mbar, C in L/s: computed independently from Knudsen's formula in the trade's
        // units
        // ("Fundamentals of vacuum technology", eq. 1.26).
        "1, 100, 1e-4, 0.12060",
        "1, 100, 0.01, 0.11834",
        "1, 100, 1, 1.44812",
        "1, 100, 100, 135.098",
        "0.6, 100, 10, 1.77078",
        "0.6, 100, 1, 0.196168"
    })
    void followsKnudsen(double boreCm, double lengthCm, double pressureMbar, double expectedLPerS) {
        assertThat(TubeConductance.m3PerS(boreCm * M_PER_CM, lengthCm * M_PER_CM, pressureMbar * PA_PER_MBAR))
                .isCloseTo(expectedLPerS * M3_PER_L, withinPercentage(VECTOR_PERCENT));
    }

    @Test
    void followsTheViscousAndMolecularLimits() {
        // 0.6 cm x 100 cm at 10 mbar: 1.7496 L/s viscous, 0.02614 L/s molecular (computed, four digits).
        assertThat(TubeConductance.viscousM3PerS(0.006, 1, 1000)).isCloseTo(1.7496e-3, within(1e-9));
        assertThat(TubeConductance.molecularM3PerS(0.006, 1)).isCloseTo(0.02614e-3, within(5e-9));
        // Tube 5 cm x 100 cm in molecular flow: 15.125 L/s (codingace.net, conductance in molecular flow, example
        // table).
        assertThat(TubeConductance.molecularM3PerS(0.05, 1)).isCloseTo(15.125e-3, withinPercentage(ROUNDING_PERCENT));
        // C = 121.3 d^3/l in SI units: Levenspiel, Engineering Flow and Heat Exchange, 3rd ed. 2014, ch. 4.
        assertThat(TubeConductance.molecularM3PerS(0.03, 2))
                .isCloseTo(121.3 * 0.03 * 0.03 * 0.03 / 2, withinPercentage(0.3));
        // Hagen-Poiseuille with the viscosity of air at 20 C, 0.0181 mPa s (OpenStax College Physics, ch. 12.4).
        assertThat(TubeConductance.viscousM3PerS(0.01, 1, 1000))
                .isCloseTo(Math.PI * 1e-8 * 1000 / (128 * 0.0181e-3), withinPercentage(0.6));
    }

    @Test
    void hasItsMinimumWhereTheFormulaPutsIt() {
        // Least 0.9521 of the molecular value at d p = 0.004254 mbar cm (differentiated by hand).
        double boreM = 0.01;
        double atMinimum = TubeConductance.m3PerS(boreM, 1, 0.004254 / boreM);
        double molecular = TubeConductance.molecularM3PerS(boreM, 1);
        assertThat(atMinimum / molecular).isCloseTo(0.9521, within(5e-5));
        for (double factor : new double[] {0.1, 0.5, 0.9, 1.1, 2, 10}) {
            assertThat(TubeConductance.m3PerS(boreM, 1, factor * 0.004254 / boreM))
                    .isGreaterThan(atMinimum);
        }
    }

    @Test
    void liesBetweenItsBounds() {
        Generated.tries(31, 500).forEach(some -> {
            double boreM = some.logUniform(0.001, 0.1);
            double lengthM = some.logUniform(0.1, 10);
            double pressurePa = some.logUniform(1e-4, 1e5);
            double whole = TubeConductance.m3PerS(boreM, lengthM, pressurePa);
            double molecular = TubeConductance.molecularM3PerS(boreM, lengthM);
            double viscous = TubeConductance.viscousM3PerS(boreM, lengthM, pressurePa);
            assertThat(whole)
                    .as("%s", some)
                    .isBetween((0.8 * molecular + viscous), (molecular + viscous) * (1 + 1e-14));
            assertThat(TubeConductance.viscousM3PerS(2 * boreM, lengthM, pressurePa))
                    .isCloseTo(16 * viscous, withinPercentage(ROUNDING_PERCENT));
            assertThat(TubeConductance.molecularM3PerS(2 * boreM, lengthM))
                    .isCloseTo(8 * molecular, withinPercentage(ROUNDING_PERCENT));
            assertThat(TubeConductance.m3PerS(boreM, 2 * lengthM, pressurePa))
                    .isCloseTo(whole / 2, withinPercentage(ROUNDING_PERCENT));
            assertThat(TubeConductance.m3PerS(1.1 * boreM, lengthM, pressurePa)).isGreaterThan(whole);
        });
    }

    @Test
    void tendsToEachLimit() {
        assertThat(TubeConductance.m3PerS(0.01, 1, 0)).isEqualTo(TubeConductance.molecularM3PerS(0.01, 1));
        double thick = TubeConductance.m3PerS(0.05, 1, 1e5);
        assertThat(thick).isCloseTo(TubeConductance.viscousM3PerS(0.05, 1, 1e5), withinPercentage(0.01));
    }

    @Test
    void tellsTurbulentFlow() {
        // 4 mm hose at 146 m/s near atmospheric pressure: Re about 4e4 (computed: rho v d / eta).
        double throughput = 146 * Math.PI / 4 * 0.004 * 0.004 * 1e5;
        assertThat(TubeConductance.reynolds(throughput, 0.004)).isCloseTo(4e4, withinPercentage(10));
        // The same from density 1.2041 kg/m3 at 101 325 Pa and 20 C, viscosity 1.82e-5 Pa s.
        double byHand = 1.2041 * 1e5 / 101_325 * 146 * 0.004 / 1.82e-5;
        assertThat(TubeConductance.reynolds(throughput, 0.004)).isCloseTo(byHand, withinPercentage(0.01));
        assertThat(TubeConductance.reynolds(0, 0.004)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleTubes(double bad) {
        assertThatThrownBy(() -> TubeConductance.m3PerS(bad, 1, 1))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("bore");
        assertThatThrownBy(() -> TubeConductance.m3PerS(1, bad, 1))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("length");
        assertThatThrownBy(() -> TubeConductance.viscousM3PerS(bad, 1, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> TubeConductance.molecularM3PerS(1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> TubeConductance.reynolds(1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new VacuumLine(bad, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new VacuumLine(1, bad)).isInstanceOf(PhysicsException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossiblePressuresAndFlows(double bad) {
        assertThatThrownBy(() -> TubeConductance.m3PerS(1, 1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> TubeConductance.viscousM3PerS(1, 1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> TubeConductance.reynolds(bad, 1)).isInstanceOf(PhysicsException.class);
    }
}
