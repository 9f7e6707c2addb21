package pourwright.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A class of casting material, or a workshop's own material that refines one.
 *
 * @param id stable id
 * @param name what the trade calls it
 * @param says words people type for it
 * @param family the chemistry
 * @param vacuum what the trade permits under vacuum
 * @param traits properties rules ask for
 * @param mix how it is mixed
 * @param values its numbers, by name
 * @param permission why vacuum is permitted or not, and what to do instead
 * @param note anything else, or null
 */
public record MaterialClass(
        String id,
        String name,
        List<String> says,
        String family,
        String vacuum,
        Set<String> traits,
        Mix mix,
        Map<String, Value> values,
        Permission permission,
        String note) {
    public MaterialClass {
        says = List.copyOf(says);
        traits = Set.copyOf(traits);
        // In the order of the file: a copy by the library is in another order at each start.
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /**
     * How the cans go together.
     *
     * @param by {@code mass}, {@code volume}, {@code either}, {@code water} or {@code none}
     * @param names what the cans are called, in the order of the ratio
     * @param first parts of the first can
     * @param second parts of the second can
     * @param source a key of the sources
     * @param note one plain sentence, or null
     */
    public record Mix(String by, List<String> names, Double first, Span second, String source, String note) {
        public Mix {
            names = names == null ? List.of() : List.copyOf(names);
        }
    }

    /** Low, typical and high parts. */
    public record Span(double low, double typical, double high) {
        public Span {
            if (!(low <= typical && typical <= high)) {
                throw new IllegalArgumentException("low, typical and high must be in that order");
            }
        }
    }

    /**
     * What the trade says of vacuum with this class.
     *
     * @param why the reason
     * @param instead what to do without it
     * @param source a key of the sources
     */
    public record Permission(String why, String instead, String source) {}
}
