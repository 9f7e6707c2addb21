package pourwright.ask;

import java.util.Locale;
import pourwright.advice.Consultation;

/**
 * What somebody would rather have been told.
 *
 * @param kind what kind of thing it is
 * @param id the rule's id, the method's id, or the word of the verdict
 * @param says what it is, in words
 */
public record Wanted(Kind kind, String id, String says) {
    /** Kinds of things that can be wanted. */
    public enum Kind {
        /** A finding, by the id of its rule. */
        FINDING,
        /** A way of working. */
        METHOD,
        /** A verdict. */
        VERDICT;

        /** The word programs see. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** True when this plan advises it. */
    public boolean holds(Consultation c) {
        return switch (kind) {
            case FINDING -> c.finding(id).isPresent();
            case METHOD -> c.methods().contains(id);
            case VERDICT -> c.verdict().word().equals(id);
        };
    }
}
