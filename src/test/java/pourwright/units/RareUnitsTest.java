package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units outside the table are read by the units library; the factors are those of the SI prefixes (SI Brochure, 9th ed.). */
class RareUnitsTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvSource({"3 dag, MASS, g, 0.03", "2 hL, VOLUME, L, 0.2", "5 dm, LENGTH, mm, 0.5"})
    void theLibraryReadsWhatTheTableDoesNotHold(String typed, Dimension d, String own, double si) {
        Reading r = QuantityReader.read(typed, new Expect(d, own, 1e-9, 1e9, "1 " + own, true, true));
        assertThat(r).isInstanceOf(Read.class);
        assertThat(((Read) r).typicalSi()).isCloseTo(si, within(si * ROUNDING));
    }

    @Test
    void aWordThatIsNoUnitStaysBad() {
        Expect mass = new Expect(Dimension.MASS, "g", 1, 1e6, "1 kg", true, false);
        assertThat(QuantityReader.read("3 zonk", mass)).isInstanceOf(Bad.class);
        assertThat(QuantityReader.read("3 daPa", mass)).isInstanceOf(Bad.class);
    }
}
