package pourwright.facts;

/**
 * What a test showed, where it is no choice that a person made and no number.
 *
 * @param test which test, such as {@code rise}
 * @param outcome what it showed, such as {@code leak}
 * @param question id of the question that holds its readings
 */
public record Shown(String test, String outcome, String question) {}
