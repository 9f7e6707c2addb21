package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ctrl-C is answered at once, costs nothing, and leaves the terminal as it was. */
class InterruptTest {
    /** Ten times the tenth of a second that feels like at once: a guard for a busy machine, no measurement. */
    private static final long GUARD_MS = 1000;

    private static final int TRIES = 3;

    @TempDir
    private Path home;

    /** R13 */
    @ParameterizedTest
    @ValueSource(strings = {"editing", "plain"})
    void ctrlCSaysSoRestoresTheTerminalAndKeepsEverything(String how) throws IOException {
        boolean answered = false;
        for (int n = 0; n < TRIES && !answered; n++) {
            answered = interrupted(how, Files.createDirectories(home.resolve("try-" + n)));
        }
        assertThat(answered).as("answered at once").isTrue();
    }

    private static boolean interrupted(String how, Path home) throws IOException {
        boolean answered;
        String[] words = how.equals("plain") ? new String[] {"plan", "--plain"} : new String[] {"plan"};
        String script = "trap : INT; stty -a > \"$XDG_CONFIG_HOME/before\"; \"$@\"; code=$?;"
                + " stty -a > \"$XDG_CONFIG_HOME/after\"; echo \"code=$code\"; exit $code";
        try (Rig rig = Rig.in(home).shell(script, words)) {
            rig.reply("tin-silicone");
            rig.reply("1");
            rig.type("half an ans");
            rig.waitFor("half an ans");
            rig.ctrlC();
            answered = rig.appears("Stopped.", GUARD_MS);
            rig.waitFor("Stopped.");
            rig.waitFor("code=130");
            assertThat(rig.exit()).isEqualTo(130);
            assertThat(rig.screen()).contains("\"pourwright resume\" goes on from here.");
            assertThat(rig.raw()).as("the cursor was never hidden").doesNotContain("\u001b[?25l");
            assertThat(attributes(home.resolve("after")))
                    .as("echo, line mode and all else as before")
                    .isEqualTo(attributes(home.resolve("before")))
                    .contains(" echo ", " icanon ");
        }
        try (Rig rig = Rig.in(home).run("resume")) {
            List<String> answers = rig.reply("answers");
            assertThat(answers).hasSizeGreaterThanOrEqualTo(2);
            assertThat(answers.get(0)).startsWith("1. material: tin silicone");
            assertThat(answers.get(1)).startsWith("2. job: ");
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(4);
        }
        return answered;
    }

    /** All that stty tells but the number in "line =": the line library leaves it unset, and the system does not read it. */
    private static String attributes(Path file) throws IOException {
        return Files.readString(file).replaceAll(" line = \\d+;", "");
    }
}
