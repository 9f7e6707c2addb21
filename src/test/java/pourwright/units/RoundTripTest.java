package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that hold for every value and every text, tried on seeded random ones. */
class RoundTripTest {
    private static final long SEED = 20_260_817;
    private static final String NASTY =
            "0123456789.,-–+/:'\"#%°±~<>()eE×x^ \t\u00a0\u0000\u001b\u202e½¾³²µμ·⁄……minhrstdLlkgoz cfbarHgtopsiAaBbish,½İıſK\ud83d\ude00\ud800to..andabout";

    /** Pieces of sense, so that random texts get deep into the grammar and not only to its first refusal. */
    private static final String[] PIECES = {
        "3",
        "1",
        "20",
        "0.5",
        "1,200",
        "1/2",
        "½",
        " ",
        " ",
        " ",
        "-",
        "..",
        " to ",
        "±",
        " and ",
        "between ",
        "about ",
        "~",
        "ish",
        "-1",
        "min",
        "h",
        "s",
        "m",
        "'",
        "\"",
        "in",
        "ft",
        "mm",
        "L",
        "oz",
        "gal",
        "g",
        "lb",
        "°",
        "C",
        "F",
        "mbar",
        "inHg",
        "bar",
        " abs",
        "g",
        "vacuum ",
        "psi",
        "%",
        "torr",
        "Pa.s",
        "cfm",
        "half an ",
        "a ",
        "1:30",
        "e3",
        "overnight",
        "honey",
        ":",
        "A",
        "B",
        " by weight",
        " of total"
    };

    @Test
    void whatIsPrintedReadsBackWithinTheShownRounding() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 20_000; i++) {
            UnitDef u = UnitTable.ALL.get(random.nextInt(UnitTable.ALL.size()));
            double value = value(random, u);
            double si = u.toSi(value);
            String shown = Show.quantity(si, u.symbol(), u.dimension());
            Expect e = Questions.anything(u.dimension(), u.symbol());
            Reading r = QuantityReader.read(shown, e);
            assertThat(r).as(shown + " -> " + r).isInstanceOf(Read.class);
            double back = u.fromSi(((Read) r).typicalSi());
            assertThat(Math.abs(back - value)).as(shown + " for " + value).isLessThanOrEqualTo(halfShownStep(value));
        }
    }

    /** Half of the last of three digits, and half of one where whole numbers are kept; conversion rounding on top. */
    private static double halfShownStep(double value) {
        double size = Math.abs(value);
        double step =
                size >= 100 && size < 9999.5 ? 1 : Math.pow(10, Math.floor(Math.log10(Math.max(size, 1e-300))) - 2);
        return 0.5 * step + 1e-9 * size + 1e-10;
    }

    private static double value(SplittableRandom random, UnitDef u) {
        if (u.scale() != UnitDef.Scale.LINEAR) {
            return random.nextInt(4) == 0 ? random.nextInt(-200, 500) : -200 + 700 * random.nextDouble();
        }
        double size = Math.pow(10, -7 + 16 * random.nextDouble());
        double v = random.nextInt(4) == 0 ? Math.rint(size) : size;
        boolean signed = u.dimension() != Dimension.PRESSURE && u.dimension() != Dimension.TEMPERATURE;
        return signed && random.nextBoolean() ? -v : v;
    }

    /** A value, a range, an "about", a tolerance: in every unit of every dimension, what is shown back is the same again. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void whatIsShownBackReadsBackToTheSame(Dimension d) {
        SplittableRandom random = new SplittableRandom(SEED + 1 + d.ordinal());
        List<UnitDef> units =
                UnitTable.ALL.stream().filter(u -> u.dimension() == d).toList();
        int[] kinds = new int[4];
        for (int i = 0; i < 4_000; i++) {
            UnitDef u = units.get(random.nextInt(units.size()));
            String typed = typed(random, u);
            for (boolean gauge : new boolean[] {false, true}) {
                Expect e = new Expect(d, u.symbol(), -1e12, 1e12, "", true, gauge && d == Dimension.PRESSURE);
                Reading first = QuantityReader.read(typed, e);
                assertThat(first).as(typed).isInstanceOf(Read.class);
                Read one = (Read) first;
                Reading again = QuantityReader.read(one.echo(), e);
                assertThat(again)
                        .as(typed + " -> " + one.echo() + " -> " + again)
                        .isInstanceOf(Read.class);
                same(typed, one, (Read) again);
                kinds[one.range() ? 1 : one.about() ? 2 : one.lowSi() < one.highSi() ? 3 : 0]++;
            }
        }
        assertThat(kinds).as("values, ranges, rough values and tolerances").doesNotContain(0);
    }

    private static void same(String typed, Read one, Read again) {
        assertThat(again.echo()).as(typed).isEqualTo(one.echo());
        assertThat(again.unit()).as(typed).isEqualTo(one.unit());
        assertThat(again.about()).as(typed).isEqualTo(one.about());
        assertThat(again.range()).as(typed).isEqualTo(one.range());
        close(typed, one.lowSi(), again.lowSi(), one);
        close(typed, one.typicalSi(), again.typicalSi(), one);
        close(typed, one.highSi(), again.highSi(), one);
    }

    /** The ends of a tolerance are shown with six digits, everything else with all that was typed. */
    private static void close(String typed, double expected, double actual, Read r) {
        boolean tolerance = !r.about() && !r.range() && r.lowSi() < r.highSi();
        double size = Math.max(Math.abs(r.lowSi()), Math.abs(r.highSi()));
        assertThat(actual).as(typed + " -> " + r.echo()).isCloseTo(expected, within((tolerance ? 1e-5 : 1e-12) * size));
    }

    /** Numbers as people type them: few digits, fractions, powers of ten. */
    private static String typed(SplittableRandom random, UnitDef u) {
        boolean temperature = u.dimension() == Dimension.TEMPERATURE;
        double low = temperature ? 1 + random.nextInt(900) : Math.pow(10, -3 + 9 * random.nextDouble());
        double high = low * (2.5 + random.nextDouble());
        String unit = u.symbol().equals("1") ? "" : " " + u.symbol();
        String a = number(random, low);
        return switch (random.nextInt(6)) {
            case 0 -> a + unit;
            case 1 -> a + " to " + number(random, high) + unit;
            case 2 -> "about " + a + unit;
            case 3 -> a + unit + " ± " + number(random, low / 20) + (temperature ? " K" : unit);
            case 4 -> random.nextInt(1, 400) + "/" + random.nextInt(2, 10) + unit;
            default -> "about " + a + " to " + number(random, high) + unit;
        };
    }

    private static String number(SplittableRandom random, double v) {
        BigDecimal d = new BigDecimal(v).round(new MathContext(1 + random.nextInt(8)));
        return random.nextInt(4) == 0 ? d.toString().replace("E+", "e").replace("E", "e") : d.toPlainString();
    }

    /** Two units in one amount or one range, and units with a note behind them. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "5'3\"",
                "2 ft 6 1/2 in",
                "about 5 ft 3",
                "5 ft 3 in ± 1 in",
                "1 m 20 cm",
                "20 mm to 1 in",
                "1 ft to 1 ft 6 in",
                "500 mil",
                "500 thou",
                "about 500 mil"
            })
    void lengthsInTwoUnitsReadBack(String typed) {
        Read one = (Read) QuantityReader.read(typed, Questions.BOX);
        same(typed, one, (Read) QuantityReader.read(one.echo(), Questions.BOX));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 h 30 min",
                "1h30",
                "1:30 h",
                "1:30 min",
                "0:45:00",
                "about 1 h 30",
                "30 s to 2 min",
                "1 h to 1 h 30 min",
                "overnight",
                "an hour and a half",
                "1 h 30 min ± 5 min"
            })
    void timesInTwoUnitsReadBack(String typed) {
        Read one = (Read) QuantityReader.read(typed, Questions.POT_LIFE);
        same(typed, one, (Read) QuantityReader.read(one.echo(), Questions.POT_LIFE));
    }

    @Test
    void ratiosReadBack() {
        SplittableRandom random = new SplittableRandom(SEED + 40);
        String[] by = {"", " by weight", " by volume"};
        String[][] names = {{"", ""}, {" resin", " hardener"}, {" base", " catalyst"}, {" water", " powder"}};
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            String a = number(random, Math.pow(10, 3 * random.nextDouble()));
            String b = number(random, Math.pow(10, 3 * random.nextDouble()));
            String[] name = names[random.nextInt(names.length)];
            String kind = by[random.nextInt(by.length)];
            String typed = switch (random.nextInt(6)) {
                case 0 -> a + " %" + kind;
                case 1 -> a + " % of total" + kind;
                case 2 -> b + name[1] + " : " + a + name[0] + kind;
                case 3 -> random.nextInt(1, 50) + "/" + random.nextInt(2, 10) + " to 1" + kind;
                case 4 -> "about " + a + name[0] + " to " + b + name[1] + kind;
                default -> a + name[0] + ":" + b + name[1] + kind;
            };
            RatioReading first = RatioReader.read(typed, random.nextBoolean());
            List<String> echoes = first instanceof Ratio r
                    ? List.of(r.echo())
                    : first instanceof Ask ask ? ask.meanings() : List.of();
            for (String echo : echoes) {
                RatioReading again = RatioReader.read(echo, true);
                assertThat(again).as(typed + " -> " + echo + " -> " + again).isInstanceOf(Ratio.class);
                if (first instanceof Ratio r) {
                    Ratio same = (Ratio) again;
                    assertThat(same.first()).as(typed).isCloseTo(r.first(), within(1e-12 * r.first()));
                    assertThat(same.second()).as(typed).isCloseTo(r.second(), within(1e-12 * r.second()));
                    assertThat(same.by()).isEqualTo(r.by());
                    assertThat(same.percent()).isEqualTo(r.percent());
                    assertThat(same.echo()).isEqualTo(r.echo());
                    read++;
                }
            }
        }
        assertThat(read).isGreaterThan(5_000);
    }

    @Test
    void noTextThrowsOrHangs() {
        Expect[] questions = {
            Questions.POT_LIFE,
            Questions.CUP,
            Questions.BOX,
            Questions.ALTITUDE,
            Questions.ROOM,
            Questions.MOULD,
            Questions.TARGET,
            Questions.GAUGE,
            Questions.GAUGE_PROMPT,
            Questions.POT,
            Questions.PUMP,
            Questions.VISCOSITY,
            Questions.HUMIDITY,
            Questions.anything(Dimension.NUMBER, "1")
        };
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            SplittableRandom random = new SplittableRandom(SEED + 2);
            int read = 0;
            for (int i = 0; i < 300_000; i++) {
                String text = nasty(random);
                Expect e = questions[random.nextInt(questions.length)];
                Reading r = QuantityReader.read(text, e);
                check(r, text, e);
                read += r instanceof Read ? 1 : 0;
                assertThat(RatioReader.read(text, random.nextBoolean())).isNotNull();
            }
            assertThat(read)
                    .as("texts that were understood, or the test shows little")
                    .isGreaterThan(3_000);
        });
    }

    private static void check(Reading r, String text, Expect e) {
        if (r instanceof Read read) {
            boolean sound = Double.isFinite(read.lowSi())
                    && read.lowSi() <= read.typicalSi()
                    && read.typicalSi() <= read.highSi()
                    && UnitBook.knows(read.unit(), e.dimension())
                    && e.fits(read.lowSi())
                    && e.fits(read.highSi());
            assertThat(sound).as(text + " -> " + read).isTrue();
        } else if (r instanceof Bad bad) {
            assertThat(unseen(bad.sentence())).as(text + " -> " + bad).isFalse();
        } else if (r instanceof Ask ask) {
            assertThat(ask.meanings()).as(text).isNotEmpty();
            for (String meaning : ask.meanings()) {
                Reading again = QuantityReader.read(meaning, e);
                assertThat(again).as(text + " -> " + ask + " -> " + again).isInstanceOf(Read.class);
            }
        } else {
            assertThat(r).isInstanceOf(DontKnow.class);
        }
    }

    private static boolean unseen(String s) {
        return s.codePoints().anyMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT);
    }

    private static String nasty(SplittableRandom random) {
        if (random.nextBoolean()) {
            StringBuilder sense = new StringBuilder();
            for (int n = 1 + random.nextInt(7); n > 0; n--) {
                sense.append(PIECES[random.nextInt(PIECES.length)]);
            }
            return sense.toString();
        }
        int length = random.nextInt(10) == 0 ? random.nextInt(220) : random.nextInt(14);
        StringBuilder s = new StringBuilder(length);
        while (s.length() < length) {
            s.append(NASTY.charAt(random.nextInt(NASTY.length())));
        }
        return s.toString();
    }

    @Test
    void theMachinesLanguageChangesNothing() {
        String[] typed = {
            "1,5 MIN", "1,200 s", "1.5 MINUTES", "4 HRS", "overnight", "IDK", "ABOUT 5 MIN", "3..5 MIN", "1 200 s"
        };
        String[] expected = new String[typed.length];
        String[] shown = new String[2];
        Locale before = Locale.getDefault();
        try {
            for (Locale locale :
                    new Locale[] {Locale.ROOT, new Locale("tr", "TR"), Locale.GERMANY, new Locale("ar", "EG")}) {
                Locale.setDefault(locale);
                for (int i = 0; i < typed.length; i++) {
                    String read =
                            QuantityReader.read(typed[i], Questions.POT_LIFE).toString();
                    assertThat(read).as(typed[i]).doesNotStartWith("Bad");
                    expected[i] = expected[i] == null ? read : expected[i];
                    assertThat(read).as(locale + " " + typed[i]).isEqualTo(expected[i]);
                }
                assertThat(QuantityReader.read("28 INHG", Questions.GAUGE)).isInstanceOf(Read.class);
                assertThat(RatioReader.read("1,5:1 BY WEIGHT", true)).isInstanceOf(Ratio.class);
                assertThat(Dimension.named("time").id()).isEqualTo("time");
                shown[0] = Show.quantity(1234.5, "mm", Dimension.LENGTH);
                shown[1] = shown[1] == null ? shown[0] : shown[1];
                assertThat(shown[0]).isEqualTo(shown[1]);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
