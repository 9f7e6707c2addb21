package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatioReaderTest {
    private static Ratio ok(String typed, boolean prompt) {
        RatioReading r = RatioReader.read(typed, prompt);
        assertThat(r).as(typed + " -> " + r).isInstanceOf(Ratio.class);
        return (Ratio) r;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "10:1 | 10 | 1 | -",
                "10 to 1 | 10 | 1 | -",
                "100:10 | 100 | 10 | -",
                "100/10 | 100 | 10 | -",
                "70:100 | 70 | 100 | -",
                "100A:90B by weight | 100 | 90 | weight",
                "100A to 90B by weight | 100 | 90 | weight",
                "1A:1B by volume | 1 | 1 | volume",
                "1:1 vol | 1 | 1 | volume",
                "10 parts to 1 | 10 | 1 | -",
                "10 parts resin to 1 part hardener | 10 | 1 | -",
                "10 parts A to 1 part B by weight | 10 | 1 | weight",
                "90B:100A | 100 | 90 | -",
                "equal parts | 1 | 1 | -",
                "1.5 : 1 | 1.5 | 1 | -",
                "1,5:1 | 1.5 | 1 | -",
                "1/2 to 1 | 0.5 | 1 | -",
                "1 1/2 : 1 | 1.5 | 1 | -",
                "100 g to 10 g | 100 | 10 | weight",
                "1 kg : 100 g | 10 | 1 | weight",
                "30 ml : 10 ml | 30 | 10 | volume",
                "by weight 10:1 | 10 | 1 | weight",
                "10:1 (by weight) | 10 | 1 | weight",
                "10:1 w/w | 10 | 1 | weight",
                "50/50 | 50 | 50 | -",
                "500:1 | 500 | 1 | -",
                "1:500 | 1 | 500 | -",
                "ten to one | 10 | 1 | -",
                "100 pbw A : 90 pbw B | 100 | 90 | weight",
                "1,200:100 | 1200 | 100 | -"
            })
    void ratios(String typed, double first, double second, String by) {
        Ratio r = ok(typed, true);
        assertThat(r.first()).isCloseTo(first, within(1e-9));
        assertThat(r.second()).isCloseTo(second, within(1e-9));
        assertThat(r.by()).isEqualTo(by == null ? "" : by);
        assertThat(r.percent()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2%", "2 %", "2 pct", "2 per cent", "2 percent", "2 % of base", "2% of resin", "2 % hardener"})
    void aPercentageIsOfTheBase(String typed) {
        Ratio r = ok(typed, true);
        assertThat(r.first()).isEqualTo(100);
        assertThat(r.second()).isEqualTo(2);
        assertThat(r.percent()).isTrue();
        assertThat(r.echo().replace('\u00a0', ' ')).isEqualTo("2 % of base (100:2)");
    }

    @Test
    void tenPercentOfTheTotalIsNotTenPercentOfTheBase() {
        Ratio total = ok("10 % of total", true);
        assertThat(total.first()).isEqualTo(90);
        assertThat(total.second()).isEqualTo(10);
        RatioReading asked = RatioReader.read("10 %", true);
        assertThat(asked).isInstanceOf(Ask.class);
        for (String meaning : ((Ask) asked).meanings()) {
            ok(meaning, true);
        }
        assertThat(ok("10 %", false).first()).isEqualTo(100);
        assertThat(ok("1 % by weight", true).by()).isEqualTo("weight");
    }

    @Test
    void dropsAreWeighedInstead() {
        RatioReading r = RatioReader.read("10 drops per ounce", true);
        assertThat(r).isInstanceOf(Ask.class);
        assertThat(((Ask) r).sentence()).contains("weigh");
        for (String meaning : ((Ask) r).meanings()) {
            ok(meaning, true);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0:1",
                "1:0",
                "-1:1",
                "501:1",
                "1:501",
                "10",
                "10:",
                ":1",
                "1:1:1",
                "abc",
                "NaN:1",
                "1e999:1",
                "100A:90A",
                "100 g : 90 ml",
                "100 g : 90",
                "0 %",
                "100 % of total",
                "-2 %",
                "0.1 %",
                "",
                "10 pigs to 1"
            })
    void nonsenseIsRefused(String typed) {
        RatioReading r = RatioReader.read(typed, true);
        assertThat(r).as(typed + " -> " + r).isInstanceOf(Bad.class);
        assertThat(((Bad) r).sentence()).startsWith("I read ").contains("10:1");
    }

    @Test
    void notKnowingIsAnAnswer() {
        assertThat(RatioReader.read("dunno", true)).isEqualTo(new DontKnow());
        assertThat(RatioReader.read(null, false)).isEqualTo(new DontKnow());
    }
}
