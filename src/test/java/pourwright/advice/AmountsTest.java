package pourwright.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.testing.Generated;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

class AmountsTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    private static Answers answers(String... pairs) {
        Answers a = Answers.NONE;
        for (int i = 0; i < pairs.length; i += 2) {
            a = new AnswersJson(KNOWLEDGE).with(a, pairs[i], pairs[i + 1]);
        }
        return a;
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    // NIST SP 811, App. B.8, from memory: 1 lb = 453.59237 g, 1 US gal = 3.785412 L, 1 UK gal = 4.54609 L, 1 inHg =
    // 33.8639 mbar.
    @ParameterizedTest
    @CsvSource({
        "MASS, 0.45359237, metric, 454 g",
        "MASS, 0.45359237, us, 16 oz",
        "MASS, 9.0718474, us, 20 lb",
        "VOLUME, 0.003785411784, us, 1 US gal",
        "VOLUME, 0.0002957353, us, 10 US fl oz",
        "VOLUME, 0.003785411784, metric, 3.79 L",
        "TEMPERATURE, 295.372222, us, 72 °F",
        "TEMPERATURE, 295.15, metric, 22 °C",
        "PRESSURE, 3386.389, us, 1 inHg",
        "PRESSURE, 3100, metric, 31 mbar",
        "PRESSURE, 413685.4, us, 60 psi",
        "TIME, 60, us, 60 s",
    })
    void aSetShowsEachKindInItsUnit(Dimension d, double si, String set, String shown) {
        assertThat(plain(Amounts.of(answers("units", set)).one(si, d))).isEqualTo(shown);
    }

    @Test
    void aUnitChosenByItselfGoesBeforeTheSet() {
        Amounts mixed = Amounts.of(answers("units", "us", "unit-mass", "g"));
        assertThat(plain(mixed.one(0.5, Dimension.MASS))).isEqualTo("500 g");
        assertThat(plain(mixed.one(295.372222, Dimension.TEMPERATURE))).isEqualTo("72 °F");
        assertThat(plain(Amounts.of(answers("unit-volume", "uk-gal")).one(0.0227304500, Dimension.VOLUME)))
                .isEqualTo("5 UK gal");
    }

    @Test
    void whoChoosesNothingGetsTheUsualUnits() {
        assertThat(Amounts.of(Answers.NONE)).isSameAs(Amounts.USUAL);
        assertThat(Amounts.of(answers("units", "each"))).isSameAs(Amounts.USUAL);
    }

    @Test
    void whatACanOrGaugeSaysStaysAndTheOwnUnitStandsBesideIt() {
        Answers job = answers(
                "material",
                "tin-silicone",
                "batch-mass",
                "2 lb",
                "cup-volume",
                "1 US qt",
                "kit",
                "vacuum",
                "units",
                "metric");
        Consultation c = Advisor.consult(job, KNOWLEDGE);
        Wording wording = new Wording(KNOWLEDGE, c.answers(), c.figures());
        assertThat(plain(wording.fill("{batch-mass}"))).isEqualTo("2 lb (907 g)");
        assertThat(plain(wording.fill("{cup-volume}"))).isEqualTo("1 US qt (946 mL)");
        Consultation own = Advisor.consult(job.without("units"), KNOWLEDGE);
        assertThat(plain(new Wording(KNOWLEDGE, own.answers(), own.figures()).fill("{batch-mass}")))
                .isEqualTo("2 lb");
    }

    /** 29 inHg on a dial and 0.9 inHg from zero are the same vacuum: the second must never pass for the first. */
    @Test
    void inchesFromTrueZeroSaySoAndNameTheMbar() {
        Consultation c = Advisor.consult(
                answers("material", "tin-silicone", "batch-mass", "1 kg", "kit", "vacuum", "units", "us"), KNOWLEDGE);
        Wording wording = new Wording(KNOWLEDGE, c.answers(), c.figures());
        assertThat(plain(wording.fill("{planned-pressure}"))).matches("[0-9.]+ inHg absolute \\(.*mbar\\)");
        assertThat(plain(wording.fill("{gauge-target}"))).contains("mbar");
    }

    @Test
    void aRangeNamesAUnitOfTwoWordsOnce() {
        Consultation c = Advisor.consult(
                answers("material", "tin-silicone", "batch-mass", "1 kg", "kit", "vacuum", "units", "us"), KNOWLEDGE);
        assertThat(plain(new Wording(KNOWLEDGE, c.answers(), c.figures()).fill("{froth-volume}")))
                .matches("[0-9.]+ US gal \\([0-9.]+ to [0-9.]+\\)");
        assertThat(plain(Amounts.of(answers("units", "us")).fromZero(3386.389))).isEqualTo("1 inHg absolute");
        assertThat(plain(Amounts.USUAL.fromZero(3100))).isEqualTo("31 mbar");
    }

    /** A mass in ounces can be weighed as closely as one in grams. */
    @Test
    void ouncesLoseNoMoreThanGramsDo() {
        Amounts us = Amounts.of(answers("units", "us"));
        Generated.tries(4711, 400).forEach(any -> {
            double kg = any.logUniform(0.003, 4);
            String shown = plain(us.one(kg, Dimension.MASS));
            double back =
                    UnitBook.toSi(Double.parseDouble(shown.replace(",", "").replace(" oz", "")), "oz", Dimension.MASS);
            assertThat(back).as(shown).isCloseTo(kg, withinPercentage(0.6));
        });
    }

    static Stream<Path> plans() throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.list(Path.of("transcripts-of-cases"))) {
            all = files.filter(f -> f.toString().endsWith(".case.json"))
                    .sorted()
                    .toList();
        }
        return all.stream().filter(f -> CaseFile.wordOf(f).equals("plan"));
    }

    /** Units are words: they change no judgement, no figure and no step. */
    @ParameterizedTest
    @MethodSource("plans")
    void unitsChangeNothingButTheWords(Path file) {
        AnswersJson reader = new AnswersJson(KNOWLEDGE);
        Answers job = CaseFile.read(file, "plan", reader).answers();
        Consultation metric = Advisor.consult(reader.with(job, "units", "metric"), KNOWLEDGE);
        Consultation us = Advisor.consult(reader.with(job, "units", "us"), KNOWLEDGE);
        assertThat(us.verdict()).isEqualTo(metric.verdict());
        assertThat(us.findings().stream().map(Finding::id))
                .containsExactlyElementsOf(
                        metric.findings().stream().map(Finding::id).toList());
        assertThat(us.figures().keySet()).isEqualTo(metric.figures().keySet());
        us.figures()
                .forEach((id, v) ->
                        assertThat(v.si()).isEqualTo(metric.figures().get(id).si()));
        assertThat(us.timetable().stream().map(Step::atS))
                .containsExactlyElementsOf(
                        metric.timetable().stream().map(Step::atS).toList());
        if (us.figure("mix-mass").isPresent() && us.figure("mixed-ago").isEmpty()) {
            String weigh = us.timetable().stream()
                    .filter(s -> s.id().startsWith("weigh"))
                    .map(Step::say)
                    .findFirst()
                    .map(AmountsTest::plain)
                    .orElse("1 oz");
            assertThat(weigh).containsPattern("[0-9] (oz|lb)");
        }
    }
}
