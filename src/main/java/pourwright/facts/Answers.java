package pourwright.facts;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All answers of one consultation, in the order they were given. Immutable. */
public final class Answers {
    /** No answer yet. */
    public static final Answers NONE = new Answers(Map.of());

    private final Map<String, Given> given;

    private Answers(Map<String, Given> given) {
        this.given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
    }

    /**
     * One answer with the words it came in.
     *
     * @param answer what was read
     * @param raw what was typed: a string, a number, or null for "don't know"; written into cases as it is
     */
    public record Given(Answer answer, Object raw) {}

    /** These answers and one more; an earlier answer to the same question keeps its place. */
    public Answers with(String question, Answer answer, Object raw) {
        Map<String, Given> next = new LinkedHashMap<>(given);
        next.put(question, new Given(answer, raw));
        return new Answers(next);
    }

    /** These answers less one. */
    public Answers without(String question) {
        Map<String, Given> next = new LinkedHashMap<>(given);
        next.remove(question);
        return new Answers(next);
    }

    /** True when the question was answered, even with "don't know". */
    public boolean has(String question) {
        return given.containsKey(question);
    }

    /** The answer, if one was given that is not "don't know". */
    public Optional<Answer> get(String question) {
        Given g = given.get(question);
        return g == null || g.answer() instanceof Answer.DontKnow ? Optional.empty() : Optional.of(g.answer());
    }

    /** The id of the choice made, or an empty string. */
    public String choice(String question) {
        return get(question)
                .map(a -> a instanceof Answer.Choice c ? c.id() : "")
                .orElse("");
    }

    /** The ids of the choices that hold: none, one, or several. */
    public List<String> choices(String question) {
        Answer a = get(question).orElse(null);
        if (a instanceof Answer.Several s) {
            return s.ids();
        }
        return a instanceof Answer.Choice c ? List.of(c.id()) : List.of();
    }

    /** The text given, or an empty string. */
    public String text(String question) {
        return get(question)
                .map(a -> a instanceof Answer.Text t ? t.text() : "")
                .orElse("");
    }

    /** Question id to answer, in the order given. */
    public Map<String, Given> all() {
        return given;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Answers a && a.given.equals(given);
    }

    @Override
    public int hashCode() {
        return given.hashCode();
    }
}
