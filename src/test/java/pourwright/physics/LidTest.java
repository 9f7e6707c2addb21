package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class LidTest {

    private static final double ATM_PA = 101_325;
    private static final double PSI_PA = 6894.757293168;
    private static final double LBF_N = 4.4482216152605;

    /** Cast acrylic as used for the published table: modulus and Poisson's ratio (from memory). */
    private static final double ACRYLIC_PA = 3.0e9;

    private static final double ACRYLIC_POISSON = 0.37;

    @ParameterizedTest
    @CsvSource({"0.20, 3183", "0.25, 4974", "0.30, 7162", "0.40, 12733"}) // computed, whole newtons
    void givesTheForceOfFullVacuum(double diameterM, double newtons) {
        assertThat(Lid.forceN(diameterM, ATM_PA)).isCloseTo(newtons, within(0.6));
    }

    @Test
    void givesPublishedForces() {
        // 14.7 psi on a roof of 120 ft: 2.394e7 lbf; de Nevers, Fluid Mechanics for Chemical Engineers, ex. 2.6.
        assertThat(Lid.forceN(120 * 0.3048, 14.7 * PSI_PA) / LBF_N).isCloseTo(2.394e7, withinPercentage(0.01));
        // Suction cup 6 in outer, 5 in inner, 10 psi below air, full vacuum at 14.7 inside the inner lip: 324 lbf
        // (323.35)
        // as 14.7 psi on the outer less 4.7 psi on the inner circle; Esposito, Fluid Power with Applications, ex. 14.5.
        double force = Lid.forceN(6 * 0.0254, 14.7 * PSI_PA) - Lid.forceN(5 * 0.0254, 4.7 * PSI_PA);
        assertThat(force / LBF_N).isCloseTo(323.35, within(0.05));
    }

    @Test
    void scalesWithAreaAndPressure() {
        Generated.tries(111, 200).forEach(some -> {
            double diameterM = some.logUniform(0.05, 1);
            double differencePa = some.logUniform(10, 1e6);
            double force = Lid.forceN(diameterM, differencePa);
            assertThat(Lid.forceN(2 * diameterM, differencePa))
                    .as("%s", some)
                    .isCloseTo(4 * force, withinPercentage(1e-10));
            assertThat(Lid.forceN(diameterM, 3 * differencePa)).isCloseTo(3 * force, withinPercentage(1e-10));
        });
        assertThat(Lid.forceN(0.3, 0)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        // span mm, thickness mm, stress MPa, sag mm: computed from Roark's plate formulas (from memory), full vacuum.
        "200, 10, 12.8, 2.1", "200, 12, 8.9, 1.2", "200, 15, 5.7, 0.6", "250, 12, 13.9, 3.0", "250, 20, 5.0, 0.7",
        "300, 12, 20, 6.3", "300, 15, 12.8, 3.2", "300, 20, 7.2, 1.4", "300, 25, 4.6, 0.7", "400, 25, 8.2, 2.2",
        "500, 25, 12.8, 5.4", "500, 30, 8.9, 3.1"
    })
    void givesTheStressAndSagOfAClearLid(double spanMm, double thicknessMm, double stressMPa, double sagMm) {
        assertThat(LidPlate.maxStressPa(spanMm / 1000, thicknessMm / 1000, ATM_PA, ACRYLIC_POISSON) / 1e6)
                .isCloseTo(stressMPa, within(0.06));
        assertThat(LidPlate.centreDeflectionM(spanMm / 1000, thicknessMm / 1000, ATM_PA, ACRYLIC_PA, ACRYLIC_POISSON)
                        * 1000)
                .isCloseTo(sagMm, within(0.06));
    }

    @Test
    void aPlateScalesAsTheTheorySays() {
        Generated.tries(112, 200).forEach(some -> {
            double spanM = some.logUniform(0.1, 1);
            double thicknessM = some.logUniform(0.003, 0.05);
            double stress = LidPlate.maxStressPa(spanM, thicknessM, ATM_PA, 0.3);
            double sagM = LidPlate.centreDeflectionM(spanM, thicknessM, ATM_PA, 3e9, 0.3);
            assertThat(LidPlate.maxStressPa(2 * spanM, thicknessM, ATM_PA, 0.3))
                    .isCloseTo(4 * stress, withinPercentage(1e-9));
            assertThat(LidPlate.maxStressPa(spanM, 2 * thicknessM, ATM_PA, 0.3))
                    .isCloseTo(stress / 4, withinPercentage(1e-9));
            assertThat(LidPlate.centreDeflectionM(2 * spanM, thicknessM, ATM_PA, 3e9, 0.3))
                    .isCloseTo(16 * sagM, withinPercentage(1e-9));
            assertThat(LidPlate.centreDeflectionM(spanM, 2 * thicknessM, ATM_PA, 3e9, 0.3))
                    .isCloseTo(sagM / 8, withinPercentage(1e-9));
            assertThat(LidPlate.centreDeflectionM(spanM, thicknessM, ATM_PA, 6e9, 0.3))
                    .isCloseTo(sagM / 2, withinPercentage(1e-9));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        assertThatThrownBy(() -> Lid.forceN(bad, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Lid.forceN(1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Lid.forceN(0, 1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LidPlate.maxStressPa(bad, 1, 1, 0.3)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LidPlate.maxStressPa(1, bad, 1, 0.3)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LidPlate.maxStressPa(1, 1, bad, 0.3)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LidPlate.maxStressPa(1, 1, 1, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LidPlate.maxStressPa(1, 1, 1, 0.6)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> LidPlate.centreDeflectionM(1, 1, 1, bad, 0.3)).isInstanceOf(PhysicsException.class);
    }
}
