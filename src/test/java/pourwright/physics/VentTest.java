package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

class VentTest {

    /** Percent: the trade table has two digits. */
    private static final double TWO_DIGITS = 4;

    /** Percent: the law itself, only rounding error allowed. */
    private static final double ROUNDING = 1e-9;

    private static final double ML_PER_MIN = 6e7;

    // Trade table computed for this project: vent 20 mm long, 50 Pa (5 mm of resin), in mL/min. The end loss was picked
    // from its published range to meet this table, so the rows at 1.5 mm and more pin it and do not confirm it.
    @ParameterizedTest
    @CsvSource({"0.5, 12", "1, 150", "1.5, 480", "2, 970", "3, 2400"})
    void passes_air(double boreMm, double mlPerMin) {
        assertThat(Vent.airFlowM3PerS(boreMm / 1000, 0.02, 50) * ML_PER_MIN)
                .isCloseTo(mlPerMin, withinPercentage(TWO_DIGITS));
    }

    // Computed for the same table: 540 Pa, 20 mm long, viscosity in Pa s, loss in mL/min (one or two digits).
    @ParameterizedTest
    @CsvSource({"1, 0.1, 0.4", "2, 1, 0.64", "3, 0.1, 32", "4, 1, 10.2", "4, 0.1, 102", "6, 0.1, 515", "6, 20, 2.6"})
    void loses_liquid(double boreMm, double viscosityPaS, double mlPerMin) {
        assertThat(Vent.liquidLossM3PerS(boreMm / 1000, 0.02, 540, viscosityPaS) * ML_PER_MIN)
                .isCloseTo(mlPerMin, withinPercentage(TWO_DIGITS));
    }

    @Test
    void the_pressure_is_all_spent_at_the_wall_and_the_ends() {
        Generated.tries(101, 300).forEach(any -> {
            double bore = any.logUniform(1e-4, 1e-2);
            double length = any.logUniform(1e-3, 0.2);
            double dp = any.logUniform(0.1, 2000);
            double flow = Vent.airFlowM3PerS(bore, length, dp);
            double speed = flow / (Math.PI / 4 * bore * bore);
            double wallPa = 32 * Vent.AIR_VISCOSITY_PA_S * length * speed / (bore * bore);
            double endsPa = Vent.END_LOSS * Vent.AIR_DENSITY * speed * speed / 2;
            assertThat(wallPa + endsPa).as("%s", any).isCloseTo(dp, withinPercentage(ROUNDING));
            assertThat(flow).isLessThan(Flow.tubeM3PerS(bore, length, dp, Vent.AIR_VISCOSITY_PA_S));
        });
    }

    @Test
    void smallest_bore_is_the_inverse_of_the_flow() {
        Generated.tries(102, 300).forEach(any -> {
            double bore = any.logUniform(1e-4, 1e-2);
            double length = any.logUniform(1e-3, 0.2);
            double dp = any.logUniform(0.1, 2000);
            double flow = Vent.airFlowM3PerS(bore, length, dp);
            assertThat(Vent.smallestBoreM(flow, length, dp)).as("%s", any).isCloseTo(bore, withinPercentage(ROUNDING));
            assertThat(Vent.smallestBoreM(2 * flow, length, dp)).isGreaterThan(bore);
            assertThat(Vent.smallestBoreM(flow, length, 2 * dp)).isLessThan(bore);
        });
    }

    @Test
    void ends_of_the_scale() {
        assertThat(Vent.airFlowM3PerS(1e-3, 0.02, 0)).isZero();
        assertThat(Vent.smallestBoreM(0, 0.02, 50)).isZero();
        assertThat(Vent.smallestBoreM(0, 0.02, 0)).isZero();
        assertThat(Vent.smallestBoreM(1e-6, 0.02, 0)).isInfinite();
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> Vent.airFlowM3PerS(x, 0.02, 50), NOT_POSITIVE);
        refused(x -> Vent.airFlowM3PerS(1e-3, x, 50), NOT_POSITIVE);
        refused(x -> Vent.airFlowM3PerS(1e-3, 0.02, x), NEGATIVE);
        refused(x -> Vent.smallestBoreM(x, 0.02, 50), NEGATIVE);
        refused(x -> Vent.smallestBoreM(1e-6, x, 50), NOT_POSITIVE);
        refused(x -> Vent.smallestBoreM(1e-6, 0.02, x), NEGATIVE);
        refused(x -> Vent.liquidLossM3PerS(1e-3, 0.02, 540, x), NOT_POSITIVE);
    }
}
