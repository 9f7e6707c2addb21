package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Help at every prompt of a conversation, after which the same is asked again. */
class NowInConversationTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Instant NINE = Instant.parse("2026-03-01T09:00:00Z");
    private static final Map<String, String> FROTHS = Map.of(
            "material", "tin-silicone",
            "job", "rubber-around-master",
            "batch-mass", "500 g",
            "mix-ratio", "10:1 by weight",
            "kit", "vacuum",
            "cup-volume", "2.5 L",
            "chamber-volume", "20 L",
            "pump-speed", "3 cfm",
            "gauge-kind", "absolute",
            "pot-life", "60 min");

    @TempDir
    Path shop;

    /** Goes through a plan and its bench; with help asked for once at every prompt, or without. */
    private ScriptedDoor talk(boolean asksForHelp, Path folder) {
        Set<String> helped = new HashSet<>();
        List<String> plan = new ArrayList<>(List.of("follow", "quit"));
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    if (asksForHelp && helped.add(id)) {
                        return "  Now  Foam at the rmi ";
                    }
                    return switch (id) {
                        case "plan" -> plan.remove(0);
                        case "bench" -> "quit";
                        case "review" -> "";
                        default -> FROTHS.getOrDefault(id, "don't know");
                    };
                },
                80,
                false);
        new Conversation(door, new PlanJob(KNOWLEDGE, () -> NINE, run -> "Kept."), folder, Answers.NONE).run();
        return door;
    }

    @Test
    void everyPromptHelpsAndAsksTheSameAgain() {
        ScriptedDoor without = talk(false, null);
        ScriptedDoor with = talk(true, null);
        assertThat(Set.copyOf(without.prompts)).contains("material", "pot-life", "review", "plan", "bench");
        List<String> help = NowPage.lines(KNOWLEDGE.emergencies(), "foam at the rim", 80);
        List<String> shown = new ArrayList<>();
        int times = 0;
        for (int i = 0; i < with.lines.size(); i++) {
            if (with.lines.get(i).contains(" >   Now  Foam")) {
                assertThat(with.lines.subList(i + 1, i + 1 + help.size())).isEqualTo(help);
                // The next line is the answer to the very same prompt.
                String prompt = with.lines.get(i).substring(0, with.lines.get(i).indexOf(" > "));
                assertThat(with.lines.get(i + 1 + help.size())).startsWith(prompt + " > ");
                i += help.size();
                times++;
            } else {
                shown.add(with.lines.get(i));
            }
        }
        assertThat(times).isEqualTo(new HashSet<>(without.prompts).size());
        // Apart from the help, nothing in the whole conversation is different.
        assertThat(shown).isEqualTo(without.lines);
    }

    @Test
    void nothingOfItIsKeptAsAnAnswer() throws Exception {
        talk(true, shop);
        try (var files = Files.walk(shop)) {
            for (Path f : files.filter(Files::isRegularFile).toList()) {
                assertThat(Files.readString(f)).doesNotContain("Foam");
            }
        }
    }

    @Test
    void nowAloneListsAndAWordThatOnlyBeginsSoIsAnAnswer() {
        ScriptedDoor door = ScriptedDoor.typing("now", "nowhere", "quit");
        new Conversation(door, new PlanJob(KNOWLEDGE), null, Answers.NONE).run();
        assertThat(door.lines).containsAll(NowPage.lines(KNOWLEDGE.emergencies(), "", 80));
        assertThat(door.all()).contains("\"nowhere\"");
        assertThat(door.prompts).containsOnly("material");
    }

    @Test
    void theHelpOfAQuestionNamesIt() {
        ScriptedDoor door = ScriptedDoor.typing("help", "quit");
        new Conversation(door, new PlanJob(KNOWLEDGE), null, Answers.NONE).run();
        assertThat(door.all()).contains("\"now foam at the rim\"");
    }

    @Test
    void answersGivenBeforeStayAsTheyWere() {
        Answers start = new AnswersJson(KNOWLEDGE).with(Answers.NONE, "material", "tin-silicone");
        ScriptedDoor door = ScriptedDoor.typing("now cup smokng", "answers", "quit");
        new Conversation(door, new PlanJob(KNOWLEDGE), null, start).run();
        assertThat(door.all()).contains("Cup smokes", "1. material: tin silicone");
    }
}
