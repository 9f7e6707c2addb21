package pourwright.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A change that a workshop can make to a job.
 *
 * @param id stable id
 * @param say what to do; {@code {new}} is the new value, {@code {count}} the number of batches
 * @param answer the question whose answer it changes
 * @param how what becomes of the answer
 * @param to the choice it becomes, or null
 * @param from choices it can be made from; an empty text stands for no answer
 * @param least as far down as a workshop goes, in the question's unit, or null
 * @param most as far up, or the most batches, or null
 * @param factor as far as a workshop goes, as a multiple of what it is, or null
 * @param when answers it needs, by question; {@code *} for any, an empty text for none
 * @param also choices that come with it, by question
 * @param forgets answers that no longer hold after it
 * @param families the only families where it is possible; empty for all
 * @param notFamilies families where it is impossible
 * @param vacuum the only permissions for vacuum where it makes sense; empty for all
 * @param cost from 1, a habit, to 9, a machine
 * @param whyCost what the cost is
 * @param source a key of the sources
 */
public record Remedy(
        String id,
        String say,
        String answer,
        How how,
        String to,
        List<String> from,
        Double least,
        Double most,
        Double factor,
        Map<String, List<String>> when,
        Map<String, String> also,
        List<String> forgets,
        Set<String> families,
        Set<String> notFamilies,
        Set<String> vacuum,
        int cost,
        String whyCost,
        String source) {

    /** What becomes of the answer. */
    public enum How {
        /** Another choice. */
        CHOICE,
        /** A larger value. */
        GROW,
        /** A smaller value. */
        SHRINK,
        /** A share of the whole mix. */
        DIVIDE
    }

    public Remedy {
        from = List.copyOf(from);
        // In the order of the file, at each start.
        when = Collections.unmodifiableMap(new LinkedHashMap<>(when));
        also = Collections.unmodifiableMap(new LinkedHashMap<>(also));
        forgets = List.copyOf(forgets);
        families = Set.copyOf(families);
        notFamilies = Set.copyOf(notFamilies);
        vacuum = Set.copyOf(vacuum);
    }

    /** True when it can be made with this class of material at all. */
    public boolean suits(MaterialClass material) {
        return (families.isEmpty() || families.contains(material.family()))
                && !notFamilies.contains(material.family())
                && (vacuum.isEmpty() || vacuum.contains(material.vacuum()));
    }
}
