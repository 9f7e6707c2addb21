package pourwright.units;

/** The words before and behind a number that make it a rough one. */
final class AboutWords {
    private static final String[] BEFORE = {
        "somewhere around",
        "somewhere near",
        "in the region of",
        "a bit over",
        "a bit under",
        "a little over",
        "a little under",
        "just over",
        "just under",
        "close to",
        "about",
        "around",
        "roughly",
        "approximately",
        "approx",
        "circa",
        "maybe",
        "probably",
        "perhaps",
        "nearly",
        "almost",
        "more or less",
        "i think",
        "i guess",
        "say"
    };
    private static final String[] FILLER = {"it is", "it's", "it was", "exactly", "just", "the"};
    private static final String[] BEHIND = {
        "-ish", "ish", "or so", "or thereabouts", "approximately", "approx", "about", "more or less"
    };

    /** "It's just about 300": this many words in a row are looked for. */
    private static final int IN_A_ROW = 3;

    private AboutWords() {}

    /** Takes what stands before a number; true if it makes it rough. */
    static boolean before(Cursor c) {
        boolean about = false;
        for (int i = 0; i < IN_A_ROW; i++) {
            String word = c.oneOf(BEFORE);
            if (word == null) {
                c.oneOf(FILLER);
            }
            // The point after "approx" ends the short form; the point after "about" would belong to ".5".
            if ("approx".equals(word) && c.peek(0) == '.') {
                c.at++;
            }
            // Both are read, whatever the first finds: each moves on in the text.
            boolean tilde = c.mark("~");
            boolean circa = circa(c);
            about = about || word != null || tilde || circa;
        }
        return about;
    }

    /** Takes what stands behind a number; true if it makes it rough. */
    static boolean behind(Cursor c) {
        return c.oneOf(BEHIND) != null;
    }

    /** "c. 300", "c300" and "ca 300", but not the c of "cm". */
    private static boolean circa(Cursor c) {
        int from = c.at;
        if (c.mark("ca") || c.mark("c")) {
            c.mark(".");
            c.spaces();
            if (Cursor.digit(c.peek(0))) {
                return true;
            }
        }
        c.at = from;
        return false;
    }
}
