package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.NO_SHARE;
import static pourwright.physics.Refusals.refused;

import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.physics.FrothCourse.Case;
import pourwright.physics.FrothCourse.Course;
import pourwright.testing.Generated;

class FrothCourseTest {

    /** Percent: what the step length may change, far below the factor of 2 the model is good for. */
    private static final double STEP_ERROR = 2;

    /** Percent: steps against the exact solution of the same equation. */
    private static final double AGAINST_EXACT = 1;

    private static final double AIR_PA = 101_325;
    private static final double ULTIMATE_PA = 300;
    private static final double EMPTIED_PA = 3000;

    /** A mixed silicone as usual: 20 Pa s, 7 % air in bubbles of 2.5 mm, cup filled 70 mm deep. */
    private static final Case SILICONE = new Case(0.07, 20, 1150, 0.07, 2.5e-3, AIR_PA, ULTIMATE_PA, 5, 1.25);

    /** A chamber pumped at constant speed to 3 mbar, that reaches 30 mbar in the given time. */
    private static DoubleUnaryOperator emptiedIn(double seconds) {
        double scaleS = seconds / Math.log((AIR_PA - ULTIMATE_PA) / (EMPTIED_PA - ULTIMATE_PA));
        return timeS -> ULTIMATE_PA + (AIR_PA - ULTIMATE_PA) * Math.exp(-timeS / scaleS);
    }

    // Common practice: from opening the pump valve, a mixed silicone crests between 1 and 3.5 min and has begun to fall
    // by 4 min, in a chamber emptied in 30 s and in one emptied in 3 min. No constant was fitted to this. The depth is
    // the middle of 60 to 80 mm; at 60 mm and 30 s the model crests at 59 s, a second outside the band.
    @ParameterizedTest
    @ValueSource(doubles = {30, 180})
    void silicone_crests_and_falls_when_a_caster_expects_it(double emptiedInS) {
        Course course = FrothCourse.of(SILICONE, emptiedIn(emptiedInS));
        assertThat(course.firstRiseS()).isLessThan(course.crestS());
        assertThat(course.crestS()).isBetween(60.0, 210.0);
        assertThat(course.fallBegunS()).isBetween(course.crestS(), 240.0);
        assertThat(course.fallenS()).isGreaterThan(course.fallBegunS()).isFinite();
        assertThat(course.gasLeftAtFallen()).isBetween(0.0, 0.2);
    }

    @Test
    void a_fast_chamber_fills_the_froth_to_the_cap() {
        assertThat(FrothCourse.of(SILICONE, emptiedIn(30)).crestFactor()).isCloseTo(5, within(1e-9));
    }

    @Test
    void follows_the_exact_solution_at_constant_pressure() {
        // With A = φ (p0/p - 1): dn/dt = -n v / (h0 (1 + A n)) has t = h0/v [ln(n0/n) + A (n0 - n)].
        Generated.tries(61, 100).forEach(any -> {
            double chamberPa = any.logUniform(1000, 50_000);
            double air = any.uniform(0.02, 0.12);
            double d = any.logUniform(1e-3, 4e-3);
            double mu = any.logUniform(5, 60);
            double depth = any.uniform(0.03, 0.12);
            Case start = new Case(depth, mu, 1100, air, d, AIR_PA, 500, 5, 1.25);
            double a = air * (AIR_PA / chamberPa - 1);
            double n0 = Math.min(1, 4 / a);
            double swollenM = d * Math.cbrt(AIR_PA / chamberPa);
            double perSpeedS = depth / (1.25 * Bubble.stokesRiseMPerS(swollenM, 1100, 0, mu));
            double crestS = perSpeedS * (-Math.log(0.99) + a * 0.01 * n0);
            double fallBegunS = perSpeedS * (-Math.log(0.9) + a * 0.1 * n0);
            double fallenS = perSpeedS * (Math.log(4) + a * 0.75 * n0);
            Course course = FrothCourse.of(start, t -> chamberPa);
            assertThat(course.crestFactor()).as("%s", any).isCloseTo(1 + a * n0, withinPercentage(1e-6));
            if (fallenS < FrothCourse.HORIZON_S) {
                assertThat(course.crestS()).as("%s", any).isCloseTo(crestS, withinPercentage(AGAINST_EXACT));
                assertThat(course.fallBegunS()).as("%s", any).isCloseTo(fallBegunS, withinPercentage(AGAINST_EXACT));
                assertThat(course.fallenS()).as("%s", any).isCloseTo(fallenS, withinPercentage(AGAINST_EXACT));
                assertThat(course.gasLeftAtFallen()).as("%s", any).isCloseTo(n0 / 4, withinPercentage(AGAINST_EXACT));
            } else {
                assertThat(course.fallenS()).as("%s", any).isInfinite();
            }
        });
    }

    @Test
    void half_the_step_gives_the_same_course() {
        Generated.tries(62, 300).forEach(any -> {
            Case start = new Case(any.uniform(0.02, 0.15), any.logUniform(2, 80), any.uniform(950, 1500),
                    any.uniform(0.02, 0.15), any.logUniform(5e-4, 5e-3), AIR_PA, any.logUniform(200, 8000), 5,
                    any.uniform(1, 1.5));
            DoubleUnaryOperator pressure = emptiedIn(any.logUniform(8, 900));
            Course full = FrothCourse.of(start, pressure);
            Course half = FrothCourse.of(start, pressure, 0.5);
            assertThat(half.crestS()).as("crest, %s, %s", any, start)
                    .isCloseTo(full.crestS(), withinPercentage(STEP_ERROR));
            assertThat(half.crestFactor()).as("height, %s", any)
                    .isCloseTo(full.crestFactor(), withinPercentage(STEP_ERROR));
            sameOrNever(half.fallBegunS(), full.fallBegunS());
            sameOrNever(half.fallenS(), full.fallenS());
        });
    }

    private static void sameOrNever(double halfS, double fullS) {
        // Near the horizon the one may see the fall and the other not.
        if (Math.min(halfS, fullS) < 0.95 * FrothCourse.HORIZON_S) {
            assertThat(halfS).isCloseTo(fullS, withinPercentage(STEP_ERROR));
        }
    }

    @Test
    void times_scale_when_liquid_and_pump_slow_together() {
        // Twice the viscosity and a chamber emptied in twice the time: the same course at half the pace.
        Course once = FrothCourse.of(SILICONE, emptiedIn(40));
        Case thick = new Case(0.07, 40, 1150, 0.07, 2.5e-3, AIR_PA, ULTIMATE_PA, 5, 1.25);
        Course twice = FrothCourse.of(thick, emptiedIn(80));
        assertThat(twice.crestS()).isCloseTo(2 * once.crestS(), withinPercentage(STEP_ERROR));
        assertThat(twice.fallenS()).isCloseTo(2 * once.fallenS(), withinPercentage(STEP_ERROR));
        assertThat(twice.crestFactor()).isCloseTo(once.crestFactor(), withinPercentage(STEP_ERROR));
    }

    @Test
    void thicker_mixes_and_finer_bubbles_fall_later() {
        Generated.tries(63, 200).forEach(any -> {
            double mu = any.logUniform(5, 40);
            double d = any.logUniform(1e-3, 4e-3);
            DoubleUnaryOperator pressure = emptiedIn(any.logUniform(20, 200));
            Course here = FrothCourse.of(new Case(0.07, mu, 1150, 0.07, d, AIR_PA, 300, 5, 1.25), pressure);
            Course thicker = FrothCourse.of(new Case(0.07, 1.5 * mu, 1150, 0.07, d, AIR_PA, 300, 5, 1.25), pressure);
            Course finer = FrothCourse.of(new Case(0.07, mu, 1150, 0.07, d / 1.5, AIR_PA, 300, 5, 1.25), pressure);
            assertThat(thicker.fallBegunS()).as("%s", any).isGreaterThan(here.fallBegunS());
            assertThat(finer.fallBegunS()).as("%s", any).isGreaterThan(here.fallBegunS());
            assertThat(thicker.crestFactor()).as("%s", any).isGreaterThanOrEqualTo(here.crestFactor() * 0.999);
        });
    }

    @Test
    void the_course_is_in_order_and_within_bounds() {
        Generated.tries(64, 300).forEach(any -> {
            Case start = new Case(any.uniform(0.01, 0.3), any.logUniform(0.1, 200), any.uniform(900, 2000),
                    any.uniform(0.001, 0.3), any.logUniform(1e-4, 1e-2), AIR_PA, any.logUniform(50, 20_000),
                    any.uniform(1.5, 6), any.uniform(1, 1.5));
            Course course = FrothCourse.of(start, emptiedIn(any.logUniform(5, 2000)));
            assertThat(course.crestFactor()).as("%s", any).isBetween(1.0, start.cap() * (1 + 1e-9));
            assertThat(course.crestS()).as("%s", any).isLessThanOrEqualTo(course.fallBegunS());
            assertThat(course.fallBegunS()).as("%s", any).isLessThanOrEqualTo(course.fallenS());
            assertThat(course.gasLeftAtFallen()).as("%s", any).isBetween(0.0, 1.0);
            if (course.crestFactor() < FrothCourse.FIRST_RISE_FACTOR) {
                assertThat(course.firstRiseS()).as("%s", any).isInfinite();
            } else {
                assertThat(course.firstRiseS()).as("%s", any).isLessThanOrEqualTo(course.crestS());
            }
        });
    }

    @Test
    void the_operator_who_holds_at_a_floor_sees_less_froth() {
        Case held = new Case(0.07, 20, 1150, 0.07, 2.5e-3, AIR_PA, 10_000, 5, 1.25);
        Course course = FrothCourse.of(held, emptiedIn(30));
        double most = Froth.factor(0.07, AIR_PA, 10_000, 5);
        assertThat(course.crestFactor()).isLessThanOrEqualTo(most).isGreaterThan(0.8 * most);
    }

    @Test
    void stands_for_two_hours_when_bubbles_are_too_fine_to_rise() {
        Case fine = new Case(0.07, 100, 1150, 0.07, 5e-5, AIR_PA, 3000, 5, 1.25);
        Course course = FrothCourse.of(fine, emptiedIn(30));
        assertThat(course.fallBegunS()).isInfinite();
        assertThat(course.fallenS()).isInfinite();
        assertThat(course.crestS()).isEqualTo(FrothCourse.HORIZON_S);
    }

    @Test
    void without_vacuum_or_without_air_nothing_rises() {
        Case airless = new Case(0.07, 20, 1150, 0, 2.5e-3, AIR_PA, ULTIMATE_PA, 5, 1.25);
        Course never = new Course(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 1, Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY, 0);
        assertThat(FrothCourse.of(airless, emptiedIn(30))).usingRecursiveComparison()
                .ignoringFields("gasLeftAtFallen").isEqualTo(never);
        assertThat(FrothCourse.of(SILICONE, t -> AIR_PA)).usingRecursiveComparison()
                .ignoringFields("gasLeftAtFallen").isEqualTo(never);
        // A pressure above the air's is no vacuum either.
        assertThat(FrothCourse.of(SILICONE, t -> 1.2 * AIR_PA).crestFactor()).isEqualTo(1);
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> new Case(x, 20, 1150, 0.07, 2e-3, 1e5, 300, 5, 1).cap(), NOT_POSITIVE);
        refused(x -> new Case(0.07, x, 1150, 0.07, 2e-3, 1e5, 300, 5, 1).cap(), NOT_POSITIVE);
        refused(x -> new Case(0.07, 20, x, 0.07, 2e-3, 1e5, 300, 5, 1).cap(), NOT_POSITIVE);
        refused(x -> new Case(0.07, 20, 1150, x, 2e-3, 1e5, 300, 5, 1).cap(), NO_SHARE);
        refused(x -> new Case(0.07, 20, 1150, 0.07, x, 1e5, 300, 5, 1).cap(), NOT_POSITIVE);
        refused(x -> new Case(0.07, 20, 1150, 0.07, 2e-3, x, 300, 5, 1).cap(), NOT_POSITIVE);
        refused(x -> new Case(0.07, 20, 1150, 0.07, 2e-3, 1e5, x, 5, 1).cap(), NOT_POSITIVE);
        refused(x -> new Case(0.07, 20, 1150, 0.07, 2e-3, 1e5, 300, x, 1).cap(), Double.NaN, 0.5);
        refused(x -> new Case(0.07, 20, 1150, 0.07, 2e-3, 1e5, 300, 5, x).cap(), NOT_POSITIVE);
        refused(x -> FrothCourse.of(SILICONE, t -> t < 20 ? AIR_PA : x).crestS(), NOT_POSITIVE);
    }
}
