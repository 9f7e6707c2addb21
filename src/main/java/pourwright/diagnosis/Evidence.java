package pourwright.diagnosis;

import pourwright.rulebook.Conclusion;

/**
 * One piece of evidence about one cause.
 *
 * @param cause the cause's id
 * @param decibans ten times the log of the likelihood ratio; negative speaks against
 * @param fact what it is about; of one fact only the strongest piece counts
 * @param question the observation it rests on; for figures the figure's id
 * @param choice what was answered; for figures empty
 * @param conclusion the rule with all that it matched
 */
public record Evidence(String cause, int decibans, String fact, String question, String choice, Conclusion conclusion) {
    /** The one that weighs more; of equals the one that speaks for, so that the order never matters. */
    static Evidence stronger(Evidence a, Evidence b) {
        int byWeight = Integer.compare(Math.abs(a.decibans), Math.abs(b.decibans));
        if (byWeight != 0) {
            return byWeight > 0 ? a : b;
        }
        int bySign = Integer.compare(a.decibans, b.decibans);
        if (bySign != 0) {
            return bySign > 0 ? a : b;
        }
        return (a.question + a.choice).compareTo(b.question + b.choice) <= 0 ? a : b;
    }
}
