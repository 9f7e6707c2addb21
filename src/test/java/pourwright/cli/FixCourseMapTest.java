package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.knowledge.Json;

/** The smallest change, the degas from minute to minute and the map, as options of a plan and as words about it. */
class FixCourseMapTest {
    private static final List<String> SMALL_CUP = List.of(
            "plan",
            "material=tin-silicone",
            "job=rubber-around-master",
            "batch-mass=1.2 kg",
            "kit=vacuum",
            "cup-volume=2 L",
            "bump-cycles=yes",
            "chamber-volume=20 L",
            "pump-speed=3 cfm",
            "pot-life=60 min");

    @TempDir
    Path dir;

    private static Ran run(String... more) {
        return Ran.of(Stream.concat(SMALL_CUP.stream(), Stream.of(more)).toArray(String[]::new));
    }

    private static JsonNode tree(Ran ran) {
        try {
            return Json.read(ran.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(ran.toString(), e);
        }
    }

    private Ran talk(String... lines) {
        List<String> all = new ArrayList<>(SMALL_CUP);
        all.addAll(List.of("--shop", dir.toString()));
        return Ran.with("enough\n" + String.join("\n", lines) + "\nquit\n", Map.of(), all.toArray(String[]::new));
    }

    @Test
    void fixesAreAddedOnlyWhenAskedFor() {
        JsonNode plain = tree(run("--json"));
        JsonNode asked = tree(run("--json", "--fix"));
        assertThat(plain.has("fixes")).isFalse();
        assertThat(asked.path("fix-search").path("works").booleanValue()).isTrue();
        plain.fieldNames().forEachRemaining(name -> assertThat(asked.get(name)).isEqualTo(plain.get(name)));
        JsonNode first = asked.path("fixes").path(0);
        assertThat(first.path("verdict").textValue()).isEqualTo("go");
        assertThat(first.path("changes").path(0).path("say").textValue()).doesNotContain("\u00a0", "{");
        assertThat(first.path("figures")
                        .path("mix-mass")
                        .path("new")
                        .path("value")
                        .doubleValue())
                .isLessThan(first.path("figures")
                        .path("mix-mass")
                        .path("old")
                        .path("value")
                        .doubleValue());
        assertThat(run("--json", "--fix")).isEqualTo(run("--json", "--fix"));
    }

    @Test
    void theAnswersOfAFixMakeItWorkWhenAProgramGivesThem() {
        for (JsonNode fix : tree(run("--json", "--fix")).path("fixes")) {
            List<String> words = new ArrayList<>(List.of("--json"));
            fix.path("answers")
                    .properties()
                    .forEach(e -> words.add(e.getKey() + "="
                            + (e.getValue().isNull()
                                    ? "don't know"
                                    : e.getValue().textValue())));
            List<String> job = new ArrayList<>(SMALL_CUP);
            job.removeIf(w -> fix.path("answers").has(w.split("=")[0]));
            job.addAll(words);
            JsonNode again = tree(Ran.of(job.toArray(String[]::new)));
            assertThat(again.path("verdict").textValue()).as("%s", words).isEqualTo("go");
        }
    }

    @Test
    void inPlainTextTheyFollowThePlan() {
        Ran ran = run("--no-input", "--fix", "--course");
        assertThat(ran.code()).isZero();
        assertThat(ran.out().indexOf("make it work")).isGreaterThan(ran.out().indexOf("CHANGE"));
        assertThat(ran.out()).contains("what-if", "froth crests at", "Trust times of the froth");
        assertThat(run("--no-input").out()).doesNotContain("make it work", "\"fix\"", "froth crests at:");
    }

    @Test
    void theCourseHasItsShape() {
        JsonNode plain = tree(run("--json"));
        assertThat(plain.has("course")).isFalse();
        JsonNode course = tree(run("--json", "--course")).path("course");
        for (String name : new String[] {"crest", "fallen", "air-left", "viscosity-at-pour", "working-time-used"}) {
            assertThat(course.path(name).fieldNames())
                    .toIterable()
                    .as(name)
                    .containsExactly("value", "low", "high", "unit", "shown");
        }
        assertThat(course.path("samples")).hasSizeBetween(20, 120);
        assertThat(course.path("samples").path(0).path("pressure-pa").doubleValue())
                .isBetween(9e4, 1.1e5);
        assertThat(course.path("model").textValue()).contains("Left out");
    }

    @Test
    void withoutAPullTheCourseSaysWhy() {
        JsonNode course = tree(Ran.of("plan", "material=tin-silicone", "kit=neither", "--json", "--course"))
                .path("course");
        assertThat(course.path("refused").textValue()).contains("no vacuum");
        assertThat(course.has("samples")).isFalse();
    }

    @Test
    void theMapIsDrawn() throws IOException {
        Path file = dir.resolve("map.svg");
        assertThat(run("--json", "--map", file.toString()).code()).isZero();
        assertThat(Files.readString(file)).startsWith("<svg").contains("tin silicone", ">G</text>", ">C</text>");
        Ran nowhere = run("--no-input", "--map", file.resolve("map.svg").toString());
        assertThat(nowhere.code()).isEqualTo(2);
        assertThat(nowhere.err()).contains("cannot be written");
        Ran nothing = Ran.of("plan", "material=tin-silicone", "--no-input", "--map", file.toString());
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err()).contains("batch-mass");
    }

    @Test
    void theConsoleHasWordsForThem() {
        String out = talk(
                        "fix", "map", "course", "fix without cup-volume, batch-mass", "fix without cup-volum", "fix it")
                .out();
        assertThat(out).contains("\"fix\" looks for the smallest change that makes it work.");
        assertThat(out).contains("make it work, the least costly first", "Where it works, by batch and room");
        assertThat(out).contains("froth crests at");
        assertThat(out).contains("No answer is called \"cup-volum\". Perhaps cup-volume.");
        assertThat(out).contains("Say \"fix\", or \"fix without pump-speed\"");
        assertThat(out.lines().filter(l -> l.length() > 80)).isEmpty();
    }

    @Test
    void aWayThatWasShownHoldsAsAWhatIf() {
        String way = talk("fix")
                .out()
                .lines()
                .filter(l -> l.contains("what-if"))
                .findFirst()
                .orElseThrow();
        String out = talk(way.substring(way.indexOf("what-if"))).out();
        assertThat(out).contains("GO instead of CHANGE.");
    }

    @Test
    void inANarrowWindowNothingIsDrawn() {
        List<String> all = new ArrayList<>(SMALL_CUP);
        all.addAll(List.of("--shop", dir.toString()));
        String out = Ran.with("enough\nmap\ncourse\nfix\nquit\n", Map.of("COLUMNS", "40"), all.toArray(String[]::new))
                .out();
        assertThat(out).contains("This job is in this room.", "at 0:00:");
        assertThat(out.lines().filter(l -> l.length() > 40)).isEmpty();
    }
}
