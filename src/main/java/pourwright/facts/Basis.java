package pourwright.facts;

/** Where a value comes from, from the surest to the weakest. */
public enum Basis {
    /** The person typed it. */
    TYPED,
    /** A workshop's own data sheet. */
    DATA_SHEET,
    /** The range of the material class. */
    CLASS,
    /** The question's stated default, taken because nobody knew. */
    ASSUMED;

    /** True for what somebody measured or read from a label. */
    public boolean known() {
        return this == TYPED || this == DATA_SHEET;
    }

    /** The weaker of two. */
    public Basis weaker(Basis other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
