package pourwright.teach;

import static org.assertj.core.api.Assertions.assertThat;
import static pourwright.teach.Course.CASES;
import static pourwright.teach.Course.DIAGNOSER;
import static pourwright.teach.Course.EXERCISES;
import static pourwright.teach.Course.LESSONS;
import static pourwright.teach.Course.SEEN;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.OneFigure;
import pourwright.diagnosis.Diagnosis;
import pourwright.facts.Answer;
import pourwright.facts.Estimate;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Question;

/**
 * Exercises are drawn with variation and marked by the advisor: whatever counts as right is what a consultation, a diagnosis
 * or a formula says when it is asked anew. {@code -Dpourwright.exercises=200} draws more of each lesson.
 */
class ExercisesTest {
    private static final int SEEDS = Integer.getInteger("pourwright.exercises", 10);

    /** A draw is the same for the same seed, so it is made once for all tests but the one that holds just that. */
    private static final Map<String, Exercise> DRAWN = new ConcurrentHashMap<>();

    static Stream<Lesson> lessons() {
        return LESSONS.lessons().stream();
    }

    private static List<Exercise> drawn(Lesson l, int n) {
        return LongStream.range(0, n)
                .mapToObj(seed -> DRAWN.computeIfAbsent(
                        l.id() + ' ' + seed, x -> EXERCISES.draw(l, seed, false).orElseThrow()))
                .toList();
    }

    private static List<Answer> unknown(Exercise e) {
        return new ArrayList<>(Collections.nCopies(e.parts().size(), new Answer.DontKnow()));
    }

    /** The replies that the marks of somebody who knows nothing call right. */
    private static List<Answer> right(Exercise e) {
        Marked m = e.mark(unknown(e));
        List<Answer> replies = new ArrayList<>();
        for (int i = 0; i < e.parts().size(); i++) {
            Question part = e.parts().get(i);
            if (e.kind() == Lesson.Drill.Kind.NUMBER) {
                double si = figure(e, part).value().si().typical();
                replies.add(new Answer.Quantity(Estimate.exactly(si), part.unit(), ""));
            } else {
                String id = m.marks().get(i).best().stream()
                        .filter(b -> part.choice(b).isPresent())
                        .findFirst()
                        .orElseThrow();
                replies.add(new Answer.Choice(id));
            }
        }
        return replies;
    }

    private static OneFigure.Result figure(Exercise e, Question part) {
        String id = LESSONS.lessons().stream()
                .flatMap(l -> l.exercises().stream())
                .map(Lesson.Drill::figure)
                .filter(f -> !f.isEmpty()
                        && OneFigure.named(f, SEEN.base()).definition().asks().equals(part.ask()))
                .findFirst()
                .orElseThrow();
        return OneFigure.named(id, SEEN.base()).of(e.answers(), null);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void whatTheAdvisorSaysIsRightAndNothingElse(Lesson l) {
        for (Exercise e : drawn(l, SEEDS)) {
            List<Answer> right = right(e);
            assertThat(EXERCISES.mark(e, right).right())
                    .as("%s of %s", e.kind(), e.from().name())
                    .isTrue();
            assertThat(EXERCISES.mark(e, right).misconceptions()).isEmpty();
            Marked nothing = EXERCISES.mark(e, unknown(e));
            assertThat(nothing.marks()).noneMatch(Marked.Mark::right);
            for (int i = 0; i < e.parts().size(); i++) {
                for (Question.Choice c : e.parts().get(i).choices()) {
                    List<Answer> other = new ArrayList<>(right);
                    other.set(i, new Answer.Choice(c.id()));
                    boolean said = EXERCISES.mark(e, other).marks().get(i).right();
                    assertThat(said)
                            .as("%s %s", e.from().name(), c.id())
                            .isEqualTo(isRight(e, e.parts().get(i), c.id()));
                }
            }
        }
    }

    /** The same question put to the advisor anew, from the answers that were told. */
    private static boolean isRight(Exercise e, Question part, String choice) {
        if (e.kind() == Lesson.Drill.Kind.CAUSE) {
            Diagnosis d = DIAGNOSER.diagnose(e.answers());
            double best = d.ranked().get(0).decibans();
            if (part.id().equals(CauseExercise.CAUSE)) {
                return d.ranked().stream()
                        .anyMatch(r -> r.cause().id().equals(choice)
                                && best - r.decibans() <= SEEN.base().guidelineSi("lesson-cause-tie"));
            }
            int most = d.ranked().get(0).evidence().stream()
                    .mapToInt(x -> x.decibans())
                    .max()
                    .orElseThrow();
            return d.ranked().get(0).evidence().stream()
                    .anyMatch(x -> x.question().equals(choice) && x.decibans() == most);
        }
        Consultation c = Advisor.consult(e.answers(), SEEN.base());
        return switch (part.id()) {
            case JobExercise.VERDICT -> c.verdict().word().equals(choice);
            case JobExercise.WAY -> c.methods().contains(choice);
            case JobExercise.RULE -> c.rulesFired().contains(choice);
            default ->
                true
                        == e.mark(withRests(e, choice))
                                .marks()
                                .get(e.parts().indexOf(part))
                                .right();
        };
    }

    private static List<Answer> withRests(Exercise e, String choice) {
        List<Answer> replies = unknown(e);
        replies.set(replies.size() - 1, new Answer.Choice(choice));
        return replies;
    }

    /** What a judgement is said to rest on is what the consultation lists for that finding. */
    @Test
    void theJudgementRestsOnWhatTheFindingLists() {
        int seen = 0;
        for (Lesson l : LESSONS.lessons()) {
            for (Exercise e : drawn(l, SEEDS)) {
                Optional<Question> rests = e.parts().stream()
                        .filter(p -> p.id().equals(JobExercise.RESTS))
                        .findFirst();
                if (rests.isEmpty()) {
                    continue;
                }
                Question judged = e.parts().stream()
                        .filter(p -> p.id().equals(JobExercise.RULE))
                        .findFirst()
                        .orElseThrow();
                Consultation c = Advisor.consult(e.answers(), SEEN.base());
                List<String> spoke = judged.choices().stream()
                        .map(Question.Choice::id)
                        .filter(c.rulesFired()::contains)
                        .toList();
                assertThat(spoke).as("one of the judgements holds").hasSize(1);
                List<String> listed = c.finding(spoke.get(0)).orElseThrow().answers();
                Marked m = e.mark(unknown(e));
                assertThat(m.marks().get(e.parts().indexOf(rests.get())).best())
                        .isNotEmpty()
                        .allMatch(listed::contains);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(SEEDS);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void theSameSeedDrawsTheSameAndAnotherAnother(Lesson l) {
        Set<Object> stories = new HashSet<>();
        for (long seed = 0; seed < SEEDS / 2; seed++) {
            Exercise a = EXERCISES.draw(l, seed, false).orElseThrow();
            Exercise b = EXERCISES.draw(l, seed, false).orElseThrow();
            assertThat(b.answers()).isEqualTo(a.answers());
            assertThat(b.parts()).isEqualTo(a.parts());
            assertThat(b.mark(unknown(b))).isEqualTo(a.mark(unknown(a)));
            stories.add(a.answers());
        }
        assertThat(stories).hasSizeGreaterThan(SEEDS / 4);
    }

    /** Whoever knows a case again and replies what was right last time is wrong in two of five exercises at least. */
    @Test
    void aCaseCannotBeLearntByHeart() {
        Map<String, List<Answer>> before = new TreeMap<>();
        int met = 0;
        int other = 0;
        for (Lesson l : LESSONS.lessons()) {
            for (Exercise e : drawn(l, 3 * SEEDS)) {
                List<Answer> now = right(e);
                List<Answer> old = before.put(l.id() + e.from().name() + e.kind(), now);
                if (old != null) {
                    met++;
                    other += old.equals(now) ? 0 : 1;
                }
            }
        }
        assertThat(met).isGreaterThan(3 * SEEDS);
        assertThat((double) other / met).as("%d of %d", other, met).isGreaterThan(0.4);
    }

    /** Each kind of exercise of each lesson can really be drawn. */
    @ParameterizedTest
    @MethodSource("lessons")
    void noDrillIsDead(Lesson l) {
        for (Lesson.Drill d : l.exercises()) {
            Lesson only = new Lesson(
                    l.id(),
                    l.order(),
                    l.title(),
                    l.says(),
                    l.terms(),
                    l.experiments(),
                    l.misconceptions(),
                    List.of(d),
                    l.rules(),
                    l.sources());
            assertThat(EXERCISES.draw(only, 1, false)).as("%s", d).isPresent();
        }
    }

    /** A reply that shows a belief is named, and only a wrong one. */
    @Test
    void misconceptionsAreNamedFromWrongReplies() {
        Set<String> named = new HashSet<>();
        for (Lesson l : LESSONS.lessons()) {
            for (Exercise e : drawn(l, 3 * SEEDS)) {
                for (Question.Choice c : e.parts().get(0).choices()) {
                    List<Answer> replies = unknown(e);
                    replies.set(0, new Answer.Choice(c.id()));
                    Marked m = EXERCISES.mark(e, replies);
                    if (m.marks().get(0).right()) {
                        assertThat(m.misconceptions()).isEmpty();
                    }
                    named.addAll(m.misconceptions());
                }
            }
        }
        assertThat(LESSONS.misconceptions().keySet()).containsAll(named);
        assertThat(named).as("beliefs met in %d draws a lesson", 3 * SEEDS).hasSizeGreaterThan(10);
    }

    /** Somebody who forgets the height reads the dial as at the coast: 1,013 mbar less 24 inHg, in a place at 1,500 m. */
    @Test
    void aSlipWithANumberIsNamed() {
        Lesson gauge = LESSONS.find("reading-a-gauge").orElseThrow();
        List<Exercise> numbers = drawn(gauge, 6 * SEEDS).stream()
                .filter(e -> e.kind() == Lesson.Drill.Kind.NUMBER)
                .filter(e -> e.answers().has("altitude"))
                .toList();
        assertThat(numbers).isNotEmpty();
        int named = 0;
        for (Exercise e : numbers) {
            Question part = e.parts().get(0);
            double asAtTheCoast = OneFigure.named("absolute-pressure", SEEN.base())
                    .of(e.answers().without("altitude"), "mbar")
                    .value()
                    .si()
                    .typical();
            double here = figure(e, part).value().si().typical();
            Marked m = EXERCISES.mark(e, List.of(new Answer.Quantity(Estimate.exactly(asAtTheCoast), "mbar", "")));
            boolean tells = Math.abs(asAtTheCoast - here) > 0.15 * here;
            assertThat(m.right()).isEqualTo(!tells);
            assertThat(m.misconceptions()).isEqualTo(tells ? List.of("dial-same-everywhere") : List.of());
            named += tells ? 1 : 0;
        }
        assertThat(named).isPositive();
    }

    @Test
    void withoutHelpTheCauseIsNamedFromAll() {
        Lesson defects = LESSONS.find("defects").orElseThrow();
        Exercise e = EXERCISES.draw(defects, 3, true).orElseThrow();
        assertThat(e.unaided()).isTrue();
        assertThat(e.parts().get(0).choices()).hasSize(SEEN.causes().size());
        assertThat(EXERCISES.mark(e, right(e)).right()).isTrue();
    }

    @Test
    void withoutACaseThereIsNoExercise() {
        Exercises none = new Exercises(LESSONS, List.of(), DIAGNOSER);
        assertThat(none.draw(LESSONS.lessons().get(0), 1, false)).isEmpty();
        assertThat(CASES).hasSizeGreaterThan(40);
    }
}
