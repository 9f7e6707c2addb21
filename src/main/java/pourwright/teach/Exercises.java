package pourwright.teach;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answer;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;

/** Draws the exercises of a lesson from cases, and marks them. */
public final class Exercises {
    private final Lessons course;
    private final Knowledge knowledge;
    private final Diagnoser diagnoser;
    private final List<Told> cases;

    /**
     * @param cases what to draw from: plans and diagnoses
     * @param diagnoser what a diagnosis knows; its base is the knowledge of the plans as well
     */
    public Exercises(Lessons course, List<Told> cases, Diagnoser diagnoser) {
        this.course = course;
        this.knowledge = diagnoser.knowledge().base();
        this.diagnoser = diagnoser;
        this.cases = List.copyOf(cases);
    }

    /**
     * One exercise; the same for the same seed, lesson and cases.
     *
     * @param unaided true for a bad part without a list of causes to choose from
     * @return none when no case fits the lesson
     */
    public Optional<Exercise> draw(Lesson lesson, long seed, boolean unaided) {
        Draw draw = new Draw(seed);
        List<Lesson.Drill> drills = lesson.exercises().stream()
                .filter(d -> !unaided || d.kind() == Lesson.Drill.Kind.CAUSE)
                .toList();
        for (Lesson.Drill drill : draw.shuffled(drills)) {
            String word = drill.kind() == Lesson.Drill.Kind.CAUSE ? "diagnose" : "plan";
            List<Told> some = cases.stream().filter(t -> t.word().equals(word)).toList();
            for (Told told : draw.shuffled(some)) {
                Optional<Exercise> e = switch (drill.kind()) {
                    case JOB -> JobExercise.of(told, drill.topics(), knowledge, draw);
                    case CAUSE -> CauseExercise.of(told, drill.causes(), diagnoser, draw, unaided);
                    case NUMBER -> NumberExercise.of(told, drill, knowledge, draw);
                };
                if (e.isPresent()) {
                    return e;
                }
            }
        }
        return Optional.empty();
    }

    /** Marks the replies and names what they show to be believed. */
    public Marked mark(Exercise e, List<Answer> replies) {
        Marked m = e.mark(replies);
        Set<String> believed = new TreeSet<>(m.misconceptions());
        for (Map.Entry<String, Lesson.Misconception> b : course.misconceptions().entrySet()) {
            if (shows(e, m, replies, b.getValue())) {
                believed.add(b.getKey());
            }
        }
        return new Marked(m.marks(), List.copyOf(believed));
    }

    private static boolean shows(Exercise e, Marked m, List<Answer> replies, Lesson.Misconception b) {
        if (m.marks().get(0).right()) {
            return false;
        }
        if (e instanceof CauseExercise c) {
            List<String> pair = c.pair(replies);
            return b.chosen().contains(pair.get(0)) && b.instead().contains(pair.get(1));
        }
        if (e instanceof JobExercise j) {
            return j.passedOver(replies).stream().anyMatch(b.rules()::contains)
                    || b.instead().isEmpty() && b.chosen().contains(j.wrongWay(replies));
        }
        return false;
    }
}
