package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class DisplacementTest {

    private static final double ROUNDING_PERCENT = 1e-10;

    @Test
    void measuresSimpleShapes() {
        // Geometry by hand: 10 x 20 x 30 cm is 6 L; a pot of 25 cm across and 25 cm deep holds 12.27 L.
        assertThat(Displacement.boxM3(0.1, 0.2, 0.3)).isCloseTo(6e-3, withinPercentage(ROUNDING_PERCENT));
        assertThat(Displacement.cylinderM3(0.25, 0.25)).isCloseTo(12.27e-3, within(5e-6));
        // 1 kg of water at 20 C (998.2 kg/m3; Geankoplis) is 1.0018 L.
        assertThat(Displacement.volumeFromMassM3(1, 998.2)).isCloseTo(1.0018e-3, within(5e-8));
        assertThat(Displacement.boxM3(0.1, 0, 0.3)).isZero();
        assertThat(Displacement.cylinderM3(0.1, 0)).isZero();
        assertThat(Displacement.volumeFromMassM3(0, 1000)).isZero();
    }

    @Test
    void scalesAsVolumesDo() {
        Generated.tries(131, 200).forEach(some -> {
            double a = some.logUniform(0.01, 1);
            double b = some.logUniform(0.01, 1);
            double c = some.logUniform(0.01, 1);
            assertThat(Displacement.boxM3(2 * a, 2 * b, 2 * c))
                    .as("%s", some)
                    .isCloseTo(8 * Displacement.boxM3(a, b, c), withinPercentage(ROUNDING_PERCENT));
            assertThat(Displacement.cylinderM3(2 * a, b))
                    .isCloseTo(4 * Displacement.cylinderM3(a, b), withinPercentage(ROUNDING_PERCENT));
            // A cylinder fills pi/4 of the box around it.
            assertThat(Displacement.cylinderM3(a, b) / Displacement.boxM3(a, a, b))
                    .isCloseTo(Math.PI / 4, withinPercentage(ROUNDING_PERCENT));
            assertThat(1000 * Displacement.volumeFromMassM3(a, 1000)).isCloseTo(a, withinPercentage(ROUNDING_PERCENT));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        assertThatThrownBy(() -> Displacement.boxM3(bad, 1, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.boxM3(1, bad, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.boxM3(1, 1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.cylinderM3(bad, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.cylinderM3(1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.volumeFromMassM3(bad, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.volumeFromMassM3(1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Displacement.volumeFromMassM3(1, 0)).isInstanceOf(PhysicsException.class);
    }
}
