package pourwright.degas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import pourwright.physics.Cure;
import pourwright.physics.Viscosity;
import pourwright.testing.Generated;

class CureCourseTest {

    /** What steps of the course's size give, percent; far below what rate constants are known to. */
    private static final double STEPS = 0.05;

    static Mix resin(CureShape shape, double energyJPerMol, double gelConversion, double riseK) {
        Reaction reaction = Reaction.of(shape, 1e-4, 298.15, energyJPerMol, gelConversion, riseK);
        return new Mix(1100, 1, 298.15, 0, 0.5, 0.035, 1.25, 5, 2000, 0.2, reaction, Optional.empty());
    }

    private static Mix any(Generated any, double riseK) {
        return resin(
                any.pick(CureShape.SECOND_ORDER, CureShape.SELF_FEEDING),
                any.uniform(40e3, 80e3),
                any.uniform(0.4, 0.7),
                riseK);
    }

    @Test
    void without_heat_it_gels_at_the_isothermal_time() {
        Generated.tries(801, 100).forEach(any -> {
            Mix mix = any(any, 0);
            double atK = any.uniform(285, 315);
            CureCourse course = CureCourse.of(mix, 0.1, Vessel.cupAsHighAsWide(1e-4), atK, atK, 0);
            double gelS =
                    mix.reaction().law().isothermalTimeS(atK, mix.reaction().gelConversion());
            assertThat(course.gelS()).as("%s", any).isCloseTo(gelS, withinPercentage(STEPS));
            assertThat(course.peakK()).isCloseTo(atK, within(1e-9));
            // And it thickens by the power law toward gel, apart from rounding of the table of age.
            double share = any.uniform(0.05, 0.9);
            assertThat(course.viscosityPaSAt(share * course.gelS()))
                    .as("%s", any)
                    .isCloseTo(Viscosity.atTimePaS(1, share, 1, 0.5), withinPercentage(0.5));
            assertThat(course.viscosityPaSAt(1.01 * gelS)).isInfinite();
        });
    }

    @Test
    void without_loss_it_is_the_adiabatic_course() {
        // The same rate law by an independent integrator, over conversion instead of time.
        Generated.tries(802, 100).forEach(any -> {
            double riseK = any.uniform(20, 200);
            Mix mix = any(any, riseK);
            double atK = any.uniform(285, 315);
            CureCourse course = CureCourse.of(mix, any.logUniform(0.01, 10), Vessel.PERFECT_FLASK, 250, atK, 0);
            double gelS = mix.reaction()
                    .law()
                    .adiabaticTimeS(atK, riseK, mix.reaction().gelConversion());
            assertThat(course.gelS()).as("%s", any).isCloseTo(gelS, withinPercentage(STEPS));
            double timeS = course.peakS() * any.uniform(0.1, 1);
            assertThat(course.temperatureKAt(timeS) - atK)
                    .as("%s", any)
                    .isCloseTo(riseK * course.conversionAt(timeS), within(1e-9));
        });
    }

    @Test
    void peaks_at_the_published_adiabatic_rises() {
        // Epoxy 473 J/g at 2.0 J/(g K): 237 K; polyurethane 283 J/g at 1.8: 157 K. Heats of reaction of thermoset
        // handbooks (from memory) by the heat balance. The last hundredth of the conversion is not followed.
        for (double[] published : new double[][] {{473e3, 2000, 237}, {283e3, 1800, 157}}) {
            double riseK = Cure.adiabaticRiseK(published[0], published[1]);
            assertThat(riseK).isCloseTo(published[2], within(0.5));
            CureCourse course = CureCourse.of(
                    resin(CureShape.SELF_FEEDING, 55e3, 0.6, riseK), 1, Vessel.PERFECT_FLASK, 298.15, 298.15, 0);
            assertThat(course.peakK() - 298.15).isCloseTo(published[2], withinPercentage(1.2));
        }
    }

    @Test
    void the_heat_lost_is_the_heat_made_less_the_heat_kept() {
        // Energy: integral of loss × (T - room) over time = m c (rise × a - (T - T0)).
        Mix mix = resin(CureShape.SELF_FEEDING, 55e3, 0.6, 150);
        Vessel vessel = Vessel.cupAsHighAsWide(0.2 / 1100);
        CureCourse course = CureCourse.of(mix, 0.2, vessel, 298.15, 298.15, 0);
        double lost = 0;
        int parts = 20_000;
        double toS = course.peakS();
        for (int i = 0; i < parts; i++) {
            lost += vessel.lossWPerK(0.2 / 1100, 0.2)
                    * (course.temperatureKAt((i + 0.5) / parts * toS) - 298.15)
                    * toS
                    / parts;
        }
        double made = 0.2 * 2000 * (150 * course.conversionAt(toS) - (course.peakK() - 298.15));
        assertThat(lost).isCloseTo(made, withinPercentage(0.5));
    }

    @Test
    void a_thin_skin_stays_at_room_temperature() {
        Mix mix = resin(CureShape.SELF_FEEDING, 55e3, 0.6, 200);
        Vessel sheet = new Vessel(40, Vessel.STILL_AIR, 0);
        CureCourse course = CureCourse.of(mix, 0.5, sheet, 298.15, 298.15, 0);
        assertThat(course.peakK() - 298.15).isBetween(0.0, 3.0);
        assertThat(course.gelS()).isCloseTo(mix.reaction().isothermalGelS(298.15), withinPercentage(10));
    }

    @Test
    void a_heavy_vessel_and_a_larger_loss_keep_it_cooler() {
        Generated.tries(803, 60).forEach(any -> {
            Mix mix = any(any, any.uniform(50, 200));
            double massKg = any.logUniform(0.05, 5);
            double areaM2 = Vessel.cupAsHighAsWide(massKg / 1100).areaM2();
            double peakK = peakK(mix, massKg, new Vessel(areaM2, 10, 0));
            assertThat(peakK(mix, massKg, new Vessel(areaM2, 20, 0)))
                    .as("%s", any)
                    .isLessThanOrEqualTo(peakK + 0.01);
            assertThat(peakK(mix, massKg, new Vessel(areaM2, 10, 300)))
                    .as("%s", any)
                    .isLessThanOrEqualTo(peakK + 0.01);
            assertThat(peakK)
                    .as("%s", any)
                    .isLessThanOrEqualTo(298.15 + mix.reaction().adiabaticRiseK());
        });
    }

    private static double peakK(Mix mix, double massKg, Vessel vessel) {
        return CureCourse.of(mix, massKg, vessel, 298.15, 298.15, 0).peakK();
    }

    @Test
    void going_on_from_a_state_gives_the_same_end() {
        Mix mix = resin(CureShape.SELF_FEEDING, 55e3, 0.6, 120);
        Vessel vessel = Vessel.cupAsHighAsWide(2e-4);
        CureCourse whole = CureCourse.of(mix, 0.22, vessel, 298.15, 298.15, 0);
        double halfS = whole.gelS() / 2;
        CureCourse rest =
                CureCourse.of(mix, 0.22, vessel, 298.15, whole.temperatureKAt(halfS), whole.conversionAt(halfS));
        assertThat(halfS + rest.gelS()).isCloseTo(whole.gelS(), withinPercentage(0.1));
        assertThat(rest.peakK()).isCloseTo(whole.peakK(), within(0.3));
    }

    @Test
    void a_cup_as_high_as_wide_has_the_area_of_its_cylinder() {
        // 100 mm high and wide: 2 × pi/4 d² + pi d² = 1.5 pi d².
        double volumeM3 = Math.PI / 4 * 1e-3;
        assertThat(Vessel.cupAsHighAsWide(volumeM3).areaM2()).isCloseTo(1.5 * Math.PI * 0.01, within(1e-12));
        // Biot number of it: 10 × (V/A = d/6) / 0.2.
        assertThat(Vessel.cupAsHighAsWide(volumeM3).biot(volumeM3, 0.2)).isCloseTo(10 * 0.1 / 6 / 0.2, within(1e-9));
    }
}
