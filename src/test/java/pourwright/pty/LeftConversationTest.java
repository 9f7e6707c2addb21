package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever begins over a conversation that was left is asked first, and only "drop" destroys anything. */
class LeftConversationTest {
    private static final String LEFT = "{\"word\":\"plan\"}\n{\"set\":\"material\",\"to\":\"plaster\"}\n";

    @TempDir
    private Path home;

    private Path shop;

    @BeforeEach
    void aPlanWasLeft() throws IOException {
        shop = Files.createDirectories(home.resolve("pourwright"));
        Files.writeString(journal(), LEFT);
    }

    private Path journal() {
        return shop.resolve("unfinished.jsonl");
    }

    private Path aside() {
        return shop.resolve("unfinished-1.jsonl");
    }

    @Test
    void enterGoesOnWithIt() {
        try (Rig rig = Rig.in(home).run("plan")) {
            assertThat(rig.opening()).contains("There is an unfinished plan with 1 answer. Go on with it?");
            rig.reply("");
            assertThat(rig.said("answers")).startsWith("1. material: plaster");
            rig.kill();
        }
        assertThat(journal()).hasContent(LEFT);
    }

    @Test
    void aPlanIsOfferedToWhoeverBeginsADiagnosisAndIsAPlanStill() {
        try (Rig rig = Rig.in(home).run("diagnose")) {
            assertThat(rig.opening()).contains("unfinished plan with 1 answer");
            rig.reply("yes");
            assertThat(rig.prompt()).isEqualTo("job");
            rig.kill();
        }
    }

    /** The left one has the say; what was given with the command and not taken over is named. */
    @Test
    void answersOfTheCommandAreAddedToIt() {
        try (Rig rig = Rig.in(home).run("plan", "material=wax", "batch-mass=2 kg")) {
            assertThat(rig.said("")).contains("Given now and not taken over: material.");
            assertThat(rig.said("answers")).contains("1. material: plaster", "2. batch-mass: 2 kg");
            rig.kill();
        }
    }

    @Test
    void noSetsItAsideWithTheFirstAnswerAndNotBefore() {
        try (Rig rig = Rig.in(home).run("plan")) {
            rig.prompt();
            assertThat(rig.said("no")).contains("The first answer here sets it aside");
            assertThat(journal()).hasContent(LEFT);
            assertThat(rig.said("tin silicone")).contains("is kept as unfinished-1.jsonl in");
            rig.kill();
        }
        assertThat(aside()).hasContent(LEFT);
        assertThat(journal()).content().contains("tin-silicone").doesNotContain("plaster");
    }

    @Test
    void aSecondOneSetAsideTakesAnotherName() throws IOException {
        Files.writeString(aside(), "an older one");
        try (Rig rig = Rig.in(home).run("plan")) {
            rig.reply("no");
            rig.reply("wax");
            rig.kill();
        }
        assertThat(aside()).hasContent("an older one");
        assertThat(shop.resolve("unfinished-2.jsonl")).hasContent(LEFT);
    }

    @Test
    void dropLetsItGo() {
        try (Rig rig = Rig.in(home).run("plan")) {
            rig.reply("drop");
            assertThat(rig.prompt()).isEqualTo("material");
            rig.kill();
        }
        assertThat(journal()).content().doesNotContain("plaster");
        assertThat(aside()).doesNotExist();
    }

    /** Ctrl-D, Ctrl-C and quit at the question itself. */
    @Test
    void whoeverLeavesAtTheQuestionDestroysNothing() {
        for (String way : List.of("\u0004", "\u0003", "quit\r")) {
            try (Rig rig = Rig.in(home).run("plan")) {
                rig.prompt();
                rig.type(way);
                rig.waitFor("still stands");
                assertThat(rig.exit()).isEqualTo(way.equals("\u0003") ? 130 : 4);
            }
            assertThat(journal()).hasContent(LEFT);
        }
    }

    /** Nobody can be asked: it is set aside under another name, and the record says so. */
    @Test
    void fromAPipeItIsSetAside() throws IOException, InterruptedException {
        Run run = Run.Piped.start(home, "plan").type("tin silicone\n");
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.out()).doesNotContain("resume > ");
        assertThat(run.out().replaceAll("\\s+", " ")).contains("is kept as unfinished-1.jsonl in");
        assertThat(aside()).hasContent(LEFT);
        Run empty = Run.Piped.start(home, "diagnose").type("");
        assertThat(empty.code()).isEqualTo(4);
        assertThat(journal()).content().contains("tin-silicone");
        assertThat(shop.resolve("unfinished-2.jsonl")).doesNotExist();
    }
}
