package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.advice.BadAnswer;

/** An outcome is one line, and nothing else of the case changes. */
class OutcomeTest {
    private static final Path CASE = Path.of("transcripts-of-cases/lantern-finial-block-mould.case.json");

    @TempDir
    private Path shop;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "horse ear good|horse ear|true|''",
                "horse ear bad pinholes at the tips|horse ear|false|pinholes at the tips",
                "horse-ear: BAD, soft|horse-ear:|false|soft",
                "good|''|true|''",
                "bad one good|''|false|one good"
            })
    void theLineIsRead(String line, String name, boolean good, String what) {
        assertThat(Outcome.read(line)).contains(new Outcome(name, good, what));
    }

    @Test
    void aLineWithoutGoodOrBadIsNone() {
        assertThat(Outcome.read("horse ear goodish")).isEmpty();
        assertThat(Outcome.read("")).isEmpty();
    }

    private Path saved(String name) throws IOException {
        Path file = shop.resolve("cases").resolve(name + ".case.json");
        Files.createDirectories(file.getParent());
        Files.copy(CASE, file);
        return file;
    }

    @Test
    void onlyTheOutcomeChangesAndWhatStoodStays() throws IOException {
        Path file = saved("horse-ear");
        String before = Files.readString(file);
        new Outcome("", true, "").write(file, "2026-03-01");
        String after = Files.readString(file);
        assertThat(after.replace("  \"outcome\" : \"good (2026-03-01)\",\n", ""))
                .isEqualTo(before);
        new Outcome("", false, "torn \"ear\"").write(file, "2026-09-01");
        assertThat(Files.readString(file)).contains("good (2026-03-01); bad: torn \\\"ear\\\" (2026-09-01)");
    }

    @Test
    void aCaseIsFoundByItsNameOrTheNearestAreNamed() throws IOException {
        Path file = saved("horse-ear-mould");
        SavedCases cases = new SavedCases(shop, null);
        assertThat(cases.named("Horse ear mould")).isEqualTo(file);
        assertThatThrownBy(() -> cases.named("horse ear"))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("Near it: horse-ear-mould");
        assertThatThrownBy(() -> new SavedCases(shop.resolve("none"), null).named("x"))
                .hasMessageContaining("None is saved yet");
    }

    @Test
    void whatIsNoCaseIsLeftAlone() throws IOException {
        Path file = saved("broken");
        for (String text : new String[] {"{", "[]", "{}", "7"}) {
            Files.writeString(file, text);
            assertThatThrownBy(() -> new Outcome("", true, "").write(file, "2026-03-01"))
                    .isInstanceOf(BadAnswer.class);
            assertThat(Files.readString(file)).isEqualTo(text);
        }
        assertThatThrownBy(() -> new Outcome("", false, "x".repeat(400)).write(file, "2026-03-01"))
                .hasMessageContaining("300 letters");
    }

    @Test
    void theListNamesWhatCannotBeRead() throws IOException {
        saved("good-one");
        Files.writeString(saved("bad-one"), "{");
        var k = pourwright.knowledge.KnowledgeReader.read(Path.of("knowledge"));
        Map<String, Boolean> read = new java.util.TreeMap<>();
        new SavedCases(shop, null)
                .own(k)
                .forEach(s -> read.put(s.name(), s.read().isPresent()));
        assertThat(read).isEqualTo(Map.of("good-one", true, "bad-one", false));
    }
}
