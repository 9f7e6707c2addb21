package pourwright.advice;

import java.util.List;
import pourwright.rulebook.RuleCard;

/**
 * A question worth asking.
 *
 * @param question its id
 * @param rules the rules that want it
 */
public record Need(String question, List<RuleCard> rules) {}
