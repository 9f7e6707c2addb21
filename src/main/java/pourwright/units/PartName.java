package pourwright.units;

/**
 * A word that names one of the two parts of a mix. Which part is spoken of first is common practice: the resin before
 * its hardener, water before the powder that is strewn into it.
 *
 * @param word as it was typed, or "" where a part was not named
 */
record PartName(Role role, String word) {
    static final PartName NONE = new PartName(Role.NONE, "");

    /** What a name says about its part. */
    enum Role {
        NONE,
        /** Letters are the maker's own: A is the isocyanate to one and the polyol to another. */
        LETTER_A,
        LETTER_B,
        MAIN,
        AGENT,
        WATER,
        POWDER
    }

    private static final String[] MAIN = {"resin", "base", "polyol", "syrup", "rubber", "silicone"};
    private static final String[] AGENT = {
        "hardener", "catalyst", "curing agent", "peroxide", "mekp", "isocyanate", "iso", "liquid"
    };
    private static final String[] POWDER = {"powder", "plaster", "gypsum", "cement", "alginate"};
    private static final String[] COUNTED = {"parts of", "part of", "parts", "part", "pts", "pt", "component", "of"};

    boolean letter() {
        return role == Role.LETTER_A || role == Role.LETTER_B;
    }

    boolean none() {
        return role == Role.NONE;
    }

    boolean noun() {
        return !none() && !letter();
    }

    /** The name at the cursor, words that only count parts passed over; {@link #NONE} if there is none. */
    static PartName take(Cursor c) {
        PartName found = NONE;
        boolean more = true;
        while (more) {
            more = c.oneOf(COUNTED) != null;
            PartName next = one(c);
            if (!next.none()) {
                more = true;
                // "100 A resin": the noun says more than the letter.
                found = found.noun() ? found : next;
            }
        }
        return found;
    }

    private static PartName one(Cursor c) {
        if (c.word("a")) {
            c.mark("=");
            return new PartName(Role.LETTER_A, "A");
        }
        if (c.word("b")) {
            c.mark("=");
            return new PartName(Role.LETTER_B, "B");
        }
        if (c.word("water")) {
            return new PartName(Role.WATER, "water");
        }
        String word = c.oneOf(MAIN);
        if (word != null) {
            return new PartName(Role.MAIN, word);
        }
        word = c.oneOf(AGENT);
        if (word != null) {
            return new PartName(Role.AGENT, word);
        }
        word = c.oneOf(POWDER);
        return word == null ? NONE : new PartName(Role.POWDER, word);
    }

    /** Whether the part named so is spoken of after the other. */
    static boolean turned(PartName first, PartName second) {
        return first.role == Role.LETTER_B
                || first.role == Role.AGENT
                || second.role == Role.LETTER_A
                || second.role == Role.MAIN
                || (second.role == Role.WATER && first.role != Role.MAIN);
    }

    /** Two names for one part, or a letter that contradicts a noun. */
    static boolean clash(PartName first, PartName second) {
        return first.role != Role.NONE && first.role == second.role;
    }
}
