package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class GaugeTest {

    /** Conventional inch of mercury at 0 C, Pa (NIST SP 811, appendix B, from memory). */
    private static final double INHG_PA = 3386.388640;

    /** Conventional millimetre of mercury, Pa. */
    private static final double MMHG_PA = 133.322387415;

    /** The oracle values are printed to a tenth of a millibar or better. */
    private static final double PRINTED_PA = 5;

    /** A few roundings of 1e5 Pa. */
    private static final double ROUNDING_PA = 1e-9;

    @Test
    void readsBelowLocalAirAtSeaLevel() {
        // 29 inHg of vacuum at 1013.25 hPa is 31.197 mbar absolute (computed from the definitions).
        assertThat(Gauge.absolutePa(29 * INHG_PA, GaugeKind.BELOW_LOCAL_AIR, 101_325))
                .isCloseTo(3119.7, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"28, 6510", "27, 9890", "25, 16670"}) // computed from the definitions, printed to 0.1 mbar
    void readsShallowerVacuums(double inHg, double absolutePa) {
        assertThat(Gauge.absolutePa(inHg * INHG_PA, GaugeKind.BELOW_LOCAL_AIR, 101_325))
                .isCloseTo(absolutePa, within(PRINTED_PA));
    }

    @Test
    void refusesAReadingThatTheAltitudeForbidsAndSaysTheMost() {
        // At 1500 m (845.56 hPa) 29 inHg is impossible: the most is 24.97 inHg, 84 556 Pa.
        double barometerPa = Atmosphere.barometricPressurePa(1500);
        assertThat(Gauge.deepestBelowLocalAirPa(barometerPa) / INHG_PA).isCloseTo(24.97, within(0.005));
        assertThatThrownBy(() -> Gauge.absolutePa(29 * INHG_PA, GaugeKind.BELOW_LOCAL_AIR, barometerPa))
                .isInstanceOf(PhysicsException.class)
                .hasMessage("A gauge cannot show 98205.3 Pa below local air here; "
                        + "the most that is possible is 84556 Pa.");
    }

    @Test
    void readsAboveLocalAir() {
        // 500 mmHg absolute is -260 mmHg on the gauge, barometer 760: Krishnaswamy and Vijayachitra,
        // Industrial Instrumentation, ch. 2.
        assertThat(Gauge.readingPa(500 * MMHG_PA, GaugeKind.ABOVE_LOCAL_AIR, 760 * MMHG_PA))
                .isCloseTo(-260 * MMHG_PA, within(ROUNDING_PA));
        // Compartment at 400 kPa gauge, barometer 720 mmHg with g 9.81: 496.06 kPa; Singh, Applied Thermodynamics, ex.
        // 10.
        double barometerPa = 13_600 * 9.81 * 0.720;
        assertThat(Gauge.absolutePa(400e3, GaugeKind.ABOVE_LOCAL_AIR, barometerPa))
                .isCloseTo(496.06e3, within(PRINTED_PA));
        // Barometer 750 mmHg, liquid 5 m deep of relative density 0.85: 141.466 kPa with water at 9790 N/m3;
        // Subramanya, 1000 Solved Problems in Fluid Mechanics, ex. 2.2.
        double localPa = 13.6 * 9790 * 0.750;
        assertThat(Gauge.absolutePa(0.85 * 9790 * 5, GaugeKind.ABOVE_LOCAL_AIR, localPa))
                .isCloseTo(141.466e3, within(PRINTED_PA));
    }

    @Test
    void convertsThereAndBack() {
        Generated.tries(21, 300).forEach(some -> {
            double barometerPa = some.uniform(60_000, 105_000);
            double absolutePa = some.uniform(0, barometerPa);
            GaugeKind kind = some.pick(GaugeKind.values());
            double back = Gauge.absolutePa(Gauge.readingPa(absolutePa, kind, barometerPa), kind, barometerPa);
            assertThat(back)
                    .as("%s", some)
                    .isCloseTo(absolutePa, within(ROUNDING_PA))
                    .isNotNegative();
        });
    }

    @Test
    void sameReadingHigherUpIsADeeperPressure() {
        Generated.tries(22, 200).forEach(some -> {
            double lowM = some.uniform(0, 2000);
            double highM = lowM + some.uniform(10, 1000);
            double lowAirPa = Atmosphere.barometricPressurePa(lowM);
            double highAirPa = Atmosphere.barometricPressurePa(highM);
            double readingPa = some.uniform(0, highAirPa);
            assertThat(Gauge.absolutePa(readingPa, GaugeKind.BELOW_LOCAL_AIR, highAirPa))
                    .as("%s", some)
                    .isLessThan(Gauge.absolutePa(readingPa, GaugeKind.BELOW_LOCAL_AIR, lowAirPa));
            assertThat(Gauge.deepestBelowLocalAirPa(highAirPa)).isLessThan(Gauge.deepestBelowLocalAirPa(lowAirPa));
        });
    }

    @Test
    void theDeepestReadingIsAllowedAndMeansPerfectVacuum() {
        assertThat(Gauge.absolutePa(90_000, GaugeKind.BELOW_LOCAL_AIR, 90_000)).isZero();
        assertThat(Gauge.absolutePa(-90_000, GaugeKind.ABOVE_LOCAL_AIR, 90_000)).isZero();
        assertThat(Gauge.absolutePa(0, GaugeKind.ABSOLUTE, 90_000)).isZero();
        assertThatCode(() -> Gauge.readingPa(90_000, GaugeKind.BELOW_LOCAL_AIR, 90_000))
                .doesNotThrowAnyException();
    }

    @Test
    void refusesOtherImpossibleReadings() {
        assertThatThrownBy(() -> Gauge.absolutePa(-1, GaugeKind.ABSOLUTE, 101_325))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("least that is possible is 0 Pa");
        assertThatThrownBy(() -> Gauge.absolutePa(-1, GaugeKind.BELOW_LOCAL_AIR, 101_325))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("without a sign")
                .hasMessageContaining("101325 Pa");
        assertThatThrownBy(() -> Gauge.absolutePa(-101_326, GaugeKind.ABOVE_LOCAL_AIR, 101_325))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("most that is possible is 101325 Pa");
        assertThatThrownBy(() -> Gauge.readingPa(101_326, GaugeKind.BELOW_LOCAL_AIR, 101_325))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("most that is possible is 101325 Pa");
        assertThatThrownBy(() -> Gauge.readingPa(-1, GaugeKind.ABSOLUTE, 101_325))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Gauge.absolutePa(1, null, 101_325)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Gauge.readingPa(1, null, 101_325)).isInstanceOf(PhysicsException.class);
    }

    @ParameterizedTest
    @EnumSource
    void refusesWhatIsNoNumber(GaugeKind kind) {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> Gauge.absolutePa(bad, kind, 101_325)).isInstanceOf(PhysicsException.class);
            assertThatThrownBy(() -> Gauge.absolutePa(10, kind, bad)).isInstanceOf(PhysicsException.class);
            assertThatThrownBy(() -> Gauge.readingPa(bad, kind, 101_325)).isInstanceOf(PhysicsException.class);
            assertThatThrownBy(() -> Gauge.readingPa(10, kind, bad)).isInstanceOf(PhysicsException.class);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesABarometerThatCannotBe(double barometerPa) {
        assertThatThrownBy(() -> Gauge.deepestBelowLocalAirPa(barometerPa))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("barometer");
    }
}
