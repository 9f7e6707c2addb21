package pourwright.facts;

/**
 * A choice the person made.
 *
 * @param question the question's id
 * @param choice the choice's id
 */
public record Said(String question, String choice) {}
