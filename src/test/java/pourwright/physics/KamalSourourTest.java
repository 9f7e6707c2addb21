package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.NO_SHARE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

class KamalSourourTest {

    /** Percent: reference times are printed in whole seconds, some from a gas constant of fewer digits. */
    private static final double PRINTED_DIGITS = 0.15;

    /** Invented constants of no real resin, for the equation only. */
    private static final KamalSourour REFERENCE = new KamalSourour(1e4, 55e3, 1e6, 57e3, 1, 2);

    // Computed for the reference constants (Python 3.11).
    @ParameterizedTest
    @CsvSource({
        "20, 0.1, 26112", "20, 0.3, 47252", "20, 0.5, 66478", "20, 0.6, 78941",
        "25, 0.1, 17755", "25, 0.3, 32060", "25, 0.5, 45057", "25, 0.6, 53482",
        "30, 0.1, 12227", "30, 0.3, 22031", "30, 0.5, 30933", "30, 0.6, 36702",
        "40, 0.1, 6009", "40, 0.3, 10784", "40, 0.5, 15114", "40, 0.6, 17918"
    })
    void cures_at_constant_temperature(double celsius, double conversion, double timeS) {
        assertThat(REFERENCE.isothermalTimeS(celsius + Constants.ZERO_CELSIUS_K, conversion))
                .isCloseTo(timeS, withinPercentage(PRINTED_DIGITS));
    }

    // Computed for the reference constants, from 25 °C with a rise of 180 K (Python 3.11).
    @ParameterizedTest
    @CsvSource({"0.1, 11430", "0.3, 13070", "0.5, 13239", "0.6, 13267"})
    void runs_away_when_it_keeps_its_heat(double conversion, double timeS) {
        assertThat(REFERENCE.adiabaticTimeS(298.15, 180, conversion))
                .isCloseTo(timeS, withinPercentage(PRINTED_DIGITS));
    }

    @Test
    void the_rate_sees_exactly_the_start_plus_rise_times_conversion() {
        // 298.15 K + 0.6 × 180 K = 406.15 K: the last rate asked for must be at that temperature.
        double[] last = new double[2];
        Cure.timeToConversionS(
                (a, kelvin) -> {
                    if (a > last[0]) {
                        last[0] = a;
                        last[1] = kelvin;
                    }
                    return REFERENCE.ratePerS(a, kelvin);
                },
                298.15,
                180,
                0.6);
        assertThat(last[1]).isCloseTo(406.15, withinPercentage(1e-9));
    }

    @Test
    void warmth_and_kept_heat_never_slow_the_cure() {
        Generated.tries(81, 60).forEach(any -> {
            double kelvin = any.uniform(280, 340);
            double a = any.uniform(0.05, 0.9);
            double here = REFERENCE.isothermalTimeS(kelvin, a);
            assertThat(REFERENCE.isothermalTimeS(kelvin + 2, a)).as("%s", any).isLessThan(here);
            assertThat(REFERENCE.isothermalTimeS(kelvin, a + 0.02))
                    .as("%s", any)
                    .isGreaterThan(here);
            assertThat(REFERENCE.adiabaticTimeS(kelvin, any.uniform(1, 250), a))
                    .as("%s", any)
                    .isLessThan(here);
            assertThat(REFERENCE.adiabaticTimeS(kelvin, 0, a)).as("%s", any).isEqualTo(here);
        });
    }

    @Test
    void nothing_happens_without_a_first_step() {
        KamalSourour onlyFed = new KamalSourour(0, 0, 1e6, 57e3, 1, 2);
        assertThat(onlyFed.isothermalTimeS(298.15, 0.5)).isInfinite();
        assertThat(REFERENCE.isothermalTimeS(298.15, 0)).isZero();
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> REFERENCE.ratePerS(x, 298), NO_SHARE);
        refused(x -> REFERENCE.ratePerS(0.1, x), NOT_POSITIVE);
        refused(x -> REFERENCE.isothermalTimeS(x, 0.5), NOT_POSITIVE);
        refused(x -> REFERENCE.isothermalTimeS(298, x), Double.NaN, -0.1, 1, 2);
        refused(x -> REFERENCE.adiabaticTimeS(298, x, 0.5), NEGATIVE);
        refused(x -> new KamalSourour(x, 5e4, 1e6, 5e4, 1, 2).m(), NEGATIVE);
        refused(x -> new KamalSourour(1, x, 1e6, 5e4, 1, 2).m(), NEGATIVE);
        refused(x -> new KamalSourour(1, 5e4, x, 5e4, 1, 2).m(), NEGATIVE);
        refused(x -> new KamalSourour(1, 5e4, 1e6, x, 1, 2).m(), NEGATIVE);
        refused(x -> new KamalSourour(1, 5e4, 1e6, 5e4, x, 2).m(), NEGATIVE);
        refused(x -> new KamalSourour(1, 5e4, 1e6, 5e4, 1, x).m(), NEGATIVE);
    }
}
