package pourwright.degas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.degas.Jobs.AIR_PA;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.physics.Bubble;
import pourwright.physics.BubbleClearing;
import pourwright.physics.Constants;
import pourwright.testing.Generated;

class ColumnTest {

    /** So little gas that bubbles do not feel each other. */
    private static final double LONELY_M3 = 1e-15;

    private static final double AREA_M2 = 0.01;

    private static Mix liquid(double density, double sigma, double speedFactor) {
        Reaction reaction = Reaction.of(CureShape.SECOND_ORDER, 1e-9, 293, 0, 0.6, 0);
        return new Mix(density, 1, 293, 0, 0.5, sigma, speedFactor, 5, 1500, 0.2, reaction, Optional.empty());
    }

    private static Column lonely(Mix mix, double diameterM, double depthM) {
        Bubbles one = Bubbles.spread(LONELY_M3, diameterM, 1, AIR_PA, mix.sigma());
        return new Column(mix, one, AIR_PA, depthM * AREA_M2, depthM);
    }

    /** Time until the only bubble has left at a constant pressure, in many small steps. */
    private static double clearS(Column column, double overPa, double viscosityPaS, double guessS) {
        double stepS = guessS / 4000;
        for (int i = 1; i < 40_000; i++) {
            column.swell(overPa, 0);
            column.rise(stepS, viscosityPaS, column.crowd(column.topFraction(overPa, 0)));
            if (column.amount() == 0) {
                return i * stepS;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    // Stokes times over 100 mm in air: 20 Pa s, 1100 kg/m3, 3 mm 371 s, 1 mm 56 min; 0.6 Pa s, 1150 kg/m3, 1 mm 96 s
    // (computed from Stokes 1851 with gas of 1.2 kg/m3). The head of 100 mm of liquid makes a bubble 0.4 % thinner at
    // the
    // bottom.
    @ParameterizedTest
    @CsvSource({"20, 1100, 3e-3, 371", "20, 1100, 1e-3, 3341", "0.6, 1150, 1e-3, 95.9"})
    void a_lone_bubble_takes_its_stokes_time(double viscosityPaS, double density, double diameterM, double timeS) {
        Column column = lonely(liquid(density, 0, 1), diameterM, 0.1);
        assertThat(clearS(column, AIR_PA, viscosityPaS, timeS)).isCloseTo(timeS, withinPercentage(1));
    }

    @Test
    void a_lone_bubble_under_vacuum_takes_the_closed_form_time() {
        // BubbleClearing integrates the same rise over depth, with head and Laplace pressure, in closed form.
        Generated.tries(821, 60).forEach(any -> {
            double density = any.uniform(900, 1600);
            double sigma = any.uniform(0, 0.04);
            double depthM = any.uniform(0.02, 0.15);
            double viscosity = any.logUniform(0.5, 50);
            double overPa = any.logUniform(300, AIR_PA);
            double bottomM = any.logUniform(2e-4, 3e-3);
            double factor = any.uniform(1, 1.5);
            double expected = BubbleClearing.timeS(
                    bottomM, depthM, overPa, AIR_PA, density, viscosity, Double.POSITIVE_INFINITY, 0.5, sigma, factor);
            // There the diameter is that at the bottom, here that at air pressure without head.
            double headPa = density * Constants.G * depthM;
            double atAirM = Bubble.expandedDiameterM(bottomM, AIR_PA + headPa, AIR_PA, density, 0, sigma);
            Column column = lonely(liquid(density, sigma, factor), atAirM, depthM);
            assertThat(clearS(column, overPa, viscosity, expected))
                    .as("%s", any)
                    .isCloseTo(expected, withinPercentage(0.2));
        });
    }

    @Test
    void swells_by_boyles_law() {
        // 1013 to 30 mbar: volume 33.8, diameter 3.23 times (computed from Boyle's law; no head, no tension).
        Column column = lonely(liquid(1100, 0, 1), 1e-3, 1e-6);
        column.swell(101_300, 0);
        double before = column.gasM3(101_300, 0);
        double beforeM = column.medianM();
        column.swell(3000, 0);
        assertThat(column.gasM3(3000, 0) / before).isCloseTo(33.8, within(0.05));
        assertThat(column.medianM() / beforeM).isCloseTo(3.23, within(0.01));
    }

    @Test
    void head_and_tension_hold_bubbles_small() {
        // Under 3 mbar, 70 mm of liquid weigh 7.9 mbar: the mean of 1/(p + head) is ln(1 + W/p)/W.
        double weightPa = 1150 * Constants.G * 0.07;
        Column column = lonely(liquid(1150, 0, 1), 2e-3, 0.07);
        column.swell(300, 0);
        assertThat(column.gasM3(300, 0) / (LONELY_M3 * AIR_PA))
                .isCloseTo(Math.log1p(weightPa / 300) / weightPa, withinPercentage(1e-6));
        Column skinned = lonely(liquid(1150, 0.03, 1), 5e-5, 0.07);
        skinned.swell(300, 0);
        assertThat(skinned.gasM3(300, 0)).isLessThan(0.7 * column.gasM3(300, 0));
    }

    // Richardson and Zaki 1954, (1 - e)^4.65: 0.1 gives 0.613, 0.3 gives 0.190, 0.5 gives 0.040.
    @ParameterizedTest
    @CsvSource({"0.1, 0.613", "0.3, 0.190", "0.5, 0.040"})
    void a_crowd_hinders_as_published(double gasFraction, double factor) {
        Column column = lonely(liquid(1100, 0, 1), 1e-3, 0.1);
        assertThat(column.crowd(gasFraction)).isCloseTo(factor, within(6e-4));
    }

    @Test
    void touching_bubbles_break_one_layer_in_a_film_life() {
        // One diameter in 7 viscosity/(density g radius), over d² density g/(18 viscosity): 18/14. The rest is liquid.
        double d = 4e-3;
        double filmS = 7 * 20 / (1100 * Constants.G * d / 2);
        double stokes = Bubble.stokesRiseMPerS(d, 1100, 0, 20);
        Column column = lonely(liquid(1100, 0, 1), d, 0.1);
        assertThat(column.crowd(0.8)).isCloseTo(0.2 * d / filmS / stokes, withinPercentage(1e-9));
    }

    @Test
    void breaking_takes_the_coarse_first_and_keeps_books() {
        Generated.tries(822, 100).forEach(any -> {
            Mix mix = liquid(1100, any.uniform(0, 0.03), 1);
            Bubbles bubbles = Bubbles.spread(
                    any.uniform(1e-5, 1e-4), any.logUniform(5e-4, 3e-3), any.uniform(1.2, 2.5), AIR_PA, mix.sigma());
            Column column = new Column(mix, bubbles, AIR_PA, 5e-4, 0.05);
            double overPa = any.logUniform(300, 5000);
            column.swell(overPa, 0);
            double mostM3 = any.uniform(0.05, 0.9) * column.gasM3(overPa, 0);
            column.breakDownTo(mostM3, overPa, 0);
            assertThat(column.gasM3(overPa, 0)).as("%s", any).isCloseTo(mostM3, withinPercentage(1e-6));
            List<Bubbles.Size> left = column.left().classes();
            double fineKept = left.get(0).gasPaM3() / bubbles.classes().get(0).gasPaM3();
            double coarse = left.get(left.size() - 1).gasPaM3();
            double coarseKept = coarse / bubbles.classes().get(left.size() - 1).gasPaM3();
            assertThat(fineKept).as("%s", any).isGreaterThan(coarseKept).isLessThanOrEqualTo(1);
        });
    }

    @Test
    void the_classes_hold_the_volume_and_the_median_of_the_spread() {
        Bubbles bubbles = Bubbles.spread(3e-5, 2e-3, 1.8, AIR_PA, 0.02);
        assertThat(bubbles.volumeAtAirM3(AIR_PA, 0.02)).isCloseTo(3e-5, withinPercentage(1e-9));
        double fine = bubbles.classes().stream()
                .filter(s -> s.diameterAtAirM() < 2e-3 * (1 - 1e-9))
                .mapToDouble(Bubbles.Size::gasPaM3)
                .sum();
        double coarse = bubbles.classes().stream()
                .filter(s -> s.diameterAtAirM() > 2e-3 * (1 + 1e-9))
                .mapToDouble(Bubbles.Size::gasPaM3)
                .sum();
        assertThat(fine).isCloseTo(coarse, withinPercentage(0.2));
        assertThat(bubbles.part(0.25).gasPaM3()).isCloseTo(bubbles.gasPaM3() / 4, withinPercentage(1e-9));
        assertThat(bubbles.and(bubbles).gasPaM3()).isCloseTo(bubbles.gasPaM3() * 2, withinPercentage(1e-9));
    }
}
