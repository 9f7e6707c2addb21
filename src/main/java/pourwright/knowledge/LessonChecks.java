package pourwright.knowledge;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks what the lessons say against the rest of the knowledge; figures and rules are checked where they are known. */
final class LessonChecks {
    private final Lessons course;
    private final Knowledge knowledge;
    private final Map<String, Cause> causes;

    private LessonChecks(Lessons course, Knowledge knowledge, Map<String, Cause> causes) {
        this.course = course;
        this.knowledge = knowledge;
        this.causes = causes;
    }

    /**
     * @param knowledge with the questions of a diagnosis among its questions
     * @throws KnowledgeFault for the first thing that does not fit
     */
    static void check(Lessons course, Knowledge knowledge, Map<String, Cause> causes) {
        LessonChecks checks = new LessonChecks(course, knowledge, causes);
        int order = 0;
        for (Lesson l : course.lessons()) {
            if (l.order() != ++order) {
                throw new KnowledgeFault("lessons/" + l.id() + ": lesson " + order + " is missing or stands twice");
            }
            checks.lesson(l);
        }
        course.misconceptions().values().forEach(checks::misconception);
    }

    private void lesson(Lesson l) {
        String where = "lessons/" + l.id();
        known(where + ", terms", l.terms(), knowledge.terms().keySet());
        known(where + ", sources", l.sources(), knowledge.sources().keySet());
        known(
                where + ", misconceptions",
                l.misconceptions(),
                course.misconceptions().keySet());
        for (Lesson.Experiment e : l.experiments()) {
            questions(where + ", experiment", e.answers().keySet());
            questions(where + ", experiment", List.of(e.vary()));
        }
        for (Lesson.Drill d : l.exercises()) {
            known(where + ", causes", d.causes(), causes.keySet());
            questions(where + ", exercise", d.answers().keySet());
            d.slips().forEach(s -> {
                questions(where + ", slip", List.of(s.without()));
                known(
                        where + ", slip",
                        List.of(s.misconception()),
                        course.misconceptions().keySet());
            });
        }
    }

    private void misconception(Lesson.Misconception m) {
        String where = "misconceptions/" + m.id();
        known(where + ", source", List.of(m.source()), knowledge.sources().keySet());
        Set<String> namable = new HashSet<>(causes.keySet());
        namable.addAll(knowledge.processes().keySet());
        known(where + ", chosen", m.chosen(), namable);
        known(where + ", instead", m.instead(), causes.keySet());
        if (m.shown() != null) {
            questions(where + ", shown", m.shown().answers().keySet());
        }
    }

    private void questions(String where, Collection<String> ids) {
        Set<String> all = new HashSet<>(ids);
        all.removeIf(id -> knowledge.question(id).isPresent());
        if (!all.isEmpty()) {
            throw new KnowledgeFault(where + ": there is no question " + all);
        }
    }

    private static void known(String where, Collection<String> ids, Set<String> all) {
        ids.stream().filter(id -> !all.contains(id)).findFirst().ifPresent(id -> {
            throw new KnowledgeFault(where + ": '" + id + "' is not known");
        });
    }
}
