package pourwright.facts;

/**
 * A way of working that a rule refused.
 *
 * @param what the method's id
 */
public record Refused(String what) {}
