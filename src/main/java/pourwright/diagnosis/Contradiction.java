package pourwright.diagnosis;

import pourwright.rulebook.RuleCard;

/**
 * Two answers that cannot both be true. Neither counts until it is settled.
 *
 * @param first the one question
 * @param second the other
 * @param say the sentence that asks which is right
 * @param rule the rule that noticed
 */
public record Contradiction(String first, String second, String say, RuleCard rule) {}
