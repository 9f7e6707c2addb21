package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** What people type who have read nothing before: each of these was a stumble of a first session. */
class FirstTimerTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    /** Types these at their prompts, one after the other, and "don't know" everywhere else. */
    private static ScriptedDoor talk(Map<String, List<String>> typed) {
        Map<String, List<String>> left = new java.util.HashMap<>();
        typed.forEach((id, lines) -> left.put(id, new ArrayList<>(lines)));
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    List<String> lines = left.getOrDefault(id, List.of());
                    return id.equals("plan") ? "quit" : lines.isEmpty() ? "don't know" : lines.remove(0);
                },
                80,
                false);
        new Conversation(door, new PlanJob(KNOWLEDGE), null, Answers.NONE).run();
        return door;
    }

    @ParameterizedTest
    @CsvSource({"min, = 45 min", "minutes, = 45 min", "1, = 45 min"})
    void aUnitAloneAnswersWhichUnit(String second, String echo) {
        ScriptedDoor door = talk(Map.of("material", List.of("plaster"), "pot-life", List.of("45", second)));
        assertThat(door.all()).contains("Which is it: 45 min", echo);
    }

    @ParameterizedTest
    @CsvSource({
        "mould around a master, = pour mould rubber around a master in a box",
        "cast an object in clear resin, = cast clear resin around an object",
        "closed mould, = cast into a closed mould with a gate"
    })
    void aChoiceIsKnownByItsWords(String typed, String echo) {
        assertThat(talk(Map.of("material", List.of("tin silicone"), "job", List.of(typed)))
                        .all())
                .contains(echo);
    }

    @Test
    void wordsOfTwoChoicesAreAskedAbout() {
        ScriptedDoor door = talk(Map.of(
                "material", List.of("clear polyurethane"),
                "job", List.of("3"),
                "mould-material", List.of("silicone", "2")));
        assertThat(door.all())
                .contains("\"silicone\" could be tin-silicone or platinum-silicone. Which?", "= platinum silicone");
    }

    /** "Not" turns the meaning round, and a number is more than its words. */
    @ParameterizedTest
    @CsvSource({"not a closed mould", "no closed mould", "closed mould 3", "xyzzy closed mould", "object", "an object"})
    void wordsThatSayMoreAreNotTaken(String typed) {
        assertThat(talk(Map.of("material", List.of("tin silicone"), "job", List.of(typed)))
                        .all())
                .contains("\"" + typed + "\" is not an answer to 'job'.");
    }

    @ParameterizedTest
    @CsvSource({"2:1 by volume, false", "2:1, true"})
    void howTheRatioIsMeasuredIsNotAskedTwice(String ratio, boolean asked) {
        ScriptedDoor door = talk(
                Map.of("material", List.of("deep-pour epoxy"), "job", List.of("embed"), "mix-ratio", List.of(ratio)));
        assertThat(door.prompts.contains("ratio-by")).isEqualTo(asked);
    }

    @Test
    void whatWasTypedIsShownAsItWasTyped() {
        ScriptedDoor door = ScriptedDoor.typing("I want a mould", "");
        new Pick(door, "word > ", List.of("plan", "diagnose"), "Why.").ask();
        assertThat(door.all()).contains("\"I want a mould\" is not an answer here.");
    }

    /** People write the sides of a box in one breath. */
    @ParameterizedTest
    @CsvSource({
        "20 x 15 x 12 cm, 20 cm, 15 cm, 12 cm",
        "20cm x 150 mm x 12 cm, 20 cm, 150 mm, 12 cm",
        "8 by 6 by 5 in, 8 in, 6 in, 5 in",
        "20×15×12 cm, 20 cm, 15 cm, 12 cm"
    })
    void theSidesOfABoxAreTakenTogether(String typed, String length, String width, String height) {
        ScriptedDoor door = talk(Map.of(
                "material", List.of("tin silicone"),
                "job", List.of("1"),
                "amount-by", List.of("box"),
                "box-length", List.of(typed)));
        assertThat(door.all().replace('\u00a0', ' '))
                .contains("= " + length, "= " + width, "= " + height)
                .doesNotContain("How wide is the box inside?", "How deep will the liquid stand");
    }

    @Test
    void oneSideOfABoxThatCannotBeIsAskedAsOne() {
        ScriptedDoor door = talk(Map.of(
                "material", List.of("tin silicone"),
                "job", List.of("1"),
                "amount-by", List.of("box"),
                "box-length", List.of("20 x 15 x 900 km", "20 cm")));
        assertThat(door.all()).contains("How wide is the box inside?", "How deep will the liquid stand");
    }

    @ParameterizedTest
    @CsvSource({"what should I do first", "what now"})
    void aQuestionInWordsIsNotTakenForAChange(String typed) {
        assertThat(after(typed).all()).contains("\"" + typed + "\" is not a word here.");
    }

    @Test
    void whatIfMayBeTypedWithASpace() {
        assertThat(after("what if mix-mass=1 kg").all())
                .doesNotContain("is not a word here")
                .contains("mix-mass");
    }

    private static ScriptedDoor after(String typed) {
        List<String> left = new ArrayList<>(List.of(typed, "quit"));
        ScriptedDoor door = new ScriptedDoor(
                id -> id.equals("plan") ? left.remove(0) : id.equals("material") ? "tin silicone" : "don't know",
                80,
                false);
        new Conversation(door, new PlanJob(KNOWLEDGE), null, Answers.NONE).run();
        return door;
    }
}
