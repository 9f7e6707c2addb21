package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.NO_SHARE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

class FrothTest {

    private static final double AIR_PA = 101_325;

    // Computed (1/(1 - e)); 0.64 is random close packing, 0.7405 ordered packing, 0.80 the common cup rule of five.
    @ParameterizedTest
    @CsvSource({"0, 1", "0.5, 2.0", "0.64, 2.78", "0.74, 3.85", "0.75, 4.0", "0.8, 5.0", "0.95, 20"})
    void gas_fraction_sets_the_height(double gasFraction, double factor) {
        assertThat(Froth.factorOf(gasFraction)).isCloseTo(factor, within(0.005));
        assertThat(Froth.gasFractionOf(factor)).isCloseTo(gasFraction, within(0.001));
    }

    @Test
    void there_and_back_is_the_same() {
        Generated.tries(51, 200).forEach(any -> {
            double e = any.uniform(0, 0.99);
            assertThat(Froth.gasFractionOf(Froth.factorOf(e))).isCloseTo(e, within(1e-12));
        });
        assertThat(Froth.factorOf(1)).isInfinite();
    }

    @Test
    void rises_by_boyle_up_to_the_cap() {
        // By hand: 7 % air at a twentieth of the pressure adds 7 % × 19 = 1.33 of the height.
        assertThat(Froth.factor(0.07, AIR_PA, AIR_PA / 20, 5)).isCloseTo(2.33, withinPercentage(1e-9));
        assertThat(Froth.factor(0.07, AIR_PA, AIR_PA, 5)).isEqualTo(1);
        assertThat(Froth.factor(0.12, AIR_PA, 500, 5)).isEqualTo(5);
        assertThat(Froth.factor(0, AIR_PA, 500, 5)).isEqualTo(1);
    }

    @Test
    void never_falls_with_air_or_vacuum_and_never_passes_the_cap() {
        Generated.tries(52, 200).forEach(any -> {
            double air = any.uniform(0, 0.5);
            double chamberPa = any.logUniform(100, AIR_PA);
            double cap = any.uniform(1, 8);
            double factor = Froth.factor(air, AIR_PA, chamberPa, cap);
            assertThat(factor).isBetween(1.0, cap);
            assertThat(Froth.factor(air + 0.1, AIR_PA, chamberPa, cap)).isGreaterThanOrEqualTo(factor);
            assertThat(Froth.factor(air, AIR_PA, 0.9 * chamberPa, cap)).isGreaterThanOrEqualTo(factor);
        });
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> Froth.factor(x, AIR_PA, 3000, 5), NO_SHARE);
        refused(x -> Froth.factor(0.07, x, 3000, 5), NOT_POSITIVE);
        refused(x -> Froth.factor(0.07, AIR_PA, x, 5), NOT_POSITIVE);
        refused(x -> Froth.factor(0.07, AIR_PA, 3000, x), Double.NaN, Double.POSITIVE_INFINITY, 0.99, -1);
        refused(Froth::gasFractionOf, Double.NaN, Double.POSITIVE_INFINITY, 0.99, -1);
        refused(Froth::factorOf, NO_SHARE);
    }
}
