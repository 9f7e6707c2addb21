package pourwright.rulebook;

/** What a rule can conclude; one verb each. */
public enum Verb {
    /** No allowed way works, or someone could be hurt. */
    STOP,
    /** The job as described must change. */
    CHANGE,
    /** Something to do. */
    DO,
    /** Something to weigh up, or an answer worth measuring. */
    CONSIDER,
    /** Something to know. */
    NOTE,
    /** A hazard is present. */
    CAUTION,
    /** A question is worth asking. */
    NEED,
    /** A way of working fits. */
    CHOOSE,
    /** A way of working is ruled out. */
    REFUSE,
    /** What to do about one pocket of air. */
    DECIDE,
    /** An observation speaks for a cause. */
    SPEAKS_FOR,
    /** An observation speaks against a cause. */
    SPEAKS_AGAINST,
    /** The way of working makes a cause impossible. */
    RULES_OUT,
    /** Two observations cannot both be true. */
    CONTRADICTS
}
