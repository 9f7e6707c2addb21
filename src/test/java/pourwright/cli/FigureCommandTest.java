package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.figures.FigureBook;
import pourwright.knowledge.Json;

/** The word {@code figure}: what it asks, shows, marks and refuses. */
class FigureCommandTest {
    private static Ran figure(String words, String... more) {
        return Ran.of(Stream.concat(Stream.of("figure"), Stream.concat(Stream.of(words.split(" ")), Stream.of(more)))
                .toArray(String[]::new));
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.code()).as(ran.toString()).isZero();
        try {
            return Json.read(ran.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(ran.out(), e);
        }
    }

    @Test
    void aPipeIsAskedForWhatIsMissing() {
        Ran ran = Ran.with("40 mbar\n1 l/s\n", Map.of(), "figure", "pump-down-time", "chamber-volume=20");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("target-pressure > 40 mbar", "pump-speed > 1 l/s", "pump-down-time = 65 s", "source: ")
                .doesNotContain("chamber-volume >");
        assertThat(ran.out().strip().lines().reduce((a, b) -> b).orElseThrow()).contains("pump-speed=\"1 l/s\"");
    }

    @Test
    void theEndOfThePipeNamesTheQuestion() {
        Ran ran = Ran.of("figure", "pump-down-time", "chamber-volume=20");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.out()).contains("The next question was 'target-pressure', for example 30 mbar.");
        assertThat(ran.out()).doesNotContain("resume");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--no-input", "--json"})
    void whereNothingCanBeAskedTheMissingAnswerIsNamed(String option) {
        Ran ran = Ran.with("40 mbar\n1 l/s\n", Map.of(), "figure", "pump-down-time", "chamber-volume=20", option);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("'target-pressure'", "target-pressure=\"30 mbar\"");
        assertThat(ran.out()).doesNotContain(" > ");
    }

    @Test
    void aChoiceThatIsMissingIsNamedWithItsChoices() {
        Ran ran = figure("absolute-pressure gauge-reading=20", "--no-input");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("'gauge-kind'", "one of ", "below-local-air", "absolute");
    }

    @Test
    void nothingIsAskedWhenAllIsThere() {
        Ran ran = figure("pump-down-time chamber-volume=20 pump-speed=1 target-pressure=40");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("pump-down-time = 65 s").doesNotContain(" > ");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aRangeIsShownWithBothEndsAndWhatWidensIt() {
        Ran ran = figure("pump-down-time chamber-volume=20 pump-speed=1..2 target-pressure=40");
        assertThat(ran.out())
                .contains("low: 32 s\n", "high: 65 s\n", "depends most on: pump-speed", "how: ", "holds for: ");
        assertThat(ran.out()).containsPattern("typical: 4\\d s\n");
    }

    @Test
    void anExactFigureSaysSoAndNamesItsStrongestAnswer() {
        // Twice the diameter is four times the force; the altitude moves it far less.
        Ran ran = figure("lid-force lid-diameter=300 target-pressure=40 altitude=200");
        assertThat(ran.out()).contains("range: none", "depends most on: lid-diameter");
        assertThat(json(figure("lid-force lid-diameter=300 target-pressure=40 altitude=200 --json"))
                        .at("/figures/lid-force/depends-on-most")
                        .textValue())
                .isEqualTo("lid-diameter");
    }

    @ParameterizedTest
    @CsvSource({
        // 300 mm across under 1013 mbar: 101,325 Pa × π × 0.09 m² / 4 = 7,162 N = 1,610 lbf = 730 kgf.
        "lid-force, lid-diameter=300, N, 7.2 kN|7200 N|7160 N|7162 N|7163 N",
        "lid-force, lid-diameter=300, lbf, '1,600 lbf'",
        "barometric-pressure, altitude=0, inHg, 30 inHg",
        "barometric-pressure, altitude=0, psi, 15 psi",
        "vapour-pressure, volatile=water liquid-temperature=20, torr, 18 torr"
    })
    void theUnitIsAsThePersonLikes(String name, String answers, String unit, String shown) {
        Ran ran = figure(name + " " + answers, "--in", unit, "--no-input");
        assertThat(ran.code()).as(ran.err()).isZero();
        String first = ran.out().lines().findFirst().orElseThrow().replace("7,2", "72");
        assertThat(Stream.of(shown.split("\\|")).map(s -> name + " = " + s)).contains(first);
    }

    @ParameterizedTest
    @CsvSource({
        "absolute-pressure, gauge-reading=20 inHg, gauge-kind=below-local-air, ' inHg'",
        "absolute-pressure, gauge-reading=0.7 bar, gauge-kind=below-local-air, ' bar'",
        "absolute-pressure, gauge-reading=20, gauge-kind=below-local-air, ' mbar'",
        "liquid-temperature, liquid-temperature=70 F, altitude=0, ' °F'",
        "lid-force, lid-diameter=12 in, altitude=0, ' N'"
    })
    void theUnitThatWasTypedIsUsedAgain(String name, String first, String second, String unit) {
        Ran ran = Ran.of("figure", name, first, second, "--no-input");
        assertThat(ran.code()).as(ran.err()).isZero();
        // A dial's error makes a range, which stands behind the unit.
        assertThat(ran.out().lines().findFirst().orElseThrow()).matches(".*\\d" + unit + "( \\(.* to .*\\))?");
    }

    @ParameterizedTest
    @CsvSource({
        "below-local-air, 913.25 mbar, 100 mbar (70 to 130)",
        "below-local-air, 1003.25 mbar, 10 mbar (0 to 40)",
        "absolute, 100 mbar, 100 mbar"
    })
    void aDialMayBeOffEitherWayAndAnAbsoluteGaugeIsTakenAsRead(String kind, String reading, String shown) {
        Ran ran = Ran.of(
                "figure",
                "absolute-pressure",
                "gauge-kind=" + kind,
                "gauge-reading=" + reading,
                "altitude=0 m",
                "--no-input");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out().lines().findFirst().orElseThrow()).isEqualTo("absolute-pressure = " + shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lid-force lid-diameter=300 | furlong | not a unit of a force. Usual: N",
                "barometric-pressure altitude=0 | psig | absolute. Name the unit alone, for example --in psi",
                "batch-count material=tin-silicone batch-mass=3000 cup-volume=2 target-pressure=30 | kg | plain number"
            })
    void aUnitThatDoesNotFitIsRefused(String words, String unit, String says) {
        Ran ran = figure(words, "--in", unit);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(says);
        assertThat(ran.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "pump-dwn-time, pump-down-time",
        "pumpdowntime, pump-down-time",
        "Lid_Force, lid-force",
        "conductance, line-conductance",
        "pressure cure ratio, pressure-cure-ratio",
        "how long to pump down?, pump-down-time",
        "is the leak small enough, leak-share"
    })
    void aSlipIsAnsweredWithWhatMayBeMeant(String typed, String meant) {
        Ran ran = Ran.of("figure", typed);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("Did you mean " + meant);
    }

    @Test
    void whatIsNearNothingGetsNoGuess() {
        assertThat(Ran.of("figure", "zzzzzz").err())
                .doesNotContain("Did you mean")
                .contains("lists them");
    }

    /** Just outside it is marked and just inside it is not. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "working-time pot-life=40 pot-life-temperature=23 pot-life-mass=100 material=fast-polyurethane room-temperature=23 batch-mass= | 10001 | 9999 | 10 g to 10 kg",
                "working-time pot-life=40 material=tin-silicone batch-mass=500 liquid-temperature= | 9 | 11 | 10 to 40",
                "working-time pot-life=40 material=tin-silicone batch-mass=500 liquid-temperature= | 39..40.5 | 39..40 | part of the range",
                "absolute-pressure gauge-kind=below-local-air altitude=0 gauge-reading= | 29.2 | 28 | off by 10 to 30 mbar",
                "pump-down-time chamber-volume=20 pump-speed=2 target-pressure= | 0.9 | 1.1 | below 1 mbar",
                "reachable-pressure pump-speed=2 leak-rate=0 pump-ultimate= | 0.9 | 1.1 | below 1 mbar",
                "line-conductance hose-bore=10 target-pressure=30 hose-length= | 0.09 | 0.11 | shorter than ten bores",
                "line-conductance hose-bore=10 hose-length=1 target-pressure= | 510 | 490 | turbulent",
                "effective-speed pump-speed=2 hose-bore=10 hose-length=1 target-pressure= | 900 | 30 | turbulent",
                "effective-share pump-speed=2 hose-bore=10 hose-length=1 target-pressure= | 900 | 30 | turbulent",
                "froth-factor volatile=water liquid-temperature=20 target-pressure= | 20 | 30 | boils",
                "bubble-clear-time viscosity=1 liquid-density=1100 liquid-depth=50 target-pressure=30 bubble-diameter= | 3 | 0.5 | too fast",
                "bubble-clear-time liquid-density=1100 liquid-depth=50 target-pressure=30 bubble-diameter=0.5 viscosity= | 5.1 | 4.9 | the froth decides",
                "bubble-clear-time-air viscosity=0.1 liquid-density=1100 liquid-depth=50 bubble-diameter= | 3 | 0.5 | too fast",
                "gap-fill-time wall-reach=100 thinnest-wall=3 liquid-density=1060 head-height=50 viscosity= | 0.002 | 0.1 | turbulent"
            })
    void aValueOutsideTheValidityIsMarked(String words, String outside, String inside, String says) {
        JsonNode out = json(figure(words + outside + " --json"))
                .path("figures")
                .elements()
                .next();
        assertThat(out.path("valid").textValue()).contains(says);
        assertThat(figure(words + outside).out().lines().toList().get(1)).startsWith("careful: ");
        JsonNode in = json(figure(words + inside + " --json"))
                .path("figures")
                .elements()
                .next();
        assertThat(in.path("valid").booleanValue()).as(in.toString()).isTrue();
        assertThat(figure(words + inside).out()).doesNotContain("careful: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bubble-rise-speed bubble-diameter=20 viscosity=1 liquid-density=1000 | Reynolds number",
                "absolute-pressure gauge-reading=29 gauge-kind=below-local-air altitude=1500 | the most would be 25 inHg",
                "effective-speed pump-speed=2 pump-ultimate=5 target-pressure=4 | its own ultimate pressure",
                "free-volume chamber-volume=1 part-volume=2 | as large as the chamber",
                "fill-volume box-length=100 box-width=100 fill-height=10 master-volume=1 | as large as the box",
                "deepest-reading gauge-kind=absolute | a gauge that counts from local air",
                "vapour-pressure volatile=acetone liquid-temperature=250 | "
            })
    void aValueThatCannotBeIsRefused(String words, String says) {
        Ran ran = figure(words, "--no-input");
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(ran.err()).contains(says == null ? "" : says).doesNotContain("fault", "also needs");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void partOfARangeOutsideTheLawOfSlowRiseIsMarked() {
        JsonNode q = json(figure("bubble-rise-speed bubble-diameter=1..9 viscosity=1 liquid-density=1000 --json"))
                .at("/figures/bubble-rise-speed");
        assertThat(q.path("valid").textValue()).contains("one end of the range lies outside", "Reynolds number");
    }

    @Test
    void theListIsGroupedAndGivesTheQuestionOfEach() {
        Ran ran = Ran.of("figure");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains(
                        "About pump, hose and chamber\n",
                        "  pump-down-time: How long does it take to pump down?\n",
                        "About the timetable\n",
                        "  time-margin: ");
        FigureBook.all().stream()
                .filter(d -> !d.valid().startsWith("used inside"))
                .forEach(d -> assertThat(ran.out()).contains("  " + d.id() + ": "));
        JsonNode all = json(Ran.of("figure", "--json")).path("figures");
        all.forEach(f -> assertThat(ran.out()).contains("  " + f.path("id").textValue() + ": "));
        assertThat(all.size()).isGreaterThan(70);
    }

    @Test
    void aFigureOfTheTimetableComesFromAPlan() {
        Ran ran = figure("time-margin material=tin-silicone batch-mass=500 --json");
        JsonNode q = json(ran).at("/figures/time-margin");
        JsonNode plan = json(Ran.of("plan", "material=tin-silicone", "batch-mass=500", "--json"));
        assertThat(q.path("value")).isEqualTo(plan.at("/figures/time-margin/value"));
        assertThat(q.path("formula").textValue()).contains("working time");
        assertThat(json(ran).path("assumed").toString()).contains("pot-life");
    }

    @Test
    void theWorkshopsFolderIsReadOnlyWhenNamed() {
        Ran plain = Ran.with("", Map.of("HOME", "/nowhere"), "figure", "lid-force", "lid-diameter=300");
        assertThat(plain).isEqualTo(Ran.of("figure", "lid-force", "lid-diameter=300"));
    }
}
