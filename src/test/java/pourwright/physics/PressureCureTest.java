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

class PressureCureTest {

    private static final double ATM_PA = 101_325;
    private static final double PSI_PA = 6894.757293168;

    /** Three printed decimals. */
    private static final double PRINTED = 0.0006;

    @ParameterizedTest
    @CsvSource({"2, 0.336, 0.695", "3, 0.253, 0.632", "4, 0.202, 0.587", "5, 0.169, 0.552", "6, 0.145, 0.525"})
    void shrinksBubblesByBoyle(double gaugeBar, double volume, double diameter) { // computed from Boyle's law
        assertThat(PressureCure.volumeRatio(gaugeBar * 1e5, ATM_PA)).isCloseTo(volume, within(PRINTED));
        assertThat(PressureCure.diameterRatio(gaugeBar * 1e5, ATM_PA)).isCloseTo(diameter, within(PRINTED));
    }

    @Test
    void needsTheLocalAir() {
        // 60 psi on the dial: 5.1 times smaller at sea level, 5.9 times at 1500 m (computed).
        assertThat(PressureCure.volumeRatio(60 * PSI_PA, ATM_PA)).isCloseTo(0.197, within(PRINTED));
        assertThat(PressureCure.diameterRatio(60 * PSI_PA, ATM_PA)).isCloseTo(0.582, within(PRINTED));
        assertThat(1 / PressureCure.volumeRatio(60 * PSI_PA, ATM_PA)).isCloseTo(5.1, within(0.05));
        assertThat(1 / PressureCure.volumeRatio(60 * PSI_PA, Atmosphere.barometricPressurePa(1500)))
                .isCloseTo(5.9, within(0.05));
    }

    @Test
    void givesPublishedBoyleExamples() {
        // 765 mmHg, 20 000 to 17 000 mm3 needs 900 mmHg (+135); Joel, Basic Engineering Thermodynamics, ex. 5.1.
        assertThat(20_000 * PressureCure.volumeRatio(135, 765)).isCloseTo(17_000, within(1e-6));
        // 20 psig, 20 in3, a 2 in piston pushed 4 in: 78.7 psig; Esposito, Fluid Power with Applications, ex. 13.1.
        double startPsi = 34.7;
        double endVolume = 20 - Math.PI * 4;
        assertThat(20 * PressureCure.volumeRatio(78.65 - 20, startPsi)).isCloseTo(endVolume, withinPercentage(0.1));
    }

    @Test
    void keepsPressureTimesVolumeAndCubesTheDiameter() {
        Generated.tries(101, 300).forEach(some -> {
            double airPa = some.uniform(6e4, 1.05e5);
            double gaugePa = some.logUniform(1, 1e7);
            double ratio = PressureCure.volumeRatio(gaugePa, airPa);
            assertThat(ratio * (airPa + gaugePa)).as("%s", some).isCloseTo(airPa, withinPercentage(1e-10));
            assertThat(Math.pow(PressureCure.diameterRatio(gaugePa, airPa), 3))
                    .isCloseTo(ratio, withinPercentage(1e-10));
            assertThat(PressureCure.volumeRatio(1.1 * gaugePa, airPa)).isLessThan(ratio);
        });
        assertThat(PressureCure.volumeRatio(0, ATM_PA)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        assertThatThrownBy(() -> PressureCure.volumeRatio(bad, ATM_PA)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PressureCure.diameterRatio(1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PressureCure.volumeRatio(1, 0)).isInstanceOf(PhysicsException.class);
    }
}
