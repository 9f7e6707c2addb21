package pourwright.emergency;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The words of a line as it was typed in haste: small letters, without the words that carry a sentence. */
final class Fragment {
    private static final int MOST_CHARACTERS = 400;
    private static final int SHORTEST_STEM = 3;
    private static final Set<String> FILLERS = Set.of(
            ("a an the this that these those it its is isn isnt are was were be been being has have had having do does"
                            + " did i im ive me my we our you your he his she her they them their there here and or but so then"
                            + " than as if of on at to by for with from just now please help oh god quick quickly hey omg what"
                            + " how when while after before some any all very really too also still again not no cannot cant"
                            + " wont will would should could dont doesnt didnt going go goes gets get got getting s t m d ll re"
                            + " ve in into about because")
                    .split(" "));

    private Fragment() {}

    /**
     * The words that say something, in the order in which they were typed. Read by hand: patterns would take a good part of
     * the start.
     */
    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        int end = Math.min(text.length(), MOST_CHARACTERS);
        for (int i = 0; i <= end; i++) {
            char c = i < end ? Character.toLowerCase(text.charAt(i)) : ' ';
            if (Character.isLetterOrDigit(c)) {
                word.append(c);
            } else if (c != '\'' && c != '’' && !word.isEmpty()) {
                String w = word.toString();
                word.setLength(0);
                if (!FILLERS.contains(w)) {
                    words.add(w);
                }
            }
        }
        return words;
    }

    /** A word without its ending, so that "smoking", "smokes" and "smoke" are one. */
    static String stem(String word) {
        String w = without(word, "s");
        String bare = without(without(w, "ing"), "ed");
        if (!bare.equals(w)) {
            int last = bare.length() - 1;
            boolean doubled = bare.charAt(last) == bare.charAt(last - 1) && "sl".indexOf(bare.charAt(last)) < 0;
            return doubled ? bare.substring(0, last) : bare;
        }
        return without(w, "e");
    }

    private static String without(String word, String ending) {
        int rest = word.length() - ending.length();
        boolean stays = rest < SHORTEST_STEM - 1
                || !word.endsWith(ending)
                || ending.length() > 1 && rest < SHORTEST_STEM
                || word.endsWith("ss")
                || word.endsWith("eed")
                || !hasVowel(word, rest);
        return stays ? word : word.substring(0, rest);
    }

    private static boolean hasVowel(String word, int end) {
        for (int i = 0; i < end; i++) {
            if ("aeiouy".indexOf(word.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }
}
