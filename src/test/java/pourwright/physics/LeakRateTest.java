package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class LeakRateTest {

    private static final double ROUNDING_PERCENT = 1e-10;

    @Test
    void givesThePublishedVacuumDecayExample() {
        // 2.0000 L from 25.300 to 50.600 kPa in 70 s: 7.229 mbar L/s, which is 2.9657e-4 mol/s at 293.15 K.
        // US Code of Federal Regulations, 40 CFR 1065.644, vacuum-decay example: inputs, and 0.00030 mol/s (from
        // memory).
        double leak = LeakRate.paM3PerS(2e-3, 50_600 - 25_300, 70);
        assertThat(leak).isCloseTo(0.7229, within(5e-5));
        assertThat(leak / (8.314472 * 293.15)).isCloseTo(0.00030, within(5e-6));
    }

    @Test
    void followsItsDefinition() {
        // One litre rising by one millibar in one second is 1 mbar L/s; 30 L from 2 to 12 mbar in 60 s is 5.0 mbar L/s.
        assertThat(LeakRate.paM3PerS(1e-3, 100, 1)).isCloseTo(0.1, withinPercentage(ROUNDING_PERCENT));
        assertThat(LeakRate.paM3PerS(0.03, 1000, 60)).isCloseTo(0.5, withinPercentage(ROUNDING_PERCENT));
        // The coefficient of the air leak law in lb/h, 0.0059 V dp/t (V ft3, p torr, t min, 530 Rankine):
        // Ryans and Roper, Process Vacuum System Design and Operation, 1986, eq. 4-10.
        double molPerS = LeakRate.paM3PerS(Math.pow(0.3048, 3), 101_325.0 / 760, 60) / (8.314462618 * 530 / 1.8);
        double lbPerH = molPerS * 0.0289647 * 3600 / 0.45359237;
        assertThat(lbPerH).isCloseTo(0.0059, within(5e-5));
    }

    @Test
    void isLinearAndTheSameInEachHalf() {
        Generated.tries(71, 200).forEach(some -> {
            double volumeM3 = some.logUniform(1e-3, 1);
            double risePa = some.logUniform(1, 1e4);
            double timeS = some.logUniform(1, 1e4);
            double leak = LeakRate.paM3PerS(volumeM3, risePa, timeS);
            assertThat(LeakRate.paM3PerS(2 * volumeM3, risePa, timeS))
                    .isCloseTo(2 * leak, withinPercentage(ROUNDING_PERCENT));
            assertThat(LeakRate.paM3PerS(volumeM3, 3 * risePa, timeS))
                    .isCloseTo(3 * leak, withinPercentage(ROUNDING_PERCENT));
            assertThat(LeakRate.paM3PerS(volumeM3, risePa / 2, timeS / 2))
                    .isCloseTo(leak, withinPercentage(ROUNDING_PERCENT));
        });
        assertThat(LeakRate.paM3PerS(1, 0, 1)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        assertThatThrownBy(() -> LeakRate.paM3PerS(bad, 1, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LeakRate.paM3PerS(1, bad, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LeakRate.paM3PerS(1, 1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LeakRate.paM3PerS(1, 1, 0))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("time");
    }
}
