package pourwright.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FollowLogTest {
    private static final Instant NINE = Instant.parse("2026-03-01T09:00:00Z");
    private static final String[] WORDS = {"mix", "degas-open", "gauge", "note", "overflow", "skip", "gel"};

    @Test
    void whatIsWrittenReadsBackTheSame() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < 500; n++) {
            FollowLog log = random.nextBoolean() ? FollowLog.EMPTY.begun(NINE) : FollowLog.EMPTY;
            for (int i = random.nextInt(1, 12); i > 0; i--) {
                String value = random.nextBoolean() ? "" : "28 inHg; ".repeat(random.nextInt(1, 4));
                log = log.with(random.nextDouble(0, 9000), WORDS[random.nextInt(WORDS.length)], value);
            }
            assertThat(FollowLog.parse(log.text())).contains(log);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mix",
                "3:00",
                "3:61 mix",
                "3:00 MIX",
                "began yesterday; 3:00 mix",
                "3:00 mix;; 4:00 gel",
                "3:00 mix; began 2026-03-01T09:00:00Z",
                "-3:00 mix",
                "9999999:00 mix"
            })
    void whatIsNoLogIsRefused(String text) {
        assertThat(FollowLog.parse(text)).isEmpty();
    }

    @Test
    void aStepIsSettledByBeingDoneOrLeftOut() {
        FollowLog log = FollowLog.EMPTY.with(181, "mix", "").with(200, FollowLog.SKIP, "degas-open");
        assertThat(log.settles("mix")).isTrue();
        assertThat(log.settles("degas-open")).isTrue();
        assertThat(log.settles("pour")).isFalse();
        assertThat(log.withoutLast().settles("degas-open")).isFalse();
        assertThat(log.first("mix")).hasValue(181);
    }
}
