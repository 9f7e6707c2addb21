package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed before the program is ready is there when it is. */
class TypedAheadTest {
    @TempDir
    private Path home;

    /** Keys pressed at once, while Java starts, and one by one while the terminal is opened. */
    @ParameterizedTest
    @ValueSource(ints = {0, 40, 80, 120, 160, 240})
    void nothingTypedDuringTheStartIsLost(int afterMs) throws InterruptedException {
        try (Rig rig = Rig.in(home).keyByKey().run("plan")) {
            Thread.sleep(afterMs);
            rig.type("plaster\r");
            rig.waitFor("= plaster");
            assertThat(rig.prompt()).isEqualTo("job");
            assertThat(rig.said("answers")).startsWith("1. material: plaster");
            rig.kill();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "plan"})
    void halfALineTypedDuringTheStartCanBeEnded(String word) {
        String[] words = word.isEmpty() ? new String[0] : new String[] {word};
        try (Rig rig = Rig.in(home).run(words)) {
            rig.type(word.isEmpty() ? "pl" : "plas");
            rig.waitFor(word.isEmpty() ? "word > pl" : "material > plas");
            rig.type(word.isEmpty() ? "an\rplaster\r" : "ter\r");
            rig.waitFor("= plaster");
            rig.kill();
        }
    }
}
