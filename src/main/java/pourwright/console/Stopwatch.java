package pourwright.console;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** How much time has passed since something was said. */
final class Stopwatch {
    private final InstantSource clock;
    private Instant from;

    /** @param clock what time it is; null where none passes */
    Stopwatch(InstantSource clock) {
        this.clock = clock;
    }

    /** Begins to count, from nothing. */
    void start() {
        from = clock == null ? null : clock.instant();
    }

    /** Seconds since then; 0 when nothing was started, or the clock was set back. */
    double passedS() {
        return from == null
                ? 0
                : Math.max(0, Duration.between(from, clock.instant()).toMillis() / 1000.0);
    }
}
