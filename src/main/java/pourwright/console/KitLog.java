package pourwright.console;

import java.util.Optional;
import pourwright.kit.KitAdvice;
import pourwright.kitfit.KitDrift;

/** The way to the history of a workshop's kit. */
@FunctionalInterface
public interface KitLog {
    /** Keeps nothing and knows nothing. */
    KitLog NONE = advice -> new Past(Optional.empty(), 0, "");

    /** Keeps what a test measured, and tells what the tests before it show. */
    Past keep(KitAdvice advice);

    /**
     * What the history shows.
     *
     * @param drift over all tests with this one; nothing where no history is kept
     * @param tests how many there are
     * @param said  what became of this one, as a sentence, or empty
     */
    record Past(Optional<KitDrift> drift, int tests, String said) {}
}
