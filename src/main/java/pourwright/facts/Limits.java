package pourwright.facts;

/** Looks a guideline up by name, so that a rule never holds a number. */
@FunctionalInterface
public interface Limits {
    /**
     * The guideline's value in SI.
     *
     * @throws IllegalStateException when no guideline has that name
     */
    double of(String guideline);
}
