package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

class PocketTest {

    /** Percent: the law itself, only rounding error allowed. */
    private static final double ROUNDING = 1e-9;

    private static final double AIR_PA = 101_325;

    // Computed by Boyle's law alone (1 - p/p0): 100 mbar fill 90 %, 65 93.6, 31 96.9, 14 98.6, 5 99.5.
    @ParameterizedTest
    @CsvSource({"10000, 0.901", "6500, 0.936", "3100, 0.969", "1400, 0.986", "500, 0.995"})
    void without_head_and_tension_boyle_rules(double chamberPa, double filled) {
        double left = Pocket.residueM3(1e-6, chamberPa, AIR_PA, 1100, 0, 0, 5e-3);
        assertThat(1 - left / 1e-6).isCloseTo(filled, within(6e-4));
    }

    @Test
    void head_and_tension_keep_air_by_hand() {
        // By hand: 3000 Pa + 540 Pa of head + 4 × 0.03 / 3 mm = 40 Pa keep 3580 / 101865 of the pocket, apart from the
        // tension in the residue, 120 Pa in 101865 for a sphere of 0.4 mm.
        double headM = 540 / (1100 * Constants.G);
        double left = Pocket.residueM3(1e-9, 3000, AIR_PA, 1100, headM, 0.03, 3e-3);
        assertThat(left / 1e-9)
                .isCloseTo(3580.0 / 101_865, withinPercentage(0.5))
                .isLessThan(3580.0 / 101_865);
    }

    @Test
    void solves_its_own_equation() {
        Generated.tries(111, 300).forEach(any -> {
            double volume = any.logUniform(1e-12, 1e-4);
            double chamberPa = any.logUniform(100, 50_000);
            double head = any.uniform(0, 0.3);
            double sigma = any.uniform(0, 0.07);
            double mouth = any.logUniform(1e-3, 2e-2);
            double left = Pocket.residueM3(volume, chamberPa, AIR_PA, 1100, head, sigma, mouth);
            double headPa = 1100 * Constants.G * head;
            double finalPa = AIR_PA + headPa + Bubble.laplacePa(Pocket.equivalentDiameterM(left), sigma);
            double expected = volume * (chamberPa + headPa + 4 * sigma / mouth) / finalPa;
            assertThat(left).as("%s", any).isCloseTo(expected, withinPercentage(ROUNDING));
        });
    }

    @Test
    void deeper_vacuum_and_less_head_never_leave_more() {
        Generated.tries(112, 300).forEach(any -> {
            double volume = any.logUniform(1e-12, 1e-4);
            double chamberPa = any.logUniform(100, 50_000);
            double head = any.uniform(0, 0.3);
            double left = Pocket.residueM3(volume, chamberPa, AIR_PA, 1100, head, 0.03, 3e-3);
            assertThat(left).isPositive().isLessThanOrEqualTo(volume);
            assertThat(Pocket.residueM3(volume, 0.9 * chamberPa, AIR_PA, 1100, head, 0.03, 3e-3))
                    .isLessThan(left);
            assertThat(Pocket.residueM3(volume, chamberPa, AIR_PA, 1100, head + 0.01, 0.03, 3e-3))
                    .isGreaterThan(left);
        });
    }

    @Test
    void ends_of_the_scale() {
        assertThat(Pocket.residueM3(1e-6, AIR_PA, AIR_PA, 1100, 0.1, 0, 5e-3)).isCloseTo(1e-6, within(1e-18));
        assertThat(Pocket.residueM3(1e-6, AIR_PA, AIR_PA, 1100, 0.1, 0.03, 1e-5))
                .isEqualTo(1e-6);
        assertThat(Pocket.residueM3(1e-6, 0, AIR_PA, 1100, 0, 0, 5e-3)).isZero();
    }

    @Test
    void a_sphere_has_its_own_diameter() {
        // By hand: a sphere of 1 mm holds π/6 mm3.
        assertThat(Pocket.equivalentDiameterM(Math.PI / 6 * 1e-9)).isCloseTo(1e-3, withinPercentage(ROUNDING));
        assertThat(Pocket.equivalentDiameterM(0)).isZero();
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> Pocket.residueM3(x, 3e3, 1e5, 1100, 0.1, 0.03, 3e-3), NOT_POSITIVE);
        refused(x -> Pocket.residueM3(1e-6, x, 1e5, 1100, 0.1, 0.03, 3e-3), Double.NaN, -1, 1.1e5);
        refused(x -> Pocket.residueM3(1e-6, 3e3, x, 1100, 0.1, 0.03, 3e-3), NOT_POSITIVE);
        refused(x -> Pocket.residueM3(1e-6, 3e3, 1e5, x, 0.1, 0.03, 3e-3), NOT_POSITIVE);
        refused(x -> Pocket.residueM3(1e-6, 3e3, 1e5, 1100, x, 0.03, 3e-3), NEGATIVE);
        refused(x -> Pocket.residueM3(1e-6, 3e3, 1e5, 1100, 0.1, x, 3e-3), NEGATIVE);
        refused(x -> Pocket.residueM3(1e-6, 3e3, 1e5, 1100, 0.1, 0.03, x), NOT_POSITIVE);
        refused(Pocket::equivalentDiameterM, NEGATIVE);
    }
}
