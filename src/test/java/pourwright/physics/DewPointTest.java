package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class DewPointTest {

    private static final double ROUNDING_K = 1e-6;

    @ParameterizedTest
    @CsvSource({
        // Air C, humidity, dew point C: 25 C at 50 % is 13.9 C (psychrometric charts, common practice).
        "25, 0.5, 13.9",
        // Half of the handbook pressure at 30 C (4245.5 Pa, CRC 1992-93) is that of water at 18.45 C in the same table.
        "30, 0.5, 18.45",
        // 1228.1 Pa at 10 C over 2338.8 Pa at 20 C, same table: 52.5 %.
        "20, 0.5251, 10.0"
    })
    void givesKnownDewPoints(double airC, double humidity, double dewC) {
        assertThat(DewPoint.kelvin(airC + 273.15, humidity)).isCloseTo(dewC + 273.15, within(0.05));
    }

    @Test
    void followsTheMagnusFormulaBelowFreezing() {
        // 10 C at 20 %: Magnus with 17.625 and 243.04 C throughout, Alduchov and Eskridge 1996, gives -11.7 C.
        double log = Math.log(0.2) + 17.625 * 10 / (243.04 + 10);
        double magnusC = 243.04 * log / (17.625 - log);
        assertThat(DewPoint.kelvin(283.15, 0.2) - 273.15)
                .isCloseTo(magnusC, within(0.05))
                .isBetween(-12.0, -11.0);
        assertThat(DewPoint.kelvin(263.15, 0.8)).isBetween(259.0, 263.15);
    }

    @Test
    void obeysItsLaws() {
        Generated.tries(91, 400).forEach(some -> {
            double airK = some.uniform(263.15, 323.15);
            double humidity = some.uniform(0.1, 0.98);
            double dewK = DewPoint.kelvin(airK, humidity);
            assertThat(dewK).as("%s", some).isLessThan(airK);
            assertThat(DewPoint.kelvin(airK, humidity + 0.01)).as("%s", some).isGreaterThan(dewK);
            assertThat(DewPoint.kelvin(airK + 1, humidity)).as("%s", some).isGreaterThan(dewK);
            assertThat(DewPoint.kelvin(airK, 1)).isEqualTo(airK);
        });
    }

    @Test
    void isContinuousWhereTheFormulasMeet() {
        double humidity = VapourPressure.saturationPa(Volatile.WATER, 273.15)
                / VapourPressure.saturationPa(Volatile.WATER, 293.15);
        assertThat(DewPoint.kelvin(293.15, humidity * (1 - 1e-9))).isCloseTo(273.15, within(ROUNDING_K));
        assertThat(DewPoint.kelvin(293.15, humidity * (1 + 1e-9))).isCloseTo(273.15, within(ROUNDING_K));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleHumidity(double humidity) {
        assertThatThrownBy(() -> DewPoint.kelvin(293.15, humidity))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("humidity");
    }

    @ParameterizedTest
    @ValueSource(doubles = {233.0, 373.2, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleAir(double airK) {
        assertThatThrownBy(() -> DewPoint.kelvin(airK, 0.5))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("air temperature");
    }

    @Test
    void refusesAirTooDryToSay() {
        assertThatThrownBy(() -> DewPoint.kelvin(293.15, 0.001))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("too dry");
    }
}
