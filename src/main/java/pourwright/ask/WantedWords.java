package pourwright.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Verdict;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;

/** Finds the rule, the way of working or the verdict that a person means. */
public final class WantedWords {
    private static final int MOST_OTHERS = 3;

    /** Where a word fits a way of working and a rule alike, the way of working is meant: rules are about them. */
    private static final double FOR_METHODS = 1.25;

    /** Less than this share of what was typed is no match. */
    private static final double LEAST_SHARE = 0.5;

    private static final Set<String> EMPTY = Set.of(
            "the", "a", "an", "it", "to", "of", "in", "is", "do", "we", "you", "i", "my", "and", "or", "use", "under",
            "me", "not", "why", "with", "at", "on", "be");

    private WantedWords() {}

    /**
     * What was understood.
     *
     * @param wanted the closest match
     * @param exact true when it was named by its id or its name
     * @param others what else could have been meant
     */
    public record Found(Wanted wanted, boolean exact, List<Wanted> others) {
        public Found {
            others = List.copyOf(others);
        }
    }

    /** Everything about a plan that can be asked for. */
    public static List<Wanted> all(Knowledge knowledge) {
        List<Wanted> all = new ArrayList<>();
        for (Verdict v : Verdict.values()) {
            all.add(new Wanted(Wanted.Kind.VERDICT, v.word(), "the verdict \"" + v.word() + "\""));
        }
        knowledge.processes().forEach((id, p) -> all.add(new Wanted(Wanted.Kind.METHOD, id, p.name())));
        for (RuleBook book : List.of(RuleBook.method(), RuleBook.judge())) {
            book.cards().stream()
                    .filter(c -> !c.folder().equals("interview"))
                    .sorted()
                    .forEach(c -> all.add(new Wanted(Wanted.Kind.FINDING, c.id(), c.says())));
        }
        return all;
    }

    /** The closest match and the next ones; none when nothing comes near. */
    public static Optional<Found> find(String typed, Knowledge knowledge) {
        List<Wanted> all = all(knowledge);
        String id = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        for (Wanted w : all) {
            if (w.id().equals(id) || w.says().equalsIgnoreCase(typed.strip())) {
                return Optional.of(new Found(w, true, List.of()));
            }
        }
        Set<String> words = stems(typed);
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Integer> common = new HashMap<>();
        all.forEach(w -> stems(w.id() + " " + w.says()).forEach(s -> common.merge(s, 1, Integer::sum)));
        record Scored(Wanted wanted, double score) {}
        List<Scored> scored = new ArrayList<>();
        for (Wanted w : all) {
            double score = score(words, w, common, all.size());
            if (score > 0) {
                scored.add(new Scored(w, score));
            }
        }
        scored.sort(Comparator.comparingDouble((Scored s) -> -s.score())
                .thenComparing(s -> s.wanted().id()));
        return scored.isEmpty()
                ? Optional.empty()
                : Optional.of(new Found(
                        scored.get(0).wanted(),
                        false,
                        scored.stream()
                                .skip(1)
                                .limit(MOST_OTHERS)
                                .map(Scored::wanted)
                                .toList()));
    }

    /** The share of what was typed that is found, rare words counting more; a little more where little else is said. */
    private static double score(Set<String> words, Wanted w, Map<String, Integer> common, int all) {
        Set<String> name = stems(w.id());
        Set<String> whole = stems(w.id() + " " + w.says());
        double found = 0;
        double typed = 0;
        for (String word : words) {
            double weight = Math.log(1 + all / (1.0 + common.getOrDefault(word, 0)));
            typed += weight;
            // A word of the id says more than a word of the sentence.
            found += name.contains(word) ? weight : whole.contains(word) ? weight * 0.7 : 0;
        }
        double share = found / typed;
        if (share < LEAST_SHARE) {
            return 0;
        }
        return (share + 0.2 / name.size()) * (w.kind() == Wanted.Kind.METHOD ? FOR_METHODS : 1);
    }

    /** Words cut to what their forms share: degas, degassed and degassing are one. */
    private static Set<String> stems(String text) {
        Set<String> stems = new LinkedHashSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+")) {
            if (word.length() > 1 && !EMPTY.contains(word)) {
                stems.add(stem(word));
            }
        }
        return stems;
    }

    private static String stem(String word) {
        String s = word.replaceFirst("(?:mold)", "mould");
        s = s.replaceFirst("(?<=[a-z]{4})(?:sing|sed)$", "");
        s = s.replaceFirst("(?<=[a-z]{3})(?:ing|ed|es|s|e)$", "");
        return s;
    }

    /** The card behind a finding. */
    static Optional<RuleCard> card(Wanted wanted) {
        return RuleBook.card(wanted.id());
    }
}
