package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.casebook.CaseLibrary;
import pourwright.casebook.Learners;
import pourwright.diagnosis.Diagnoser;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;
import pourwright.teach.Exercises;
import pourwright.teach.Progress;

/** The course as a learner meets it. */
class LearningTest {
    private static final DiagnosticKnowledge SEEN =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    private static final Lessons LESSONS = KnowledgeReader.lessons(Path.of("knowledge"));
    private static final Diagnoser DIAGNOSER = new Diagnoser(SEEN);
    private static final Exercises EXERCISES =
            new Exercises(LESSONS, CaseLibrary.read(Path.of("transcripts-of-cases"), SEEN.base(), false), DIAGNOSER);

    @TempDir
    private Path shop;

    private Learning at(Door door) {
        return new Learning(
                door, LESSONS, EXERCISES, DIAGNOSER, new Learning.Keep(new Learners(shop), "2026-03-01"), 5);
    }

    private static Lesson lesson(String id) {
        return LESSONS.find(id).orElseThrow();
    }

    @Test
    void aLessonIsReadForetoldAndTried() throws IOException {
        ScriptedDoor door = ScriptedDoor.typing(
                "Ida", "3", "less", "600 m", "3000 m", "9000 km", "how", "define barometer", "why", "", "no", "quit");
        assertThat(at(door).run("", null)).isEqualTo(Conversation.End.ADVICE);
        String all = door.all();
        assertThat(all)
                .contains("3. Reading a gauge", "Right: less.", "barometer:", "Often heard: ", "Computed for")
                .contains("altitude 600 m:", "cannot show 24 inHg", "absolute-pressure: ")
                .doesNotContain("(not known)", "NaN");
        assertThat(new Learners(shop).read("Ida").events())
                .extracting(Progress.Event::lesson)
                .containsExactly("reading-a-gauge");
    }

    @Test
    void exercisesAreMarkedAndKept() throws IOException {
        ScriptedDoor door = new ScriptedDoor(
                id -> switch (id) {
                    case "name" -> "Bram";
                    case "learn" -> null;
                    default -> "don't know";
                },
                80,
                false);
        try {
            at(door).run("Bram", lesson("defects"));
        } catch (Door.Ended e) {
            assertThat(door.prompts).contains("learn");
        }
        assertThat(door.all()).contains("Exercise 3 of 3.", "Not so. It is: ", "0 in a row right");
        List<Progress.Event> events = new Learners(shop).read("Bram").events();
        assertThat(events).hasSize(4);
        assertThat(events.subList(1, 4))
                .allMatch(e -> e.isExercise() && !e.right() && e.exercise().equals("cause"));
    }

    @Test
    void withoutANameNothingIsKept() {
        ScriptedDoor door = ScriptedDoor.typing("", "2", "more", "", "same", "", "no", "progress", "quit");
        at(door).run("", null);
        assertThat(door.all()).contains("Right: more.", "No: more.", "Somebody without a name has mastered 0");
        assertThat(shop.resolve(Learners.FOLDER)).doesNotExist();
    }

    @Test
    void backLeadsToTheListAndALateWordIsExplained() {
        ScriptedDoor door = ScriptedDoor.typing("", "9", "more", "back", "lesson", "12", "exercise 77", "help", "quit");
        at(door).run("", null);
        assertThat(door.all())
                .contains("There is no lesson \"lesson\".", "There is no lesson \"12\".", "There is no lesson \"77\".")
                .contains("\"back\" leads to the list of lessons");
        assertThat(door.prompts.stream().filter("learn"::equals)).hasSize(6);
    }

    /** A number would be a guess at a list that is not shown; what comes near is named. */
    @Test
    void withoutHelpTheCauseIsSaidInWords() {
        ScriptedDoor door = ScriptedDoor.typing("", "unaided", "3", "xyzzy", "damp", "don't know", "1", "quit");
        at(door).run("", null);
        assertThat(door.all())
                .contains("No cause is called \"3\".", "No cause is called \"xyzzy\".", "\"damp\" could be \"")
                .doesNotContain("1. air put back");
    }

    /** The words that a lesson teaches are taken at its short questions too. */
    @Test
    void theShortQuestionsTakeTheWordsOfTheCourse() {
        ScriptedDoor door =
                ScriptedDoor.typing("", "8", "define blind pocket", "rule second-pull-in-the-mould", "back", "quit");
        at(door).run("", null);
        assertThat(door.all())
                .contains("blind pocket: ", "(degas/second-pull-in-the-mould)")
                .doesNotContain("is not an answer here");
        assertThat(door.prompts.subList(door.prompts.size() - 2, door.prompts.size()))
                .containsExactly("foretell", "learn");
    }

    /** Cut off in an exercise: what was done before is kept, and it is said that the open one does not count. */
    @Test
    void whoIsCutOffIsToldWhatIsKept() throws IOException {
        ScriptedDoor door = ScriptedDoor.typing("Ida", "exercise 10", "don't know", "don't know", "don't know");
        assertThat(at(door).run("", null)).isEqualTo(Conversation.End.UNFINISHED);
        assertThat(door.all())
                .contains("The input ended. What you have done is kept;", "The exercise that was open does not count.");
        assertThat(new Learners(shop).read("Ida").events()).hasSize(1);
        Door interrupting = new ScriptedDoor(
                id -> {
                    throw new Door.Interrupted();
                },
                80,
                false);
        assertThat(at(interrupting).run("", null)).isEqualTo(Conversation.End.INTERRUPTED);
    }

    @Test
    void aNameThatIsNoneIsRefusedAndTheCourseGoesOn() {
        ScriptedDoor door = ScriptedDoor.typing("???", "quit");
        at(door).run("", null);
        assertThat(door.all()).contains("cannot be the name of a file").contains("Which lesson?");
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaid() throws IOException {
        Files.writeString(shop.resolve(Learners.FOLDER), "in the way");
        ScriptedDoor door = ScriptedDoor.typing("Ida", "9", "more", "", "no", "quit");
        at(door).run("", null);
        assertThat(door.all()).contains("Your progress cannot be kept: ");
    }

    @Test
    void theTrainerSeesEachPersonAndEachLesson() {
        Progress ida = new Progress("Ida", List.of());
        for (int n = 0; n < 3; n++) {
            ida = ida.with(new Progress.Event("2026-03-01", "pour", "job", "x", n, true, false, List.of()));
        }
        Progress bram = new Progress(
                "Bram",
                List.of(new Progress.Event(
                        "2026-03-02", "pour", "job", "x", 1, false, true, List.of("pour-from-high"))));
        String all = String.join("\n", new TrainerPage(LESSONS, 3, 200).lines(List.of(ida, bram)));
        assertThat(all)
                .contains("Ida has mastered 1 of 11 lessons.", "mastered: The pour")
                .contains("under way: The pour (0 of 3 in a row, 1 done)", "diagnoses without help: 0 right of 1")
                .contains("Pour from high up: that breaks the bubbles.", "(1 time, last on 2026-03-02)")
                .contains("6. The pour: mastered by Ida; under way: Bram", "1. Why bubbles stay: nobody yet");
        assertThat(String.join(" ", new TrainerPage(LESSONS, 3, 80).lines(List.of())))
                .contains("Nobody has begun");
    }
}
