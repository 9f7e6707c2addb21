package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A power cut costs nothing that was answered. */
class KilledAtTheTerminalTest {
    @TempDir
    private Path home;

    /** R4: killed at a question and in the middle of typing; whichever way it is started again, it offers to go on. */
    @Test
    void afterEveryKillTheProgramOffersToGoOnAndKnowsEveryAnswer() {
        List<String> given = new ArrayList<>();
        try (Rig rig = Rig.in(home).run("plan")) {
            answer(rig, given, 3);
            rig.kill();
        }
        try (Rig rig = Rig.in(home).run()) {
            assertThat(rig.opening()).contains("unfinished plan with 3 answers", "Enter = yes", "\"no\"");
            rig.reply("");
            assertThat(missing(rig, given)).isEmpty();
            answer(rig, given, 4);
            rig.type("half an ans");
            rig.kill();
        }
        try (Rig rig = Rig.in(home).run("plan")) {
            assertThat(rig.opening()).contains("unfinished plan with 7 answers", "Enter = yes", "\"no\"");
            assertThat(rig.said("quit")).contains("Left.", "still stands");
            assertThat(rig.exit()).isEqualTo(4);
        }
        try (Rig rig = Rig.in(home).run("resume")) {
            assertThat(missing(rig, given)).isEmpty();
            // R2: what comes back from the disk comes back as the default too, and so does "don't know".
            for (int i = given.size() - 1; i >= 0; i--) {
                String said = rig.said("back");
                String id = rig.prompt();
                assertThat(id).isEqualTo(given.get(i));
                assertThat(said).contains("(Enter = " + Typist.JOB.getOrDefault(id, "don't know") + ")");
            }
            for (int i = 0; i < given.size(); i++) {
                rig.reply("");
            }
            assertThat(missing(rig, given)).isEmpty();
            rig.kill();
        }
        try (Rig rig = Rig.in(home).run()) {
            rig.prompt();
            assertThat(rig.said("no"))
                    .as("it is offered, not forced")
                    .contains("Plan a pour, look for vents, diagnose");
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(4);
        }
        try (Rig rig = Rig.in(home).run("diagnose")) {
            assertThat(rig.opening())
                    .as("another word lets it not go unsaid")
                    .contains("unfinished plan with 7 answers");
            rig.kill();
        }
    }

    private static void answer(Rig rig, List<String> given, int more) {
        for (int i = 0; i < more; i++) {
            String id = rig.prompt();
            rig.reply(Typist.JOB.getOrDefault(id, "don't know"));
            given.add(id);
        }
    }

    private static List<String> missing(Rig rig, List<String> given) {
        String answers = String.join("\n", rig.reply("answers"));
        return given.stream().filter(id -> !answers.contains(". " + id + ": ")).toList();
    }
}
