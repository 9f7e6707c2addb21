package pourwright.advice;

import java.util.List;
import pourwright.rulebook.RuleCard;

/**
 * One piece of advice with its reasons.
 *
 * @param id the rule's id
 * @param topic what it is about
 * @param strength how much it asks
 * @param say what to do or know, with values filled in
 * @param because the reason
 * @param rule the rule that gave it
 * @param answers the answers it rests on
 * @param figures the figures it rests on
 * @param methods the ways of working it takes as given
 * @param caution the caution's id when it is a caution, else empty
 */
public record Finding(
        String id,
        String topic,
        Strength strength,
        String say,
        String because,
        RuleCard rule,
        List<String> answers,
        List<String> figures,
        List<String> methods,
        String caution) {
    /** True when it warns of a hazard. */
    public boolean isCaution() {
        return !caution.isEmpty();
    }
}
