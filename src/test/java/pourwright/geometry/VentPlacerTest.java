package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Vents one by one: the fewest, at the tops, and what they leave. */
class VentPlacerTest {

    private static KnownSolid solid(String id) {
        return KnownSolids.cavities(16).stream()
                .filter(solid -> solid.name().startsWith(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aVentAtEveryTopLeavesNothing() {
        for (String id : List.of("S11b", "S12", "S14", "S15", "S26", "S27")) {
            KnownSolid solid = solid(id);
            VentPlan plan = VentPlacer.place(solid.figure().mesh(), solid.setup(), pocket -> true, 20);

            assertThat(plan.enough()).as(id).isTrue();
            assertThat(plan.left().trappedM3()).as(id).isLessThan(1e-15);
        }
    }

    @Test
    void theFewestVentsAreOneForEachTop() {
        KnownSolid towers = solid("S11b");

        VentPlan plan = VentPlacer.place(towers.figure().mesh(), towers.setup(), pocket -> true, 20);

        assertThat(plan.vents()).hasSize(2);
        // The first frees the tall tower and all below the tunnel's ceiling; 6800 mm3 of the low tower stay.
        assertThat(plan.vents().get(0).freedM3()).isCloseTo((25600 - 6800) * 1e-9, Percentage.withPercentage(1e-6));
        assertThat(plan.vents().get(0).heightM()).isCloseTo(0.045, Offset.offset(1e-9));
        assertThat(plan.vents().get(1).freedM3()).isCloseTo(6800e-9, Percentage.withPercentage(1e-6));
        assertThat(plan.vents().get(1).riseM()).isCloseTo(0.010, Offset.offset(1e-9));
    }

    @Test
    void pocketsThatNeedNoVentAreLeft() {
        KnownSolid comb = solid("S12");

        VentPlan plan = VentPlacer.place(comb.figure().mesh(), comb.setup(), pocket -> pocket.volumeM3() > 1.5e-6, 20);

        assertThat(plan.vents()).hasSize(1);
        assertThat(plan.left().whole()).hasSize(2);
        assertThat(plan.left().trappedM3()).isCloseTo(2390e-9, Percentage.withPercentage(1e-6));
    }

    @Test
    void theMostAllowedIsKeptAndSaid() {
        KnownSolid comb = solid("S12");

        VentPlan plan = VentPlacer.place(comb.figure().mesh(), comb.setup(), pocket -> true, 1);

        assertThat(plan.vents()).hasSize(1);
        assertThat(plan.enough()).isFalse();
    }

    @Test
    void aCavityThatCannotFillGetsItsFirstVentAtItsTop() {
        Mesh ball = Shapes.ball(30, 64).mesh();

        VentPlan plan = VentPlacer.place(ball, Setup.of(Domain.CAVITY), pocket -> true, 5);

        assertThat(plan.vents()).hasSize(1);
        assertThat(plan.vents().get(0).place().z()).isCloseTo(0.03, Offset.offset(1e-9));
        assertThat(plan.left().noOutlet()).isFalse();
        assertThat(plan.left().pockets()).isEmpty();
    }

    @Test
    void towersThatNeedAVentOnlyTogetherGetOneVent() {
        // Two towers of 500 mm3 on one block of 600 need a vent together, not each; the lone tower of 800 needs none.
        Mesh mesh = Shapes.blocks(
                        new double[] {0, 10, 20, 30, 40, 50},
                        new double[] {0, 10},
                        new double[] {0, 10, 12, 17, 18},
                        (x, y, z) -> z < 10
                                || z < 12 && x < 30
                                || z < 17 && (x < 10 || x > 20 && x < 30)
                                || z < 18 && x > 40)
                .mesh();
        Setup setup = Setup.of(Domain.CAVITY).withGates(List.of(new Vec3(0.035, 0.005, 0.010)));

        VentPlan plan = VentPlacer.place(mesh, setup, pocket -> pocket.volumeM3() > 0.9e-6, 10);

        assertThat(plan.enough()).isTrue();
        assertThat(plan.vents()).hasSize(1);
    }
}
