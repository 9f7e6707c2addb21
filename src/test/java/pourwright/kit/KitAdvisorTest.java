package pourwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.advice.BadAnswer;
import pourwright.advice.Finding;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Invented kits whose fault is known: the test must name it, and say so when the readings cannot tell. */
class KitAdvisorTest {
    private static final Path DIR = Path.of("knowledge");
    private static final Knowledge KNOWLEDGE = KnowledgeReader.withObservations(DIR, KnowledgeReader.read(DIR));
    private static final AnswersJson READER = new AnswersJson(KNOWLEDGE);
    private static final double[] FALL_S = {0, 10, 20, 30, 45, 60, 75, 90, 120, 150, 180, 240};
    private static final double[] RISE_S = {0, 60, 120, 180, 240, 300, 420, 540, 660, 780};
    private static final double LITRES = 20;
    private static final double MBAR = 100;

    private static Answers kit(String... words) {
        Answers all = Answers.NONE;
        for (String word : new String[] {
            "chamber-volume=20 L",
            "gauge-kind=absolute",
            "gauge-step=0.1 mbar",
            "pump-kind=oil-vane-one-stage",
            "pump-speed=1.4 L/s",
            "pump-ultimate=2 mbar",
            "hose-bore=12 mm",
            "hose-length=1 m",
            "material=tin-silicone"
        }) {
            all = with(all, word);
        }
        for (String word : words) {
            all = with(all, word);
        }
        return all;
    }

    private static Answers with(Answers answers, String word) {
        int at = word.indexOf('=');
        return READER.with(answers, word.substring(0, at), word.substring(at + 1));
    }

    /** What a gauge of 0.1 mbar shows of a course, with half a per cent of noise. */
    private static String read(DoubleUnaryOperator mbar, double[] timesS, long seed) {
        Random random = new Random(seed);
        StringBuilder out = new StringBuilder();
        for (double t : timesS) {
            double shown = mbar.applyAsDouble(t) * (1 + 0.003 * random.nextGaussian());
            out.append(out.isEmpty() ? "" : "; ")
                    .append(String.format(Locale.ROOT, "%.0f s %.1f mbar", t, Math.min(1013, shown)));
        }
        return out.toString();
    }

    private static String fall(double litresPerS, double baseMbar, long seed) {
        return "pump-down-readings="
                + read(t -> baseMbar + (1013 - baseMbar) * Math.exp(-litresPerS * t / LITRES), FALL_S, seed);
    }

    private static String leak(double mbarLitresPerS, double fromMbar, long seed) {
        return "rise-readings=" + read(t -> fromMbar + mbarLitresPerS * t / LITRES, RISE_S, seed);
    }

    private static String damp(double byMbar, double timeConstantS, long seed) {
        return "rise-readings=" + read(t -> 5 + byMbar * (1 - Math.exp(-t / timeConstantS)), RISE_S, seed);
    }

    private static KitAdvice advise(String... words) {
        return KitAdvisor.advise(kit(words), KNOWLEDGE);
    }

    private static java.util.List<String> ids(KitAdvice a) {
        return a.findings().stream().map(Finding::id).toList();
    }

    private static double value(KitAdvice a, String figure) {
        return a.figure(figure).orElseThrow().si().typical();
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void aSoundKitIsFitForTheWork(long seed) {
        KitAdvice a = advise(fall(1.3, 2.3, seed), leak(0.4, 3, seed + 10));
        assertThat(a.verdict()).isEqualTo(Verdict.GO);
        assertThat(ids(a)).contains("kit-deep-enough", "kit-speed-as-rated", "kit-leak-small");
        assertThat(value(a, "effective-speed-measured")).isCloseTo(1.3e-3, within(1e-4));
        assertThat(value(a, "base-pressure-measured")).isCloseTo(2.3 * MBAR, within(0.3 * MBAR));
        assertThat(value(a, "leak-rate-measured")).isCloseTo(0.4 * 0.1, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void aKnownLeakIsFoundAndCosted(long seed) {
        KitAdvice a = advise(fall(1.3, 20, seed), leak(23, 20, seed + 10));
        assertThat(a.verdict()).isEqualTo(Verdict.CHANGE);
        assertThat(ids(a)).contains("kit-leak-spoils-the-work", "kit-leak-sets-the-base");
        // 23 mbar L/s over 1.3 L/s hold 17.7 mbar.
        assertThat(value(a, "leak-cost")).isCloseTo(17.7 * MBAR, within(2 * MBAR));
        assertThat(ids(a)).doesNotContain("kit-rise-flattens", "kit-base-unexplained", "kit-speed-low");
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void aWetChamberIsNoLeak(long seed) {
        KitAdvice a = advise(fall(1.3, 15, seed), damp(18.4, 90, seed + 10), "room-temperature=20 °C");
        assertThat(ids(a))
                .contains("kit-rise-flattens", "kit-level-is-water")
                .doesNotContain("kit-leak-sets-the-base", "kit-leak-spoils-the-work");
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void aWeakPumpIsNeitherLeakNorDamp(long seed) {
        KitAdvice a = advise(fall(0.4, 40, seed), leak(1, 40, seed + 10), "pump-oil=dark");
        assertThat(a.verdict()).isEqualTo(Verdict.CHANGE);
        assertThat(ids(a))
                .contains("kit-oil-dark", "kit-speed-low", "kit-too-shallow")
                .doesNotContain("kit-leak-sets-the-base", "kit-leak-spoils-the-work");
    }

    @Test
    void aNarrowHoseIsNamedAndThePumpIsNot() {
        KitAdvice a = advise("hose-bore=4 mm", "hose-length=3 m", fall(0.62, 2.4, 1));
        assertThat(ids(a)).contains("kit-hose-narrow").doesNotContain("kit-speed-low", "kit-pump-alone-poor");
        assertThat(value(a, "hose-share-expected")).isLessThan(0.7);
    }

    @Test
    void readingsThatCannotTellSaySoAndSayWhichWould() {
        KitAdvice a = advise("gauge-step=1 mbar", "rise-readings=0 s 10 mbar; 60 12; 120 13; 180 15; 240 18");
        Finding f = a.findings().stream()
                .filter(x -> x.id().equals("kit-rise-cannot-tell"))
                .findFirst()
                .orElseThrow();
        assertThat(value(a, "next-rise-reading")).isGreaterThan(240);
        assertThat(f.say()).contains("cannot tell").doesNotContain("{").doesNotContain("not known");
        assertThat(a.figure("leak-rate-measured")).isEmpty();
        assertThat(a.figure("leak-at-most")).isPresent();
    }

    @Test
    void aVesselThatCannotBearItStops() {
        assertThat(advise("chamber-body=bucket", fall(1.3, 2.3, 1)).verdict()).isEqualTo(Verdict.STOP);
        assertThat(advise("lid-state=cracked").verdict()).isEqualTo(Verdict.STOP);
    }

    @Test
    void aDialIsTranslatedByTheBarometer() {
        String dial = "pump-down-readings=0 s 0 inHg; 10 -13; 20 19; 30 22.3; 45 24.3; 60 25.1; 90 25.4; 150 25.45";
        KitAdvice a = KitAdvisor.advise(
                with(with(with(Answers.NONE, "gauge-kind=below-local-air"), "barometer=880 mbar"), dial), KNOWLEDGE);
        assertThat(a.fallReadings().get(0).pressurePa()).isCloseTo(880 * MBAR, within(1e-6));
        // 880 mbar less 13 inHg of 33.8639 mbar; the minus of a dial does not matter.
        assertThat(a.fallReadings().get(1).pressurePa()).isCloseTo(439.77 * MBAR, within(1.0));
        assertThat(a.assumed()).contains("chamber-volume").doesNotContain("gauge-kind");
    }

    @Test
    void aDialCannotShowMoreThanTheAirThereIs() {
        Answers up = with(with(Answers.NONE, "gauge-kind=below-local-air"), "barometer=840 mbar");
        assertThatThrownBy(() -> KitAdvisor.advise(with(up, "pump-down-readings=0 s 0 inHg; 30 20; 60 29"), KNOWLEDGE))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("29 inHg")
                .hasMessageContaining("840");
    }

    @Test
    void aUnitNamedOnceHoldsAndEachReadingMayNameItsOwn() {
        KitAdvice a = advise("pump-down-readings=0 1013; 0.5 min 400 mbar; 1:30 at 160; 2 min 12 torr; 3, 1500 micron");
        assertThat(a.fallReadings()).extracting(KitReading::timeS).containsExactly(0.0, 30.0, 90.0, 120.0, 180.0);
        assertThat(a.fallReadings().get(2).pressurePa()).isCloseTo(160 * MBAR, within(1e-9));
        assertThat(a.fallReadings().get(3).pressurePa()).isCloseTo(12 * 133.322, within(0.01));
        assertThat(a.fallReadings().get(4).pressurePa()).isCloseTo(1.5 * 133.322, within(0.01));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 s 1013; 30 s 400|no unit",
                "0 s 1013 mbar; noon 400|not a reading",
                "mbar|not a reading",
                "0 s 1013 mbar; -5 s 400|not a reading",
                "0 s -20 inHg|gauge-kind=below-local-air",
                "0 s 1e999 mbar|not a reading",
                "1 2 3 4 5 6 7 8 9 10|not a reading"
            })
    void whatIsNoReadingIsSaidInOneSentence(String text, String says) {
        assertThatThrownBy(() -> advise("pump-down-readings=" + text))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining(says);
    }

    @Test
    void withoutReadingOrSymptomNothingIsSaid() {
        assertThatThrownBy(() -> KitAdvisor.advise(with(Answers.NONE, "pump-kind=piston"), KNOWLEDGE))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("Nothing can be said");
    }

    @Test
    void noAnyTextOfReadingsBreaksTheReader() {
        String[] pieces = {
            "0", "30", " ", "s", "min", "mbar", "inHg", ";", ",", "-", "1:30", "=", "400", "\n", "1e9", "½"
        };
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(14) + 1; n > 0; n--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            try {
                advise("pump-down-readings=" + text + " .");
            } catch (BadAnswer e) {
                assertThat(e.getMessage()).isNotBlank();
            } catch (RuntimeException e) {
                throw new AssertionError("pump-down-readings=" + text, e);
            }
        }
    }
}
