package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pourwright.testing.Generated;

/** The source of test values is itself tested: a generator stuck on one value would make every law pass. */
class GeneratedTest {

    @Test
    void repeatsItselfForTheSameSeedOnly() {
        assertThat(values(1))
                .isEqualTo(values(1))
                .isNotEqualTo(values(2))
                .doesNotHaveDuplicates()
                .hasSize(100);
    }

    @Test
    void staysInsideItsLimitsAndReachesAllDecades() {
        List<Double> values =
                Generated.tries(3, 1000).map(some -> some.logUniform(1e-3, 1e3)).collect(Collectors.toList());
        assertThat(values).allMatch(value -> value >= 1e-3 && value <= 1e3);
        for (int decade = -3; decade < 3; decade++) {
            double low = Math.pow(10, decade);
            assertThat(values)
                    .filteredOn(value -> value >= low && value < 10 * low)
                    .hasSizeGreaterThan(100);
        }
        assertThat(Generated.tries(4, 1000).map(some -> some.whole(1, 3)).distinct())
                .containsExactlyInAnyOrder(1, 2, 3);
        assertThat(Generated.tries(5, 1000).map(some -> some.pick("a", "b")).distinct())
                .containsExactlyInAnyOrder("a", "b");
    }

    @Test
    void refusesALogarithmOfZeroAndNamesItsTry() {
        Generated some = Generated.tries(6, 3).skip(2).findFirst().orElseThrow();
        assertThatThrownBy(() -> some.logUniform(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(some).hasToString("try 2 of seed 6");
    }

    private static List<Double> values(long seed) {
        return Generated.tries(seed, 100).map(some -> some.uniform(0, 1)).collect(Collectors.toList());
    }
}
