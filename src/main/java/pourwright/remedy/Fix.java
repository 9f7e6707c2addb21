package pourwright.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.facts.Answers;
import pourwright.knowledge.Remedy;

/**
 * Changes made together, and the plan they lead to.
 *
 * @param changes what to change
 * @param difference this plan against the one before
 * @param works true when the goal is reached
 */
public record Fix(List<Change> changes, Difference difference, boolean works) {
    /** What a person compares, in this order. */
    private static final List<String> TOLD = List.of(
            "mix-mass",
            "batch-count",
            "froth-volume",
            "cup-volume",
            "working-time",
            "degas-share",
            "time-share",
            "time-margin",
            "viscosity-at-pour",
            "pump-down-time",
            "planned-pressure",
            "reachable-pressure",
            "boil-off-pressure",
            "leak-share",
            "dew-margin",
            "gap-fill-time",
            "pressure-share");

    /** How many figures are told. */
    private static final int MOST_TOLD = 6;

    public Fix {
        changes = List.copyOf(changes);
    }

    /** The plan with the changes made. */
    public Consultation after() {
        return difference.after();
    }

    /** All costs together. */
    public int cost() {
        return changes.stream().mapToInt(c -> c.remedy().cost()).sum();
    }

    /** The answers to give so that it is made, each as a person types it; null for one that no longer holds. */
    public Map<String, String> answers() {
        Answers before = difference.before().answers();
        Answers now = after().answers();
        Map<String, String> changed = new LinkedHashMap<>();
        before.all().keySet().stream().filter(id -> !now.has(id)).forEach(id -> changed.put(id, null));
        now.all().forEach((id, given) -> {
            if (!given.equals(before.all().get(id))) {
                changed.put(id, String.valueOf(given.raw()));
            }
        });
        return Collections.unmodifiableMap(changed);
    }

    /** How far all of them go. */
    double size() {
        return changes.stream().mapToDouble(Change::size).sum();
    }

    /** Ids of the figures that change and that a person compares, the telling ones first. */
    public List<String> figures() {
        // One batch of several needs no count of its own.
        boolean split = changes.stream().anyMatch(c -> c.remedy().how() == Remedy.How.DIVIDE);
        Set<String> moved = Set.copyOf(difference.figures());
        List<String> told = new ArrayList<>();
        for (String id : TOLD) {
            if (moved.contains(id) && told.size() < MOST_TOLD && !(split && id.equals("batch-count"))) {
                told.add(id);
            }
        }
        return List.copyOf(told);
    }
}
