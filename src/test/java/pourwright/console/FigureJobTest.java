package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.BadAnswer;
import pourwright.advice.OneFigure;
import pourwright.advice.PlanFigures;
import pourwright.facts.Answers;
import pourwright.figures.FigureBook;
import pourwright.figures.FigureDef;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** A figure asks for the answers it waits for, one at a time, and for no others. */
class FigureJobTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    /** One job of the workshop; where a question is not among these, its own example answers it. */
    private static final Map<String, String> JOB = Map.of(
            "material", "deep-pour epoxy",
            "mix-ratio", "2:1",
            "gauge-kind", "below-local-air",
            "gauge-reading", "25 inHg",
            "volatile", "water",
            "bubble-diameter", "0.5 mm",
            "viscosity", "2 Pa·s",
            "target-pressure", "40 mbar");

    private static final int MOST_QUESTIONS = 30;

    private static Conversation.End talk(ScriptedDoor door, String figure) {
        OneFigure one = OneFigure.named(figure, KNOWLEDGE);
        return new Conversation(door, new FigureJob(one, KNOWLEDGE, null), null, Answers.NONE).run();
    }

    /** A person who gives up where a question does not end. */
    private static ScriptedDoor answering(Function<String, String> typist) {
        AtomicInteger left = new AtomicInteger(MOST_QUESTIONS);
        return new ScriptedDoor(id -> left.decrementAndGet() < 0 ? null : typist.apply(id), 80, false);
    }

    private static String example(String id) {
        Question q = KNOWLEDGE.question(id).orElseThrow();
        return JOB.getOrDefault(
                id, q.choices().isEmpty() ? q.example() : q.choices().get(0).id());
    }

    static Stream<String> figures() {
        return Stream.concat(FigureBook.all().stream(), PlanFigures.all().stream())
                .map(FigureDef::id);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void everyFigureCanBeHadWithExampleAnswers(String id) {
        ScriptedDoor door = answering(FigureJobTest::example);
        assertThat(talk(door, id)).isEqualTo(Conversation.End.ADVICE);
        assertThat(door.prompts).doesNotHaveDuplicates();
        String all = door.all();
        assertThat(all).contains(" " + id + " = ", " how: ", " source: ").containsPattern("low: |range: none");
        assertThat(all).doesNotContain("NaN", "Infinity", "(not known)");
        assertThat(door.lines.get(door.lines.size() - 1)).isNotBlank();
        assertThat(all).contains("The same again: pourwright figure " + id);
    }

    @Test
    void onlyWhatItNeedsIsAsked() {
        ScriptedDoor door = answering(FigureJobTest::example);
        talk(door, "pump-down-time");
        assertThat(door.prompts).containsExactly("chamber-volume", "target-pressure", "pump-speed");
    }

    @Test
    void aChoiceThatUnlocksTheFormulaIsAsked() {
        ScriptedDoor door = answering(FigureJobTest::example);
        talk(door, "absolute-pressure");
        assertThat(door.prompts).containsExactlyInAnyOrder("gauge-kind", "gauge-reading");
    }

    @Test
    void whoDoesNotKnowIsAskedForWhatStandsInInstead() {
        ScriptedDoor door = answering(id -> Map.of(
                        "pump-speed", "don't know", "target-pressure", "don't know", "pump-kind", "oil-vane-one-stage")
                .getOrDefault(id, example(id)));
        assertThat(talk(door, "pump-down-time")).isEqualTo(Conversation.End.ADVICE);
        assertThat(door.prompts).contains("pump-kind", "material");
    }

    @Test
    void whyTellsWhichFormulaWantsItAndWhatIsAskedInstead() {
        ScriptedDoor door = ScriptedDoor.typing("why", "help", "quit");
        assertThat(talk(door, "leak-share")).isEqualTo(Conversation.End.UNFINISHED);
        assertThat(door.all())
                .contains("Is the leak small enough?", "How much air leaks in?", "asked instead")
                .contains("Accepted: ");
    }

    @Test
    void backAsksTheLastQuestionAgain() {
        ScriptedDoor door = ScriptedDoor.typing("20 l", "back", "12 l", "40 mbar", "1 l/s");
        assertThat(talk(door, "pump-down-time")).isEqualTo(Conversation.End.ADVICE);
        assertThat(door.prompts)
                .containsExactly(
                        "chamber-volume", "target-pressure", "chamber-volume", "target-pressure", "pump-speed");
        assertThat(door.all()).contains("chamber-volume=\"12 l\"");
    }

    @Test
    void enoughIsTooEarlyWhileAnAnswerIsNeeded() {
        ScriptedDoor door = ScriptedDoor.typing("enough", "300 mm");
        assertThat(talk(door, "lid-force")).isEqualTo(Conversation.End.ADVICE);
        assertThat(door.all()).contains("cannot be computed yet: 'lid-diameter'");
    }

    @Test
    void theEndOfTheInputNamesTheQuestion() {
        ScriptedDoor door = ScriptedDoor.typing("20 l");
        assertThat(talk(door, "pump-down-time")).isEqualTo(Conversation.End.UNFINISHED);
        assertThat(door.all()).contains("The next question was 'target-pressure', for example");
    }

    @Test
    void aReadingThatCannotBeIsAskedAgain() {
        Map<String, Integer> times = new HashMap<>();
        ScriptedDoor door = answering(
                id -> id.equals("gauge-reading") && times.merge(id, 1, Integer::sum) == 1 ? "31 inHg" : example(id));
        assertThat(talk(door, "absolute-pressure")).isEqualTo(Conversation.End.ADVICE);
        assertThat(door.all()).contains("cannot show 31 inHg here");
        assertThat(door.prompts.stream().filter("gauge-reading"::equals)).hasSize(2);
    }

    @Test
    void whatNobodyKnowsIsRefusedWithTheWayToFindIt() {
        ScriptedDoor door = answering(id -> "don't know");
        String help = KNOWLEDGE.question("lid-diameter").orElseThrow().help();
        assertThatThrownBy(() -> talk(door, "lid-force"))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("cannot be had without 'lid-diameter'")
                .hasMessageContaining(help);
        assertThat(door.prompts).isEqualTo(List.of("lid-diameter"));
    }
}
