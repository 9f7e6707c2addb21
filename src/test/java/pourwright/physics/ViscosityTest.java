package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;
import pourwright.testing.Generated;

class ViscosityTest {

    /** Percent: the law itself, only rounding error allowed. */
    private static final double ROUNDING = 1e-9;

    @Test
    void doubles_at_the_named_share_of_the_gel_time() {
        Generated.tries(21, 200).forEach(any -> {
            double start = any.logUniform(0.1, 100);
            double gelS = any.logUniform(60, 20_000);
            double share = any.uniform(0.1, 0.9);
            assertThat(Viscosity.atTimePaS(start, 0, gelS, share)).isEqualTo(start);
            assertThat(Viscosity.atTimePaS(start, share * gelS, gelS, share))
                    .isCloseTo(2 * start, withinPercentage(ROUNDING));
        });
    }

    @Test
    void at_half_of_the_gel_time_to_double_the_growth_is_the_plain_reciprocal() {
        // s = 1/2 gives k = 1, so that three quarters of the way to gel the mix is four times as thick.
        assertThat(Viscosity.growthExponent(0.5)).isCloseTo(1, withinPercentage(ROUNDING));
        assertThat(Viscosity.atTimePaS(20, 750, 1000, 0.5)).isCloseTo(80, withinPercentage(ROUNDING));
    }

    @Test
    void has_the_shape_of_a_published_polyurethane() {
        // Castro and Macosko 1982 (from memory): a PU doubles at conversion 0.216, is tenfold at 0.450 and gels
        // at 0.65. With time standing for conversion, the law must agree within a factor of 2.
        double tenfold = Viscosity.atTimePaS(1, 0.450, 0.65, 0.216 / 0.65);
        assertThat(tenfold).isBetween(5.0, 20.0);
    }

    @Test
    void never_falls_and_is_without_limit_at_gel() {
        Generated.tries(22, 200).forEach(any -> {
            double gelS = any.logUniform(60, 20_000);
            double share = any.uniform(0.1, 0.9);
            double early = any.uniform(0, 0.98);
            double now = Viscosity.atTimePaS(5, early * gelS, gelS, share);
            assertThat(Viscosity.atTimePaS(5, (early + 0.01) * gelS, gelS, share))
                    .isGreaterThan(now);
            assertThat(Viscosity.atTimePaS(5, gelS, gelS, share)).isInfinite();
            assertThat(Viscosity.atTimePaS(5, 2 * gelS, gelS, share)).isInfinite();
        });
    }

    @Test
    void stays_as_it_is_without_cure() {
        assertThat(Viscosity.atTimePaS(5, 1e6, Double.POSITIVE_INFINITY, 0.5)).isEqualTo(5);
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> Viscosity.atTimePaS(x, 10, 100, 0.5), NOT_POSITIVE);
        refused(x -> Viscosity.atTimePaS(5, x, 100, 0.5), NEGATIVE);
        refused(x -> Viscosity.atTimePaS(5, 10, x, 0.5), Double.NaN, -1, 0, Double.NEGATIVE_INFINITY);
        refused(x -> Viscosity.atTimePaS(5, 10, 100, x), Double.NaN, 0, 1, -0.1, Double.POSITIVE_INFINITY);
    }
}
