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

class AtmosphereTest {

    /** The tables print tenths of a pascal at best. */
    private static final double TABLE_DIGIT_PA = 0.06;

    /** Five printed digits of the published table. */
    private static final double FIVE_DIGITS_PERCENT = 0.01;

    /** Central difference of the slope against density times g. */
    private static final double SLOPE_PERCENT = 0.01;

    private static final double MOLAR_MASS_KG_PER_MOL = 0.0289644;

    @ParameterizedTest
    @CsvSource({
        // Computed independently from the five constants of ISO 2533:1975, geopotential altitude.
        "0, 101325.0",
        "500, 95460.8",
        "1000, 89874.6",
        "1500, 84556.0",
        "2000, 79495.2",
        "3000, 70108.5",
        "4000, 61640.2",
        "5000, 54019.9"
    })
    void followsIso2533(double altitudeM, double expectedPa) {
        assertThat(Atmosphere.barometricPressurePa(altitudeM)).isCloseTo(expectedPa, within(TABLE_DIGIT_PA));
    }

    @ParameterizedTest
    @CsvSource({
        // US Standard Atmosphere 1976 table by 2 km of geometric height, five digits.
        "0, 101320",
        "2000, 79501",
        "4000, 61660",
        "6000, 47218",
        "10000, 26500"
    })
    void followsThe1976TableInGeometricHeight(double heightM, double publishedPa) {
        double altitudeM = Atmosphere.geopotentialAltitudeM(heightM);
        assertThat(Atmosphere.barometricPressurePa(altitudeM))
                .isCloseTo(publishedPa, withinPercentage(FIVE_DIGITS_PERCENT));
    }

    @Test
    void matchesTheAeronauticalLibraryExample() {
        // 5000 m geometric: 54 048.286 Pa, documentation example of an open fluid library that cites the 1976 document.
        assertThat(Atmosphere.barometricPressurePa(Atmosphere.geopotentialAltitudeM(5000)))
                .isCloseTo(54_048.286, within(0.01));
    }

    @Test
    void matchesTheShortForm() {
        // p = 101325 (1 - 2.25577e-5 h)^5.25588 at 10 000 m gives 26 436 Pa (engineeringtoolbox, altitude and air
        // pressure).
        assertThat(Atmosphere.barometricPressurePa(10_000)).isCloseTo(26_436, within(1.0));
        // 4572 m (15 000 ft) is 57.2 kPa in a sensor maker's altitude table, three digits.
        assertThat(Atmosphere.barometricPressurePa(4572)).isCloseTo(57_200, within(50.0));
    }

    @Test
    void fallsWithHeightAtTheRateOfItsOwnWeight() {
        Generated.tries(11, 200).forEach(some -> {
            double altitudeM = some.uniform(-990, 10_990);
            double stepM = 1;
            double slope = (Atmosphere.barometricPressurePa(altitudeM + stepM)
                            - Atmosphere.barometricPressurePa(altitudeM - stepM))
                    / (2 * stepM);
            double temperatureK = 288.15 - 0.0065 * altitudeM;
            double density =
                    Atmosphere.barometricPressurePa(altitudeM) * MOLAR_MASS_KG_PER_MOL / (8.31432 * temperatureK);
            assertThat(slope).as("%s", some).isCloseTo(-density * Constants.G, withinPercentage(SLOPE_PERCENT));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1000.1, 11_000.1})
    void refusesHeightsOutsideTheLayer(double altitudeM) {
        assertThatThrownBy(() -> Atmosphere.barometricPressurePa(altitudeM))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("altitude")
                .hasMessageContaining(" m");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1000.1, 11_020})
    void refusesGeometricHeightsOutsideTheLayer(double heightM) {
        assertThatThrownBy(() -> Atmosphere.geopotentialAltitudeM(heightM))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("height");
    }
}
