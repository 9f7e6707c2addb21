package pourwright.diagnosis;

import java.util.List;
import pourwright.knowledge.Cause;

/**
 * One cause with its standing.
 *
 * @param cause the cause
 * @param probability its own chance, whatever else is true as well
 * @param decibans the same as log-odds
 * @param prior the log-odds before any observation
 * @param evidence what counts for and against, strongest first
 * @param unknown observations nobody made yet that would say something about it
 */
public record RankedCause(
        Cause cause,
        double probability,
        double decibans,
        double prior,
        List<Evidence> evidence,
        List<String> unknown) {}
