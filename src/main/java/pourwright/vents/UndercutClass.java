package pourwright.vents;

import java.util.List;
import java.util.Optional;
import pourwright.facts.Estimate;
import pourwright.knowledge.Knowledge;

/** How the trade names a place by the width of its mouth. The limits are guidelines. */
final class UndercutClass {
    /** Classes from fine to coarse, with the guidelines between which their mouths are wide. */
    private static final List<UndercutClass> ALL = List.of(
            new UndercutClass("texture", "undercut-texture-least", "undercut-texture-below"),
            new UndercutClass("small", "undercut-texture-below", "undercut-small-below"),
            new UndercutClass("medium", "undercut-small-below", "undercut-medium-below"),
            new UndercutClass("large", "undercut-medium-below", "undercut-large-usual"));

    private final String choice;
    private final String from;
    private final String to;

    private UndercutClass(String choice, String from, String to) {
        this.choice = choice;
        this.from = from;
        this.to = to;
    }

    /** The choice of {@code undercuts} for a mouth of this width, m. */
    static String of(double widthM, Knowledge knowledge) {
        for (UndercutClass c : ALL.subList(0, ALL.size() - 1)) {
            if (widthM < knowledge.guidelineSi(c.to)) {
                return c.choice;
            }
        }
        return ALL.get(ALL.size() - 1).choice;
    }

    /** The usual widths of a class, m; none for "none". */
    static Optional<Estimate> widthM(String choice, Knowledge knowledge) {
        return ALL.stream().filter(c -> c.choice.equals(choice)).findFirst().map(c -> {
            double low = knowledge.guidelineSi(c.from);
            double high = knowledge.guidelineSi(c.to);
            return new Estimate(low, Math.sqrt(low * high), high);
        });
    }
}
