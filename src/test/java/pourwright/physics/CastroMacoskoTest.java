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

class CastroMacoskoTest {

    /** Percent: the reference uses R 8.314 in place of 8.314462618, which raises E/RT of 16.7 by 0.1 %. */
    private static final double OLD_GAS_CONSTANT = 0.15;

    // Computed from the constants of Castro and Macosko, AIChE J. 28:250, 1982 (constants from memory).
    @ParameterizedTest
    @CsvSource({
        "25, 0, 1.773",
        "25, 0.1, 2.316",
        "25, 0.2, 3.313",
        "25, 0.3, 5.403",
        "25, 0.4, 10.89",
        "25, 0.5, 33.29",
        "25, 0.6, 387.2",
        "50, 0, 0.4885"
    })
    void reproduces_the_reference_values(double celsius, double conversion, double viscosityPaS) {
        assertThat(CastroMacosko.POLYURETHANE.viscosityPaS(conversion, celsius + Constants.ZERO_CELSIUS_K))
                .isCloseTo(viscosityPaS, withinPercentage(OLD_GAS_CONSTANT));
    }

    @Test
    void thickens_with_conversion_thins_with_warmth_and_gels() {
        Generated.tries(31, 200).forEach(any -> {
            double a = any.uniform(0, 0.6);
            double kelvin = any.uniform(280, 360);
            double here = CastroMacosko.POLYURETHANE.viscosityPaS(a, kelvin);
            assertThat(CastroMacosko.POLYURETHANE.viscosityPaS(a + 0.01, kelvin))
                    .isGreaterThan(here);
            assertThat(CastroMacosko.POLYURETHANE.viscosityPaS(a, kelvin + 1)).isLessThan(here);
            assertThat(CastroMacosko.POLYURETHANE.viscosityPaS(any.uniform(0.65, 1), kelvin))
                    .isInfinite();
        });
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> CastroMacosko.POLYURETHANE.viscosityPaS(x, 298), NO_SHARE);
        refused(x -> CastroMacosko.POLYURETHANE.viscosityPaS(0.1, x), NOT_POSITIVE);
        refused(x -> new CastroMacosko(x, 4e4, 0.65, 1.5, 1).p(), NOT_POSITIVE);
        refused(x -> new CastroMacosko(1e-7, x, 0.65, 1.5, 1).p(), NEGATIVE);
        refused(x -> new CastroMacosko(1e-7, 4e4, x, 1.5, 1).p(), 0, -1, 1.1, Double.NaN);
        refused(x -> new CastroMacosko(1e-7, 4e4, 0.65, x, 1).p(), NEGATIVE);
        refused(x -> new CastroMacosko(1e-7, 4e4, 0.65, 1.5, x).p(), NEGATIVE);
    }
}
