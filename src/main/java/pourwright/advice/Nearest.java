package pourwright.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;

/** Finds what somebody may have meant by a name that is none. */
public final class Nearest {
    private static final int MOST = 3;
    private static final int LONGEST = 60;
    private static final int LETTERS_PER_SLIP = 4;
    private static final int SHORTEST_PART = 3;

    private Nearest() {}

    /**
     * The names that may have been meant, likeliest first, at most three: a slip of the finger, else a name that holds all
     * that was typed, else one whose meaning shares words with it.
     *
     * @param meanings what each name means
     */
    public static List<String> of(String typed, Map<String, String> meanings) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        if (wanted.isEmpty() || wanted.length() > LONGEST) {
            return List.of();
        }
        int most = Math.max(1, wanted.length() / LETTERS_PER_SLIP);
        List<String> found = first(meanings.keySet(), name -> slips(wanted, name), most);
        if (found.isEmpty() && wanted.length() >= SHORTEST_PART) {
            found = first(meanings.keySet(), name -> name.contains(wanted) ? name.length() : LONGEST, LONGEST - 1);
        }
        Set<String> words = words(typed);
        return found.isEmpty()
                ? first(meanings.keySet(), name -> -shared(words, name + " " + meanings.get(name)), -1)
                : found;
    }

    private static List<String> first(Set<String> names, ToIntFunction<String> far, int most) {
        return names.stream()
                .filter(n -> far.applyAsInt(n) <= most)
                .sorted(Comparator.comparingInt(far).thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
    }

    private static int shared(Set<String> wanted, String text) {
        Set<String> words = words(text);
        words.retainAll(wanted);
        return words.size();
    }

    /** The words that mean something; the shortest ones stand in every question. */
    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>(List.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+")));
        words.removeIf(w -> w.length() <= SHORTEST_PART);
        return words;
    }

    /** How many letters must be put in, taken out or changed to make one word the other. */
    private static int slips(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
