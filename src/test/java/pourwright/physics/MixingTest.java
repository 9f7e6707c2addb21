package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class MixingTest {

    private static final double ROUNDING_KG = 1e-12;

    @Test
    void sharesOutTheBatch() {
        // Arithmetic: 10 : 1 in 1.1 kg is 1 kg and 0.1 kg, so B is 9.1 % of the whole and 10 % of A.
        double[] massesKg = Mixing.partMassesKg(1.1, 10, 1);
        assertThat(massesKg).hasSize(2);
        assertThat(massesKg[0]).isCloseTo(1.0, within(ROUNDING_KG));
        assertThat(massesKg[1]).isCloseTo(0.1, within(ROUNDING_KG));
        assertThat(massesKg[1] / 1.1).isCloseTo(0.0909, within(5e-5));
        assertThat(Mixing.partMassesKg(0, 1, 1)).containsExactly(0, 0);
        assertThat(Mixing.partMassesKg(2, 1, 0)).containsExactly(2, 0);
    }

    @Test
    void turnsVolumePartsIntoMassParts() {
        // Arithmetic: 1 : 1 by volume at 1050 and 1155 kg/m3 is 100 : 110 by mass.
        assertThat(Mixing.massPartsFromVolumeParts(new double[] {100, 100}, new double[] {1050, 1155})[1])
                .isCloseTo(110, within(1e-9));
        assertThat(Mixing.massPartsFromVolumeParts(new double[] {2, 1}, new double[] {1100, 1100}))
                .containsExactly(2, 1);
    }

    @Test
    void addsUpWhateverTheParts() {
        Generated.tries(121, 300).forEach(some -> {
            double totalKg = some.logUniform(0.01, 20);
            double[] volumeParts = {some.logUniform(0.1, 100), some.logUniform(0.1, 100), some.uniform(0, 10)};
            double[] densities = {some.uniform(800, 2500), some.uniform(800, 2500), some.uniform(800, 2500)};
            double[] massParts = Mixing.massPartsFromVolumeParts(volumeParts, densities);
            double[] massesKg = Mixing.partMassesKg(totalKg, massParts);
            assertThat(Arrays.stream(massesKg).sum()).as("%s", some).isCloseTo(totalKg, withinPercentage(1e-10));
            // Back to volumes, the parts have the volume ratio that was asked for.
            double volumeRatio = massesKg[1] / densities[1] / (massesKg[0] / densities[0]);
            assertThat(volumeRatio).isCloseTo(volumeParts[1] / volumeParts[0], withinPercentage(1e-10));
            assertThat(Mixing.partMassesKg(totalKg, 3 * massParts[0], 3 * massParts[1], 3 * massParts[2])[2])
                    .isCloseTo(massesKg[2], withinPercentage(1e-10));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        assertThatThrownBy(() -> Mixing.partMassesKg(bad, 1, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.partMassesKg(1, 1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.massPartsFromVolumeParts(new double[] {bad, 1}, new double[] {1, 1}))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.massPartsFromVolumeParts(new double[] {1, 1}, new double[] {1, bad}))
                .isInstanceOf(PhysicsException.class);
    }

    @Test
    void refusesEmptyOrUnevenLists() {
        assertThatThrownBy(() -> Mixing.partMassesKg(1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.partMassesKg(1, 0, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.partMassesKg(1, (double[]) null)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.massPartsFromVolumeParts(new double[] {1, 1}, new double[] {1000}))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("one density");
        assertThatThrownBy(() -> Mixing.massPartsFromVolumeParts(new double[] {1, 1}, null))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Mixing.massPartsFromVolumeParts(new double[] {1, 1}, new double[] {1000, 0}))
                .isInstanceOf(PhysicsException.class);
    }
}
