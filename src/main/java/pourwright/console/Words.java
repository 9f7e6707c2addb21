package pourwright.console;

import java.util.List;
import java.util.Locale;

/** Small matters of wording. */
final class Words {
    private static final double NEARLY_CERTAIN = 0.95;
    private static final double VERY_LIKELY = 0.8;
    private static final double LIKELY = 0.5;
    private static final double POSSIBLE = 0.2;
    private static final double UNLIKELY = 0.05;

    private Words() {}

    /** The word that was meant: the only one of these that begins with what was typed, or else what was typed. */
    static String meant(String typed, List<String> words) {
        List<String> some = words.stream().filter(w -> w.startsWith(typed)).toList();
        return !typed.isEmpty() && !words.contains(typed) && some.size() == 1 ? some.get(0) : typed;
    }

    static String lower(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    static String upper(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A chance in a word; the number always stands beside it. */
    static String chance(double p) {
        if (p >= NEARLY_CERTAIN) {
            return "nearly certain";
        }
        if (p >= VERY_LIKELY) {
            return "very likely";
        }
        if (p >= LIKELY) {
            return "likely";
        }
        if (p >= POSSIBLE) {
            return "possible";
        }
        return p >= UNLIKELY ? "unlikely" : "very unlikely";
    }
}
