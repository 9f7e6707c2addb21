package pourwright.teach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.knowledge.Lesson;

/** When a lesson is mastered, and what is remembered of beliefs. */
class ProgressTest {
    private static final Lesson LESSON = Course.LESSONS.lessons().get(3);
    private static final int RUN = 3;

    private static Progress.Event exercise(boolean right, String... beliefs) {
        return new Progress.Event("2026-03-01", LESSON.id(), "job", "a", 1, right, false, List.of(beliefs));
    }

    private static Progress of(boolean... right) {
        Progress p = new Progress("Ida", List.of());
        for (boolean r : right) {
            p = p.with(exercise(r));
        }
        return p;
    }

    @Test
    void threeRightInARowMasterIt() {
        assertThat(of().standing(LESSON, RUN)).isEqualTo(Progress.Standing.NOT_BEGUN);
        assertThat(of(true, true).standing(LESSON, RUN)).isEqualTo(Progress.Standing.UNDER_WAY);
        assertThat(of(false, true, true, true).standing(LESSON, RUN)).isEqualTo(Progress.Standing.MASTERED);
        assertThat(of(true, true, false).standing(LESSON, RUN)).isEqualTo(Progress.Standing.UNDER_WAY);
        assertThat(of(true, false, true, true).run(LESSON)).isEqualTo(2);
    }

    /** Somebody who gets it wrong later has not mastered it any more. */
    @Test
    void masteryIsOfTheLastExercises() {
        assertThat(of(true, true, true, false).standing(LESSON, RUN)).isEqualTo(Progress.Standing.UNDER_WAY);
    }

    @Test
    void readingIsNotMastering() {
        Progress p = of().with(new Progress.Event("2026-03-01", LESSON.id(), "", "", 0, false, false, List.of()));
        assertThat(p.standing(LESSON, RUN)).isEqualTo(Progress.Standing.UNDER_WAY);
        assertThat(p.exercises(LESSON.id())).isEmpty();
    }

    @Test
    void beliefsAreCountedWithTheLastDay() {
        Progress p = of().with(exercise(false, "stir-fast"))
                .with(new Progress.Event("2026-03-09", LESSON.id(), "job", "b", 2, false, false, List.of("stir-fast")));
        assertThat(p.beliefs()).containsEntry("stir-fast", new Progress.Belief(2, "2026-03-09"));
    }
}
