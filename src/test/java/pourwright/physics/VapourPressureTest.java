package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class VapourPressureTest {

    private static final double PA_PER_MPA = 1e6;

    /** Nine printed digits. */
    private static final double NINE_DIGITS_PERCENT = 2e-7;

    /** The older temperature scale of the table shifts it by up to this much. */
    private static final double OLD_TABLE_PERCENT = 0.10;

    /** How far two handbooks may differ: solvents, then monomers. */
    private static final double SOLVENT_PERCENT = 0.75;

    private static final double MONOMER_PERCENT = 3;

    /** Handbooks drift apart towards the cold end of the second one's range. */
    private static final double COLD_END_PERCENT = 4;

    /** Whole pascals; half a unit in the last digit of a published constant moves acetone by 4 Pa, so 1 Pa is strict. */
    private static final double CONSTANT_DIGITS_PA = 1;

    private static double kelvin(double celsius) {
        return celsius + Constants.ZERO_CELSIUS_K;
    }

    @ParameterizedTest
    @CsvSource({
        // IAPWS-IF97 release, table 35 (300 and 600 K from memory, 500 K read in an open library's documentation).
        "300, 3.53658941e-3",
        "500, 2.63889776",
        "600, 12.3443146"
    })
    void givesTheVerificationPressuresOfTheRelease(double temperatureK, double publishedMPa) {
        assertThat(VapourPressure.saturationPa(Volatile.WATER, temperatureK) / PA_PER_MPA)
                .isCloseTo(publishedMPa, withinPercentage(NINE_DIGITS_PERCENT));
    }

    @ParameterizedTest
    @CsvSource({
        // IAPWS-IF97 release, table 36 (0.1 MPa from memory, 10 MPa read in an open library's documentation).
        "0.1, 372.755919",
        "10, 584.149488"
    })
    void givesTheVerificationTemperaturesOfTheRelease(double pressureMPa, double publishedK) {
        assertThat(VapourPressure.boilingTemperatureK(Volatile.WATER, pressureMPa * PA_PER_MPA))
                .isCloseTo(publishedK, withinPercentage(NINE_DIGITS_PERCENT));
    }

    @ParameterizedTest
    @CsvSource({
        // C, Pa: "Vapor pressure of water", CRC Handbook of Chemistry and Physics 1992-93.
        "5, 872.6",
        "10, 1228.1",
        "15, 1705.6",
        "20, 2338.8",
        "23, 2810.4",
        "25, 3169.0",
        "30, 4245.5",
        "37, 6279.5",
        "40, 7381.4",
        "50, 12344",
        "60, 19932",
        "80, 47373",
        "95, 84529",
        "100, 101325"
    })
    void agreesWithTheHandbookTableOfWater(double celsius, double publishedPa) {
        assertThat(VapourPressure.saturationPa(Volatile.WATER, kelvin(celsius)))
                .isCloseTo(publishedPa, withinPercentage(OLD_TABLE_PERCENT));
    }

    @Test
    void agreesWithIapws95() {
        // 275 K: 0.698451167 kPa, IAPWS-95 release, table 8.
        assertThat(VapourPressure.saturationPa(Volatile.WATER, 275)).isCloseTo(698.451167, withinPercentage(0.002));
    }

    @Test
    void agreesWithAnIndependentProgram() {
        IF97 oracle = new IF97();
        Generated.tries(81, 300).forEach(some -> {
            double temperatureK = some.uniform(273.15, 640);
            double pressurePa = VapourPressure.saturationPa(Volatile.WATER, temperatureK);
            try {
                assertThat(pressurePa / PA_PER_MPA)
                        .as("%s", some)
                        .isCloseTo(oracle.saturationPressureT(temperatureK), withinPercentage(1e-8));
            } catch (com.hummeling.if97.OutOfRangeException e) {
                throw new AssertionError("the oracle refused " + temperatureK + " K", e);
            }
        });
    }

    @ParameterizedTest
    @CsvSource({
        // mbar, C: inverse of IF97, computed independently.
        "500, 81.32",
        "200, 60.06",
        "100, 45.81",
        "50, 32.88",
        "30, 24.08",
        "28, 22.94",
        "20, 17.50",
        "10, 6.97",
        "7, 1.88",
        "1013.25, 99.97"
    })
    void waterBoilsInThePot(double mbar, double celsius) {
        assertThat(VapourPressure.boilingTemperatureK(Volatile.WATER, mbar * 100))
                .isCloseTo(kelvin(celsius), within(0.006));
    }

    @ParameterizedTest
    @CsvSource({
        // liquid, C, Pa: computed independently from Perry's constants (8th ed., table 2-8), whole pascals.
        "STYRENE, 20, 599", "STYRENE, 25, 817", "STYRENE, 40, 1920",
        "METHYL_METHACRYLATE, 20, 3778", "METHYL_METHACRYLATE, 25, 4959", "METHYL_METHACRYLATE, 40, 10508",
        "ACETONE, 20, 24712", "ACETONE, 25, 30752", "ACETONE, 40, 56498",
        "ETHANOL, 20, 5899", "ETHANOL, 25, 7924", "ETHANOL, 40, 17994",
        "TOLUENE, 20, 2926", "TOLUENE, 25, 3804", "TOLUENE, 40, 7880"
    })
    void followsTheHandbookEquation(Volatile liquid, double celsius, double expectedPa) {
        assertThat(VapourPressure.saturationPa(liquid, kelvin(celsius)))
                .isCloseTo(expectedPa, within(CONSTANT_DIGITS_PA));
    }

    @ParameterizedTest
    @CsvSource({
        // liquid, lowest and highest C of the check, then log10 p(Pa) = A - B/(T + C): Poling, Prausnitz and O'Connell,
        // Properties of Gases and Liquids, 5th ed., app. A.
        "WATER, 10, 60, 10.11564, 1687.537, -42.98", "ACETONE, 0, 60, 9.2184, 1197.01, -45.09",
        "ETHANOL, 10, 60, 10.33675, 1648.22, -42.232", "TOLUENE, 20, 60, 9.05043, 1327.62, -55.525"
    })
    void agreesWithASecondHandbook(Volatile liquid, double lowC, double highC, double a, double b, double c) {
        for (double celsius = lowC; celsius <= highC; celsius += 5) {
            double secondPa = Math.pow(10, a - b / (kelvin(celsius) + c));
            assertThat(VapourPressure.saturationPa(liquid, kelvin(celsius)))
                    .isCloseTo(secondPa, withinPercentage(SOLVENT_PERCENT));
        }
    }

    @ParameterizedTest
    @CsvSource({
        // Same with ln p = A - B/(T + C): Landolt-Boernstein IV/20, inside its own range only.
        "STYRENE, 20, 60, 21.48733, 3677.235, -49.03",
        "METHYL_METHACRYLATE, 31, 60, 21.36916, 3183.824, -50.498"
    })
    void monomersAgreeWithASecondHandbook(Volatile liquid, double lowC, double highC, double a, double b, double c) {
        for (double celsius = lowC; celsius <= highC; celsius += 5) {
            double secondPa = Math.exp(a - b / (kelvin(celsius) + c));
            assertThat(VapourPressure.saturationPa(liquid, kelvin(celsius)))
                    .isCloseTo(secondPa, withinPercentage(MONOMER_PERCENT));
        }
    }

    @Test
    void agreesLessWellNearTheColdEnd() {
        // Same two sources at 15 C, near the cold end of their ranges (286 K and 285 K): 1.0 and 3.5 % apart.
        assertThat(VapourPressure.saturationPa(Volatile.TOLUENE, kelvin(15)))
                .isCloseTo(Math.pow(10, 9.05043 - 1327.62 / (kelvin(15) - 55.525)), withinPercentage(COLD_END_PERCENT));
        assertThat(VapourPressure.saturationPa(Volatile.STYRENE, kelvin(15)))
                .isCloseTo(Math.exp(21.48733 - 3677.235 / (kelvin(15) - 49.03)), withinPercentage(COLD_END_PERCENT));
    }

    @ParameterizedTest
    @CsvSource({
        // Normal boiling points in C: common handbook values; pressure there within 3 % of one atmosphere.
        "STYRENE, 145.0",
        "METHYL_METHACRYLATE, 100.5",
        "ACETONE, 56.05",
        "ETHANOL, 78.29",
        "TOLUENE, 110.63"
    })
    void boilsAtTheNormalBoilingPoint(Volatile liquid, double celsius) {
        assertThat(VapourPressure.saturationPa(liquid, kelvin(celsius)))
                .isCloseTo(Constants.STANDARD_ATMOSPHERE_PA, withinPercentage(MONOMER_PERCENT));
        assertThat(VapourPressure.boilingTemperatureK(liquid, Constants.STANDARD_ATMOSPHERE_PA))
                .isCloseTo(kelvin(celsius), within(0.6));
    }

    @ParameterizedTest
    @CsvSource({
        // liquid, boiling temperature in C at 10, 30 and 100 mbar: computed independently, Perry's constants.
        "ACETONE, -36, -20, 1.2",
        "ETHANOL, -6, 9.3, 29.1",
        "METHYL_METHACRYLATE, -1.7, 15.9, 39.0",
        "TOLUENE, 1.4, 20.5, 45.3",
        "STYRENE, 28.4, 48.6, 75.1"
    })
    void boilsColdUnderVacuum(Volatile liquid, double at10, double at30, double at100) {
        assertThat(VapourPressure.boilingTemperatureK(liquid, 1000)).isCloseTo(kelvin(at10), within(0.5));
        assertThat(VapourPressure.boilingTemperatureK(liquid, 3000)).isCloseTo(kelvin(at30), within(0.5));
        assertThat(VapourPressure.boilingTemperatureK(liquid, 10_000)).isCloseTo(kelvin(at100), within(0.06));
    }

    @Test
    void monomersBoilAtPumpPressuresInTheShop() {
        // At 23 C: methyl methacrylate 44.5 mbar, styrene 7.2 mbar, water 28 mbar (computed).
        assertThat(VapourPressure.saturationPa(Volatile.METHYL_METHACRYLATE, kelvin(23)))
                .isCloseTo(4450, within(6.0));
        assertThat(VapourPressure.saturationPa(Volatile.STYRENE, kelvin(23))).isCloseTo(720, within(6.0));
        assertThat(VapourPressure.saturationPa(Volatile.WATER, kelvin(23))).isCloseTo(2810.92, within(0.005));
    }

    @ParameterizedTest
    @EnumSource
    void risesWithTemperatureAndTurnsBack(Volatile liquid) {
        double lowK = VapourPressure.lowestTemperatureK(liquid);
        double highK = VapourPressure.highestTemperatureK(liquid);
        Generated.tries(82, 300).forEach(some -> {
            double temperatureK = some.uniform(lowK, highK - 1);
            double pressurePa = VapourPressure.saturationPa(liquid, temperatureK);
            assertThat(VapourPressure.saturationPa(liquid, temperatureK + 1))
                    .as("%s %s", liquid, some)
                    .isGreaterThan(pressurePa);
            assertThat(VapourPressure.boilingTemperatureK(liquid, pressurePa))
                    .as("%s %s", liquid, some)
                    .isCloseTo(temperatureK, within(1e-6));
        });
    }

    @ParameterizedTest
    @EnumSource
    void isNearlyStraightInOneOverTemperature(Volatile liquid) {
        // Law: the slope of ln p over 1/T changes by less than 5 % over 10 K near room temperature.
        for (double celsius = 5; celsius <= 50; celsius += 5) {
            double first = slope(liquid, kelvin(celsius));
            assertThat(slope(liquid, kelvin(celsius + 10))).isCloseTo(first, withinPercentage(5));
        }
    }

    private static double slope(Volatile liquid, double temperatureK) {
        double rise = VapourPressure.saturationPa(liquid, temperatureK + 0.5)
                / VapourPressure.saturationPa(liquid, temperatureK - 0.5);
        return Math.log(rise) / (1 / (temperatureK + 0.5) - 1 / (temperatureK - 0.5));
    }

    @ParameterizedTest
    @EnumSource
    void enforcesTheRange(Volatile liquid) {
        double lowK = VapourPressure.lowestTemperatureK(liquid);
        double highK = VapourPressure.highestTemperatureK(liquid);
        double lowPa = VapourPressure.saturationPa(liquid, lowK);
        double highPa = VapourPressure.saturationPa(liquid, highK);
        assertThat(VapourPressure.boilingTemperatureK(liquid, lowPa)).isCloseTo(lowK, within(1e-6));
        assertThat(VapourPressure.boilingTemperatureK(liquid, highPa)).isCloseTo(highK, within(1e-6));
        for (double bad : new double[] {lowK - 0.01, highK + 0.01, Double.NaN, Double.POSITIVE_INFINITY, -1}) {
            assertThatThrownBy(() -> VapourPressure.saturationPa(liquid, bad))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining(liquid.plainName());
        }
        for (double bad : new double[] {lowPa * 0.999, highPa * 1.001, Double.NaN, Double.POSITIVE_INFINITY, -1, 0}) {
            assertThatThrownBy(() -> VapourPressure.boilingTemperatureK(liquid, bad))
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageContaining(liquid.plainName());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {293.15, Double.NaN})
    void refusesAMissingLiquid(double value) {
        assertThatThrownBy(() -> VapourPressure.saturationPa(null, value)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> VapourPressure.boilingTemperatureK(null, value))
                .isInstanceOf(PhysicsException.class);
    }
}
