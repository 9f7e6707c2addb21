package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.teach.Progress;

/** Progress survives the end of the program, and whatever is in the file. */
class LearnersTest {
    private static final Progress.Event READ =
            new Progress.Event("2026-03-01", "pot-life", "", "", 0, false, false, List.of());
    private static final Progress.Event DONE = new Progress.Event(
            "2026-03-02",
            "defects",
            "cause",
            "rooster-comb",
            Long.MIN_VALUE,
            true,
            true,
            List.of("stir-fast", "water-only-weakens"));

    @TempDir
    private Path shop;

    @Test
    void whatIsAddedIsReadAgain() throws IOException {
        Learners l = new Learners(shop);
        assertThat(l.names()).isEmpty();
        l.add("Ida", READ);
        l.add("ida", DONE);
        assertThat(l.read("IDA")).isEqualTo(new Progress("ida", List.of(READ, DONE)));
        assertThat(l.names()).containsExactly("ida");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../ida", "C:\\ida", "\u00c9mile K.", "\u5c0f\u6797", "a/b", "..x"})
    void aNameStaysInItsFolder(String name) throws IOException {
        Learners l = new Learners(shop);
        l.add(name, READ);
        assertThat(l.read(name).events()).containsExactly(READ);
        assertThat(l.file(name).normalize().getParent()).isEqualTo(shop.resolve(Learners.FOLDER));
        assertThat(l.names()).containsExactly(name.strip());
    }

    @Test
    void aBrokenLineCountsForNothingAndStays() throws IOException {
        Learners l = new Learners(shop);
        l.add("Ida", READ);
        String broken = "{\"lesson\":\n[]\n{\"lesson\":7,\"day\":\"x\"}";
        Files.writeString(
                l.file("Ida"),
                Files.readString(l.file("Ida"), StandardCharsets.UTF_8) + broken,
                StandardCharsets.UTF_8);
        l.add("Ida", DONE);
        assertThat(l.read("Ida").events()).containsExactly(READ, DONE);
        assertThat(Files.readString(l.file("Ida"), StandardCharsets.UTF_8)).contains(broken + "\n");
    }

    @Test
    void aLearnerCanBeForgotten() throws IOException {
        Learners l = new Learners(shop);
        l.add("Ida", READ);
        l.add("Bram", READ);
        assertThat(Forgetting.files(shop, "learner Ida")).containsExactly(l.file("Ida"));
        assertThat(Forgetting.files(shop, "learner Olga")).isEmpty();
        assertThat(Forgetting.files(shop, "all")).contains(l.file("Ida"), l.file("Bram"));
    }
}
