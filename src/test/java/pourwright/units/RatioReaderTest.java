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
                "1A:1B by volume | 1 | 1 | volume",
                "1:1 vol | 1 | 1 | volume",
                "10 parts to 1 | 10 | 1 | -",
                "10 parts resin to 1 part hardener | 10 | 1 | -",
                "equal parts | 1 | 1 | -",
                "1.5 : 1 | 1.5 | 1 | -",
                "1,5:1 | 1.5 | 1 | -",
                "1/2 to 1 | 0.5 | 1 | -",
                "1 1/2 : 1 | 1.5 | 1 | -",
                "100 g to 10 g | 100 | 10 | weight",
                "1 kg : 100 g | 1000 | 100 | weight",
                "30 ml : 10 ml | 30 | 10 | volume",
                "by weight 10:1 | 10 | 1 | weight",
                "10:1 (by weight) | 10 | 1 | weight",
                "10:1 w/w | 10 | 1 | weight",
                "50/50 | 50 | 50 | -",
                "500:1 | 500 | 1 | -",
                "1:500 | 1 | 500 | -",
                "ten to one | 10 | 1 | -",
                "1 part hardener to 10 parts resin | 10 | 1 | -",
                "10 base to 1 catalyst by weight | 10 | 1 | weight",
                "100 g polyol : 90 g isocyanate | 100 | 90 | weight",
                "90 iso : 100 polyol | 100 | 90 | -",
                "100 A resin : 90 B hardener | 100 | 90 | -",
                "100 powder : 30 water | 30 | 100 | -",
                "30 water to 100 powder | 30 | 100 | -",
                "20 g per kg | 1000 | 20 | weight",
                "20 g hardener per kg resin | 1000 | 20 | weight",
                "1 kg : 33 g | 1000 | 33 | weight",
                "1/3 : 1 | 0.333333333333333333 | 1 | -",
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
    @CsvSource(
            delimiter = '|',
            value = {
                "100A:90B | 100 base : 90 hardener | 100 | 90",
                "90B:100A | 100 base : 90 hardener | 100 | 90",
                "100 pbw A : 90 pbw B | 100 base : 90 hardener by weight | 100 | 90",
                "10 parts A to 1 part B by weight | 10 base : 1 hardener by weight | 10 | 1",
                "2A1B | 2 base : 1 hardener | 2 | 1",
                "A:B = 100:90 | 100 base : 90 hardener | 100 | 90"
            })
    void whichCanIsAIsAsked(String typed, String meaning, double first, double second) {
        RatioReading asked = RatioReader.read(typed, true);
        assertThat(asked).as(typed + " -> " + asked).isInstanceOf(Ask.class);
        assertThat(((Ask) asked).meanings().get(0)).isEqualTo(meaning);
        for (String m : ((Ask) asked).meanings()) {
            ok(m, true);
        }
        Ratio turned = ok(((Ask) asked).meanings().get(1), true);
        assertThat(turned.first()).isEqualTo(second);
        assertThat(turned.second()).isEqualTo(first);
        Ratio told = ok(typed, false);
        assertThat(told.first()).isEqualTo(first);
        assertThat(told.second()).isEqualTo(second);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "about 10:1 | 10:1",
                "10-1 | 10:1",
                "~2 % | 2 % of base",
                "10 to about 1 by weight | 10:1 by weight",
                "100:40 to 45 | 100:40; 100:42.5; 100:45",
                "40-45 water to 100 powder | 40 water : 100 powder; 42.5 water : 100 powder; 45 water : 100 powder",
                "1-2 % | 1 % of base; 1.5 % of base; 2 % of base",
                "1 to 2 % by weight | 1 % of base by weight; 1.5 % of base by weight; 2 % of base by weight",
                "10 to 12 % of total | 10 % of total; 11 % of total; 12 % of total"
            })
    void aRoughRatioAndARangeAreAskedAbout(String typed, String meanings) {
        for (boolean prompt : new boolean[] {true, false}) {
            RatioReading asked = RatioReader.read(typed, prompt);
            assertThat(asked).as(typed + " -> " + asked).isInstanceOf(Ask.class);
            assertThat(String.join("; ", ((Ask) asked).meanings()).replace('\u00a0', ' '))
                    .isEqualTo(meanings);
            for (String m : ((Ask) asked).meanings()) {
                ok(m, true);
            }
        }
    }

    @Test
    void anAcceleratorIsNoHardener() {
        RatioReading r = RatioReader.read("1 % cobalt promoter", true);
        assertThat(r).isInstanceOf(Bad.class);
        assertThat(((Bad) r).sentence()).contains("never let it meet the peroxide");
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
                "10 pigs to 1",
                "10 resin : 1 base",
                "100 powder : 70",
                "1-2 : 3-4",
                "2 to 1 %"
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
