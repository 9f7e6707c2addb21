package pourwright.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pourwright.advice.Consultation;
import pourwright.knowledge.Question;

class SensitiveTest {
    private static final Consultation PLAN = Asked.plan(
            "material=tin-silicone",
            "job=rubber-around-master",
            "batch-mass=1.2 kg",
            "kit=vacuum",
            "cup-volume=3 L",
            "bump-cycles=yes",
            "pot-life=about 60 min");

    private static double margin(Consultation c) {
        return c.figure("time-margin").orElseThrow().si().typical();
    }

    @Test
    void eachEndIsAPlanAsIfItWereTyped() {
        for (Swing s : Sensitive.of(PLAN, Asked.KNOWLEDGE)) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (Swing.Trial t : s.trials()) {
                Consultation typed = Asked.with(
                        PLAN, Collections.singletonMap(s.question(), t.setting().typed()));
                assertThat(typed.verdict()).isEqualTo(t.difference().after().verdict());
                low = Math.min(low, margin(typed));
                high = Math.max(high, margin(typed));
            }
            assertThat(s.marginS()).as(s.question()).isEqualTo(high - low);
        }
    }

    @Test
    void theVerdictGoesBeforeTheTimeToSpare() {
        List<Swing> all = Sensitive.of(PLAN, Asked.KNOWLEDGE);
        assertThat(all.stream().map(Swing::question))
                .contains("pot-life", "viscosity", "room-temperature", "lid-state");
        assertThat(all.stream().map(s -> !s.turnsVerdict())).isSorted();
        List<Double> shares = all.stream()
                .filter(s -> !s.turnsVerdict())
                .map(Swing::marginShare)
                .toList();
        for (int i = 1; i < shares.size(); i++) {
            assertThat(shares.get(i)).isLessThan(shares.get(i - 1) + 0.01);
        }
    }

    @Test
    void whatIsKnownExactlyIsNotMeasuredAgain() {
        assertThat(Sensitive.of(PLAN, Asked.KNOWLEDGE).stream().map(Swing::question))
                .doesNotContain("batch-mass", "cup-volume", "kit", "material");
    }

    /** A question whose answer settles something must differ for at least two of its answers. */
    @Test
    void everyQuestionCanBeAskedWhatItWouldSettle() {
        Set<String> settles = new HashSet<>();
        for (Question q : Asked.KNOWLEDGE.questions()) {
            Deciding d = Deciding.of(q, PLAN.answers(), Asked.KNOWLEDGE);
            d.trials()
                    .forEach(t -> assertThat(t.difference().before().answers().has(q.id()))
                            .isFalse());
            if (d.trials().stream()
                            .map(t -> t.difference().after().verdict())
                            .distinct()
                            .count()
                    > 1) {
                settles.add(q.id());
            }
        }
        assertThat(settles).contains("cup-volume", "lid-state", "chamber-body");
    }
}
