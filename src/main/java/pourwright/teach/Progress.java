package pourwright.teach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.knowledge.Lesson;

/**
 * What one person has done in the course, oldest first.
 *
 * @param name of the person
 * @param events what was done
 */
public record Progress(String name, List<Event> events) {
    public Progress {
        events = List.copyOf(events);
    }

    /**
     * A lesson that was read, or an exercise that was marked.
     *
     * @param day as 2026-03-01
     * @param lesson id of the lesson
     * @param exercise what was asked, or empty for a lesson that was read
     * @param from the case it was drawn from, or empty
     * @param seed of the draw
     * @param right whether all parts were right
     * @param unaided whether no list of causes was shown
     * @param misconceptions what the replies showed to be believed
     */
    public record Event(
            String day,
            String lesson,
            String exercise,
            String from,
            long seed,
            boolean right,
            boolean unaided,
            List<String> misconceptions) {
        public Event {
            misconceptions = List.copyOf(misconceptions);
        }

        /** True for an exercise. */
        public boolean isExercise() {
            return !exercise.isEmpty();
        }
    }

    /** How far somebody is in a lesson. */
    public enum Standing {
        /** Nothing was done. */
        NOT_BEGUN,
        /** It was read, or some exercises were done. */
        UNDER_WAY,
        /** The last exercises were all right. */
        MASTERED
    }

    /** With one more event. */
    public Progress with(Event e) {
        List<Event> more = new ArrayList<>(events);
        more.add(e);
        return new Progress(name, more);
    }

    /** The exercises of a lesson, oldest first. */
    public List<Event> exercises(String lesson) {
        return events.stream()
                .filter(e -> e.isExercise() && e.lesson().equals(lesson))
                .toList();
    }

    /**
     * How far the person is in a lesson.
     *
     * @param run how many exercises in a row, up to the last, must have been right
     */
    public Standing standing(Lesson lesson, int run) {
        List<Event> done = exercises(lesson.id());
        boolean mastered = done.size() >= run
                && done.subList(done.size() - run, done.size()).stream().allMatch(Event::right);
        if (mastered) {
            return Standing.MASTERED;
        }
        return events.stream().anyMatch(e -> e.lesson().equals(lesson.id())) ? Standing.UNDER_WAY : Standing.NOT_BEGUN;
    }

    /** How many exercises in a row, up to the last, were right. */
    public int run(Lesson lesson) {
        List<Event> done = exercises(lesson.id());
        int run = 0;
        while (run < done.size() && done.get(done.size() - 1 - run).right()) {
            run++;
        }
        return run;
    }

    /** What the replies showed to be believed: how often, and the day it was last seen. */
    public Map<String, Belief> beliefs() {
        Map<String, Belief> all = new TreeMap<>();
        for (Event e : events) {
            for (String m : e.misconceptions()) {
                Belief before = all.get(m);
                all.put(m, new Belief(before == null ? 1 : before.times() + 1, e.day()));
            }
        }
        return new LinkedHashMap<>(all);
    }

    /**
     * Something believed.
     *
     * @param times how often it showed
     * @param last the day it showed last
     */
    public record Belief(int times, String last) {}
}
