package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.refused;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

class BubbleClearingTest {

    /** Percent: the reference values leave out the head (1 % of the pressure) and are printed with two digits. */
    private static final double WITHOUT_HEAD = 1.5;

    /** Percent: two ways to do the same sum. */
    private static final double SAME_SUM = 1e-3;

    private static final double AIR_PA = 101_325;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    // Computed with Stokes speed (Python 3.11): time for 100 mm in a warm epoxy and a silicone rubber; the last row
    // is 0.5 mm in 1 Pa s, 50 mm deep: 5.6 min.
    @ParameterizedTest
    @CsvSource({
        "1e-3, 0.1, 1150, 0.6, 96",
        "1e-3, 0.1, 1100, 20, 3341",
        "3e-3, 0.1, 1100, 20, 371",
        "5e-4, 0.05, 1100, 1, 334"
    })
    void takes_the_stokes_time_in_standing_liquid(double d, double depth, double rho, double mu, double timeS) {
        assertThat(BubbleClearing.timeS(d, depth, AIR_PA, AIR_PA, rho, mu, NEVER, 0.5, 0, 1))
                .isCloseTo(timeS, withinPercentage(WITHOUT_HEAD));
    }

    @Test
    void vacuum_of_31_mbar_speeds_a_shallow_bubble_tenfold() {
        // Boyle: 33 times the volume, 3.2 times the diameter, ten times the speed; shallow, so that the head is small.
        double standing = BubbleClearing.timeS(1e-3, 1e-3, AIR_PA, AIR_PA, 1100, 20, NEVER, 0.5, 0, 1);
        double degassed = BubbleClearing.timeS(1e-3, 1e-3, 3100, AIR_PA, 1100, 20, NEVER, 0.5, 0, 1);
        assertThat(standing / degassed).isCloseTo(10, withinPercentage(3));
    }

    @Test
    void head_holds_the_bubble_small_by_the_closed_form() {
        // Without tension 1/d² goes as (p + rho g h)^(2/3), whose integral over the depth is closed.
        double weight = 1150 * Constants.G;
        double depth = 0.07;
        double chamberPa = 300;
        double slowness = (Math.pow(chamberPa + weight * depth, 5.0 / 3) - Math.pow(chamberPa, 5.0 / 3))
                / (5.0 / 3 * weight)
                / Math.pow(AIR_PA + weight * depth, 2.0 / 3)
                / (2e-3 * 2e-3);
        double expectedS = slowness * 18 * 20 / (1.25 * weight);
        assertThat(BubbleClearing.timeS(2e-3, depth, chamberPa, AIR_PA, 1150, 20, NEVER, 0.5, 0, 1.25))
                .isCloseTo(expectedS, withinPercentage(SAME_SUM));
    }

    @Test
    void agrees_with_the_equation_of_motion_stepped_in_time() {
        Generated.tries(41, 40).forEach(any -> {
            double d = any.logUniform(3e-4, 5e-3);
            double depth = any.uniform(0.02, 0.15);
            double chamberPa = any.logUniform(500, 1e5);
            double mu = any.logUniform(1, 40);
            double share = any.uniform(0.3, 0.7);
            double sigma = any.uniform(0.02, 0.04);
            double uncured = BubbleClearing.timeS(d, depth, chamberPa, AIR_PA, 1100, mu, NEVER, share, sigma, 1.25);
            double gelS = any.uniform(2, 10) * uncured * (Viscosity.growthExponent(share) + 1);
            double timeS = BubbleClearing.timeS(d, depth, chamberPa, AIR_PA, 1100, mu, gelS, share, sigma, 1.25);
            assertThat(timeS).as("%s", any).isGreaterThan(uncured).isLessThan(gelS);
            assertThat(depthAfter(timeS, d, depth, chamberPa, mu, gelS, share, sigma) / depth)
                    .as("share of the depth left, %s", any)
                    .isBetween(-1e-4, 1e-4);
        });
    }

    /** Where the bubble is after a time, from dh/dt = -v(h, t), to check the separated integrals. */
    private static double depthAfter(
            double timeS,
            double d,
            double depth,
            double chamberPa,
            double mu,
            double gelS,
            double share,
            double sigma) {
        OrdinaryDifferentialEquation rise = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] h) {
                double headAtStart = 1100 * Constants.G * depth;
                double headNow = 1100 * Constants.G * h[0];
                double now = Bubble.expandedDiameterM(d, AIR_PA + headAtStart, chamberPa + headNow, 1100, 0, sigma);
                double viscosity = Viscosity.atTimePaS(mu, t, gelS, share);
                return new double[] {-1.25 * Bubble.stokesRiseMPerS(now, 1100, 0, viscosity)};
            }
        };
        return new DormandPrince853Integrator(1e-9, timeS, 1e-9, 1e-9)
                .integrate(rise, new ODEState(0, new double[] {depth}), timeS)
                .getPrimaryState()[0];
    }

    @Test
    void never_arrives_when_the_liquid_gels_first() {
        // 0.5 mm in 20 Pa s, 50 mm deep needs 111 min standing: hopeless in a mix that gels after 60 min.
        assertThat(BubbleClearing.timeS(5e-4, 0.05, AIR_PA, AIR_PA, 1100, 20, NEVER, 0.5, 0, 1))
                .isCloseTo(111 * 60, withinPercentage(WITHOUT_HEAD));
        assertThat(BubbleClearing.timeS(5e-4, 0.05, AIR_PA, AIR_PA, 1100, 20, 3600, 0.5, 0, 1))
                .isInfinite();
    }

    @Test
    void deeper_thicker_smaller_or_less_vacuum_is_never_faster() {
        Generated.tries(42, 200).forEach(any -> {
            double d = any.logUniform(1e-4, 5e-3);
            double depth = any.uniform(0.01, 0.2);
            double chamberPa = any.logUniform(300, 9e4);
            double mu = any.logUniform(0.5, 50);
            double gelS = any.logUniform(300, 1e6);
            double sigma = any.uniform(0, 0.04);
            double timeS = BubbleClearing.timeS(d, depth, chamberPa, AIR_PA, 1100, mu, gelS, 0.5, sigma, 1);
            assertThat(BubbleClearing.timeS(d, 1.1 * depth, chamberPa, AIR_PA, 1100, mu, gelS, 0.5, sigma, 1))
                    .isGreaterThanOrEqualTo(timeS);
            assertThat(BubbleClearing.timeS(d, depth, 1.1 * chamberPa, AIR_PA, 1100, mu, gelS, 0.5, sigma, 1))
                    .isGreaterThanOrEqualTo(timeS);
            assertThat(BubbleClearing.timeS(d, depth, chamberPa, AIR_PA, 1100, 1.1 * mu, gelS, 0.5, sigma, 1))
                    .isGreaterThanOrEqualTo(timeS);
            assertThat(BubbleClearing.timeS(1.1 * d, depth, chamberPa, AIR_PA, 1100, mu, gelS, 0.5, sigma, 1))
                    .isLessThanOrEqualTo(timeS);
            assertThat(BubbleClearing.timeS(d, depth, chamberPa, AIR_PA, 1100, mu, NEVER, 0.5, sigma, 1))
                    .isLessThanOrEqualTo(timeS);
        });
    }

    @Test
    void smallest_cleared_bubble_takes_just_the_time_at_hand() {
        Generated.tries(43, 300).forEach(any -> {
            double gelS = any.pick(NEVER, any.logUniform(200, 1e5));
            double withinS = Math.min(any.logUniform(10, 1e4), 0.9 * gelS);
            double depth = any.uniform(0.005, 0.3);
            double chamberPa = any.logUniform(100, AIR_PA);
            double mu = any.logUniform(0.01, 80);
            double share = any.uniform(0.3, 0.7);
            double sigma = any.pick(0.0, any.uniform(0.02, 0.07));
            double d = BubbleClearing.smallestClearedM(
                    withinS, depth, chamberPa, AIR_PA, 1100, mu, gelS, share, sigma, 1.25);
            assertThat(BubbleClearing.timeS(d, depth, chamberPa, AIR_PA, 1100, mu, gelS, share, sigma, 1.25))
                    .as("%s", any)
                    .isCloseTo(withinS, withinPercentage(SAME_SUM));
        });
    }

    @Test
    void time_after_gel_clears_nothing_more() {
        double atGel = BubbleClearing.smallestClearedM(3600, 0.07, 3000, AIR_PA, 1100, 20, 3600, 0.5, 0.02, 1.25);
        double later = BubbleClearing.smallestClearedM(9000, 0.07, 3000, AIR_PA, 1100, 20, 3600, 0.5, 0.02, 1.25);
        assertThat(later).isEqualTo(atGel).isPositive();
    }

    @Test
    void ends_of_the_scale() {
        assertThat(BubbleClearing.timeS(1e-3, 0, 3000, AIR_PA, 1100, 20, 3600, 0.5, 0.02, 1))
                .isZero();
        assertThat(BubbleClearing.smallestClearedM(60, 0, 3000, AIR_PA, 1100, 20, 3600, 0.5, 0.02, 1))
                .isZero();
        assertThat(BubbleClearing.smallestClearedM(0, 0.07, 3000, AIR_PA, 1100, 20, 3600, 0.5, 0.02, 1))
                .isInfinite();
    }

    @Test
    void tells_when_the_law_no_longer_holds() {
        double rubber = BubbleClearing.reynoldsAtSurface(3e-3, 0.07, 3000, AIR_PA, 1100, 20, 0.02, 1.25);
        double water = BubbleClearing.reynoldsAtSurface(1e-3, 0.07, 3000, AIR_PA, 998, 1e-3, 0.07, 1.25);
        assertThat(rubber).isLessThan(Bubble.STOKES_LIMIT_REYNOLDS);
        assertThat(water).isGreaterThan(Bubble.STOKES_LIMIT_REYNOLDS);
        // Shallow, at air pressure, without tension it is the Reynolds number of the plain bubble.
        double plain = Bubble.reynolds(Bubble.stokesRiseMPerS(1e-3, 1100, 0, 1), 1e-3, 1100, 1);
        assertThat(BubbleClearing.reynoldsAtSurface(1e-3, 0, AIR_PA, AIR_PA, 1100, 1, 0, 1))
                .isCloseTo(plain, withinPercentage(SAME_SUM));
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> BubbleClearing.timeS(x, 0.07, 3e3, 1e5, 1100, 20, 3600, 0.5, 0.02, 1), NOT_POSITIVE);
        refused(x -> BubbleClearing.timeS(1e-3, x, 3e3, 1e5, 1100, 20, 3600, 0.5, 0.02, 1), NEGATIVE);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, x, 1e5, 1100, 20, 3600, 0.5, 0.02, 1), NOT_POSITIVE);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, x, 1100, 20, 3600, 0.5, 0.02, 1), NOT_POSITIVE);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, 1e5, x, 20, 3600, 0.5, 0.02, 1), NOT_POSITIVE);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, 1e5, 1100, x, 3600, 0.5, 0.02, 1), NOT_POSITIVE);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, 1e5, 1100, 20, x, 0.5, 0.02, 1), Double.NaN, 0, -1);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, 1e5, 1100, 20, 3600, x, 0.02, 1), Double.NaN, 0, 1);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, 1e5, 1100, 20, 3600, 0.5, x, 1), NEGATIVE);
        refused(x -> BubbleClearing.timeS(1e-3, 0.07, 3e3, 1e5, 1100, 20, 3600, 0.5, 0.02, x), NOT_POSITIVE);
        refused(x -> BubbleClearing.smallestClearedM(x, 0.07, 3e3, 1e5, 1100, 20, 3600, 0.5, 0.02, 1), NEGATIVE);
        refused(x -> BubbleClearing.smallestClearedM(60, 0.07, x, 1e5, 1100, 20, 3600, 0.5, 0.02, 1), NOT_POSITIVE);
        refused(x -> BubbleClearing.reynoldsAtSurface(x, 0.07, 3e3, 1e5, 1100, 20, 0.02, 1), NOT_POSITIVE);
    }
}
