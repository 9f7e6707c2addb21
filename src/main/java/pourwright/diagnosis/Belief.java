package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The standing of every possible cause: prior plus evidence, in decibans. Each cause keeps its own odds, since several
 * can be true at once. Immutable: taking in more evidence gives a new belief.
 */
final class Belief {
    private final Map<String, Double> priors;
    private final double cap;
    private final Map<String, Map<String, Evidence>> strongest;
    private final Set<String> ruledOut;

    private Belief(
            Map<String, Double> priors,
            double cap,
            Map<String, Map<String, Evidence>> strongest,
            Set<String> ruledOut) {
        this.priors = priors;
        this.cap = cap;
        this.strongest = strongest;
        this.ruledOut = ruledOut;
    }

    /**
     * Before any evidence.
     *
     * @param priors chance of each possible cause, by id
     */
    static Belief before(Map<String, Double> priors, double cap) {
        return new Belief(new TreeMap<>(priors), cap, Map.of(), Set.of());
    }

    /** With more evidence; of one fact only the strongest piece counts for a cause, whatever the order. */
    Belief with(Collection<Evidence> more, Collection<String> out) {
        Map<String, Map<String, Evidence>> next = new HashMap<>(strongest);
        Set<String> copied = new HashSet<>();
        for (Evidence e : more) {
            if (priors.containsKey(e.cause())) {
                if (copied.add(e.cause())) {
                    next.put(e.cause(), new TreeMap<>(next.getOrDefault(e.cause(), Map.of())));
                }
                next.get(e.cause()).merge(e.fact(), e, Evidence::stronger);
            }
        }
        Set<String> gone = new HashSet<>(ruledOut);
        gone.addAll(out);
        return new Belief(priors, cap, next, gone);
    }

    /** The same priors with other evidence. */
    Belief anew(Collection<Evidence> evidence) {
        return before(priors, cap).with(evidence, List.of());
    }

    /** Ids of the causes still possible. */
    Collection<String> causes() {
        return priors.keySet().stream().filter(id -> !ruledOut.contains(id)).toList();
    }

    double prior(String cause) {
        return Scale.decibans(priors.get(cause));
    }

    /** Log-odds of a cause in decibans. */
    double decibans(String cause) {
        if (ruledOut.contains(cause)) {
            return Double.NEGATIVE_INFINITY;
        }
        return prior(cause) + Math.max(-cap, Math.min(cap, told(cause)));
    }

    /** All evidence about a cause, before the cap. */
    private int told(String cause) {
        int sum = 0;
        for (Evidence e : strongest.getOrDefault(cause, Map.of()).values()) {
            sum += e.decibans();
        }
        return sum;
    }

    double probability(String cause) {
        return Scale.probability(decibans(cause));
    }

    /** The evidence that counts for a cause, strongest first. */
    List<Evidence> evidence(String cause) {
        List<Evidence> all =
                new ArrayList<>(strongest.getOrDefault(cause, Map.of()).values());
        all.sort(
                Comparator.comparingInt((Evidence e) -> -Math.abs(e.decibans())).thenComparing(Evidence::fact));
        return all;
    }

    /**
     * Causes from the most to the least likely. Of causes that the cap makes equal, the one with more evidence comes
     * first; then by name, so that the order is always the same.
     */
    List<String> ranked() {
        Map<String, Double> scores = new HashMap<>();
        causes().forEach(c -> scores.put(c, decibans(c)));
        return scores.keySet().stream()
                .sorted(Comparator.comparingDouble((String c) -> -scores.get(c))
                        .thenComparingInt(c -> -told(c))
                        .thenComparing(c -> c))
                .toList();
    }
}
