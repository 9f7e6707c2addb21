package pourwright.units;

/** Folds the many ways of writing a unit into one key: "Pa.s", "Pa·s" and "pa s" are one unit. */
final class Spelling {
    private Spelling() {}

    /** The key of a spelling, or "" if nothing is left. Independent of the machine's language. */
    static String key(String spelling) {
        StringBuilder key = new StringBuilder(spelling.length());
        for (int i = 0; i < spelling.length(); i++) {
            if (per(spelling, i)) {
                key.append('/');
                i += 2;
                continue;
            }
            char c = fold(spelling.charAt(i));
            if (c != 0) {
                key.append(c);
            }
        }
        return key.toString();
    }

    /** The word "per" by itself: "litres per minute", but not "imperial". */
    private static boolean per(String s, int i) {
        return s.regionMatches(true, i, "per", 0, 3)
                && (i == 0 || !Character.isLetter(s.charAt(i - 1)))
                && (i + 3 == s.length() || !Character.isLetter(s.charAt(i + 3)));
    }

    /** The folded character, or 0 if it does not count. */
    private static char fold(char c) {
        switch (c) {
            case ' ':
            case '\u00a0':
            case '.':
            case '·':
            case '⋅':
            case '∙':
            case '•':
            case '*':
            case '^':
            case '-':
            case '_':
                return 0;
            case 'µ':
            case 'μ':
                return 'u';
            case '³':
                return '3';
            case '²':
            case '₂':
                return '2';
            default:
                return Character.toLowerCase(c);
        }
    }
}
