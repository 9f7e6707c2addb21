package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.knowledge.Json;

/** The word {@code now}: help without a question. */
class NowCommandTest {
    private static final String LINE = "Anyone hurt or unsure: call the emergency number.";

    @TempDir
    Path dir;

    private static JsonNode json(String... words) throws JsonProcessingException {
        List<String> all = new ArrayList<>(List.of("now"));
        all.addAll(List.of(words));
        all.add("--json");
        Ran ran = Ran.of(all.toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        return Json.read(ran.out());
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void oneWordOrManyAreTheSame() {
        Ran ran = Ran.of("now", "foam at the rim");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Foam at the rim.").contains("\n1. ", LINE);
        assertThat(ran.out().lines().count()).isLessThanOrEqualTo(5);
        assertThat(Ran.of("now", "foam", "at", "the", "rim")).isEqualTo(ran);
        assertThat(Ran.of("now", "foam", "at", "the", "rim", "--no-input")).isEqualTo(ran);
    }

    @Test
    void theJsonHasItsFixedShape() throws JsonProcessingException {
        JsonNode out = json("iso in my eye");
        assertThat(names(out)).containsExactly("format", "now");
        assertThat(out.path("format").intValue()).isEqualTo(1);
        JsonNode now = out.path("now");
        assertThat(names(now)).containsExactly("id", "title", "steps", "source", "closing", "others");
        assertThat(now.path("id").textValue()).isEqualTo("splash-in-eye");
        assertThat(now.path("steps").size()).isBetween(2, 3);
        assertThat(now.path("closing").textValue()).startsWith(LINE);
        assertThat(now.path("others").isArray()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"zzz", "resin everywhere", "''"})
    void whereNothingFitsTheJsonSaysSoAndListsAll(String typed) throws JsonProcessingException {
        JsonNode out = json(typed);
        assertThat(names(out)).containsExactly("format", "now", "closing", "situations");
        assertThat(out.path("now").isNull()).isTrue();
        assertThat(out.path("closing").textValue()).isEqualTo(LINE);
        assertThat(out.path("situations").size()).isGreaterThanOrEqualTo(20);
        out.path("situations").forEach(s -> assertThat(names(s)).containsExactly("id", "title"));
    }

    @Test
    void whereNothingFitsTheListAndTheLineAreShown() {
        Ran ran = Ran.of("now", "zzz");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("\"zzz\" fits nothing", LINE, "smoking cup");
        Ran all = Ran.of("now");
        assertThat(all.code()).isZero();
        assertThat(all.out()).contains(LINE, "smoking cup     Cup smokes or is too hot");
    }

    private Path copy() throws IOException {
        Path shipped = Path.of("knowledge");
        Path to = dir.resolve("knowledge");
        try (Stream<Path> files = Files.walk(shipped)) {
            for (Path f : files.toList()) {
                Path target = to.resolve(shipped.relativize(f).toString());
                if (Files.isDirectory(f)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(f, target);
                }
            }
        }
        return to;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"title\": | \"heading\":",
                "\"danger\": \"people\" | \"danger\": \"everybody\"",
                "\"line\": | \"lines\":",
                "SDS section 4 decides. | Nothing decides.",
                "{ | [",
                "Do not rub. | Do not rub, whatever happens and however much it itches or burns, ever."
            })
    void aBrokenFileIsRefusedByItsName(String part, String by) throws IOException {
        Path copy = copy();
        Path file = copy.resolve("emergencies.json");
        String text = Files.readString(file);
        Files.writeString(file, text.replace(part, by));
        Ran ran = Ran.of("now", "foam", "--knowledge", copy.toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("emergencies.json").doesNotContain("Exception");
        assertThat(Ran.of("check", copy.toString()).code()).isEqualTo(1);
    }

    /** Help does not hang on anything but its own file. */
    @Test
    void anotherBrokenFileKeepsNobodyFromHelp() throws IOException {
        Path copy = copy();
        Files.writeString(copy.resolve("pumps.json"), "{ broken");
        Files.delete(copy.resolve("sources.json"));
        Ran ran = Ran.of("now", "foam", "--knowledge", copy.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).startsWith("Foam at the rim.");
    }

    /** At the very first questions too, before any conversation has begun. */
    @Test
    void theConsoleHelpsBeforeAnythingIsChosen() {
        Ran ran = Ran.with(
                "now foam at the rim\nquit\n", Map.of("HOME", dir.toString(), "XDG_CONFIG_HOME", dir.toString()));
        assertThat(ran.out()).contains("word > now foam at the rim\nFoam at the rim.", "word > quit");
    }

    /** Whoever needs help does not wait for the rule engine or the line editor. */
    @Test
    void neitherRulesNorLineEditorAreLoaded() throws IOException {
        Process run = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "pourwright.cli.Main",
                        "now",
                        "foam at the rim")
                .redirectErrorStream(true)
                .start();
        String out = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(out).contains("Foam at the rim.", "pourwright.emergency.EmergencyFinder");
        assertThat(out)
                .doesNotContain("org.drools", "org.kie", "pourwright.rulebook", "pourwright.figures", "org.jline");
    }

    /** The README shows what the program says. */
    @Test
    void theReadmeShowsARealOne() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        String shown = readme.replaceFirst(
                "(?s)^.*<!-- now:begin -->\n```\n\\$ pourwright ([^\n]*)\n(.*?)```\n.*$", "$1\u0000$2");
        assertThat(shown).as("the block is there").contains("\u0000");
        String[] parts = shown.split("\u0000");
        assertThat(Ran.of(parts[0].split(" ")).out()).isEqualTo(parts[1]);
    }
}
