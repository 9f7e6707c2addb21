package pourwright.facts;

/**
 * A way of working that was chosen and that no rule refused.
 *
 * @param what the method's id, as in the knowledge of processes
 */
public record Method(String what) {}
