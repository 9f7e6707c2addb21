package pourwright.units;

/**
 * The hardness of a rubber as people write it: "shore A 25", "25A", "sh25", "00-30". No question takes one, so it is
 * only named where it was typed instead of something else.
 */
final class Hardness {
    private static final String[] SCALES = {"000", "00", "oo", "a", "d", "c"};

    private Hardness() {}

    /** The refusal that names the hardness, or the one there was where the text is none. */
    static Reading refused(String typed, String clean, Expect e, Reading before) {
        Cursor c = new Cursor(clean);
        boolean shore = c.word("shore") || c.mark("sh");
        String scale = scale(c);
        c.mark("-");
        double value = NumberScanner.scan(c, false);
        if (Double.isNaN(value)) {
            return before;
        }
        scale = scale == null ? scale(c) : scale;
        shore = c.word("shore") || shore;
        if (!c.rest().isEmpty() || value > 100 || (!shore && scale == null)) {
            return before;
        }
        return Sentences.hardness(typed, scale != null, e);
    }

    private static String scale(Cursor c) {
        c.spaces();
        for (String s : SCALES) {
            int from = c.at;
            if (c.mark(s) && !Character.isLetter(c.peek(0)) && !(c.peek(0) == '.' && Cursor.digit(c.peek(1)))) {
                // The noughts of "00-30" are a scale; those of "0030" are part of a number.
                if (s.charAt(0) != '0' || c.peek(0) == '-' || c.peek(0) == ' ') {
                    return s;
                }
            }
            c.at = from;
        }
        return null;
    }
}
