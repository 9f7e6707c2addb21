package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowTest {
    private static String plain(String s) {
        return s.replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "86400 | min | TIME | 1,440 min",
                "255 | min | TIME | 4.25 min",
                "3119.7 | mbar | PRESSURE | 31.2 mbar",
                "101325 | mbar | PRESSURE | 1,013 mbar",
                "300000 | mbar | PRESSURE | 3,000 mbar",
                "0.0000508 | mm | LENGTH | 0.0508 mm",
                "0.00412 | L | VOLUME | 4.12 L",
                "0 | L | VOLUME | 0 L",
                "296.15 | °C | TEMPERATURE | 23 °C",
                "268.15 | °C | TEMPERATURE | -5 °C",
                "0.5 | % | FRACTION | 50 %",
                "0.123456 | 1 | FRACTION | 0.123",
                "1e-9 | m³ | VOLUME | 1e-9 m³",
                "12345.6 | Pa | PRESSURE | 12,300 Pa",
                "12345 | Pa | PRESSURE | 12,345 Pa",
                "0.05 | mbar L/s | LEAK | 0.5 mbar L/s",
                "999.6 | kg/m³ | DENSITY | 1,000 kg/m³"
            })
    void quantities(double si, String unit, Dimension d, String shown) {
        assertThat(plain(Show.quantity(si, unit, d))).isEqualTo(shown);
    }

    @Test
    void numberAndUnitAreNeverSplit() {
        assertThat(Show.quantity(0.5, "mbar L/s", Dimension.LEAK))
                .isEqualTo("5\u00a0mbar\u00a0L/s")
                .doesNotContain(" ");
        assertThat(Show.time(3900)).doesNotContain(" ");
    }

    @Test
    void rangesShowTheDigitsTheirSpreadAllows() {
        assertThat(plain(Show.range(0.0031, 0.0041, 0.0052, "L", Dimension.VOLUME)))
                .isEqualTo("4.1 L (3.1 to 5.2)");
        assertThat(plain(Show.range(0.004, 0.004, 0.004, "L", Dimension.VOLUME)))
                .isEqualTo("4 L");
        assertThat(plain(Show.range(0.00410001, 0.00410002, 0.00410003, "L", Dimension.VOLUME)))
                .isEqualTo("4.1 L");
        assertThat(plain(Show.range(290.15, 296.15, 301.15, "°C", Dimension.TEMPERATURE)))
                .isEqualTo("23 °C (17 to 28)");
        assertThat(plain(Show.range(0, 1000, Double.POSITIVE_INFINITY, "s", Dimension.TIME)))
                .isEqualTo("1,000 s (0 to without limit)");
    }

    @Test
    void timesAreWrittenAsOnAClock() {
        assertThat(Show.time(0)).isEqualTo("0:00");
        assertThat(Show.time(320)).isEqualTo("5:20");
        assertThat(Show.time(59.6)).isEqualTo("1:00");
        assertThat(Show.time(3599.4)).isEqualTo("59:59");
        assertThat(plain(Show.time(3599.6))).isEqualTo("1 h 00 min");
        assertThat(plain(Show.time(3900))).isEqualTo("1 h 05 min");
        assertThat(Show.time(-80)).isEqualTo("-1:20");
        assertThat(Show.time(Double.NaN)).isEqualTo("unknown");
    }

    @ParameterizedTest
    @CsvSource({
        "60, TIME, s",
        "90, TIME, min",
        "5400, TIME, min",
        "5401, TIME, h",
        "0.5, MASS, g",
        "1, MASS, kg",
        "0.0005, VOLUME, mL",
        "0.001, VOLUME, L",
        "0.3, LENGTH, mm",
        "1, LENGTH, m",
        "2000, PRESSURE, mbar",
        "0.5, VISCOSITY, mPa·s",
        "3, VISCOSITY, Pa·s"
    })
    void theUnitSuitsTheSize(double si, Dimension d, String unit) {
        assertThat(Show.bestUnit(si, d)).isEqualTo(unit);
    }
}
