package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.geometry.Castings;
import pourwright.knowledge.Json;

/** What other programs see of {@code vents}: places in metres, decisions by name, errors in one sentence. */
class VentsCommandTest {
    @TempDir
    Path dir;

    private JsonNode json(String... words) throws IOException {
        return Json.read(Ran.of(words).out());
    }

    @Test
    void placesAreTheMeshsOwnInMetres() throws IOException {
        String file = Castings.postedFile(dir).toString();
        JsonNode out = json("vents", "--mesh", file, "--unit", "mm", "--gate", "40,20,10", "--up", "0,0,2", "--json");
        assertThat(out.path("verdict").asText()).isEqualTo("change");
        JsonNode first = out.path("pockets").get(0);
        assertThat(first.path("id").asInt()).isEqualTo(1);
        assertThat(first.has("parent")).isFalse();
        assertThat(first.path("volume").path("value").asDouble()).isCloseTo(2e-6, within(1e-10));
        assertThat(first.path("volume").path("unit").asText()).isEqualTo("m³");
        assertThat(first.path("peak").get(2).asDouble()).isCloseTo(0.030, within(1e-9));
        assertThat(first.path("saddle").path("value").asDouble()).isCloseTo(0.010, within(1e-9));
        assertThat(first.path("decision").asText()).isEqualTo("vent");
        assertThat(first.path("vent-diameter").path("value").asDouble()).isPositive();
        assertThat(first.path("residue").path("value").asDouble()).isPositive();
        assertThat(out.path("vents")).hasSize(2);
        assertThat(out.path("rules-fired").toString()).contains("pocket-wants-a-vent");
        assertThat(out.path("assumed").toString()).contains("material").doesNotContain("mesh-gate");
    }

    @Test
    void theUnitScalesEverything() throws IOException {
        String file = Castings.postedFile(dir).toString();
        JsonNode mm = json("vents", "--mesh", file, "--unit", "mm", "--gate", "40,20,10", "--up", "0,0,1", "--json");
        JsonNode inch =
                json("vents", "--mesh", file, "--unit", "inch", "--gate", "40,20,10", "--up", "0,0,1", "--json");
        double ratio = Math.pow(25.4, 3);
        assertThat(volume(inch)).isCloseTo(volume(mm) * ratio, within(1e-6 * volume(inch)));
    }

    private static double volume(JsonNode out) {
        return out.path("pockets").get(0).path("volume").path("value").asDouble();
    }

    @Test
    void attitudesAreRankedAndAPictureIsWritten() throws IOException {
        String file = Castings.postedFile(dir).toString();
        Path svg = dir.resolve("slab.svg");
        JsonNode out = json(
                "vents",
                "--mesh",
                file,
                "--unit",
                "mm",
                "--gate",
                "40,20,10",
                "--attitudes",
                "30",
                "--svg",
                svg.toString(),
                "--json");
        assertThat(out.path("attitudes")).hasSize(3);
        assertThat(out.path("attitudes").get(0).path("vents").asInt())
                .isLessThan(out.path("vents").size());
        assertThat(Files.readString(svg)).startsWith("<svg").contains("V2");
    }

    @Test
    void answersInAFileSayTheSame() throws IOException {
        String file = Castings.postedFile(dir).toString();
        Path answers = dir.resolve("slab.json");
        Files.writeString(
                answers,
                Json.write(Json.object()
                        .put("mesh-file", file)
                        .put("mesh-unit", "mm")
                        .put("mesh-is", "cavity")
                        .put("mesh-gate", "40,20,10")
                        .put("mesh-up", "0,0,1")));
        String typed = Ran.of("vents", "--mesh", file, "--unit", "mm", "--gate", "40,20,10", "--up", "0,0,1", "--json")
                .out();
        assertThat(Ran.of("vents", "--answers", answers.toString(), "--json").out())
                .isEqualTo(typed);
    }

    @Test
    void aMeshBesideItsCaseIsFound() throws IOException {
        Castings.postedFile(dir);
        Path file = dir.resolve("slab.case.json");
        Files.writeString(
                file,
                "{\"format\":1,\"word\":\"vents\",\"answers\":{\"mesh-file\":\"posted.stl\",\"mesh-unit\":\"mm\","
                        + "\"mesh-is\":\"cavity\",\"mesh-gate\":\"40,20,10\",\"mesh-up\":\"0,0,1\"},"
                        + "\"expect\":{\"verdict\":\"change\",\"findings\":[\"pocket-wants-a-vent\",\"pocket-wants-a-vent\"]}}");
        Ran ran = Ran.of("vents", "--case", file.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("Make 2 vents.").contains("V2");
    }

    /** The picture in the README: {@code vents --case transcripts-of-cases/goat-ear-from-its-mesh.case.json --svg FILE}. */
    @Test
    void thePictureInTheReadmeIsARealOne() throws IOException {
        Path svg = dir.resolve("ear.svg");
        Path cases = Path.of("transcripts-of-cases");
        Ran ran = Ran.of(
                "vents",
                "--case",
                cases.resolve("goat-ear-from-its-mesh.case.json").toString(),
                "--svg",
                svg.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(Files.readString(svg)).isEqualTo(Files.readString(cases.resolve("meshes/goat-ear.svg")));
        assertThat(Files.readString(Path.of("README.md"))).contains("transcripts-of-cases/meshes/goat-ear.svg");
    }

    @Test
    void aPlanTakesItsAmountFromTheMesh() throws IOException {
        String file = Castings.postedFile(dir).toString();
        JsonNode out = json("plan", "material=fast-polyurethane", "--mesh", file, "--unit", "mm", "--json");
        // 80 x 40 x 10 and two posts: 35 mL, and what stays in the cup.
        assertThat(out.path("figures").path("mix-volume").path("value").asDouble())
                .isBetween(35e-6, 45e-6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--mesh FILE | mesh-unit",
                "--mesh FILE --unit furlong | mesh-unit",
                "--mesh none.stl --unit mm | mesh-file",
                "--mesh FILE --unit mm --gate 1,2 | mesh-gate",
                "--mesh FILE --unit mm --gate 500,0,0 | mesh-gate",
                "--mesh FILE --unit mm --attitudes -4 | mesh-attitudes",
                "--unit mm | undercuts",
                "undercuts=large --svg x.svg | svg"
            })
    void badInputIsOneSentenceAboutOneField(String words, String field) throws IOException {
        String file = Castings.postedFile(dir).toString();
        String[] all = ("vents " + words.replace("FILE", file) + " --json").split(" ");
        Ran ran = Ran.of(all);
        assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT.code());
        assertThat(Json.read(ran.out()).path("error").path("field").asText()).isEqualTo(field);
        assertThat(ran.err().strip().lines()).hasSize(1);
    }

    private static org.assertj.core.data.Offset<Double> within(double by) {
        return org.assertj.core.api.Assertions.within(by);
    }
}
