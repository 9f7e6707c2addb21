package pourwright.cli;

/** What the program's exit tells other programs. */
enum ExitCode {
    /** Advice was given. */
    ADVICE(0, "advice", "Advice was given, or a list, or a figure."),
    /** Advice was given and it is to stop, or a check found a difference. */
    STOP(1, "stop", "The advice is to stop; or check or replay found a difference."),
    /** Something typed or in a file cannot be used. */
    BAD_INPUT(2, "bad input", "Something typed or in a file cannot be used. One sentence says what."),
    /** A fault of the program. */
    FAULT(3, "fault", "A fault of the program."),
    /** The input ended with questions left. */
    UNFINISHED(4, "ended", "The input ended, or was left, with questions open. The question is named."),
    /** Interrupted; everything is kept. */
    INTERRUPTED(130, "interrupted", "Interrupted. A plan or diagnosis is kept for \"resume\".");

    private final int code;
    private final String inShort;
    private final String says;

    ExitCode(int code, String inShort, String says) {
        this.code = code;
        this.inShort = inShort;
        this.says = says;
    }

    int code() {
        return code;
    }

    /** A word or two, for the help. */
    String inShort() {
        return inShort;
    }

    /** A sentence, for the manual. */
    String says() {
        return says;
    }

    /** The worse of two for a batch: a fault before bad input before a stop. */
    ExitCode worse(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
