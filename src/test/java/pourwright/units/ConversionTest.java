package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions against published values and against definitions; each row names where its value is from. */
class ConversionTest {
    /** One unit in the last place of a value near one, with one to spare: the error of two roundings. */
    private static final double ROUNDING = 4e-16;

    @ParameterizedTest(name = "1 {0} = {1} Pa, {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "mbar | 100 | definition",
                "hPa | 100 | definition",
                "bar | 100000 | definition",
                "kPa | 1000 | definition",
                "torr | 133.32236842105263 | 101325/760: 10th CGPM 1954; ISO 80000-4",
                "mmHg | 133.322387415 | 13595.1 × 9.80665 × 0.001: conventional mercury, standard gravity",
                "micron | 0.13332236842105263 | a thousandth of a torr, vacuum trade",
                "inHg | 3386.388640341 | 13595.1 × 9.80665 × 0.0254; NIST SP 811 App. B prints 3.386 389 E+03, from memory",
                "psi | 6894.757293168361 | 0.45359237 × 9.80665 / 0.0254²; a published card prints 6894.757",
                "atm | 101325 | 10th CGPM 1954",
                "kgf/cm² | 98066.5 | technical atmosphere, by definition of kgf",
                "inH₂O | 249.08891 | conventional water 1000 kg/m³ × 9.80665 × 0.0254"
            })
    void onePressureUnitInPascal(String unit, double pascal, String source) {
        assertThat(source).isNotBlank();
        assertThat(UnitBook.toSi(1, unit, Dimension.PRESSURE)).isCloseTo(pascal, within(pascal * ROUNDING));
        assertThat(UnitBook.fromSi(pascal, unit, Dimension.PRESSURE)).isCloseTo(1, within(ROUNDING));
    }

    @Test
    void oneTorrIsATrifleLessThanOneMillimetreOfMercury() {
        // Published as 0.999 999 857 5; it follows from the two definitions.
        double torrInMmHg = UnitBook.fromSi(UnitBook.toSi(1, "torr", Dimension.PRESSURE), "mmHg", Dimension.PRESSURE);
        assertThat(torrInMmHg).isCloseTo(0.9999998575, within(5e-11));
    }

    @ParameterizedTest(name = "1 atm = {1} {0}")
    @CsvSource({"inHg, 29.9213, 5e-5", "psi, 14.695949, 5e-7", "torr, 760, 2e-13"})
    void oneAtmosphereInOtherUnits(String unit, double value, double error) {
        // Printed on unit cards; 14.69594 on one of them is cut, not rounded.
        assertThat(UnitBook.fromSi(101325, unit, Dimension.PRESSURE)).isCloseTo(value, within(error));
    }

    @Test
    void anInchOfMercuryIsNotTheRoundedOneOfSomeConverters() {
        // A converter found in use has 0.033 417 221 8 atm, which is 3386.000 Pa: 0.011 % too low.
        assertThat(UnitBook.toSi(1, "inHg", Dimension.PRESSURE) / 101325).isCloseTo(0.033421057, within(5e-10));
    }

    @ParameterizedTest(name = "1 mbar L/s = {1} {0}")
    @CsvSource({"Pa m³/s, 0.1, 1e-16", "torr L/s, 0.7501, 5e-5", "atm cm³/s, 0.98692, 5e-6", "sccm, 59.2154, 1e-3"})
    void oneMillibarLitrePerSecond(String unit, double value, double error) {
        // A sealing maker's table prints 0.1, 0.7501, 0.987 and 59.2 (sccm at 0 °C).
        double si = UnitBook.toSi(1, "mbar L/s", Dimension.LEAK);
        assertThat(UnitBook.fromSi(si, unit, Dimension.LEAK)).isCloseTo(value, within(error));
    }

    @ParameterizedTest(name = "29, 28, 27, 25 inHg below sea-level air: {0}")
    @CsvSource({"29, 31.197", "28, 65.06", "27, 98.92", "25, 166.65"})
    void inchesBelowSeaLevelAir(double inHg, double mbarAbsolute) {
        // Computed from the definitions above; printed tables for gauges give 31.2, 65.1, 98.9 and 166.7.
        double left = 101325 - UnitBook.toSi(inHg, "inHg", Dimension.PRESSURE);
        assertThat(UnitBook.fromSi(left, "mbar", Dimension.PRESSURE)).isCloseTo(mbarAbsolute, within(0.01));
    }

    @ParameterizedTest(name = "1 {0} = {2} SI, {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "in | LENGTH | 0.0254 | international inch 1959",
                "ft | LENGTH | 0.3048 | international foot 1959",
                "mil | LENGTH | 0.0000254 | a thousandth of an inch",
                "µm | LENGTH | 0.000001 | SI",
                "lb | MASS | 0.45359237 | international pound 1959",
                "oz | MASS | 0.028349523125 | lb/16",
                "US gal | VOLUME | 0.003785411784 | 231 in³",
                "US qt | VOLUME | 0.000946352946 | gal/4",
                "US pint | VOLUME | 0.000473176473 | gal/8",
                "US cup | VOLUME | 0.0002365882365 | gal/16",
                "US fl oz | VOLUME | 0.0000295735295625 | gal/128",
                "UK gal | VOLUME | 0.00454609 | Weights and Measures Act 1985",
                "UK qt | VOLUME | 0.0011365225 | gal/4",
                "UK pint | VOLUME | 0.00056826125 | gal/8",
                "UK cup | VOLUME | 0.000284130625 | half a pint, common practice",
                "UK fl oz | VOLUME | 0.0000284130625 | gal/160",
                "cc | VOLUME | 0.000001 | cm³",
                "cfm | FLOW | 0.0004719474432 | ft³/60 s",
                "m³/h | FLOW | 0.0002777777777777778 | 1/3600",
                "L/min | FLOW | 0.000016666666666666667 | 1/60000",
                "cP | VISCOSITY | 0.001 | mPa·s",
                "lb/gal | DENSITY | 119.82642731689663 | lb over US gal; NIST SP 811 prints 1.198 264 E+02, from memory",
                "g/mL | DENSITY | 1000 | SI",
                "% | FRACTION | 0.01 | definition",
                "kgf | FORCE | 9.80665 | standard gravity, 3rd CGPM 1901",
                "mm/min | SPEED | 0.000016666666666666667 | 1/60000",
                "kJ/mol | ENERGY_PER_MOLE | 1000 | SI",
                "mN/m | SURFACE_TENSION | 0.001 | SI",
                "h | TIME | 3600 | SI Brochure table 8",
                "d | TIME | 86400 | SI Brochure table 8",
                "°F | TEMPERATURE_DIFFERENCE | 0.5555555555555556 | 5/9"
            })
    void oneUnitInSi(String unit, Dimension d, double si, String source) {
        assertThat(source).isNotBlank();
        assertThat(UnitBook.toSi(1, unit, d)).isCloseTo(si, within(si * ROUNDING));
        assertThat(UnitBook.fromSi(si, unit, d)).isCloseTo(1, within(ROUNDING));
    }

    @ParameterizedTest(name = "{0} {1} = {2} K")
    @CsvSource({
        "0, °C, 273.15",
        "23, °C, 296.15",
        "32, °F, 273.15",
        "212, °F, 373.15",
        "-40, °F, 233.15",
        "-459.67, °F, 0",
        "77, °F, 298.15"
    })
    void temperaturesAreExactDecimals(double value, String unit, double kelvin) {
        assertThat(UnitBook.toSi(value, unit, Dimension.TEMPERATURE)).isEqualTo(kelvin);
        assertThat(UnitBook.fromSi(kelvin, unit, Dimension.TEMPERATURE)).isEqualTo(value);
    }

    @Test
    void wholeUnitsDoNotPickUpRoundingOnTheWay() {
        assertThat(UnitBook.toSi(3, "mm", Dimension.LENGTH)).isEqualTo(0.003);
        assertThat(UnitBook.toSi(5, "in", Dimension.LENGTH)).isEqualTo(0.127);
        assertThat(UnitBook.toSi(7, "mL", Dimension.VOLUME)).isEqualTo(0.000007);
        assertThat(UnitBook.toSi(1, "US gal", Dimension.VOLUME)).isEqualTo(0.003785411784);
    }

    @Test
    void aUnitOfAnotherDimensionIsAFaultOfTheCaller() {
        assertThat(UnitBook.knows("kg", Dimension.TIME)).isFalse();
        assertThat(UnitBook.knows("Pa.s", Dimension.PRESSURE)).isFalse();
        assertThatThrownBy(() -> UnitBook.toSi(1, "kg", Dimension.TIME)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Dimension.named("colour")).hasMessageContaining("temperature-difference");
    }

    @Test
    void everyDimensionKnowsItsSiUnitAndItsName() {
        for (Dimension d : Dimension.values()) {
            assertThat(Dimension.named(d.id())).isEqualTo(d);
            assertThat(UnitBook.toSi(2.5, d.siUnit(), d)).isEqualTo(2.5);
        }
    }
}
