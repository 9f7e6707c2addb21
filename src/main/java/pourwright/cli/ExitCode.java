package pourwright.cli;

/** What the program's exit tells other programs. */
enum ExitCode {
    /** Advice was given. */
    ADVICE(0),
    /** Advice was given and it is to stop, or a check found a difference. */
    STOP(1),
    /** Something typed or in a file cannot be used. */
    BAD_INPUT(2),
    /** A fault of the program. */
    FAULT(3),
    /** The input ended with questions left. */
    UNFINISHED(4),
    /** Interrupted; everything is kept. */
    INTERRUPTED(130);

    private final int code;

    ExitCode(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }

    /** The worse of two for a batch: a fault before bad input before a stop. */
    ExitCode worse(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
