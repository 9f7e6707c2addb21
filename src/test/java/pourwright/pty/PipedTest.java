package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pipe for a person: it reads like a conversation, and nothing waits for a person who is not there. */
class PipedTest {
    @TempDir
    private Path home;

    /** R7, R8: lines are read and echoed; the end of the input names the question left, with an example; all is kept. */
    @Test
    void linesOfAPipeAreEchoedAndItsEndNamesTheQuestionLeft() throws Exception {
        Run run = Run.Piped.start(home, "plan").type("tin silicone\n1\n");
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("material > tin silicone\n", "job > 1\n").doesNotContain("\u001b");
        assertThat(Rig.collapsed(run.out().lines().toList()))
                .contains("The input ended. The next question was 'pot-life', for example 40 min. Everything is kept");
        Run rest = Run.Piped.start(home, "resume").type("answers\n");
        assertThat(rest.code()).isEqualTo(4);
        assertThat(rest.out()).contains("1. material: ", "2. job: ");
    }

    /** R8: at a short question as at a long one. */
    @Test
    void theEndOfTheInputEndsEveryPromptWithItsOwnCode() throws Exception {
        List<Run.Piped> all = List.of(
                Run.Piped.start(Files.createDirectories(home.resolve("a"))),
                Run.Piped.start(Files.createDirectories(home.resolve("b")), "diagnose"));
        for (Run.Piped one : all) {
            Run run = one.type("");
            assertThat(run.code()).isEqualTo(4);
            assertThat(run.err()).isEmpty();
        }
    }

    /** R7, R8: an open, silent pipe and {@code --no-input} or a word for machines: it ends, whatever the word. */
    @Test
    void aSilentPipeNeverHangs() throws IOException, InterruptedException {
        Path left = Files.createDirectories(home.resolve("left/pourwright")).resolve("unfinished.jsonl");
        Files.writeString(left, "{\"word\":\"plan\"}\n{\"set\":\"material\",\"to\":\"plaster\"}\n");
        record Wanted(int code, String says, String home, String... words) {}
        List<Wanted> all = List.of(
                new Wanted(2, "Give some, for example", "none", "--no-input"),
                new Wanted(2, "liquid", "none", "plan", "--no-input"),
                new Wanted(2, "for example symptom=bubbles", "none", "diagnose", "--no-input"),
                new Wanted(0, "Mix", "none", "plan", "--no-input", "material=plaster", "batch-mass=2 kg"),
                new Wanted(0, "[1] ", "none", "diagnose", "--no-input", "material=plaster", "symptom=bubbles"),
                new Wanted(2, "material", "none", "plan", "--json"),
                new Wanted(0, "GO", "left", "resume", "--no-input"));
        List<Run.Piped> started = new ArrayList<>();
        for (Wanted w : all) {
            started.add(Run.Piped.start(Files.createDirectories(home.resolve(w.home())), w.words()));
        }
        for (int i = 0; i < all.size(); i++) {
            Run run = started.get(i).end();
            Wanted w = all.get(i);
            assertThat(run.code()).as(String.join(" ", w.words()) + run).isEqualTo(w.code());
            assertThat(run.out() + run.err()).as(String.join(" ", w.words())).contains(w.says());
            assertThat(run.out()).as("no prompt").doesNotContain(" > ");
        }
        assertThat(left).as("what was left is left").exists();
    }
}
