package pourwright.remedy;

import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.advice.Verdict;

/** What a change is looked for. */
public enum Goal {
    /** The verdict is to be go. */
    WORKS,
    /** The job works, but the mix was kept out of the chamber: it is to be degassed, and still work. */
    VACUUM,
    /** Nothing: the job works as it was described. */
    NOTHING;

    private static final long STOP_WEIGHT = 1000;
    private static final String DEGAS = "degas-mix";

    /** What this plan leaves to wish for. */
    public static Goal of(Consultation c) {
        if (c.verdict() != Verdict.GO) {
            return WORKS;
        }
        boolean none = c.methods().stream().noneMatch(m -> m.startsWith("degas"));
        return none && c.refused().contains(DEGAS) ? VACUUM : NOTHING;
    }

    /** True for what must be gone before a job works. */
    static boolean hinders(Finding f) {
        return f.strength() == Strength.STOP || f.strength() == Strength.CHANGE;
    }

    /** How far a plan is from it, 0 when it is reached; a stop weighs more than any number of changes. */
    long distance(Consultation c) {
        long left = 0;
        for (var f : c.findings()) {
            left += f.strength() == Strength.STOP ? STOP_WEIGHT : f.strength() == Strength.CHANGE ? 1 : 0;
        }
        boolean dry = this == VACUUM && !c.methods().contains(DEGAS);
        return left + (dry ? 1 : 0);
    }
}
