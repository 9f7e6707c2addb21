package pourwright.facts;

/**
 * A question nobody has answered, or answered with "don't know".
 *
 * @param question the question's id
 */
public record Unknown(String question) {}
