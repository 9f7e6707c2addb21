package pourwright.vents;

import java.util.Optional;
import pourwright.advice.Consultation;
import pourwright.figures.FigureValue;
import pourwright.geometry.Pocket;
import pourwright.geometry.Vec3;
import pourwright.rulebook.RuleCard;

/**
 * What to do about one pocket.
 *
 * @param pocket   where it is and what it holds; nothing when it was only described
 * @param decision id of the decision
 * @param say      the sentence of the rule, filled in
 * @param rule     the rule that decided
 * @param job      the consultation about this pocket, with its figures
 * @param lean     the direction up in which it fills, when a tilt frees it
 */
public record Treatment(
        Optional<Pocket> pocket, String decision, String say, RuleCard rule, Consultation job, Optional<Vec3> lean) {
    /** The id of the decision to make a vent. */
    public static final String VENT = "vent";

    /** A figure about this pocket. */
    public Optional<FigureValue> figure(String id) {
        return job.figure(id);
    }

    /** Whether it takes a vent. */
    public boolean vented() {
        return decision.equals(VENT);
    }
}
