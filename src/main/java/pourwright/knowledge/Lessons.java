package pourwright.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The course: its lessons in their order, and what beginners often believe.
 *
 * @param lessons in the order of the course
 * @param misconceptions by id
 */
public record Lessons(List<Lesson> lessons, Map<String, Lesson.Misconception> misconceptions) {
    public Lessons {
        lessons = List.copyOf(lessons);
    }

    /** The lesson of that id or number. */
    public Optional<Lesson> find(String idOrNumber) {
        return lessons.stream()
                .filter(l ->
                        l.id().equals(idOrNumber) || String.valueOf(l.order()).equals(idOrNumber))
                .findFirst();
    }
}
