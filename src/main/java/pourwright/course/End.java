package pourwright.course;

import pourwright.facts.Estimate;

/** Which end of every range a run takes. */
enum End {
    /** Everything that makes a pull shorter. */
    QUICK,
    TYPICAL,
    /** Everything that makes it longer. */
    SLOW;

    /** A value whose growth makes the pull longer. */
    double slower(Estimate e) {
        return this == QUICK ? e.low() : this == SLOW ? e.high() : e.typical();
    }

    /** A value whose growth makes the pull shorter. */
    double quicker(Estimate e) {
        return this == QUICK ? e.high() : this == SLOW ? e.low() : e.typical();
    }
}
