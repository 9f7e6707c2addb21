package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;

/**
 * Picks observations out of a line as a person types it. It knows the words of each choice; a longer phrase goes before
 * the shorter one inside it, and a phrase right after "no", "not" or "without" is passed over.
 */
public final class WordPicker {
    private static final Set<String> NEGATIONS =
            Set.of("no", "not", "never", "without", "isn't", "isnt", "wasn't", "wasnt", "didn't", "didnt", "none");
    private static final int NEGATION_REACH = 2;
    private static final String SYMPTOM = "symptom";
    private static final int SHORTEST = 3;

    private final DiagnosticKnowledge k;
    private final Map<String, List<Word>> phrases = new TreeMap<>();
    private final int longest;

    /** One thing a phrase can mean. */
    private record Word(String question, String choice) {}

    /** A phrase found in the text, in words counted from the start. */
    private record Hit(int from, int to, String phrase, Word word) {}

    public WordPicker(DiagnosticKnowledge k) {
        this.k = k;
        for (Question q : k.observations()) {
            for (Question.Choice c : q.choices()) {
                c.says().forEach(s -> add(s, new Word(q.id(), c.id())));
                if (c.text().indexOf(' ') > 0) {
                    add(c.text(), new Word(q.id(), c.id()));
                }
            }
        }
        for (MaterialClass m : k.base().materials().values()) {
            m.says().forEach(s -> add(s, new Word("material", m.id())));
            add(m.name(), new Word("material", m.id()));
            add(m.id().replace('-', ' '), new Word("material", m.id()));
        }
        this.longest = phrases.keySet().stream()
                .mapToInt(p -> p.split(" ").length)
                .max()
                .orElse(1);
    }

    private void add(String phrase, Word word) {
        String plain = String.join(" ", words(phrase));
        // Words such as "yes" or "ok" mean something only as the answer to their own question.
        if (plain.length() >= SHORTEST && !plain.equals("yes") && !plain.equals("none") && !plain.equals("not tried")) {
            phrases.computeIfAbsent(plain, p -> new ArrayList<>()).add(word);
        }
    }

    /**
     * What was picked.
     *
     * @param answers the answers found, in the order of the questions
     * @param words question id to the words it was read from
     * @param unclear questions for which the text names two answers that cannot both hold
     */
    public record Picked(Answers answers, Map<String, String> words, List<String> unclear) {}

    /** Picks the answers a text holds. */
    public Picked pick(String text) {
        List<String> all = words(text);
        List<Hit> hits = new ArrayList<>();
        for (int from = 0; from < all.size(); from++) {
            for (int to = from + 1; to <= Math.min(all.size(), from + longest); to++) {
                String phrase = String.join(" ", all.subList(from, to));
                for (Word w : phrases.getOrDefault(phrase, List.of())) {
                    if (!negated(all, from)) {
                        hits.add(new Hit(from, to, phrase, w));
                    }
                }
            }
        }
        List<Hit> kept = hits.stream()
                .filter(h -> hits.stream().noneMatch(o -> inside(h, o)))
                .toList();
        Answers answers = Answers.NONE;
        Map<String, String> said = new LinkedHashMap<>();
        List<String> unclear = new ArrayList<>();
        for (String id : order()) {
            Set<String> choices = new LinkedHashSet<>();
            Set<String> from = new LinkedHashSet<>();
            kept.stream()
                    .filter(h -> h.word().question().equals(id))
                    .sorted(Comparator.comparingInt(Hit::from))
                    .forEach(h -> {
                        choices.add(h.word().choice());
                        from.add(h.phrase());
                    });
            boolean several = k.observation(id).map(Question::several).orElse(false);
            if (choices.size() > 1 && !several) {
                unclear.add(id);
            } else if (!choices.isEmpty()) {
                answers = answers.with(id, answer(id, choices, several), String.join(", ", choices));
                said.put(id, String.join(", ", from));
            }
        }
        return new Picked(answers, said, List.copyOf(unclear));
    }

    private Answer answer(String id, Set<String> choices, boolean several) {
        if (!several) {
            return new Answer.Choice(choices.iterator().next());
        }
        return new Answer.Several(k.observation(id).orElseThrow().choices().stream()
                .map(Question.Choice::id)
                .filter(choices::contains)
                .toList());
    }

    private List<String> order() {
        List<String> ids = new ArrayList<>(List.of("material"));
        k.observations().forEach(q -> ids.add(q.id()));
        return ids;
    }

    /** A hit inside a longer one means nothing by itself, but what is wrong at all may be named by any word. */
    private static boolean inside(Hit h, Hit other) {
        boolean longer = other.to() - other.from() > h.to() - h.from();
        return longer
                && other.from() <= h.from()
                && other.to() >= h.to()
                && (!h.word().question().equals(SYMPTOM)
                        || other.word().question().equals(SYMPTOM)
                        || other.word().question().equals("material"));
    }

    private static boolean negated(List<String> all, int from) {
        return all.subList(Math.max(0, from - NEGATION_REACH), from).stream().anyMatch(NEGATIONS::contains);
    }

    private static List<String> words(String text) {
        String plain = text.toLowerCase(Locale.ROOT)
                .replace('’', '\'')
                .replaceAll("[^a-z0-9'.%]+", " ")
                .replaceAll("\\.(?!\\d)", " ")
                .strip();
        return plain.isEmpty() ? List.of() : List.of(plain.split(" +"));
    }
}
