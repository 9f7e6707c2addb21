package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The search for the way to stand a mould. */
class AttitudesTest {

    @Test
    void aCupIsBestPouredAroundWithItsMouthUp() {
        Mesh cup = KnownMasters.cup(48).mesh();

        List<Attitude> found = Attitudes.search(cup, Setup.of(Domain.AROUND), 200, up -> true, pocket -> true);

        Attitude best = found.get(0);
        assertThat(best.vents()).isZero();
        assertThat(best.trappedM3()).isZero();
        Attitude worst = found.get(found.size() - 1);
        assertThat(worst.vents()).isEqualTo(1);
        // Poured as it stands in the drawing, mouth down, it traps all it can.
        assertThat(Attitudes.measure(cup, Setup.of(Domain.AROUND), pocket -> true)
                        .trappedM3())
                .isCloseTo(worst.trappedM3(), Offset.offset(1e-7));
    }

    @Test
    void aCupLaidDownIsFreeAndLowerThanStanding() {
        Mesh cup = KnownMasters.cup(48).mesh();

        Attitude best = Attitudes.search(cup, Setup.of(Domain.AROUND), 400, up -> true, pocket -> true)
                .get(0);

        // Standing mouth up it is 40 mm high, and nothing lower is free of air but nearly so.
        assertThat(best.fillHeightM()).isLessThanOrEqualTo(0.0441);
        assertThat(best.up().z()).isLessThan(0.1);
    }

    @Test
    void forbiddenDirectionsAreNotTried() {
        Mesh cup = KnownMasters.cup(32).mesh();

        List<Attitude> found =
                Attitudes.search(cup, Setup.of(Domain.AROUND), 200, Directions.within(Vec3.UP, 20), pocket -> true);

        assertThat(found).isNotEmpty().allMatch(attitude -> attitude.up().z() >= Math.cos(Math.toRadians(20)) - 1e-12);
        assertThat(found).allMatch(attitude -> attitude.vents() == 1);
        assertThatThrownBy(() -> Attitudes.search(cup, Setup.of(Domain.AROUND), 10, up -> false, pocket -> true))
                .isInstanceOf(MeshFault.class);
    }

    @Test
    void aBallIsTheSameEveryWay() {
        Mesh ball = Shapes.ball(10, 24).mesh();

        List<Attitude> cavity = Attitudes.search(ball, Setup.of(Domain.CAVITY), 100, up -> true, pocket -> true);
        List<Attitude> master = Attitudes.search(ball, Setup.of(Domain.AROUND), 100, up -> true, pocket -> true);

        assertThat(cavity).allMatch(attitude -> attitude.vents() == 1 && attitude.trappedM3() == 0);
        assertThat(master).allMatch(attitude -> attitude.vents() == 0);
    }

    @Test
    void aFixedGateCountsAsAnOutletAtItsHeight() {
        Mesh box = Shapes.box(0, 0, 0, 20, 20, 20).mesh();
        Setup gate = Setup.of(Domain.CAVITY).withGates(List.of(new Vec3(0.01, 0.01, 0.02)));

        assertThat(Attitudes.measure(box, gate, pocket -> true).vents()).isZero();
        assertThat(Attitudes.measure(box, gate.withUp(new Vec3(0, 0, -1)), pocket -> true)
                        .vents())
                .isEqualTo(1);
    }

    @Test
    void theWinnerHoldsWhenItIsMeasuredAlone() {
        KnownSolid towers = KnownSolids.cavities(16).stream()
                .filter(solid -> solid.name().startsWith("S11b"))
                .findFirst()
                .orElseThrow();
        Setup free = Setup.of(Domain.CAVITY);
        Mesh mesh = towers.figure().mesh();

        Attitude best =
                Attitudes.search(mesh, free, 300, up -> true, pocket -> true).get(0);

        VentPlan plan = VentPlacer.place(mesh, free.withUp(best.up()), pocket -> true, 20);
        assertThat(plan.vents()).hasSize(best.vents());
        assertThat(plan.left().trappedM3()).isLessThan(1e-12);
    }
}
