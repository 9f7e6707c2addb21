package pourwright.emergency;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.knowledge.Emergency;

/**
 * Finds the situation a hasty line means. A word counts the more, the fewer situations it stands for, and a word with a slip
 * counts a little less. Where two situations fit alike, the one that endangers people goes first. The same line always
 * finds the same.
 */
public final class EmergencyFinder {
    private static final double SLIPPED = 0.85;
    private static final double BEGINNING = 0.8;
    private static final int LEAST_BEGINNING = 4;
    /** What an unknown word weighs: a few of them around a known one do not drown it. */
    private static final double UNKNOWN = 0.5;

    private static final double LEAST = 0.2;
    /** A word that stands for more than this share of the situations finds none by itself. */
    private static final double TOO_COMMON = 0.25;

    private static final double CLOSE = 0.4;
    private static final int MOST_OTHERS = 3;
    /** Scores that differ by less than a step of this scale fit alike. */
    private static final int STEPS = 20;

    private final List<Entry> entries = new ArrayList<>();
    /** Stem to the number of situations it stands for. */
    private final Map<String, Integer> common = new HashMap<>();
    /** Every word of every situation, by its spelling. */
    private final Map<String, Word> vocabulary = new LinkedHashMap<>();

    /** A word as it is written and without its ending. */
    private record Word(String whole, String stem) {}

    private record Entry(Emergency emergency, List<List<Word>> phrases, Set<String> words) {}

    /**
     * A word that was typed.
     *
     * @param like the known spellings it may mean, and how surely it is each of them
     */
    private record Typed(double weight, Map<String, Double> like) {}

    private record Scored(Emergency emergency, double score) {
        long step() {
            return Math.round(score * STEPS);
        }
    }

    /**
     * What was found.
     *
     * @param taken the situation that fits best
     * @param others the other close ones, at most three, the closest first
     */
    public record Found(Emergency taken, List<Emergency> others) {}

    /** @param all the situations, in the order that settles what nothing else settles */
    public EmergencyFinder(List<Emergency> all) {
        for (Emergency e : all) {
            List<List<Word>> phrases = new ArrayList<>();
            phrases.add(words(e.title()));
            phrases.add(words(e.inShort()));
            e.says().forEach(s -> phrases.add(words(s)));
            Set<String> words = new HashSet<>();
            Set<String> stems = new HashSet<>();
            for (List<Word> phrase : phrases) {
                for (Word w : phrase) {
                    words.add(w.whole());
                    stems.add(w.stem());
                    vocabulary.put(w.whole(), w);
                }
            }
            entries.add(new Entry(e, phrases, words));
            stems.forEach(s -> common.merge(s, 1, Integer::sum));
        }
    }

    private static List<Word> words(String text) {
        return Fragment.words(text).stream()
                .map(w -> new Word(w, Fragment.stem(w)))
                .toList();
    }

    /** The situation a line means and the other close ones; none when its words are not known, or stand for too much. */
    public Optional<Found> find(String typed) {
        List<Typed> line = words(typed).stream().map(this::typed).toList();
        List<Scored> close = entries.stream()
                .map(e -> new Scored(e.emergency(), e.emergency().id().equals(typed.strip()) ? 1 : score(line, e)))
                .filter(s -> s.score() >= LEAST)
                .sorted(Comparator.comparing(Scored::step)
                        .reversed()
                        .thenComparing(s -> s.emergency().danger())
                        .thenComparing(Comparator.comparing(Scored::score).reversed()))
                .toList();
        if (close.isEmpty()) {
            return Optional.empty();
        }
        double best = close.get(0).score();
        return Optional.of(new Found(
                close.get(0).emergency(),
                close.stream()
                        .skip(1)
                        .filter(s -> s.score() >= CLOSE * best)
                        .limit(MOST_OTHERS)
                        .map(Scored::emergency)
                        .toList()));
    }

    /** Half for how well the best phrase fits as a whole, half for how much of the line the situation explains at all. */
    private double score(List<Typed> line, Entry entry) {
        double typed = line.stream().mapToDouble(Typed::weight).sum();
        if (typed == 0) {
            return 0;
        }
        double explained = 0;
        double known = 0;
        for (Typed w : line) {
            double best = 0;
            for (Map.Entry<String, Double> like : w.like().entrySet()) {
                if (like.getValue() > best && entry.words().contains(like.getKey())) {
                    best = like.getValue();
                }
            }
            explained += w.weight() * best;
            known += best > 0 ? w.weight() : 0;
        }
        if (known < weight(TOO_COMMON)) {
            return 0;
        }
        double phrase = 0;
        for (List<Word> p : entry.phrases()) {
            phrase = Math.max(phrase, fits(line, typed, p));
        }
        return (phrase + explained / typed) / 2;
    }

    /** One when line and phrase hold the same words, none when they share no word. */
    private double fits(List<Typed> line, double typed, List<Word> phrase) {
        boolean[] used = new boolean[phrase.size()];
        double shared = 0;
        for (Typed w : line) {
            int nearest = -1;
            double most = 0;
            for (int i = 0; i < used.length; i++) {
                double like = used[i] ? 0 : w.like().getOrDefault(phrase.get(i).whole(), 0.0);
                if (like > most) {
                    most = like;
                    nearest = i;
                }
            }
            if (nearest >= 0) {
                used[nearest] = true;
                shared += most * w.weight();
            }
        }
        double whole = typed;
        for (Word w : phrase) {
            whole += weight(w);
        }
        return 2 * shared / whole;
    }

    /** A typed word with a slip weighs as the heaviest it may be. */
    private Typed typed(Word word) {
        Map<String, Double> like = new HashMap<>();
        double weight = UNKNOWN;
        for (Word k : vocabulary.values()) {
            double alike = alike(word, k);
            if (alike > 0) {
                like.put(k.whole(), alike);
                weight = Math.max(weight, weight(k));
            }
        }
        return new Typed(weight, like);
    }

    /** How surely a typed word is a known one. What is spelled as a known word is never taken for a slip of another. */
    private double alike(Word typed, Word word) {
        if (typed.stem().equals(word.stem())) {
            return 1;
        }
        if (vocabulary.containsKey(typed.whole())) {
            return 0;
        }
        if (Slips.near(typed.whole(), word.whole()) || Slips.near(typed.whole(), word.stem())) {
            return SLIPPED;
        }
        return typed.whole().length() >= LEAST_BEGINNING && word.whole().startsWith(typed.whole()) ? BEGINNING : 0;
    }

    /** A word that stands for few situations weighs more. */
    private double weight(Word word) {
        return weight((double) common.get(word.stem()) / entries.size());
    }

    private static double weight(double share) {
        return 1 - StrictMath.log(share);
    }
}
