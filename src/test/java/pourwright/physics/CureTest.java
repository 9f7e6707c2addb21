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

class CureTest {

    /** Percent: the law itself, only rounding error allowed. */
    private static final double ROUNDING = 1e-9;

    /** Percent: the reference uses R 8.314 in place of 8.314462618, which shifts rates by up to 0.15 %. */
    private static final double OLD_GAS_CONSTANT = 0.25;

    // Computed from the Arrhenius law, 20 to 30 °C.
    @ParameterizedTest
    @CsvSource({
        "20, 1.311",
        "40, 1.718",
        "44, 1.814",
        "50, 1.967",
        "55, 2.105",
        "60, 2.252",
        "70.7, 2.603",
        "90, 3.381",
        "95.9, 3.662"
    })
    void ten_kelvin_speed_the_cure(double kiloJoulePerMol, double factor) {
        assertThat(Cure.rateFactor(293.15, 303.15, kiloJoulePerMol * 1e3)).isCloseTo(factor, within(6e-4));
    }

    @Test
    void the_halving_rule_needs_just_over_fifty_kilojoule() {
        // A supplier's technical article on laminating epoxy: 18 °F (10 K) halve the pot life. That is 51.2 kJ/mol from
        // 20 to 30 °C and 52.9 from 25 to 35 °C.
        assertThat(Cure.rateFactor(293.15, 303.15, 51.2e3)).isCloseTo(2, within(0.002));
        assertThat(Cure.rateFactor(298.15, 308.15, 52.9e3)).isCloseTo(2, within(0.002));
    }

    @Test
    void rate_factors_chain_turn_round_and_fade_with_warmth() {
        Generated.tries(71, 200).forEach(any -> {
            double a = any.uniform(270, 340);
            double b = any.uniform(270, 340);
            double c = any.uniform(270, 340);
            double energy = any.uniform(1e4, 1e5);
            assertThat(Cure.rateFactor(a, b, energy) * Cure.rateFactor(b, c, energy))
                    .isCloseTo(Cure.rateFactor(a, c, energy), withinPercentage(ROUNDING));
            assertThat(Cure.rateFactor(a + 1, a + 11, energy)).isLessThan(Cure.rateFactor(a, a + 10, energy));
            assertThat(Cure.rateFactor(a, b, 0)).isEqualTo(1);
        });
    }

    @Test
    void working_time_shrinks_with_warmth_and_mass() {
        assertThat(Cure.workingTimeS(1800, 296.15, 296.15, 5e4, 0.1, 0.1, 0.4)).isCloseTo(1800, within(1e-9));
        // By hand: ten times the mass with the power 0.4 divides by 2.512.
        assertThat(Cure.workingTimeS(1800, 296.15, 296.15, 5e4, 0.1, 1, 0.4)).isCloseTo(1800 / 2.512, within(0.1));
        assertThat(Cure.workingTimeS(1800, 293.15, 303.15, 51.2e3, 0.1, 0.1, 0.4))
                .isCloseTo(900, within(1.0));
        Generated.tries(72, 200).forEach(any -> {
            double kelvin = any.uniform(278, 318);
            double mass = any.logUniform(0.01, 10);
            double energy = any.uniform(0, 1e5);
            double n = any.uniform(0, 0.55);
            double here = Cure.workingTimeS(1800, 296.15, kelvin, energy, 0.1, mass, n);
            assertThat(Cure.workingTimeS(1800, 296.15, kelvin + 1, energy, 0.1, mass, n))
                    .isLessThanOrEqualTo(here);
            assertThat(Cure.workingTimeS(1800, 296.15, kelvin, energy, 0.1, 2 * mass, n))
                    .isLessThanOrEqualTo(here);
        });
    }

    // Computed from bond heats (from memory): an epoxy with 473 J/g at 2.0 J/(g K), a PU with 283 J/g at 1.8.
    @ParameterizedTest
    @CsvSource({"473e3, 2000, 237", "283e3, 1800, 157"})
    void heat_that_cannot_leave_warms_the_mix(double heatJPerKg, double specificHeat, double riseK) {
        assertThat(Cure.adiabaticRiseK(heatJPerKg, specificHeat)).isCloseTo(riseK, within(0.6));
    }

    // Lee, Loos and Springer, J. Compos. Mater. 16:510, 1982 (constants from memory), times computed with R 8.314:
    // a law with a jump in its rate at a = 0.3, so a good test of the solver.
    @ParameterizedTest
    @CsvSource({
        "177, 0.3, 2.403", "177, 0.5, 8.752", "177, 0.9, 39.12",
        "150, 0.3, 9.962", "150, 0.5, 26.63", "150, 0.9, 106.3",
        "120, 0.3, 61.40", "120, 0.5, 118.3", "120, 0.9, 390.3"
    })
    void follows_a_published_epoxy_over_a_jump_in_its_rate(double celsius, double conversion, double minutes) {
        double timeS = Cure.timeToConversionS(CureTest::leeLoosSpringerPerS, celsius + 273.15, 0, conversion);
        assertThat(timeS / 60).isCloseTo(minutes, withinPercentage(OLD_GAS_CONSTANT));
    }

    private static double leeLoosSpringerPerS(double a, double kelvin) {
        double thermal = 1 / (Constants.GAS_CONSTANT * kelvin);
        double k1 = 2.101e9 * Math.exp(-80.7e3 * thermal);
        double k2 = -2.014e9 * Math.exp(-77.8e3 * thermal);
        double k3 = 1.960e5 * Math.exp(-56.6e3 * thermal);
        double perMinute = a <= 0.3 ? (k1 + k2 * a) * (1 - a) * (0.47 - a) : k3 * (1 - a);
        return perMinute / 60;
    }

    @Test
    void follows_first_order_exactly() {
        Generated.tries(73, 50).forEach(any -> {
            double rate = any.logUniform(1e-6, 1);
            double a = any.uniform(0.01, 0.99);
            assertThat(Cure.timeToConversionS((x, kelvin) -> rate * (1 - x), 300, 0, a))
                    .as("%s", any)
                    .isCloseTo(-Math.log1p(-a) / rate, withinPercentage(1e-6));
        });
    }

    @Test
    void ends_of_the_scale() {
        assertThat(Cure.timeToConversionS((a, kelvin) -> 0.01, 300, 0, 0)).isZero();
        assertThat(Cure.timeToConversionS((a, kelvin) -> 0.01 * a, 300, 0, 0.5)).isInfinite();
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> Cure.rateFactor(x, 300, 5e4), NOT_POSITIVE);
        refused(x -> Cure.rateFactor(300, x, 5e4), NOT_POSITIVE);
        refused(x -> Cure.rateFactor(300, 310, x), NEGATIVE);
        refused(x -> Cure.workingTimeS(x, 296, 300, 5e4, 0.1, 1, 0.4), NOT_POSITIVE);
        refused(x -> Cure.workingTimeS(1800, x, 300, 5e4, 0.1, 1, 0.4), NOT_POSITIVE);
        refused(x -> Cure.workingTimeS(1800, 296, x, 5e4, 0.1, 1, 0.4), NOT_POSITIVE);
        refused(x -> Cure.workingTimeS(1800, 296, 300, x, 0.1, 1, 0.4), NEGATIVE);
        refused(x -> Cure.workingTimeS(1800, 296, 300, 5e4, x, 1, 0.4), NOT_POSITIVE);
        refused(x -> Cure.workingTimeS(1800, 296, 300, 5e4, 0.1, x, 0.4), NOT_POSITIVE);
        refused(x -> Cure.workingTimeS(1800, 296, 300, 5e4, 0.1, 1, x), NEGATIVE);
        refused(x -> Cure.adiabaticRiseK(x, 2000), NEGATIVE);
        refused(x -> Cure.adiabaticRiseK(4e5, x), NOT_POSITIVE);
        refused(x -> Cure.timeToConversionS((a, kelvin) -> 1, x, 0, 0.5), NOT_POSITIVE);
        refused(x -> Cure.timeToConversionS((a, kelvin) -> 1, 300, x, 0.5), NEGATIVE);
        refused(x -> Cure.timeToConversionS((a, kelvin) -> 1, 300, 0, x), Double.NaN, -0.1, 1, 2);
        refused(x -> Cure.timeToConversionS((a, kelvin) -> a < 0.2 ? 1 : x, 300, 0, 0.5), Double.NaN, -1, 0);
    }
}
