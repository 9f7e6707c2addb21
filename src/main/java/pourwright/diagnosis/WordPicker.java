package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
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
    /** Words that carry a sentence and say nothing about a part. */
    private static final Set<String> FILLERS = Set.of(
            ("a an the this that these those it its it's is isn't are was were be been has have had do does did i we you my our"
                            + " your they them he she there here and or but so then than as if of off on in into at to from by"
                            + " for with under over above below near around between inside outside along across all any some"
                            + " few many much more most very quite rather really too also just only still again always often"
                            + " sometimes now when while after before during what which who how why where came come comes got"
                            + " get gets gone looks look looked seems seem like made make makes cast casting part piece thing"
                            + " one ones please hello hi thanks help problem wrong bad out up down about because since me us"
                            + " full lot lots bit little something everything nothing can can't could would should will i'm i've")
                    .split(" "));

    private static final int NEGATION_REACH = 2;
    private static final String SYMPTOM = "symptom";
    private static final String MATERIAL = "material";
    private static final int SHORTEST = 3;
    private static final int MOST_CLAUSES = 1000;

    private final DiagnosticKnowledge k;
    private final Map<String, List<Word>> phrases = new TreeMap<>();
    private final Map<String, String> families;
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
            m.says().forEach(s -> add(s, new Word(MATERIAL, m.id())));
            add(m.name(), new Word(MATERIAL, m.id()));
            add(m.id().replace('-', ' '), new Word(MATERIAL, m.id()));
        }
        this.families = families();
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

    /** Words that stand in some name of every class of one family, and of no other: "urethane", "epoxy". */
    private Map<String, String> families() {
        Map<String, Set<String>> classesOf = new HashMap<>();
        Map<String, Set<String>> familiesOf = new HashMap<>();
        Map<String, Integer> sizes = new HashMap<>();
        for (MaterialClass m : k.base().materials().values()) {
            sizes.merge(m.family(), 1, Integer::sum);
            Stream.concat(Stream.of(m.id(), m.name()), m.says().stream())
                    .flatMap(name -> words(name).stream())
                    .forEach(w -> {
                        classesOf.computeIfAbsent(w, x -> new HashSet<>()).add(m.id());
                        familiesOf.computeIfAbsent(w, x -> new HashSet<>()).add(m.family());
                    });
        }
        Map<String, String> found = new HashMap<>();
        familiesOf.forEach((word, of) -> {
            String family = of.iterator().next();
            int size = sizes.get(family);
            if (of.size() == 1 && size > 1 && classesOf.get(word).size() == size) {
                found.put(word, family);
            }
        });
        return found;
    }

    /**
     * What was picked.
     *
     * @param answers the answers found, in the order of the questions
     * @param words question id to the words it was read from
     * @param unclear questions for which the text names two answers that cannot both hold
     * @param family the family of the liquid where a word names it and none names the class; else empty
     * @param familyWord that word; else empty
     * @param leftOut stretches of the text that were not understood
     */
    public record Picked(
            Answers answers,
            Map<String, String> words,
            List<String> unclear,
            String family,
            String familyWord,
            List<String> leftOut) {
        /** What a text of no words says. */
        public static final Picked NOTHING = new Picked(Answers.NONE, Map.of(), List.of(), "", "", List.of());

        /** True when nothing was understood. */
        public boolean isEmpty() {
            return answers.all().isEmpty() && family.isEmpty();
        }
    }

    /** Picks the answers a text holds. */
    public Picked pick(String text) {
        List<String> all = words(text);
        BitSet begins = begins(text);
        List<Hit> hits = new ArrayList<>();
        for (int from = 0; from < all.size(); from++) {
            for (int to = from + 1; to <= Math.min(all.size(), from + longest); to++) {
                String phrase = String.join(" ", all.subList(from, to));
                for (Word w : phrases.getOrDefault(phrase, List.of())) {
                    if (!negated(all, begins, from)) {
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
        BitSet understood = new BitSet();
        kept.forEach(h -> understood.set(h.from(), h.to()));
        String word = familyWord(all, begins, understood);
        boolean named = !word.isEmpty() && !answers.has(MATERIAL) && !unclear.contains(MATERIAL);
        return new Picked(
                answers,
                said,
                List.copyOf(unclear),
                named ? families.get(word) : "",
                named ? word : "",
                leftOut(all, begins, understood));
    }

    /** The first word for a family; empty when there is none, or a second one for another family. */
    private String familyWord(List<String> all, BitSet begins, BitSet understood) {
        String found = "";
        boolean two = false;
        for (int at = 0; at < all.size(); at++) {
            String family = families.get(all.get(at));
            if (family != null && !negated(all, begins, at)) {
                understood.set(at);
                two |= !found.isEmpty() && !families.get(found).equals(family);
                found = found.isEmpty() ? all.get(at) : found;
            }
        }
        return two ? "" : found;
    }

    /** Stretches that nothing was read from, without the fillers at their ends. */
    private static List<String> leftOut(List<String> all, BitSet begins, BitSet understood) {
        List<String> out = new ArrayList<>();
        int from = 0;
        while (from < all.size()) {
            if (understood.get(from)) {
                from++;
                continue;
            }
            int end = from + 1;
            while (end < all.size() && !understood.get(end) && !begins.get(end)) {
                end++;
            }
            List<String> stretch = all.subList(from, end);
            int first = 0;
            int last = stretch.size();
            while (first < last && FILLERS.contains(stretch.get(first))) {
                first++;
            }
            while (last > first && FILLERS.contains(stretch.get(last - 1))) {
                last--;
            }
            if (first < last) {
                out.add(String.join(" ", stretch.subList(first, last)));
            }
            from = end;
        }
        return List.copyOf(out);
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
        List<String> ids = new ArrayList<>(List.of(MATERIAL));
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
                        || other.word().question().equals(MATERIAL));
    }

    /** A negation reaches over the next words of its own clause. */
    private static boolean negated(List<String> all, BitSet begins, int from) {
        for (int at = from; at > Math.max(0, from - NEGATION_REACH) && !begins.get(at); at--) {
            if (NEGATIONS.contains(all.get(at - 1))) {
                return true;
            }
        }
        return false;
    }

    /** The places of the words that begin a clause. */
    private static BitSet begins(String text) {
        BitSet begins = new BitSet();
        int at = 0;
        for (String clause : text.split("[,;:!?]|\\.(?!\\d)", MOST_CLAUSES)) {
            begins.set(at);
            at += words(clause).size();
        }
        return begins;
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
