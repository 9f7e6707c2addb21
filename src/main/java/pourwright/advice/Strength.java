package pourwright.advice;

import pourwright.rulebook.Verb;

/** How much a finding asks of the person, strongest first. */
public enum Strength {
    STOP,
    CHANGE,
    DO,
    CONSIDER,
    NOTE;

    /** The word programs and people see. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    static Strength of(Verb verb) {
        return switch (verb) {
            case STOP -> STOP;
            case CHANGE -> CHANGE;
            case DO, CHOOSE, DECIDE -> DO;
            case CONSIDER, CONTRADICTS -> CONSIDER;
            case NOTE, CAUTION, NEED, REFUSE, SPEAKS_FOR, SPEAKS_AGAINST, RULES_OUT -> NOTE;
        };
    }
}
