package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.casebook.ShopLock;

class ForgetCommandTest {
    private static final List<String> HISTORY =
            List.of("unfinished.jsonl", "unfinished-1.jsonl", "runs.jsonl", "kit-tests.jsonl");
    private static final List<String> MORE = List.of(
            "kit.json",
            "stock.json",
            "guidelines.json",
            "cases/horse-ear.case.json",
            "cases/b.case.json",
            "materials/own.json");
    private static final List<String> NOT_OURS =
            List.of("letter.txt", "cases/photo.jpg", "materials/notes.md", "taxes/2025.json", "unfinished-novel.jsonl");

    @TempDir
    Path shop;

    @BeforeEach
    void fill() throws IOException {
        for (String name :
                Stream.of(HISTORY, MORE, NOT_OURS).flatMap(List::stream).toList()) {
            Files.createDirectories(shop.resolve(name).getParent());
            Files.writeString(shop.resolve(name), "{}");
        }
    }

    private Ran forget(String typed, String... words) {
        return Ran.with(
                typed + "\n",
                Map.of(),
                Stream.of(new String[] {"forget"}, words, new String[] {"--shop", shop.toString()})
                        .flatMap(Stream::of)
                        .toArray(String[]::new));
    }

    private List<String> left(List<String> names) {
        return names.stream().filter(n -> Files.exists(shop.resolve(n))).toList();
    }

    @Test
    void oneCaseGoesAndNothingElse() {
        Ran ran = forget("forget Horse Ear", "Horse", "Ear");
        assertThat(ran.code()).as(ran.toString()).isZero();
        assertThat(ran.out()).contains("cases/horse-ear.case.json", "Deleted: 1 file.");
        assertThat(left(MORE)).hasSize(MORE.size() - 1).doesNotContain("cases/horse-ear.case.json");
        assertThat(left(HISTORY)).isEqualTo(HISTORY);
    }

    @Test
    void historyIsWhatWasTalkedAboutAndMeasured() {
        assertThat(forget("forget history", "history").code()).isZero();
        assertThat(left(HISTORY)).isEmpty();
        assertThat(left(MORE)).isEqualTo(MORE);
    }

    @Test
    void allIsAllOfOursAndNothingOfAnybodyElse() {
        assertThat(forget("forget all", "all").code()).isZero();
        assertThat(left(HISTORY)).isEmpty();
        assertThat(left(MORE)).isEmpty();
        assertThat(left(NOT_OURS)).isEqualTo(NOT_OURS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yes", "y", "forget", "all", "forget history", "forget al"})
    void onlyTheWordsInFullDelete(String typed) {
        Ran ran = forget(typed, "all");
        assertThat(ran.out()).contains("Nothing was deleted.");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(left(HISTORY)).isEqualTo(HISTORY);
        assertThat(left(MORE)).isEqualTo(MORE);
    }

    @ParameterizedTest
    @CsvSource({"nothing-of-that-name", "../letter", "/etc/passwd"})
    void whatIsNotThereIsNamedWithWhatIs(String name) {
        Ran ran = forget("forget " + name, name);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("b, horse-ear");
        assertThat(left(NOT_OURS)).isEqualTo(NOT_OURS);
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path elsewhere = Files.createTempDirectory("elsewhere");
        Path theirs = Files.writeString(elsewhere.resolve("theirs.case.json"), "{}");
        Files.createSymbolicLink(shop.resolve("cases/linked.case.json"), theirs);
        assertThat(forget("forget all", "all").code()).isZero();
        assertThat(theirs).exists();
    }

    @Test
    void withoutAPersonOrBesideAnotherConsoleNothingGoes() throws IOException {
        assertThat(forget("forget all", "all", "--no-input").code()).isEqualTo(2);
        ShopLock held = ShopLock.take(shop).orElseThrow();
        try {
            Ran ran = forget("forget all", "all");
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains("Another console is open");
        } finally {
            held.close();
        }
        assertThat(left(HISTORY)).isEqualTo(HISTORY);
        assertThat(forget("x").err()).contains("Say what to forget");
    }
}
