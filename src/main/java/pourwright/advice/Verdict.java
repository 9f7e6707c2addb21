package pourwright.advice;

/** The answer to "can I do it like this?", about the job as described. */
public enum Verdict {
    GO,
    CHANGE,
    STOP;

    /** The word programs and people see. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
