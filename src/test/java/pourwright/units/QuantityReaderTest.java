package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type, row by row of the trade's habits, and what it must come to. */
class QuantityReaderTest {
    private static Read ok(String typed, Expect e) {
        Reading r = QuantityReader.read(typed, e);
        assertThat(r).as(typed + " -> " + r).isInstanceOf(Read.class);
        return (Read) r;
    }

    private static Ask ask(String typed, Expect e) {
        Reading r = QuantityReader.read(typed, e);
        assertThat(r).as(typed + " -> " + r).isInstanceOf(Ask.class);
        return (Ask) r;
    }

    private static String bad(String typed, Expect e) {
        Reading r = QuantityReader.read(typed, e);
        assertThat(r).as(typed + " -> " + r).isInstanceOf(Bad.class);
        return ((Bad) r).sentence();
    }

    private static void reads(String typed, Expect e, double value, String unit) {
        Read r = ok(typed, e);
        double si = UnitBook.toSi(value, unit, e.dimension());
        assertThat(r.typicalSi()).as(typed).isCloseTo(si, within(Math.abs(si) * 1e-12));
        assertThat(r.lowSi()).as(typed).isCloseTo(si, within(Math.abs(si) * 1e-12));
        assertThat(r.highSi()).as(typed).isCloseTo(si, within(Math.abs(si) * 1e-12));
    }

    private static void spans(String typed, Expect e, double low, double high, String unit) {
        Read r = ok(typed, e);
        double lowSi = UnitBook.toSi(low, unit, e.dimension());
        double highSi = UnitBook.toSi(high, unit, e.dimension());
        assertThat(r.lowSi()).as(typed).isCloseTo(lowSi, within(Math.abs(lowSi) * 1e-9));
        assertThat(r.highSi()).as(typed).isCloseTo(highSi, within(Math.abs(highSi) * 1e-9));
        assertThat(r.typicalSi()).as(typed).isBetween(r.lowSi(), r.highSi());
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1/2 cup | 0.5 | US cup",
                "1 1/2 pint | 1.5 | US pint",
                "1-1/2 gal | 1.5 | US gal",
                "½ cup | 0.5 | US cup",
                "1½ qt | 1.5 | US qt",
                "1 ½ qt | 1.5 | US qt",
                "2 UK pints | 2 | UK pint",
                "1 imp. gallon | 1 | UK gal",
                "1 imperial gallon | 1 | UK gal",
                "0.5l | 0.5 | L",
                "500ml | 500 | mL",
                "500cc | 500 | cc",
                "16 oz | 16 | US fl oz",
                "16 fl. oz. | 16 | US fl oz",
                "1 qt | 1 | US qt",
                "1 gal | 1 | US gal",
                "1,5 l | 1.5 | L",
                "1,200 ml | 1200 | mL",
                "1 200 ml | 1200 | mL",
                "1 200 ml | 1200 | mL",
                "1.200,5 ml | 1200.5 | mL",
                "0,125 L | 0.125 | L",
                ".5 L | 0.5 | L",
                "5. L | 5 | L",
                "1e-1 L | 0.1 | L",
                "1 x 10^2 mL | 100 | mL",
                "2 Litres | 2 | L",
                "2 LITRES. | 2 | L",
                "half a litre | 0.5 | L",
                "a pint | 1 | US pint",
                "two cups | 2 | US cup",
                "one and a half cups | 1.5 | US cup",
                "0.01 m3 | 0.01 | m³",
                "0.01 m^3 | 0.01 | m³",
                "100 cu in | 100 | in³",
                "a quarter of a gallon | 0.25 | US gal"
            })
    void volumes(String typed, double value, String unit) {
        reads(typed, Questions.CUP, value, unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "3/4\" | 0.75 | in",
                "5-1/2\" | 5.5 | in",
                "5 1/2 in | 5.5 | in",
                "5'3\" | 63 | in",
                "5' 3\" | 63 | in",
                "5'-3\" | 63 | in",
                "5 ft 3 in | 63 | in",
                "5ft3 | 63 | in",
                "5 ft 3 | 63 | in",
                "5 feet and 3 inches | 63 | in",
                "5'3-1/2\" | 63.5 | in",
                "2' | 2 | ft",
                "2 ft | 2 | ft",
                "30 CM | 30 | cm",
                "20mm | 20 | mm",
                "20 | 20 | mm",
                "1.5 m | 1.5 | m",
                "½'' | 0.5 | in",
                "1 m 20 cm | 120 | cm",
                "500 mil | 500 | mil",
                "3’ 2” | 38 | in",
                "300 millimetres | 300 | mm"
            })
    void lengths(String typed, double value, String unit) {
        reads(typed, Questions.BOX, value, unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "10m | 10 | min",
                "10 min | 10 | min",
                "10' | 10 | min",
                "10 mins. | 10 | min",
                "10 Minutes | 10 | min",
                "4 hr | 4 | h",
                "4h | 4 | h",
                "1 h 30 min | 90 | min",
                "1h30 | 90 | min",
                "1h30m | 90 | min",
                "1 hour and 30 minutes | 90 | min",
                "1:30 h | 90 | min",
                "1:30 min | 90 | s",
                "0:45:00 | 45 | min",
                "a day | 1 | d",
                "half an hour | 30 | min",
                "an hour | 1 | h",
                "an hour and a half | 1.5 | h",
                "2 and a half hours | 2.5 | h",
                "three quarters of an hour | 45 | min",
                "90 s | 90 | s",
                "2 min 30 s | 150 | s",
                "10' 30\" | 630 | s",
                "1e2 s | 100 | s",
                "40 | 40 | min",
                "it is 40 min | 40 | min",
                "+5 min | 5 | min",
                "5-min | 5 | min",
                "twenty minutes | 20 | min"
            })
    void times(String typed, double value, String unit) {
        reads(typed, Questions.POT_LIFE, value, unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2lb | 2 | lb",
                "2 lbs | 2 | lb",
                "2# | 2 | lb",
                "2 lb 3 oz | 35 | oz",
                "16 oz | 16 | oz",
                "2kg | 2 | kg",
                "2 Kilos | 2 | kg",
                "1,200 | 1200 | g",
                "1,200 grammes | 1200 | g",
                "1 1/2 kg | 1.5 | kg"
            })
    void weights(String typed, double value, String unit) {
        reads(typed, Questions.BATCH, value, unit);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "about 300",
                "~300",
                "300ish",
                "300-ish",
                "300 ish",
                "roughly 300 g",
                "c. 300",
                "c300",
                "ca. 300 g",
                "around 300g",
                "approx. 300 g",
                "approximately 300 grams",
                "300 g or so",
                "≈ 300 g",
                "300 g approx",
                "about ~300",
                "maybe 300 g",
                "300ish g"
            })
    void aboutIsFifteenPercentEitherWay(String typed) {
        spans(typed, Questions.BATCH, 255, 345, "g");
        assertThat(ok(typed, Questions.BATCH).about()).isTrue();
        assertThat(ok(typed, Questions.BATCH).range()).isFalse();
        assertThat(plain(ok(typed, Questions.BATCH).echo())).isEqualTo("about 300 g (255 to 345)");
    }

    @Test
    void aboutIsShownBackWithItsEnds() {
        Read r = ok("about 5 min", Questions.POT_LIFE);
        assertThat(plain(r.echo())).isEqualTo("about 5 min (4.25 to 5.75)");
        assertThat(r.unit()).isEqualTo("min");
        assertThat(ok("about 1440", Questions.POT_LIFE).highSi()).isEqualTo(86400);
        assertThat(ok("about .5 L", Questions.CUP).typicalSi()).isEqualTo(0.0005);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "300-400", "300 to 400", "between 300 and 400", "300..400 g", "300 g to 400 g", "300g-400g",
                        "300 – 400 g", "from 300 to 400 grams",
                "300...400", "300…400 g", "300 g to 400", "0.3 to 0.4 kg", "between 300 g and 400 g", "300 or 400 g",
                        "350 ± 50 g", "350 +/- 50",
                "350 g plus or minus 50", "350g±50g", "300 -400"
            })
    void ranges(String typed) {
        spans(typed, Questions.BATCH, 300, 400, "g");
        assertThat(ok(typed, Questions.BATCH).typicalSi()).isCloseTo(0.35, within(1e-12));
    }

    @Test
    void aToleranceCanBeAShareAndARangeCanMixUnits() {
        spans("350 g ± 10 %", Questions.BATCH, 315, 385, "g");
        spans("30 s to 2 min", Questions.POT_LIFE, 0.5, 2, "min");
        spans("1/2 to 3/4\"", Questions.BOX, 12.7, 19.05, "mm");
        spans("50 ± 5 %", Questions.HUMIDITY, 45, 55, "%");
        spans("20 ± 2 °C", Questions.ROOM, 18, 22, "°C");
        spans("68 ± 2 °F", Questions.ROOM, 66, 70, "°F");
        assertThat(ok("3 to 5 min", Questions.POT_LIFE).range()).isTrue();
        assertThat(plain(ok("3 to 5 min", Questions.POT_LIFE).echo())).isEqualTo("3 to 5 min");
    }

    @Test
    void aRangeThatRunsBackwardsIsNamed() {
        assertThat(plain(bad("400-300 g", Questions.BATCH)))
                .contains("from 400 g to 300 g")
                .contains("smaller value first")
                .contains("500 g");
        spans("-29 to -28 inHg", Questions.GAUGE, 28, 29, "inHg");
        spans("-28 to -29 inHg", Questions.GAUGE, 28, 29, "inHg");
        spans("-28 ± 1 inHg", Questions.GAUGE, 27, 29, "inHg");
        spans("3 ± 20 inHg", Questions.GAUGE, 0, 23, "inHg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "29\" | 29 | inHg", "29 inHg | 29 | inHg", "-29 | 29 | inHg", "29 in | 29 | inHg",
                        "29 inches of mercury | 29 | inHg",
                "-29 \"Hg | 29 | inHg", "-1 bar | 1 | bar", "-0.95 bar | 0.95 | bar", "−0.98 bar | 0.98 | bar",
                        "-980 mbar | 980 | mbar",
                "25 torr | 25 | torr", "25 mmHg | 25 | mmHg", "vacuum of 25 mmHg | 25 | mmHg",
                        "29.9 inHg | 29.9 | inHg", "2 kPa | 2 | kPa",
                "3000 micron | 3000 | micron", "3000 microns | 3000 | micron", "minus 28 inHg | 28 | inHg",
                        "28 in. Hg | 28 | inHg"
            })
    void gaugeReadingsIgnoreTheirSign(String typed, double value, String unit) {
        reads(typed, Questions.GAUGE, value, unit);
    }

    @Test
    void aBareGaugeFigureAtAPromptIsAskedAboutUnlessItsSignTells() {
        reads("-0.95", Questions.GAUGE_PROMPT, 0.95, "bar");
        reads("-29", Questions.GAUGE_PROMPT, 29, "inHg");
        assertThat(ask("29", Questions.GAUGE_PROMPT).meanings()).contains("29\u00a0inHg", "29\u00a0mbar");
        assertThat(ask("40\"", Questions.GAUGE_PROMPT).meanings()).containsExactly("40\u00a0inH₂O");
        assertThat(ask("-980", Questions.GAUGE_PROMPT).meanings()).containsExactly("980\u00a0mbar");
        reads("29", Questions.GAUGE, 29, "inHg");
    }

    @Test
    void whatAPressureIsCountedFromIsKept() {
        assertThat(ok("20 mbar abs", Questions.GAUGE).unit()).isEqualTo("mbar abs");
        assertThat(ok("20 mbar absolute", Questions.TARGET).typicalSi()).isEqualTo(2000);
        assertThat(ok("20 mbara", Questions.TARGET).typicalSi()).isEqualTo(2000);
        assertThat(UnitBook.toSi(1, "mbar abs", Dimension.PRESSURE)).isEqualTo(100);
        assertThat(ok("3 barg", Questions.POT).typicalSi()).isEqualTo(300000);
        assertThat(ask("40 psia", Questions.POT).sentence()).contains("counts from local air");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "40 psi | 40 | psi",
                "40 lb | 40 | psi",
                "40# | 40 | psi",
                "40 lbs | 40 | psi",
                "40 psig | 40 | psi",
                "3 bar | 3 | bar",
                "3 kg | 3 | kgf/cm²",
                "3 atm | 3 | atm",
                "300 kPa | 300 | kPa",
                "3 | 3 | bar",
                "0.3 MPa | 0.3 | MPa"
            })
    void potPressures(String typed, double value, String unit) {
        reads(typed, Questions.POT, value, unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 micron | 5 | micron",
                "50 micron | 50 | micron",
                "500 micron | 500 | micron",
                "2 kPa | 2 | kPa",
                "25 torr | 25 | torr",
                "25 | 25 | mbar",
                "500 mtorr | 500 | micron",
                "20 hPa | 20 | mbar",
                "5 Pa | 5 | Pa"
            })
    void absolutePressures(String typed, double value, String unit) {
        reads(typed, Questions.TARGET, value, unit);
    }

    @Test
    void fiveHundredMicronIsTwoThirdsOfAMillibar() {
        assertThat(ok("500 micron", Questions.TARGET).typicalSi()).isCloseTo(66.66, within(0.01));
    }

    @Test
    void anAbsoluteQuestionDoesNotTakeAGaugeReadingInSilence() {
        assertThat(ask("-0.98 bar", Questions.TARGET).sentence())
                .contains("absolute")
                .contains("local air")
                .contains("At sea level");
        assertThat(ask("-0.98 bar", Questions.TARGET).meanings()).containsExactly("33.3\u00a0mbar\u00a0abs");
        assertThat(bad("-0.98 bar", Questions.BAROMETER)).contains("gauge reading");
        assertThat(bad("29.9 inHg", Questions.TARGET)).contains("a dial cannot tell");
        assertThat(bad("-29", Questions.TARGET)).contains("negative");
        assertThat(ask("29 inHg", Questions.TARGET).meanings())
                .containsExactly("31.2\u00a0mbar\u00a0abs", "29\u00a0inHg\u00a0abs");
        assertThat(ask("98 % vacuum", Questions.TARGET).meanings()).containsExactly("20.3\u00a0mbar\u00a0abs");
        assertThat(ask("98%", Questions.GAUGE).meanings()).containsExactly("29.3\u00a0inHg");
        assertThat(ask("980 mbar vacuum", Questions.TARGET).meanings()).containsExactly("33.3\u00a0mbar\u00a0abs");
        assertThat(ask("vacuum 25 mmHg", Questions.TARGET).meanings())
                .containsExactly("980\u00a0mbar\u00a0abs", "25\u00a0mmHg\u00a0abs");
        assertThat(ask("28 to 29 inHg", Questions.TARGET).meanings())
                .containsExactly("31.2 to 65.1\u00a0mbar\u00a0abs", "28 to 29\u00a0inHg\u00a0abs");
        reads("29 inHg abs", Questions.TARGET, 29, "inHg");
        reads("29.92 inHg", Questions.BAROMETER, 29.92, "inHg");
        for (String meaning : ask("29 inHg", Questions.TARGET).meanings()) {
            ok(meaning, Questions.TARGET);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3cfm | 3 | cfm",
                "3 CFM | 3 | cfm",
                "5 cuft | 5 | cfm",
                "80 l/min | 80 | L/min",
                "4.8 m3/h | 4.8 | m³/h",
                "4.8 m³/h | 4.8 | m³/h",
                "1.5 | 1.5 | L/s",
                "3 cubic feet per minute | 3 | cfm",
                "80 litres per minute | 80 | L/min",
                "80 lpm | 80 | L/min"
            })
    void pumpSpeeds(String typed, double value, String unit) {
        reads(typed, Questions.PUMP, value, unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "75F | 75 | °F",
                "24C | 24 | °C",
                "24° | 24 | °C",
                "24 deg | 24 | °C",
                "24 degrees C | 24 | °C",
                "297K | 297 | K",
                "24 | 24 | °C",
                "75 | 75 | °F",
                "75° | 75 | °F",
                "70 fahrenheit | 70 | °F",
                "21.5 °C | 21.5 | °C",
                "21 ºC | 21 | °C",
                "21 ℃ | 21 | °C"
            })
    void aRoomTellsItsScale(String typed, double value, String unit) {
        reads(typed, Questions.ROOM, value, unit);
    }

    @Test
    void whereTheScaleCannotBeToldItIsAsked() {
        assertThat(ask("65", Questions.MOULD).meanings()).containsExactly("65\u00a0°C", "65\u00a0°F");
        assertThat(ask("65°", Questions.MOULD).meanings()).containsExactly("65\u00a0°C", "65\u00a0°F");
        assertThat(ask("20", Questions.MOULD).meanings()).containsExactly("20\u00a0°C");
        assertThat(ask("40", Questions.ROOM).meanings()).containsExactly("40\u00a0°C", "40\u00a0°F");
        assertThat(ask("about 65", Questions.MOULD).meanings()).containsExactly("about 65\u00a0°C", "about 65\u00a0°F");
        assertThat(ask("40 to 65", Questions.MOULD).meanings()).containsExactly("40 to 65\u00a0°C", "40 to 65\u00a0°F");
        for (String meaning : ask("40 to 65", Questions.MOULD).meanings()) {
            ok(meaning, Questions.MOULD);
        }
        Expect fromProgram = Questions.program(Dimension.TEMPERATURE, "°C", 0, 90, "40 °C");
        reads("65", fromProgram, 65, "°C");
    }

    @Test
    void aboutTheSameTemperatureMeansTheSameInEveryScale() {
        Read c = ok("about 20 °C", Questions.ROOM);
        Read f = ok("about 68 °F", Questions.ROOM);
        assertThat(c.lowSi()).isCloseTo(290.15, within(1e-9));
        assertThat(f.lowSi()).isCloseTo(c.lowSi(), within(1e-9));
        assertThat(f.highSi()).isCloseTo(c.highSi(), within(1e-9));
    }

    @Test
    void clockTimesWithoutAUnitAreAsked() {
        Ask a = ask("1:30", Questions.POT_LIFE);
        assertThat(a.meanings()).containsExactly("1\u00a0h\u00a030\u00a0min", "1\u00a0min\u00a030\u00a0s");
        for (String meaning : a.meanings()) {
            ok(meaning, Questions.POT_LIFE);
        }
        bad("1:75 h", Questions.POT_LIFE);
    }

    @Test
    void wordsForTimes() {
        spans("overnight", Questions.POT_LIFE, 12, 16, "h");
        spans("next day", Questions.POT_LIFE, 12, 16, "h");
        assertThat(bad("24/7", Questions.POT_LIFE)).contains("24/7");
    }

    @Test
    void wordsForThickness() {
        spans("like honey", Questions.VISCOSITY, 5, 10, "Pa·s");
        spans("thick as honey", Questions.VISCOSITY, 5, 10, "Pa·s");
        spans("motor oil", Questions.VISCOSITY, 200, 300, "mPa·s");
        spans("like water", Questions.VISCOSITY, 0.85, 1.15, "mPa·s");
        spans("cream", Questions.VISCOSITY, 10, 50, "mPa·s");
        spans("ketchup", Questions.VISCOSITY, 42500, 57500, "mPa·s");
        spans("like a paste", Questions.VISCOSITY, 100, 200, "Pa·s");
        assertThat(ok("honey", Questions.VISCOSITY).about()).isTrue();
        reads("3000 mPas", Questions.VISCOSITY, 3, "Pa·s");
        reads("3000 mPa.s", Questions.VISCOSITY, 3, "Pa·s");
        reads("3000 cps", Questions.VISCOSITY, 3, "Pa·s");
        reads("3 Pa s", Questions.VISCOSITY, 3, "Pa·s");
        reads("3 Pa.s", Questions.VISCOSITY, 3, "Pa·s");
    }

    @Test
    void wordsForWeatherAndHeight() {
        spans("damp", Questions.HUMIDITY, 68, 92, "%");
        spans("humid", Questions.HUMIDITY, 63.75, 86.25, "%");
        spans("rainy", Questions.HUMIDITY, 76.5, 100, "%");
        spans("dry", Questions.HUMIDITY, 29.75, 40.25, "%");
        reads("sea level", Questions.ALTITUDE, 0, "m");
        reads("5000'", Questions.ALTITUDE, 1524, "m");
        reads("5,000 ft", Questions.ALTITUDE, 1524, "m");
        reads("-100 m", Questions.ALTITUDE, -100, "m");
        assertThat(ask("up in the mountains", Questions.ALTITUDE).meanings()).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"50%", "50 %", "50 pct", "50 percent", "50 per cent", "50", "50 % RH"})
    void shares(String typed) {
        reads(typed, Questions.HUMIDITY, 50, "%");
    }

    @Test
    void otherCompoundUnits() {
        reads("1.1 g/ml", Questions.DENSITY, 1100, "kg/m³");
        reads("1.1 g/cm3", Questions.DENSITY, 1100, "kg/m³");
        reads("9.2 lb/gal", Questions.DENSITY, 9.2, "lb/gal");
        reads("1100 kg per m3", Questions.DENSITY, 1100, "kg/m³");
        reads("0.5 mbar l/s", Questions.LEAK, 0.5, "mbar L/s");
        reads("0.5 mbar·L/s", Questions.LEAK, 0.5, "mbar L/s");
        reads("2 mil", Questions.WALL, 2, "mil");
        assertThat(plain(ok("2 mil", Questions.WALL).echo())).isEqualTo("2 mil (0.0508 mm)");
        assertThat(plain(ok("1 gal", Questions.CUP).echo())).isEqualTo("1 US gal");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dk",
                "dunno",
                "don't know",
                "Don’t know",
                "?",
                "idk",
                "Unknown",
                "not sure",
                "no idea",
                "n/a",
                "skip",
                " SKIP. "
            })
    void notKnowingIsAnAnswer(String typed) {
        assertThat(QuantityReader.read(typed, Questions.POT_LIFE)).isEqualTo(new DontKnow());
    }

    @Test
    void nothingAtAllIsNotKnowingOnlyWhenItIsNull() {
        assertThat(QuantityReader.read(null, Questions.POT_LIFE)).isEqualTo(new DontKnow());
        bad("", Questions.POT_LIFE);
        bad("   ", Questions.POT_LIFE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "1e999",
                "-1e999 min",
                "1/0",
                "abc",
                "min",
                "5 furlongs",
                "5 min 6",
                "1,2,3",
                "1.2.3",
                "--5",
                "5 5",
                "3 to",
                "to 5",
                "5 to 6 to 7",
                "between 3",
                "up to 5 min",
                "< 5 min",
                "5 min!x",
                "about",
                "a",
                "1:30:99",
                "1e400 h",
                "5 min ± min"
            })
    void nonsenseIsRefusedWithAnExample(String typed) {
        assertThat(bad(typed, Questions.POT_LIFE)).contains("40\u00a0min").startsWith("I read ");
    }

    @Test
    void aRefusalSaysWhatWasReadWhatIsTakenAndAnExample() {
        assertThat(plain(bad("3000 min", Questions.POT_LIFE)))
                .isEqualTo("I read 3,000 min. This takes 0.5 to 1,440 min. Example: 40 min.");
        assertThat(plain(bad("50 h", Questions.POT_LIFE)))
                .isEqualTo("I read 50 h (3,000 min). This takes 0.5 to 1,440 min. Example: 40 min.");
        assertThat(plain(bad("5 kg", Questions.POT_LIFE)))
                .isEqualTo("I read \"5 kg\", which is a weight. Here I need a time in s, min, h, d. Example: 40 min.");
        assertThat(plain(bad("5 furlongs", Questions.POT_LIFE))).contains("do not know the unit \"furlongs\"");
        assertThat(plain(bad("3000", Questions.VISCOSITY))).contains("Did you mean 3,000 mPa·s?");
        assertThat(plain(bad("-300 °C", Questions.MOULD))).contains("colder than anything");
        assertThat(plain(bad("1 fl oz", Questions.BATCH))).contains("which is a volume");
    }

    @Test
    void whatIsQuotedCannotHurtATerminal() {
        String s = bad("\u001b[2J\u202evirus\u0007" + "x".repeat(100), Questions.POT_LIFE);
        assertThat(s)
                .doesNotContain("\u001b", "\u202e", "\u0007", "x".repeat(41))
                .contains("...");
        assertThat(bad("5".repeat(201), Questions.POT_LIFE)).contains("too long");
        assertThat(bad("😀".repeat(60), Questions.POT_LIFE)).contains("😀...\"");
    }

    @Test
    void aBareNumberAtAPromptIsTakenWhereOnlyOneUnitFits() {
        Expect bore = Questions.prompt(Dimension.LENGTH, "mm", 2, 60, "8 mm");
        reads("30", Questions.prompt(Dimension.LEAK, "mbar L/s", 0, 100, "0.1 mbar L/s"), 30, "mbar L/s");
        reads("50", Questions.prompt(Dimension.LENGTH, "mm", 20, 60, "8 mm"), 50, "mm");
        assertThat(ask("2", bore).meanings()).containsExactly("2\u00a0mm", "2\u00a0cm", "2\u00a0in");
    }

    /** A clock whose hours are beyond every number is no clock, and nothing about it is written out. */
    @ParameterizedTest
    @ValueSource(strings = {"1e94001:3", "1e94001:30,-½", "9e999:59:59", "1e999", "1e999 to 1e999 h"})
    void numbersBeyondAllBoundsAreRefusedInWords(String typed) {
        assertThat(QuantityReader.read(typed, Questions.POT_LIFE)).isInstanceOf(Bad.class);
    }
}
