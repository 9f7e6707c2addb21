package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

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

    @Test
    void whatIsShownBackReadsBackToTheSameRange() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int i = 0; i < 5_000; i++) {
            double low = 1 + random.nextInt(400);
            double high = low + 1 + random.nextInt(400);
            Read first = (Read) QuantityReader.read(low + " to " + high + " min", Questions.POT_LIFE);
            Read again = (Read) QuantityReader.read(first.echo(), Questions.POT_LIFE);
            assertThat(again).isEqualTo(first);
        }
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
