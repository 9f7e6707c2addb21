package pourwright.kitfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {

    // Percentage points of the t distribution, two-sided, as in every table of it: Abramowitz and Stegun, Handbook of
    // Mathematical Functions, table 26.10.
    @ParameterizedTest
    @CsvSource({
        "0.95, 1, 12.706",
        "0.95, 2, 4.303",
        "0.95, 3, 3.182",
        "0.95, 5, 2.571",
        "0.95, 10, 2.228",
        "0.99, 4, 4.604",
        "0.99, 9, 3.250",
        "0.90, 7, 1.895",
        "0.95, 120, 1.980"
    })
    void gives_the_published_points(double probability, int degrees, double point) {
        assertThat(StudentT.twoSided(probability, degrees)).isCloseTo(point, within(6e-4));
        assertThat(StudentT.inside(point, degrees)).isCloseTo(probability, within(2e-4));
    }
}
