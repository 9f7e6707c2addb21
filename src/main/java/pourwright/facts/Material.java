package pourwright.facts;

import java.util.Set;

/**
 * The liquid as the rules see it.
 *
 * @param id the class's id, for example {@code tin-silicone}
 * @param family the chemistry it belongs to
 * @param vacuum what the trade permits under vacuum
 * @param traits properties that rules ask for by name
 */
public record Material(String id, String family, String vacuum, Set<String> traits) {
    public Material {
        traits = Set.copyOf(traits);
    }

    /** True when the class has the trait. */
    public boolean has(String trait) {
        return traits.contains(trait);
    }
}
