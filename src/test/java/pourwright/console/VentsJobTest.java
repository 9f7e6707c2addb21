package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.facts.Answers;
import pourwright.geometry.Castings;
import pourwright.geometry.Mesh;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** The search for trapped air as a conversation: what cannot be used is asked again at once, and nothing is lost. */
class VentsJobTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    @TempDir
    Path shop;

    /** Knows one file; the slab is as large as its unit says. */
    private static Mesh slab(String file, double metresPerUnit) {
        if (!file.equals("slab.stl")) {
            throw new BadAnswer("mesh-file", file + " does not exist.");
        }
        return metresPerUnit == 0.001 ? Castings.posted() : Castings.cube(1000);
    }

    private static VentsJob job() {
        return new VentsJob(KNOWLEDGE, VentsJobTest::slab, advice -> {});
    }

    private Conversation.End talk(ScriptedDoor door) {
        return new Conversation(door, job(), shop, Answers.NONE).run();
    }

    @Test
    void aMeshIsAskedForItsUnitItsSizeIsShownAndAWrongOneIsAskedAgain() {
        ScriptedDoor door = ScriptedDoor.typing(
                "nowhere.stl",
                "mm",
                "slab.stl",
                "no",
                "mm",
                "yes",
                "cavity",
                "fast urethane",
                "closed",
                "neither",
                "no",
                "up",
                "0,0,1",
                "400,20,10",
                "40,20,10",
                "",
                "how 1",
                "picture",
                "more",
                "cautions",
                "quit");
        assertThat(talk(door)).isEqualTo(Conversation.End.ADVICE);
        String all = String.join("\n", door.lines);
        assertThat(all)
                .contains("nowhere.stl does not exist.")
                .contains("80 mm \u00d7 40 mm \u00d7 30 mm")
                .contains("\"up\" is not a place")
                .contains("off the surface")
                .contains("Make 2 vents.")
                .contains("pocket-wants-a-vent")
                .contains("height mm");
        assertThat(door.prompts).doesNotContain("mesh-not-up");
    }

    @Test
    void withoutAMeshThePlaceIsDescribed() {
        ScriptedDoor door = ScriptedDoor.answering(java.util.Map.of(
                "material", "fast urethane",
                "job", "closed",
                "undercuts", "large",
                "undercut-width", "10 mm",
                "undercut-depth", "20 mm",
                "undercut-blind", "yes",
                "undercut-count", "3",
                "review", "",
                "vents", "quit"));
        assertThat(talk(door)).isEqualTo(Conversation.End.ADVICE);
        assertThat(String.join("\n", door.lines)).contains("Make 3 vents.").contains("3 places, each");
        assertThat(door.prompts).contains("undercut-count").doesNotContain("batch-mass", "pot-life", "chamber-volume");
    }

    @Test
    void everyAnswerIsKeptAndResumed() {
        ScriptedDoor door = ScriptedDoor.typing("slab.stl", "mm", "yes", "cavity");
        assertThat(talk(door)).isEqualTo(Conversation.End.UNFINISHED);
        Answers kept = new Journal(shop, "vents")
                .unfinished(new AnswersJson(KNOWLEDGE))
                .orElseThrow();
        assertThat(kept.all().keySet()).containsExactly("mesh-file", "mesh-unit", "mesh-size-right", "mesh-is");
        List<String> prompts = new ArrayList<>();
        ScriptedDoor again = new ScriptedDoor(
                id -> {
                    prompts.add(id);
                    return id.equals("vents") ? "quit" : id.equals("review") ? "" : "don't know";
                },
                80,
                false);
        new Conversation(again, job(), shop, kept).run();
        assertThat(prompts).doesNotContain("mesh-file", "mesh-unit", "mesh-size-right", "mesh-is");
        assertThat(String.join("\n", again.lines)).contains("Make 2 vents.");
    }

    @Test
    void whatIsSaidAtAPromptIsExplained() {
        ScriptedDoor door = ScriptedDoor.typing("slab.stl", "why", "help", "mm", "why", "quit");
        talk(door);
        String all = String.join(" ", door.lines);
        assertThat(all).contains("every bubble, hangs on the unit").contains("third power");
    }
}
