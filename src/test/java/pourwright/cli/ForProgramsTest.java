package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.figures.FigureBook;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** What other programs lean on: shapes, ids, exit codes, and the same bytes for the same file. */
class ForProgramsTest {
    private static final String JOB =
            "{\"material\":\"tin-silicone\",\"job\":\"rubber-around-master\",\"batch-mass\":\"1.2 kg\","
                    + "\"cup-volume\":\"2 L\",\"kit\":\"vacuum\",\"chamber-volume\":20,\"pump-speed\":\"3 cfm\",\"pot-life\":\"about 40 min\","
                    + "\"mix-ratio\":\"10:1\",\"undercuts\":\"small\",\"altitude\":null,\"hose-bore\":\"8..10 mm\"}";

    @TempDir
    Path dir;

    private static JsonNode tree(String json) {
        try {
            return Json.read(json);
        } catch (JsonProcessingException e) {
            throw new AssertionError("not one JSON value: " + json, e);
        }
    }

    private Path job() throws IOException {
        Path file = dir.resolve("job.json");
        Files.writeString(file, JOB);
        return file;
    }

    @Test
    void theSameFileGivesTheSameBytesWhateverTheMachine() throws IOException {
        String file = job().toString();
        Path busyHome = dir.resolve("home");
        Files.createDirectories(busyHome.resolve(".config/pourwright/guidelines"));
        Files.writeString(
                busyHome.resolve(".config/pourwright/unfinished.jsonl"), "{\"set\":\"material\",\"to\":\"wax\"}\n");
        Files.writeString(busyHome.resolve(".config/pourwright/guidelines/own.json"), "{ not json");
        Files.writeString(busyHome.resolve(".config/pourwright/kit.json"), "{\"pump-speed\":\"9 L/s\"}");
        Locale before = Locale.getDefault();
        for (String format : new String[] {"--json", "--plain"}) {
            Ran first = Ran.of("plan", "--answers", file, format);
            assertThat(first.code()).isEqualTo(0);
            assertThat(first.err()).isEmpty();
            assertThat(Ran.of("plan", "--answers", file, format)).isEqualTo(first);
            assertThat(Ran.with("", Map.of("HOME", busyHome.toString()), "plan", "--answers", file, format))
                    .isEqualTo(first);
            assertThat(Ran.with(
                            "",
                            Map.of(
                                    "XDG_CONFIG_HOME",
                                    busyHome.resolve(".config").toString()),
                            "plan",
                            "--answers",
                            file,
                            format))
                    .isEqualTo(first);
            try {
                for (String language : new String[] {"tr-TR", "de-DE", "ar-EG", "hi-IN-u-nu-deva"}) {
                    Locale.setDefault(Locale.forLanguageTag(language));
                    assertThat(Ran.of("plan", "--answers", file, format))
                            .as(language)
                            .isEqualTo(first);
                }
            } finally {
                Locale.setDefault(before);
            }
        }
    }

    @Test
    void theResultHasItsShape() throws IOException {
        JsonNode out =
                tree(Ran.of("plan", "--answers", job().toString(), "--json").out());
        assertThat(out.fieldNames())
                .toIterable()
                .containsExactly(
                        "format",
                        "verdict",
                        "findings",
                        "figures",
                        "timetable",
                        "methods",
                        "rules-fired",
                        "assumed",
                        "unasked");
        assertThat(out.path("verdict").textValue()).isIn("go", "change", "stop");
        out.path("findings").forEach(f -> {
            assertThat(f.fieldNames())
                    .toIterable()
                    .containsExactly(
                            "id", "topic", "strength", "say", "because", "rule", "sources", "answers", "figures");
            assertThat(f.path("strength").textValue()).isIn("stop", "change", "do", "consider", "note");
            assertThat(f.path("say").textValue()).doesNotContain("{", "}", "\u00a0", "(not known)");
        });
        out.path("figures").properties().forEach(e -> quantity(e.getKey(), e.getValue()));
        out.path("timetable").forEach(s -> {
            assertThat(s.fieldNames()).toIterable().containsExactly("at", "lasts", "step", "watch-for");
            assertThat(s.path("step").textValue()).doesNotContain("{", "(not known)");
        });
    }

    private static void quantity(String id, JsonNode q) {
        assertThat(q.fieldNames()).toIterable().as(id).contains("value", "low", "high", "unit", "shown", "valid");
        if (q.path("value").isNumber()
                && q.path("low").isNumber()
                && q.path("high").isNumber()) {
            assertThat(q.path("value").doubleValue())
                    .as(id)
                    .isBetween(q.path("low").doubleValue(), q.path("high").doubleValue());
        }
        assertThat(q.path("shown").textValue()).as(id).isNotBlank().doesNotContain("NaN", "Infinity", "\u00a0");
    }

    @Test
    void everyQuestionIsListed() {
        Knowledge k = KnowledgeReader.read(Path.of("knowledge"));
        Set<String> wanted =
                new TreeSet<>(k.questions().stream().map(Question::id).toList());
        KnowledgeReader.forDiagnosis(Path.of("knowledge"), k).observations().forEach(q -> wanted.add(q.id()));
        Ran json = Ran.of("questions", "--json");
        assertThat(json.code()).isEqualTo(0);
        Set<String> listed = new TreeSet<>();
        tree(json.out()).path("questions").forEach(q -> listed.add(q.path("id").textValue()));
        assertThat(listed).isEqualTo(wanted);
        Ran plain = Ran.of("questions");
        assertThat(plain.code()).isEqualTo(0);
        assertThat(wanted).allMatch(id -> plain.out().contains(id + ": "));
    }

    /** Answers and figures whose names other programs were promised. */
    @Test
    void theFixedIdsAreThere() {
        Knowledge k = KnowledgeReader.read(Path.of("knowledge"));
        for (String id :
                ("material pot-life mix-ratio room-temperature altitude barometer chamber-volume pump-speed pump-ultimate"
                                + " start-pressure target-pressure hose-bore hose-length gauge-reading gauge-kind leak-rate pressure-rise"
                                + " rise-time volatile liquid-temperature viscosity liquid-density bubble-diameter liquid-depth cup-volume"
                                + " batch-mass pressure-cure lid-diameter")
                        .split(" ")) {
            assertThat(k.question(id)).as(id).isPresent();
        }
        Set<String> figures = new TreeSet<>(FigureBook.ids());
        figures.addAll(Set.of("viscosity-at-pour", "time-margin"));
        assertThat(figures)
                .contains(("barometric-pressure absolute-pressure line-conductance effective-speed pump-down-time"
                                + " reachable-pressure vapour-pressure boil-off-pressure froth-factor cup-fill-limit working-time"
                                + " viscosity-at-pour bubble-clear-time smallest-cleared-bubble pocket-residue vent-diameter gap-fill-time"
                                + " mix-volume mix-mass part-mass-a part-mass-b batch-count batch-mass-max time-margin exotherm-peak"
                                + " pressure-cure-ratio pressure-cure-diameter-ratio lid-force bubble-rise-speed leak-rate")
                        .split(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "barometric-pressure | altitude=1600 | Pa | 83000 | 84500",
                "absolute-pressure | gauge-reading=27 gauge-kind=below-local-air altitude=0 | Pa | 9800 | 9950",
                "line-conductance | hose-bore=10 hose-length=1 target-pressure=30 | m³/s | 0.03 | 0.06",
                "effective-speed | pump-speed=2 hose-bore=10 hose-length=1 target-pressure=30 pump-ultimate=0.5 | m³/s | 0.0015 | 0.002",
                "pump-down-time | chamber-volume=20 pump-speed=2 target-pressure=30 | s | 34 | 37",
                "reachable-pressure | chamber-volume=20 pump-speed=2 pump-ultimate=1 leak-rate=2 | Pa | 195 | 205",
                "vapour-pressure | volatile=water liquid-temperature=20 | Pa | 2300 | 2380",
                "vapour-pressure | volatile=styrene liquid-temperature=25 | Pa | 700 | 1000",
                "vapour-pressure | volatile=methyl-methacrylate liquid-temperature=20 | Pa | 3500 | 4500",
                "vapour-pressure | volatile=acetone liquid-temperature=20 | Pa | 23500 | 25500",
                "vapour-pressure | volatile=ethanol liquid-temperature=20 | Pa | 5600 | 6100",
                "vapour-pressure | volatile=toluene liquid-temperature=20 | Pa | 2700 | 3100",
                "boil-off-pressure | volatile=water liquid-temperature=20 | Pa | 2900 | 3200",
                "froth-factor | target-pressure=50 | 1 | 1.5 | 5",
                "cup-fill-limit | cup-volume=3 material=tin-silicone target-pressure=30 | m³ | 0.0004 | 0.001",
                "working-time | material=tin-silicone pot-life=40 batch-mass=500 room-temperature=23 | s | 1000 | 6000",
                "bubble-clear-time | viscosity=1 liquid-density=1100 liquid-depth=50 target-pressure=30 | s | 1 | 2000",
                "smallest-cleared-bubble | material=deep-pour-epoxy batch-mass=500 chamber-volume=20 pump-speed=2 target-pressure=30 | m | 0.00001 | 0.002",
                "pocket-residue | undercut-width=2 undercut-depth=4 liquid-density=1100 target-pressure=30 | m³ | 1e-10 | 1e-9",
                "vent-diameter | material=fast-polyurethane part-volume=1 | m | 0.001 | 0.01",
                "gap-fill-time | wall-reach=100 thinnest-wall=3 viscosity=0.1 liquid-density=1060 head-height=50 | s | 0.1 | 10",
                "mix-volume | part-volume=1 | m³ | 0.001 | 0.0012",
                "mix-mass | batch-mass=1200 | kg | 1.2 | 1.2",
                "part-mass-a | batch-mass=1100 mix-ratio=10:1 | kg | 0.999 | 1.001",
                "part-mass-b | batch-mass=1100 mix-ratio=10:1 | kg | 0.0999 | 0.1001",
                "batch-count | material=tin-silicone batch-mass=3000 cup-volume=2 target-pressure=30 | 1 | 4 | 9",
                "batch-mass-max | material=tin-silicone cup-volume=2 target-pressure=30 | kg | 0.3 | 0.7",
                "exotherm-peak | material=deep-pour-epoxy liquid-temperature=20 | K | 330 | 620",
                "pressure-cure-ratio | pressure-cure=3 | 1 | 0.24 | 0.26",
                "pressure-cure-diameter-ratio | pressure-cure=3 | 1 | 0.62 | 0.64",
                "lid-force | lid-diameter=300 target-pressure=0.001 | N | 7100 | 7200",
                "bubble-rise-speed | bubble-diameter=1 viscosity=1 liquid-density=1000 | m/s | 0.0005 | 0.0009",
                "leak-rate | chamber-volume=12 pressure-rise=10 rise-time=600 | Pa m³/s | 0.0199 | 0.0201"
            })
    void aFigureAloneComesFromJustItsAnswers(String name, String answers, String unit, double least, double most) {
        String[] words = ("figure " + name + " " + answers + " --json").split(" ");
        Ran ran = Ran.of(words);
        assertThat(ran.code()).as(ran.toString()).isEqualTo(0);
        JsonNode q = tree(ran.out()).path("figures").path(name);
        quantity(name, q);
        assertThat(q.path("unit").textValue().replace("·", " ")).isEqualTo(unit);
        assertThat(q.path("value").doubleValue()).isBetween(least, most);
        assertThat(q.path("formula").textValue()).isNotBlank();
        assertThat(q.path("sources").size()).isPositive();
        assertThat(q.has("depends-on-most")).isTrue();
        words[words.length - 1] = "--plain";
        Ran plain = Ran.of(words);
        assertThat(plain.code()).isEqualTo(0);
        assertThat(plain.out()).startsWith(name + " = ").contains("how: ", "source: ");
    }

    @Test
    void figureAloneListsWhatThereIs() {
        Ran ran = Ran.of("figure");
        assertThat(ran.code()).isEqualTo(0);
        assertThat(ran.out()).contains("pump-down-time: ", "lid-force: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "plan", "figure", "questions", "rules", "check", "resume", "replay"})
    void helpIsHelp(String word) {
        Ran ran = word.isEmpty() ? Ran.of("--help") : Ran.of(word, "--help");
        assertThat(ran.code()).isEqualTo(0);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("pourwright").doesNotContain("\u001b");
    }

    @Test
    void exitCodesSayWhatHappened() {
        assertThat(Ran.of("plan", "--json", "material=tin-silicone").code())
                .as("advice")
                .isEqualTo(0);
        assertThat(Ran.of(
                                "plan",
                                "--json",
                                "material=tin-silicone",
                                "kit=vacuum",
                                "chamber-body=bucket",
                                "batch-mass=1 kg")
                        .code())
                .as("stop")
                .isEqualTo(1);
        assertThat(Ran.of("plan", "--json").code()).as("nothing to plan").isEqualTo(2);
        assertThat(Ran.of("check").code()).as("knowledge without fault").isEqualTo(0);
        assertThat(Ran.with("tin silicone\n", Map.of("HOME", dir.toString()), "plan")
                        .code())
                .as("input ends")
                .isEqualTo(4);
        assertThat(Ran.with("enough\nquit\n", Map.of("HOME", dir.toString()), "plan", "material=tin-silicone")
                        .code())
                .as("a plan by conversation")
                .isEqualTo(0);
        assertThat(Ran.of("--version").code()).isEqualTo(0);
        assertThat(Ran.of("rules", "--json").code()).isEqualTo(0);
    }

    @Test
    void checkFaultsAFolderOfBadKnowledge() throws IOException {
        Files.writeString(dir.resolve("sources.json"), "{");
        Ran ran = Ran.of("check", dir.toString());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out() + ran.err()).contains("sources.json").doesNotContain("Exception");
    }
}
