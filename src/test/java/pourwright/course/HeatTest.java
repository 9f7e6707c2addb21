package pourwright.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** How long a mix can be worked and how warm it gets, as a person reads it, with no chamber anywhere. */
class HeatTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    private static final Map<String, String> EPOXY = Map.of(
            "material", "laminating-epoxy",
            "job", "open-mould",
            "batch-mass", "100 g",
            "pot-life", "30 min",
            "pot-life-meaning", "gel",
            "pot-life-mass", "100 g",
            "pot-life-temperature", "23 °C",
            "room-temperature", "23 °C",
            "liquid-temperature", "23 °C",
            "kit", "neither");

    private static Map<String, String> with(String... pairs) {
        Map<String, String> job = new LinkedHashMap<>(EPOXY);
        for (int i = 0; i < pairs.length; i += 2) {
            job.put(pairs[i], pairs[i + 1]);
        }
        return job;
    }

    private static Consultation plan(Map<String, String> job) {
        AnswersJson reader = new AnswersJson(KNOWLEDGE);
        Answers answers = Answers.NONE;
        for (Map.Entry<String, String> e : job.entrySet()) {
            answers = reader.with(answers, e.getKey(), e.getValue());
        }
        return Advisor.consult(answers, KNOWLEDGE);
    }

    private static Heat heat(Map<String, String> job) {
        return Course.of(plan(job), KNOWLEDGE).heat();
    }

    private static Estimate of(Heat heat, String where, String name) {
        return heat.places().stream()
                .filter(p -> p.where().equals(where))
                .findFirst()
                .orElseThrow()
                .results()
                .get(name)
                .si();
    }

    @Test
    void aPlanWithoutAChamberHasItsWarmthAndNoDegas() {
        Course course = Course.of(plan(EPOXY), KNOWLEDGE);
        assertThat(course.stages()).isEmpty();
        assertThat(course.refused()).contains("no vacuum");
        assertThat(course.heat().refused()).isEmpty();
        assertThat(course.heat().places().stream().map(HeatPlace::where)).containsExactly("cup", "mould");
    }

    /** The label's own mass, in its cup, at its temperature, gels after the label's time: nothing is lost on the way. */
    @Test
    void atTheRatingTheGelComesAtTheRatedTime() {
        Map<String, String> job = with("liquid-depth", "48.5 mm");
        double volumeM3 = plan(job).figure("mix-volume").orElseThrow().si().typical();
        double asHighAsWideMm = 1000 * Math.cbrt(4 * volumeM3 / Math.PI);
        Heat heat = heat(with("liquid-depth", asHighAsWideMm + " mm"));
        assertThat(of(heat, "cup", "gel-time").typical()).isCloseTo(1800, withinPercentage(0.01));
        assertThat(heat.against()).hasSize(1).allMatch(Against::agree);
    }

    /** "100 g of epoxy left in its cup can reach about 200 °C": a maker's handling page on exotherm, from memory. */
    @Test
    void aFastEpoxyLeftInItsCupComesNearThePublishedPeak() {
        Estimate peak = of(heat(EPOXY), "cup", "temperature-peak");
        assertThat(peak.low() - 273.15).isLessThan(200);
        assertThat(peak.high() - 273.15).isGreaterThan(170);
        assertThat(peak.typical() - 273.15).isGreaterThan(100);
    }

    @Test
    void moreMassIsSoonerAndHotterAndACoolRoomIsLater() {
        Map<String, String> slow = with("material", "deep-pour-epoxy", "pot-life", "8 h");
        Map<String, String> more = new LinkedHashMap<>(slow);
        more.put("batch-mass", "400 g");
        Map<String, String> cool = new LinkedHashMap<>(slow);
        cool.put("room-temperature", "15 °C");
        cool.put("liquid-temperature", "15 °C");
        double one = of(heat(slow), "cup", "gel-time").typical();
        assertThat(of(heat(more), "cup", "gel-time").typical()).isLessThan(one);
        assertThat(of(heat(more), "cup", "temperature-peak").typical())
                .isGreaterThan(of(heat(slow), "cup", "temperature-peak").typical());
        assertThat(of(heat(cool), "cup", "gel-time").typical()).isGreaterThan(one);
    }

    @Test
    void aThinPartStaysCoolerThanWhatIsLeftInTheCup() {
        Heat thin = heat(with("part-depth", "4 mm"));
        assertThat(of(thin, "mould", "temperature-peak").typical())
                .isLessThan(of(thin, "cup", "temperature-peak").typical() - 20);
    }

    @Test
    void aDeepPartIsFollowedLayerByLayer() {
        Consultation c = plan(with("material", "deep-pour-epoxy", "part-depth", "90 mm", "batch-mass", "1 kg"));
        int layers = (int) c.figure("layer-count").orElseThrow().si().typical();
        assertThat(layers).isGreaterThan(1);
        Heat heat = Heat.of(c, KNOWLEDGE);
        assertThat(heat.inLayers()).isEqualTo(layers);
        assertThat(of(heat, "mould", "mass").typical()).isCloseTo(1.0 / layers, withinPercentage(1e-9));
    }

    @Test
    void whatSetsInAnotherWayIsSaidToBeOutside() {
        Heat none = heat(Map.of("material", "plaster", "job", "open-mould", "batch-mass", "1 kg", "kit", "neither"));
        assertThat(none.places()).isEmpty();
        assertThat(none.refused()).matches("[A-Z][^.]*\\.");
    }

    @Test
    void aWideRangeOfPeaksIsCalledNearARunaway() {
        Heat deep = heat(with("material", "deep-pour-epoxy", "pot-life", "4 h"));
        assertThat(deep.nearRunaway(deep.places().get(0))).isTrue();
        Heat rubber = heat(with("material", "tin-silicone", "pot-life", "60 min", "viscosity", "20 Pa·s"));
        assertThat(rubber.nearRunaway(rubber.places().get(0))).isFalse();
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

    /** Over every recorded plan: no peak above what no loss at all would give, every range in order, never cooler than it began. */
    @ParameterizedTest
    @MethodSource("plans")
    void noPeakPassesTheBoundWithoutLoss(Path file) {
        Answers answers =
                CaseFile.read(file, "plan", new AnswersJson(KNOWLEDGE)).answers();
        Consultation c = Advisor.consult(answers, KNOWLEDGE);
        Heat heat = Heat.of(c, KNOWLEDGE);
        for (HeatPlace p : heat.places()) {
            double bound = c.figure("exotherm-peak").orElseThrow().si().high();
            assertThat(p.results().get("temperature-peak").si().high())
                    .as(p.where())
                    .isLessThanOrEqualTo(bound + 0.01);
            assertThat(p.samples()).isNotEmpty();
        }
        assertThat(heat.places().isEmpty()).isNotEqualTo(heat.refused().isEmpty());
    }
}
