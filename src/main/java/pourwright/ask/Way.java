package pourwright.ask;

import java.util.List;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;

/**
 * Other answers under which a thing would be advised. None of them can be left out.
 *
 * @param changes the answers
 * @param difference that plan against the one as it is
 */
public record Way(List<Setting> changes, Difference difference) {
    public Way {
        changes = List.copyOf(changes);
    }

    /** The plan with these answers. */
    public Consultation after() {
        return difference.after();
    }

    /** The kind of the change that is least likely to be made. */
    public Setting.Grade grade() {
        return changes.stream()
                .map(Setting::grade)
                .max(java.util.Comparator.naturalOrder())
                .orElseThrow();
    }
}
