package pourwright.interview;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import pourwright.facts.Answer;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.RatioReader;

/**
 * Whatever is typed at whatever question: nothing throws, nothing hangs, and what is refused or asked back is one sentence.
 *
 * <p>The build tries 30,000 strings. {@code mvn test -Dtest=AnswersFuzzTest -Dpourwright.fuzz=1000000} tries a million;
 * {@code -Dpourwright.fuzz.seed} starts elsewhere. No speed is judged: a watchman only calls a string
 * hung when it has cost ten times what is allowed, counted in the thread's own work, so that a busy machine fails nothing.
 */
class AnswersFuzzTest {
    private static final int COUNT = Integer.getInteger("pourwright.fuzz", 30_000);
    private static final long SEED = Long.getLong("pourwright.fuzz.seed", 20_261_125);

    /** An answer may cost a few milliseconds of work; ten times that is a hang. */
    private static final long HUNG_NS = 10 * 5_000_000L;

    /** Strings that only load the classes, the units library among them. */
    private static final int WARM_UP = 3_000;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final long LOOK_MS = 20;

    private static final int VERY_LONG = 100_000;

    @Test
    void noAnswerThrowsOrHangs() throws InterruptedException {
        List<Question> questions = new ArrayList<>(Asked.K.base().questions());
        questions.addAll(Asked.K.observations());
        SplittableRandom random = new SplittableRandom(SEED);
        Soup soup = new Soup(random, questions);
        AtomicReference<Try> now = new AtomicReference<>();
        AtomicReference<Throwable> failed = new AtomicReference<>();
        int[] tally = new int[3];
        Thread reader = new Thread(
                () -> {
                    for (int i = -WARM_UP; i < COUNT && failed.get() == null; i++) {
                        Question q = questions.get(random.nextInt(questions.size()));
                        String text = soup.text(q);
                        Try one = new Try(i, q.id(), text, THREADS.getCurrentThreadCpuTime());
                        now.set(one);
                        try {
                            tally[readAll(q, text, random)]++;
                            if (one.hung(THREADS.getCurrentThreadCpuTime())) {
                                throw new AssertionError("it hung");
                            }
                        } catch (Throwable t) {
                            failed.set(new AssertionError(one.toString(), t));
                        }
                    }
                },
                "fuzz");
        reader.setDaemon(true);
        reader.start();
        while (reader.isAlive()) {
            reader.join(LOOK_MS);
            Try one = now.get();
            long workNs = THREADS.getThreadCpuTime(reader.getId());
            boolean hung = one != null && now.get().number() == one.number() && one.hung(workNs);
            assertThat(hung && failed.get() == null).as("hung at " + one).isFalse();
        }
        assertThat(failed.get()).isNull();
        assertThat(tally[0])
                .as("strings that were understood, or the test shows little")
                .isGreaterThan(COUNT / 50);
        assertThat(tally[1]).as("strings that were asked about").isGreaterThan(COUNT / 500);
    }

    /** One string at one question, and the work the thread had done before it. */
    private record Try(int number, String question, String text, long workNs) {
        boolean hung(long nowNs) {
            return number >= 0 && nowNs - workNs > HUNG_NS;
        }

        @Override
        public String toString() {
            return "try " + number + " of seed " + SEED + ", " + question + " > " + escaped(text);
        }
    }

    /** 0 understood, 1 asked about, 2 refused. */
    private static int readAll(Question q, String text, SplittableRandom random) {
        AnswerReader.Outcome o = Asked.READER.atPrompt(q, text);
        RatioReader.read(text, random.nextBoolean());
        Dimension d = Dimension.values()[random.nextInt(Dimension.values().length)];
        QuantityReader.read(text, new Expect(d, d.siUnit(), -1e6, 1e6, "", random.nextBoolean(), random.nextBoolean()));
        if (o instanceof AnswerReader.Understood u) {
            understood(q, u.answer());
            return 0;
        }
        AnswerReader.Again again = (AnswerReader.Again) o;
        assertThat(again.sentence()).isNotBlank().hasSizeLessThan(1_000);
        assertThat(again.sentence()
                        .codePoints()
                        .noneMatch(c -> Character.isISOControl(c)
                                || Character.getType(c) == Character.FORMAT
                                || Character.getType(c) == Character.SURROGATE))
                .as("what is shown can do a terminal no harm")
                .isTrue();
        for (String meaning : again.meanings()) {
            assertThat(Asked.READER.atPrompt(q, meaning)).as(meaning).isInstanceOf(AnswerReader.Understood.class);
        }
        return again.meanings().isEmpty() ? 2 : 1;
    }

    private static void understood(Question q, Answer a) {
        if (a instanceof Answer.Quantity v) {
            assertThat(Double.isFinite(v.si().low()) && Double.isFinite(v.si().high()))
                    .isTrue();
            assertThat(v.si().low()).isLessThanOrEqualTo(v.si().typical());
            assertThat(v.si().typical()).isLessThanOrEqualTo(v.si().high());
        } else if (a instanceof Answer.Ratio r) {
            assertThat(r.first() > 0 && r.second() > 0).isTrue();
        } else if (a instanceof Answer.Choice c && q.kind().equals("choice")) {
            assertThat(q.choice(c.id())).isPresent();
        } else if (a instanceof Answer.Several s) {
            s.ids().forEach(id -> assertThat(q.choice(id)).isPresent());
        }
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : text.substring(0, Math.min(text.length(), 300)).toCharArray()) {
            out.append(c >= ' ' && c < 127 ? String.valueOf(c) : String.format("\\u%04x", (int) c));
        }
        return out + (text.length() > 300 ? "... (" + text.length() + ")" : "");
    }

    /** Strings of many kinds: sense in pieces, its own words, nests, random Unicode, and very long ones. */
    private static final class Soup {
        private static final String[] PIECES = {
            "3",
            "1",
            "20",
            "0.5",
            "1,200",
            "1.200,5",
            "1/2",
            "½",
            "30/40",
            "10^-3",
            "x 10^",
            "e",
            "e400",
            "-",
            "–",
            "..",
            "…",
            " ",
            " ",
            " ",
            " to ",
            " and ",
            " or ",
            "between ",
            "from ",
            "about ",
            "~",
            "ish",
            "c. ",
            "±",
            "+/-",
            "give or take ",
            "a couple of ",
            "half an ",
            "twenty",
            "hundred ",
            "min",
            "h",
            "s",
            "m",
            "'",
            "\"",
            "in",
            "ft",
            "mm",
            "mil",
            "thou",
            "µm",
            "L",
            "oz",
            " weight",
            "fl oz",
            "gal",
            "imperial ",
            "pint",
            "cup",
            "g",
            "kg",
            "lb",
            "#",
            "°",
            "C",
            "F",
            "K",
            "mbar",
            "inHg",
            "bar",
            " abs",
            " vacuum",
            "psi",
            "%",
            "torr",
            "micron",
            "Pa.s",
            "cps",
            "cfm",
            "l/min",
            " at 60 Hz",
            "(",
            ")",
            ":",
            "/",
            "+",
            " per ",
            "A",
            "B",
            " resin ",
            " hardener",
            " water",
            " powder",
            " by weight",
            " of total",
            "drops",
            "overnight",
            "honey",
            "damp",
            "sea level",
            "shore ",
            "like ",
            "pulled ",
            "degassed for ",
            "dunno",
            "?",
            "no",
            "yes",
            "!",
            ".",
            ",",
            ";",
            "&"
        };
        private static final String[] NESTS = {
            "(", ")", "((", "))", "[", "]", "between ", "(about ", " and ", "1/", "/1", "±"
        };

        private final SplittableRandom random;
        private final List<String> words = new ArrayList<>();

        Soup(SplittableRandom random, List<Question> questions) {
            this.random = random;
            for (Question q : questions) {
                if (q.example() != null) {
                    words.add(q.example());
                }
                q.choices().forEach(c -> {
                    words.add(c.id());
                    words.add(c.text());
                    words.addAll(c.says());
                });
            }
            Asked.K.base().materials().values().forEach(m -> words.addAll(m.says()));
        }

        String text(Question q) {
            int kind = random.nextInt(1000);
            if (kind == 0) {
                return repeated(pick(PIECES), VERY_LONG);
            }
            if (kind == 1) {
                return repeated(own(q) + ", ", VERY_LONG);
            }
            if (kind < 30) {
                return repeated(random.nextBoolean() ? pick(NESTS) : pick(PIECES), random.nextInt(400));
            }
            if (kind < 250) {
                return unicode(random.nextInt(20));
            }
            if (kind < 450) {
                return garbled(own(q));
            }
            if (kind < 500) {
                return own(q) + pick(new String[] {", ", " and ", " ", "; "}) + own(q);
            }
            return pieces();
        }

        private String pieces() {
            StringBuilder s = new StringBuilder();
            for (int n = 1 + random.nextInt(8); n > 0; n--) {
                s.append(random.nextInt(12) == 0 ? pick(NESTS) : pick(PIECES));
            }
            return s.toString();
        }

        /** A word of the question asked, half of the time. */
        private String own(Question q) {
            if (random.nextBoolean() && !q.choices().isEmpty()) {
                Question.Choice c = q.choices().get(random.nextInt(q.choices().size()));
                return c.says().isEmpty()
                        ? c.id()
                        : c.says().get(random.nextInt(c.says().size()));
            }
            return random.nextBoolean() && q.example() != null ? q.example() : words.get(random.nextInt(words.size()));
        }

        private String garbled(String word) {
            StringBuilder s = new StringBuilder(word);
            for (int n = random.nextInt(3); n > 0 && s.length() > 0; n--) {
                int at = random.nextInt(s.length());
                switch (random.nextInt(3)) {
                    case 0 -> s.deleteCharAt(at);
                    case 1 -> s.insert(at, pick(PIECES));
                    default -> s.setCharAt(at, Character.toUpperCase(s.charAt(at)));
                }
            }
            return s.toString();
        }

        private String unicode(int length) {
            StringBuilder s = new StringBuilder();
            while (s.length() < length) {
                switch (random.nextInt(6)) {
                    case 0 -> s.append((char) random.nextInt(0x10000));
                    case 1 -> s.appendCodePoint(random.nextInt(0x110000));
                    case 2 -> s.append((char) random.nextInt(0x250));
                    case 3 -> s.append((char) (0x2000 + random.nextInt(0x300)));
                    default -> s.append(pick(PIECES));
                }
            }
            return s.toString();
        }

        private static String repeated(String piece, int length) {
            return piece.repeat(length / piece.length() + 1).substring(0, length);
        }

        private String pick(String[] from) {
            return from[random.nextInt(from.length)];
        }
    }
}
