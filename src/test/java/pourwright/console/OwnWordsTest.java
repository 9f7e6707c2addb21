package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.MaterialClass;

/** A diagnosis begun with a line in the person's own words. */
class OwnWordsTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Diagnoser DIAGNOSER =
            new Diagnoser(KnowledgeReader.forDiagnosis(Path.of("knowledge"), KNOWLEDGE));

    private static ScriptedDoor talk(String... typed) {
        ScriptedDoor door = ScriptedDoor.typing(typed);
        new Conversation(door, new DiagnoseJob(DIAGNOSER), null, Answers.NONE).run();
        return door;
    }

    private static List<String> epoxies() {
        return KNOWLEDGE.materials().values().stream()
                .filter(m -> m.family().equals("epoxy"))
                .map(MaterialClass::id)
                .toList();
    }

    @Test
    void aFamilyNarrowsTheQuestionForTheLiquid() {
        ScriptedDoor door = talk("epoxy, smells of solvent, bubbles under the horns", "", "2", "quit");
        assertThat(door.all()).contains("Not understood, and left out: \"smells of solvent\".");
        assertThat(door.prompts.get(2)).isEqualTo("material");
        String list = door.all().substring(door.all().indexOf("Which liquid"));
        for (MaterialClass m : KNOWLEDGE.materials().values()) {
            boolean offered = list.substring(0, list.indexOf("material >")).contains("[" + m.id() + "]");
            assertThat(offered).as(m.id()).isEqualTo(epoxies().contains(m.id()));
        }
        assertThat(door.all())
                .as("numbers mean what was shown")
                .contains("= " + KNOWLEDGE.materials().get(epoxies().get(1)).name());
    }

    @Test
    void anyOtherLiquidMayBeTypedAllTheSame() {
        ScriptedDoor door = talk("epoxy with bubbles", "", "tin silicone", "quit");
        assertThat(door.all()).contains("= tin silicone");
    }

    @Test
    void whoeverSaysNoIsAskedWithoutNarrowing() {
        ScriptedDoor door = talk("epoxy with bubbles", "no", "bubbles", "zzz", "quit");
        assertThat(door.all()).doesNotContain("[coating-epoxy]");
    }

    @Test
    void aFamilyAloneIsSomethingUnderstood() {
        ScriptedDoor door = talk("it is urethane", "", "bubbles", "quit");
        assertThat(door.all()).contains("some urethane").doesNotContain("None of the words", "Not understood");
        assertThat(door.all()).contains("[polyurethane-rubber]").doesNotContain("[coating-epoxy]");
    }
}
