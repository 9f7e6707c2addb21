package pourwright.remedy;

import java.util.List;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;

/**
 * What a search found.
 *
 * @param before the plan as it is
 * @param goal what was looked for
 * @param fixes at most three, the least costly first; those that work, or where none does those that help most
 * @param stuck what hindered the job and no change that was tried takes away
 * @param remedies how many changes can be made to this job
 * @param tried how many jobs with changes were tried
 * @param whole true when every one of those changes and every pair of them was tried; false when the search ended at its
 *     limit
 */
public record Fixes(
        Consultation before, Goal goal, List<Fix> fixes, List<Finding> stuck, int remedies, int tried, boolean whole) {
    public Fixes {
        fixes = List.copyOf(fixes);
        stuck = List.copyOf(stuck);
    }

    /** True when at least one of them reaches the goal. */
    public boolean works() {
        return fixes.stream().anyMatch(Fix::works);
    }
}
