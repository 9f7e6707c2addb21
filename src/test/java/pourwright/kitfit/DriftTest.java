package pourwright.kitfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.kitfit.Drift.Good;
import pourwright.kitfit.Drift.Measured;
import pourwright.kitfit.Drift.Verdict;
import pourwright.testing.Generated;

class DriftTest {

    private static List<Measured> line(int count, double perDay) {
        List<Measured> history = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            history.add(new Measured(1000 + 30L * i, 5 + perDay * 30 * i));
        }
        return history;
    }

    @Test
    void kendalls_chance_is_the_published_one() {
        // Four things in perfect order, two-sided: 2 of 24 orders, 0.083. Ten things with a count of 21: one-sided
        // 0.036.
        // Kendall, Rank Correlation Methods, table of the probability of S (from memory).
        assertThat(Kendall.of(line(4, 1)).chance()).isCloseTo(2 / 24.0, within(1e-12));
        double[] order = {5, 4, 3, 2, 1, 7, 6, 9, 8, 10};
        List<Measured> ten = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
            ten.add(new Measured(i, order[i]));
        }
        Kendall kendall = Kendall.of(ten);
        assertThat(kendall.count()).isEqualTo(21);
        assertThat(kendall.chance() / 2).isCloseTo(0.036, within(5e-4));
        // Variance without ties: n (n-1)(2n+5)/18.
        assertThat(kendall.variance()).isCloseTo(125, within(1e-9));
        // With ties the normal curve is used: a pair that is equal tells nothing.
        List<Measured> tied = List.of(new Measured(0, 1), new Measured(1, 2), new Measured(2, 2), new Measured(3, 3));
        assertThat(Kendall.of(tied).count()).isEqualTo(5);
        assertThat(Kendall.of(tied).variance()).isCloseTo((4 * 3 * 13 - 2 * 1 * 9) / 18.0, within(1e-9));
        assertThat(Kendall.of(tied).chance()).isGreaterThan(2 / 24.0);
    }

    @Test
    void four_in_order_are_the_fewest_that_count() {
        assertThat(Drift.of(line(3, 1), Good.HIGH).verdict()).isEqualTo(Verdict.TOO_FEW);
        Drift four = Drift.of(line(4, 1), Good.HIGH);
        assertThat(four.verdict()).isEqualTo(Verdict.IMPROVING);
        assertThat(four.perYear().value()).isCloseTo(365.25, within(1e-9));
        assertThat(Drift.of(line(4, 1), Good.LOW).verdict()).isEqualTo(Verdict.WORSE);
        assertThat(Drift.of(line(4, -1), Good.LOW).verdict()).isEqualTo(Verdict.IMPROVING);
        assertThat(Drift.of(line(9, 0), Good.LOW).verdict()).isEqualTo(Verdict.STEADY);
    }

    @Test
    void the_slope_is_the_median_of_the_pairs() {
        // Sen 1968: slopes of the pairs of (0,1), (1,3), (3,4), (4,9): 2, 1, 2, 0.5, 2, 5; their median is 2.
        List<Measured> history =
                List.of(new Measured(0, 1), new Measured(1, 3), new Measured(3, 4), new Measured(4, 9));
        assertThat(Drift.of(history, Good.HIGH).perYear().value()).isCloseTo(2 * 365.25, within(1e-9));
    }

    @Test
    void one_odd_day_does_not_turn_it() {
        List<Measured> history = line(10, 0.01);
        history.set(4, new Measured(history.get(4).day(), 100));
        Drift drift = Drift.of(history, Good.HIGH);
        assertThat(drift.verdict()).isEqualTo(Verdict.IMPROVING);
        assertThat(drift.perYear().value()).isCloseTo(3.6525, within(0.4));
    }

    @Test
    void chance_alone_is_seldom_called_a_drift() {
        int[] called = {0};
        Generated.tries(701, 600).forEach(any -> {
            Random random = new Random(any.whole(0, 1 << 30));
            List<Measured> history = new ArrayList<>();
            int count = any.whole(4, 12);
            for (int i = 0; i < count; i++) {
                history.add(new Measured(i * 20L, 10 + random.nextGaussian()));
            }
            called[0] += Drift.of(history, Good.HIGH).verdict() == Verdict.STEADY ? 0 : 1;
        });
        // 10 % is promised; the exact steps of small histories make it less, three standard deviations make it 14 %.
        assertThat(called[0]).isBetween(20, 84);
    }

    @Test
    void a_clear_drift_is_found() {
        Generated.tries(702, 300).forEach(any -> {
            Random random = new Random(any.whole(0, 1 << 30));
            List<Measured> history = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                history.add(new Measured(i * 30L, 10 - 0.5 * i + 0.2 * random.nextGaussian()));
            }
            Drift drift = Drift.of(history, Good.HIGH);
            assertThat(drift.verdict()).as("%s", any).isEqualTo(Verdict.WORSE);
            assertThat(drift.perYear().value()).as("%s", any).isCloseTo(-0.5 / 30 * 365.25, within(1.2));
        });
    }

    @Test
    void a_kit_is_worse_when_any_part_is() {
        List<KitDrift.Test> history = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            OptionalDouble leak = i == 0 ? OptionalDouble.empty() : OptionalDouble.of(0.1 + 0.05 * i);
            history.add(new KitDrift.Test(i * 40L, OptionalDouble.of(2e-3), OptionalDouble.of(300 - 10 * i), leak));
        }
        KitDrift drift = KitDrift.of(history);
        assertThat(drift.speed().verdict()).isEqualTo(Verdict.STEADY);
        assertThat(drift.base().verdict()).isEqualTo(Verdict.IMPROVING);
        assertThat(drift.leak().verdict()).isEqualTo(Verdict.WORSE);
        assertThat(drift.leak().measurements()).isEqualTo(4);
        assertThat(drift.overall()).isEqualTo(Verdict.WORSE);
        assertThat(KitDrift.of(history.subList(0, 3)).overall()).isEqualTo(Verdict.TOO_FEW);
    }
}
