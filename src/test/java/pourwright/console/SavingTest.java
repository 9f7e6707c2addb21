package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.facts.Answers;
import pourwright.knowledge.KnowledgeReader;

/** Saving under a name that is taken asks first. */
class SavingTest {
    @TempDir
    private Path shop;

    private Path file;

    @BeforeEach
    void aCaseWasSaved() throws IOException {
        file = Files.createDirectories(shop.resolve("cases")).resolve("ear.case.json");
        Files.writeString(file, "an older case");
    }

    private ScriptedDoor save(String... typed) {
        List<String> all = new ArrayList<>(List.of("plaster", "enough"));
        all.addAll(List.of(typed));
        ScriptedDoor door = ScriptedDoor.typing(all.toArray(String[]::new));
        new Conversation(door, new PlanJob(KnowledgeReader.read(Path.of("knowledge"))), shop, Answers.NONE).run();
        return door;
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "no", "quit", "don't know", "2x"})
    void nothingButYesWritesOver(String answer) {
        ScriptedDoor door = save("save ear", answer, "no", "quit");
        assertThat(door.all()).contains("There is a case of that name already", "(Enter = no, or \"yes\")");
        assertThat(door.prompts).contains("save");
        assertThat(file).hasContent("an older case");
        assertThat(door.all()).contains("Nothing was written.").doesNotContain("Saved as");
    }

    @Test
    void yesWritesOver() {
        ScriptedDoor door = save("save Ear", "yes", "quit");
        assertThat(door.all()).contains("Saved as");
        assertThat(file).content().contains("plaster");
    }

    @Test
    void aFreeNameIsNotAskedAbout() {
        ScriptedDoor door = save("save other ear", "quit");
        assertThat(door.prompts).doesNotContain("save");
        assertThat(shop.resolve("cases/other-ear.case.json")).content().contains("plaster");
    }

    @Test
    void theEndOfTheInputAtTheQuestionWritesNothing() {
        save("save ear");
        assertThat(file).hasContent("an older case");
    }
}
