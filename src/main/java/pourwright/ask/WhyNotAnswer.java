package pourwright.ask;

import java.util.List;
import pourwright.advice.Consultation;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.RuleText;

/**
 * Why a plan does not advise something, and when it would.
 *
 * @param before the plan as it is
 * @param wanted what was asked about
 * @param already true when the plan advises it as it is
 * @param rule the rule that comes nearest to it, or null where no single rule gives it
 * @param lacking where conditions of that rule do not hold: their places in it
 * @param against what rules it out
 * @param ways the smallest sets of other answers, the likeliest to be made first
 * @param tried how many plans were worked out for it
 * @param proved true when there are no ways, and every answer that could matter was tried alone and in pairs
 * @param whole true when the search did not end at its limit
 */
public record WhyNotAnswer(
        Consultation before,
        Wanted wanted,
        boolean already,
        RuleText rule,
        List<Integer> lacking,
        List<Conclusion> against,
        List<Way> ways,
        int tried,
        boolean proved,
        boolean whole) {
    public WhyNotAnswer {
        lacking = List.copyOf(lacking);
        against = List.copyOf(against);
        ways = List.copyOf(ways);
    }
}
