package pourwright.units;

/** Folds the many ways of writing a unit into one key: "Pa.s", "Pa·s" and "pa s" are one unit. */
final class Spelling {
    private Spelling() {}

    /** The key of a spelling, or "" if nothing is left. Independent of the machine's language. */
    static String key(String spelling) {
        StringBuilder key = new StringBuilder(spelling.length());
        for (int i = 0; i < spelling.length(); i++) {
            char c = fold(spelling.charAt(i));
            if (c != 0) {
                key.append(c);
            }
        }
        int per = key.indexOf("per");
        if (per >= 0) {
            key.replace(per, per + 3, "/");
        }
        return key.toString();
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
