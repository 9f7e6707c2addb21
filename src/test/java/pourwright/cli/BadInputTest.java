package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.knowledge.Json;

/** Whatever is typed or handed in, the answer is one plain sentence that names the field and says what is accepted. */
class BadInputTest {
    private static final char ESCAPE = '\u001b';
    private static final int LONGEST_SENTENCE = 700;
    private static final int TEN_MEGABYTES = 10_000_000;

    @TempDir
    Path dir;

    /** Exit code 2, one line each way, no trace, no control character, and the field is named. */
    private static void isPlainlyRefused(Ran ran, String field) {
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(ran.err().strip().lines()).as(ran.err()).hasSize(1);
        assertThat(ran.err().length()).isLessThan(LONGEST_SENTENCE);
        assertThat(ran.err()).doesNotContain("Exception", "\tat ", "java.", "fault of its own");
        assertThat(ran.err() + ran.out()).matches("(?s)[^\\p{Cntrl}]*(?:\\R[^\\p{Cntrl}]*)*");
        assertThat(ran.out().strip().lines()).as(ran.out()).hasSize(1);
        JsonNode out = tree(ran.out());
        assertThat(out.fieldNames()).toIterable().containsExactly("error");
        assertThat(out.path("error").fieldNames()).toIterable().containsExactly("field", "message");
        assertThat(out.path("error").path("message").textValue())
                .isEqualTo(ran.err().strip());
        assertThat(out.path("error").path("field").textValue()).isEqualTo(field);
    }

    private static JsonNode tree(String json) {
        try {
            return Json.read(json);
        } catch (JsonProcessingException e) {
            throw new AssertionError("not one JSON value: " + json, e);
        }
    }

    static Stream<Arguments> answers() {
        return Stream.of(
                Arguments.of("batch-mass", "three bananas", ""),
                Arguments.of("batch-mass", "5 furlongs", ""),
                Arguments.of("batch-mass", "-1 kg", ""),
                Arguments.of("batch-mass", "", ""),
                Arguments.of("batch-mass", "   ", ""),
                Arguments.of("batch-mass", "NaN", ""),
                Arguments.of("batch-mass", "Infinity", ""),
                Arguments.of("batch-mass", "-Infinity g", ""),
                Arguments.of("batch-mass", "1e999", ""),
                Arguments.of("batch-mass", "1e999 kg", ""),
                Arguments.of("batch-mass", "0", ""),
                Arguments.of("batch-mass", "9e99 kg", ""),
                Arguments.of("batch-mass", "1 kg 2 L", ""),
                Arguments.of("batch-mass", "10..5 kg", ""),
                Arguments.of("batch-mass", "\u0000", ""),
                Arguments.of("batch-mass", "\u001b[31m1 kg\u001b[0m", ""),
                Arguments.of("room-temperature", "400 °C", "45"),
                Arguments.of("room-temperature", "-300 °C", "0"),
                Arguments.of("pot-life", "40 kg", ""),
                Arguments.of("chamber-volume", "20 mbar", ""),
                Arguments.of("viscosity", "thick", ""),
                Arguments.of("mix-ratio", "0", ""),
                Arguments.of("mix-ratio", "0:1", ""),
                Arguments.of("mix-ratio", "1:0", ""),
                Arguments.of("mix-ratio", "-1:2", ""),
                Arguments.of("mix-ratio", "10:1:1:1:1", ""),
                Arguments.of("job", "juggling", "open-mould"),
                Arguments.of("kit", "2", "pressure"),
                Arguments.of("material", "cheese", "acrylic-gypsum"),
                Arguments.of("material", "\u001b]0;owned\u0007", "acrylic-gypsum"));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void anAnswerThatCannotBeReadIsRefused(String id, String typed, String accepted) {
        Ran ran = Ran.of("plan", "--json", "material=tin-silicone", id + "=" + typed);
        if (id.equals("material")) {
            ran = Ran.of("plan", "--json", id + "=" + typed);
        }
        isPlainlyRefused(ran, id);
        assertThat(ran.err()).contains(id, accepted);
        assertThat(ran.err())
                .as("says what is accepted")
                .matches("(?is).*(accepted|example|between|from|need|more than|like|give|say).*");
    }

    @ParameterizedTest
    @MethodSource("answers")
    void theSameInAFileIsRefusedToo(String id, String typed, String accepted) throws IOException {
        Path file = dir.resolve("a.json");
        String material = id.equals("material") ? "" : "\"material\":\"tin-silicone\",";
        Files.writeString(
                file,
                "{" + material + "\"" + id + "\":"
                        + Json.write(Json.array().add(typed)).replaceAll("^\\[|]$", "") + "}");
        Ran ran = Ran.of("plan", "--json", "--answers", file.toString());
        isPlainlyRefused(ran, id);
        assertThat(ran.err()).contains(id, accepted);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "400000000", "1e400", "-1e400", "1e-400", "0.0"})
    void aNumberThatNoJobHasIsRefused(String number) throws IOException {
        Path file = dir.resolve("a.json");
        Files.writeString(file, "{\"material\":\"tin-silicone\",\"batch-mass\":" + number + "}");
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", file.toString()), "batch-mass");
    }

    static Stream<Arguments> files() {
        return Stream.of(
                Arguments.of("{\"material\": \"tin-silicone\"", "answers"),
                Arguments.of("{\"material\" \"tin-silicone\"}", "answers"),
                Arguments.of("nonsense", "answers"),
                Arguments.of("", "answers"),
                Arguments.of(" \n \n", "answers"),
                Arguments.of("[]", "answers"),
                Arguments.of("[{\"material\":\"tin-silicone\"}]", "answers"),
                Arguments.of("42", "answers"),
                Arguments.of("null", "answers"),
                Arguments.of("\"material\"", "answers"),
                Arguments.of("NaN", "answers"),
                Arguments.of("{\"material\":\"tin-silicone\",\"batch-mass\":NaN}", "answers"),
                Arguments.of("{\"material\":\"tin-silicone\",\"material\":\"wax\"}", "answers"),
                Arguments.of("{\"material\":\"tin-silicone\"} {\"material\":\"wax\"}", "answers"),
                Arguments.of("{\"material\":[\"tin-silicone\"]}", "material"),
                Arguments.of("{\"material\":{\"id\":\"tin-silicone\"}}", "material"),
                Arguments.of("{\"material\":true}", "material"),
                Arguments.of("{\"material\":7}", "material"),
                Arguments.of("{\"material\":null}", "material"),
                Arguments.of("{}", "material"),
                Arguments.of("{\"material\":\"tin-silicone\",\"colour\":\"red\"}", "colour"),
                Arguments.of("{\"material\":\"tin-silicone\",\"\":\"red\"}", ""),
                Arguments.of("{\"material\":\"tin-silicone\",\"col\\u001b[31mour\":\"red\"}", "col [31mour"),
                Arguments.of("{\"material\":\"tin-silicone\",\"kit\":true}", "kit"),
                Arguments.of("{\"material\":\"tin-silicone\",\"mix-ratio\":0}", "mix-ratio"),
                Arguments.of("{\"a\":".repeat(100) + "1" + "}".repeat(100), "answers"),
                Arguments.of("[".repeat(100_000), "answers"));
    }

    @ParameterizedTest
    @MethodSource("files")
    void aFileThatHoldsNoAnswersIsRefused(String text, String field) throws IOException {
        Path file = dir.resolve("a.json");
        Files.writeString(file, text);
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", file.toString()), field);
        isPlainlyRefused(Ran.with(text, Map.of(), "plan", "--json", "--answers", "-"), field);
    }

    @Test
    void withoutJsonTheSentenceGoesToTheErrorStreamAlone() {
        Ran ran = Ran.of("plan", "--no-input", "material=cheese");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().strip().lines()).hasSize(1);
    }

    @Test
    void aFileThatCannotBeReadIsRefused() throws IOException {
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", dir.toString()), "answers");
        isPlainlyRefused(
                Ran.of("plan", "--json", "--answers", dir.resolve("none.json").toString()), "answers");
        isPlainlyRefused(Ran.of("plan", "--json", "--case", dir.toString()), "case");
        isPlainlyRefused(
                Ran.of("plan", "--json", "--case", dir.resolve("none.json").toString()), "case");
        Path latin = dir.resolve("latin.json");
        Files.write(
                latin,
                "{\"material\":\"tin-silicone\",\"room-temperature\":\"20 °C\"}".getBytes(StandardCharsets.ISO_8859_1));
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", latin.toString()), "answers");
        Path nulls = dir.resolve("nulls.json");
        Files.write(nulls, new byte[1000]);
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", nulls.toString()), "answers");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000", "a\u0000b"})
    void aFileNameThatNoDiskTakesIsRefused(String name) {
        Ran ran = Ran.of("plan", "--json", "--answers", name);
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(ran.err().strip().lines()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"format\":2,\"word\":\"plan\",\"answers\":{}}",
                "{\"format\":1,\"word\":\"dance\",\"answers\":{}}",
                "[]",
                "7",
                "{",
                "{\"format\":1,\"word\":\"plan\"}",
                "{\"format\":1,\"word\":\"plan\",\"answers\":[]}",
                "{\"format\":1,\"word\":\"plan\",\"answers\":{\"material\":\"tin-silicone\"},\"colour\":1}"
            })
    void aFileThatIsNoCaseIsRefused(String text) throws IOException {
        Path file = dir.resolve("a.case.json");
        Files.writeString(file, text);
        Ran ran = Ran.of("plan", "--json", "--case", file.toString());
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(ran.err().strip().lines()).hasSize(1);
        assertThat(tree(ran.out()).path("error").path("message").textValue())
                .isEqualTo(ran.err().strip());
        assertThat(Ran.of("replay", file.toString()).code()).isEqualTo(2);
    }

    @Test
    void tenMegabytesOfTextAreRefusedInASentence() throws IOException {
        String long10 = "x".repeat(TEN_MEGABYTES);
        Path file = dir.resolve("long.json");
        Files.writeString(file, long10);
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", file.toString()), "answers");
        Files.writeString(file, "{\"material\":\"" + long10 + "\"}");
        isPlainlyRefused(Ran.of("plan", "--json", "--answers", file.toString()), "answers");
        isPlainlyRefused(Ran.of("plan", "--json", "material=" + long10), "material");
        isPlainlyRefused(
                Ran.of("plan", "--json", "material=tin-silicone", "batch-mass=" + "9".repeat(TEN_MEGABYTES)),
                "batch-mass");
        isPlainlyRefused(
                Ran.of("plan", "--json", "material=tin-silicone", "mix-ratio=" + "1:".repeat(TEN_MEGABYTES / 2)),
                "mix-ratio");
        Ran ran = Ran.of("plan", "--json", "material=tin-silicone", long10 + "=1");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().length()).isLessThan(LONGEST_SENTENCE);
        ran = Ran.of("figure", long10);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().length()).isLessThan(LONGEST_SENTENCE);
        ran = Ran.of("plan", "--json", long10);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().length()).isLessThan(LONGEST_SENTENCE);
    }

    @Test
    void aBadLineIsAnsweredAndTheRestGoOn() {
        String lines =
                "{\"material\":\"tin-silicone\"}\n{\"material\":\"cheese\"}\n\n{\"material\":\"plaster\"}\n{broken\n";
        Ran ran = Ran.with(lines, Map.of(), "plan", "--json", "--answers", "-");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out().lines()).hasSize(4);
        String[] out = ran.out().split("\n");
        assertThat(tree(out[0]).path("verdict").isTextual()).isTrue();
        assertThat(tree(out[1]).path("error").path("field").textValue()).isEqualTo("material");
        assertThat(tree(out[1]).path("error").path("message").textValue()).contains("line 2");
        assertThat(tree(out[2]).path("verdict").isTextual()).isTrue();
        assertThat(tree(out[3]).path("error").path("message").textValue())
                .as("the line as an editor counts it")
                .contains("line 5");
        assertThat(ran.err().lines()).hasSize(2);
    }

    @Test
    void aReadingThatTheLocalAirDoesNotAllowSaysWhatTheMostWouldBe() {
        for (String[] words : new String[][] {
            {"figure", "absolute-pressure", "gauge-reading=29", "gauge-kind=below-local-air", "altitude=1500", "--json"
            },
            {
                "plan",
                "material=tin-silicone",
                "gauge-reading=29 inHg",
                "gauge-kind=below-local-air",
                "altitude=1500",
                "--json"
            }
        }) {
            Ran ran = Ran.of(words);
            isPlainlyRefused(ran, "gauge-reading");
            assertThat(ran.err()).containsPattern("25(\\.0)? inHg").contains("29 inHg");
        }
    }

    @Test
    void aChamberSmallerThanTheCupIsAChangeAndNoFault() {
        Ran ran = Ran.of(
                "plan",
                "--json",
                "material=tin-silicone",
                "batch-mass=500 g",
                "cup-volume=5 L",
                "chamber-volume=3 L",
                "kit=vacuum");
        assertThat(ran.code()).isEqualTo(0);
        JsonNode out = tree(ran.out());
        assertThat(out.path("verdict").textValue()).isEqualTo("change");
        assertThat(out.path("rules-fired").toString()).contains("cup-bigger-than-chamber");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dance",
                "--colour",
                "plan --colour",
                "plan material",
                "figure nonsense",
                "figure pump-down-time --no-input",
                "figure pump-down-time --json --in furlong",
                "generate nonsense",
                "figure pump-down-time =5",
                "resume --shop /nowhere/at/all",
                "plan --answers",
                "check /nowhere/at/all",
                "replay",
                "replay /nowhere/a.case.json",
                "plan --json --answers - --case x"
            })
    void aCommandThatIsNoneIsRefused(String words) {
        Ran ran = Ran.of(words.split(" "));
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(ran.err() + ran.out()).doesNotContain("Exception", "\tat ");
        assertThat(ran.err().strip().lines().count()).as(ran.err()).isLessThanOrEqualTo(1);
    }

    static Stream<Arguments> evil() {
        // The escape sequences of terminals old and new: with ESC, and in one character of the C1 block.
        return Stream.of(ESCAPE + "]0;owned\u0007" + ESCAPE + "[2J", "\u009b31m", "\u0008\u007f")
                .flatMap(e -> Stream.of(
                        Arguments.of(e, new String[] {"plan", "--json", "material=" + e}),
                        Arguments.of(e, new String[] {"plan", "--no-input", "material=" + e}),
                        Arguments.of(e, new String[] {"plan", "--json", e + "=1"}),
                        Arguments.of(e, new String[] {"plan", "--json", e}),
                        Arguments.of(
                                e, new String[] {"plan", "--no-input", "material=tin-silicone", "batch-mass=5 " + e}),
                        Arguments.of(
                                e, new String[] {"plan", "--no-input", "material=tin-silicone", "mix-ratio=5:" + e}),
                        Arguments.of(e, new String[] {"plan", "--answers", e}),
                        Arguments.of(e, new String[] {"plan", "--case", e}),
                        Arguments.of(e, new String[] {"figure", e}),
                        Arguments.of(e, new String[] {"figure", "pump-down-time", e + "=1"}),
                        Arguments.of(e, new String[] {e}),
                        Arguments.of(e, new String[] {"--" + e}),
                        Arguments.of(e, new String[] {"check", e}),
                        Arguments.of(e, new String[] {"replay", e}),
                        Arguments.of(e, new String[] {"resume", "--shop", e})));
    }

    @ParameterizedTest
    @MethodSource("evil")
    void nothingHandedInIsEchoedAsAControlSequence(String evil, String[] words) {
        Ran ran = Ran.of(words);
        assertThat(ran.code()).as(ran.toString()).isIn(0, 2);
        assertThat(controls(ran)).as(String.join(" ", words)).isZero();
    }

    @Test
    void nothingTypedInAConversationIsEchoedAsAControlSequence() {
        String evil = ESCAPE + "]0;owned\u0007" + ESCAPE + "[2J\u009b31m\u0008\u007f";
        String typed = evil + "\n" + evil + "\nchange " + evil + "\nenough\ndefine " + evil + "\nhow " + evil
                + "\nsave " + evil + "\n" + evil + "\nquit\n";
        Ran ran = Ran.with(typed, Map.of("HOME", dir.toString()), "plan", "material=tin-silicone");
        assertThat(ran.code()).isEqualTo(0);
        assertThat(controls(ran)).isZero();
    }

    private static long controls(Ran ran) {
        return (ran.out() + ran.err())
                .chars()
                .filter(c -> Character.isISOControl(c) && c != '\n')
                .count();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e20000000", "1e-20000000", "-1E+20000000"})
    void aNumberWithAMonstrousExponentIsRefusedAndCostsNothing(String number) {
        // Written out in full it would fill the memory; a bigger one would end the program.
        allocated("5e400");
        long usual = allocated("5e400");
        assertThat(allocated(number)).isLessThan(2 * usual);
    }

    private static long allocated(String number) {
        com.sun.management.ThreadMXBean threads =
                (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        Ran ran = Ran.with(
                "{\"material\":\"tin-silicone\",\"batch-mass\":" + number + "}",
                Map.of(),
                "plan",
                "--json",
                "--answers",
                "-");
        long used = threads.getThreadAllocatedBytes(id) - before;
        isPlainlyRefused(ran, "batch-mass");
        return used;
    }
}
