package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The corners of the definition: no outlet, ties, regions that nothing reaches, parts of pockets, sills. */
class DefinitionTest {
    private static final Vec3 NOWHERE = new Vec3(1, 1, 1);

    private static Vec3 mm(double x, double y, double z) {
        return new Vec3(x * Figure.MM, y * Figure.MM, z * Figure.MM);
    }

    private static Setup cavity(Vec3... vents) {
        return Setup.of(Domain.CAVITY).withVents(List.of(vents));
    }

    @Test
    void withoutAnOutletNothingFillsAndNoPocketIsNamed() {
        Mesh cylinder = Shapes.cylinder(20, 0, 50, 64).mesh();

        Trapped assumed = Pockets.find(cylinder, cavity());
        Trapped given = Pockets.find(cylinder, cavity().withGates(List.of(mm(0, 0, 0))));

        assertThat(assumed.noOutlet()).isTrue();
        assertThat(assumed.pockets()).isEmpty();
        assertThat(assumed.gateAssumed()).isTrue();
        assertThat(given.noOutlet()).isTrue();
        assertThat(given.gateAssumed()).isFalse();
    }

    @Test
    void aGateAboveTheLowestPointIsAnOutletAtItsOwnHeight() {
        Mesh box = Shapes.box(0, 0, 0, 20, 20, 30).mesh();

        Trapped trapped = Pockets.find(box, cavity().withGates(List.of(mm(20, 10, 10))));

        assertThat(trapped.noOutlet()).isFalse();
        assertThat(trapped.trappedM3()).isCloseTo(20 * 20 * 20e-9, Percentage.withPercentage(1e-7));
    }

    @Test
    void aCupStandingOnTheFloorIsUnreachableAndNoPocket() {
        Mesh cup = KnownMasters.cup(128).mesh();

        Trapped trapped = Pockets.find(cup, Setup.of(Domain.AROUND_ON_FLOOR));

        assertThat(trapped.pockets()).isEmpty();
        assertThat(trapped.unreachable()).hasSize(1);
        assertThat(trapped.unreachable().get(0).volumeM3()).isCloseTo(35625.660692e-9, Percentage.withPercentage(0.1));
    }

    @Test
    void aTableOnTheFloorKeepsItsPocketUnderTheApron() {
        KnownSolid table = KnownMasters.masters(32).stream()
                .filter(solid -> solid.name().startsWith("S19a"))
                .findFirst()
                .orElseThrow();

        Trapped trapped = Pockets.find(table.figure().shifted(0, 0, 5).mesh(), Setup.of(Domain.AROUND_ON_FLOOR));

        // The apron reaches to the floor only through the four legs; the table has none longer than the apron itself.
        assertThat(trapped.pockets().size() + trapped.unreachable().size()).isEqualTo(1);
    }

    @Test
    void aVoidInsideAMasterIsUnreachable() {
        Mesh hollow = Shapes.box(0, 0, 0, 30, 30, 30)
                .with(Shapes.box(10, 10, 10, 20, 20, 20).reversed())
                .mesh();

        Trapped trapped = Pockets.find(hollow, Setup.of(Domain.AROUND));

        assertThat(trapped.pockets()).isEmpty();
        assertThat(trapped.unreachable()).hasSize(1);
        assertThat(trapped.unreachable().get(0).volumeM3()).isCloseTo(1e-6, Percentage.withPercentage(1e-7));
    }

    @Test
    void aSecondCavityWithoutGateOrVentIsUnreachable() {
        Mesh two = Shapes.box(0, 0, 0, 10, 10, 10)
                .with(Shapes.box(20, 0, 2, 30, 10, 12))
                .mesh();

        Trapped trapped = Pockets.find(two, cavity(mm(5, 5, 10)));

        assertThat(trapped.pockets()).isEmpty();
        assertThat(trapped.unreachable()).hasSize(1);
        assertThat(trapped.unreachable().get(0).volumeM3()).isCloseTo(1e-6, Percentage.withPercentage(1e-7));
    }

    @Test
    void partsOfAPocketFormATree() {
        KnownSolid towers = KnownSolids.cavities(16).stream()
                .filter(solid -> solid.name().startsWith("S11b"))
                .findFirst()
                .orElseThrow();

        Trapped trapped = Pockets.find(towers.figure().mesh(), towers.setup());

        assertThat(trapped.pockets()).extracting(Pocket::parent).containsExactly(0, 1, 1);
        assertThat(trapped.pockets().get(1).volumeM3()).isCloseTo(8100e-9, Percentage.withPercentage(1e-7));
        assertThat(trapped.pockets().get(2).volumeM3()).isCloseTo(6800e-9, Percentage.withPercentage(1e-7));
        assertThat(trapped.pockets().get(1).saddleHeightM()).isCloseTo(0.018, Offset.offset(1e-9));
        assertThat(trapped.trappedM3()).isCloseTo(25600e-9, Percentage.withPercentage(1e-7));
    }

    @Test
    void aPocketTellsItsTopItsMouthAndItsHead() {
        Mesh cup = KnownMasters.cup(256).mesh();

        Pocket pocket = Pockets.find(cup, Setup.of(Domain.AROUND).withPourLevel(0.06))
                .pockets()
                .get(0);

        assertThat(pocket.peakHeightM()).isCloseTo(0.035, Offset.offset(1e-9));
        assertThat(pocket.peak().z()).isCloseTo(0.035, Offset.offset(1e-9));
        assertThat(pocket.depthM()).isCloseTo(0.035, Offset.offset(1e-9));
        assertThat(pocket.headM()).isCloseTo(0.06, Offset.offset(1e-9));
        assertThat(pocket.waterlineM2()).isCloseTo(Math.PI * 0.018 * 0.018, Percentage.withPercentage(0.1));
        assertThat(pocket.mouthWidthM()).isCloseTo(0.036, Percentage.withPercentage(0.1));
        assertThat(pocket.sealedAt().z()).isCloseTo(0, Offset.offset(1e-9));
    }

    @Test
    void theSealingPlaceOfALintelIsOnTheLintel() {
        KnownSolid lintel = KnownSolids.cavities(16).stream()
                .filter(solid -> solid.name().startsWith("S14"))
                .findFirst()
                .orElseThrow();

        Vec3 place = Pockets.find(lintel.figure().mesh(), lintel.setup())
                .pockets()
                .get(0)
                .sealedAt();

        assertThat(place.x()).isBetween(0.019 - 1e-9, 0.023 + 1e-9);
        assertThat(place.z()).isCloseTo(0.018, Offset.offset(1e-9));
    }

    @Test
    void aLowPlaceBehindASillIsToldWithWhatItHolds() {
        // Two basins 20 deep; the second lies behind a sill 12 high.
        Mesh basins = Shapes.blocks(
                        new double[] {0, 20, 24, 44},
                        new double[] {0, 10},
                        new double[] {0, 12, 30},
                        (x, y, z) -> z > 12 || x < 20 || x > 24)
                .mesh();

        Trapped trapped = Pockets.find(basins, cavity(mm(10, 5, 30)).withGates(List.of(mm(10, 5, 0))));

        assertThat(trapped.lowPlaces()).hasSize(1);
        assertThat(trapped.lowPlaces().get(0).volumeM3()).isCloseTo(20 * 10 * 12e-9, Percentage.withPercentage(1e-7));
        assertThat(trapped.pockets()).isEmpty();
    }

    @Test
    void aFlatCeilingThatAirCanLeaveIsToldAsAFilmAndNotAsAPocket() {
        Mesh table = Shapes.box(0, 0, 0, 50, 40, 10).mesh();

        Trapped trapped = Pockets.find(table, Setup.of(Domain.AROUND));

        assertThat(trapped.pockets()).isEmpty();
        assertThat(trapped.flatCeilingM2()).isCloseTo(50 * 40e-6, Percentage.withPercentage(1e-7));
    }

    @Test
    void theThinnestPlaceOfACavityIsFound() {
        assertThat(Pockets.find(Shapes.box(0, 0, 0, 60, 40, 3).mesh(), cavity(mm(1, 1, 3)))
                        .thinnestM())
                .isCloseTo(0.003, Percentage.withPercentage(0.01));
    }

    @Test
    void anOpeningFarOffTheSurfaceIsAFaultThatSaysHowFar() {
        Mesh box = Shapes.box(0, 0, 0, 10, 10, 10).mesh();

        assertThatThrownBy(() -> Pockets.find(box, cavity(NOWHERE)))
                .isInstanceOf(MeshFault.class)
                .hasMessageContaining("mm off the surface");
        assertThatThrownBy(() -> Pockets.find(box, cavity(mm(5, 5, 5)))).isInstanceOf(MeshFault.class);
    }

    @Test
    void anOpeningALittleOffTheSurfaceIsMovedAndSaid() {
        Mesh box = Shapes.box(0, 0, 0, 10, 10, 10).mesh();

        Trapped trapped = Pockets.find(box, cavity(mm(5, 5, 10.1)));

        assertThat(trapped.pockets()).isEmpty();
        assertThat(trapped.notes()).anyMatch(note -> note.contains("moved onto it"));
    }

    @Test
    void upMustBeADirection() {
        assertThatThrownBy(() -> Setup.of(Domain.CAVITY).withUp(new Vec3(0, 0, 0)))
                .isInstanceOf(MeshFault.class);
        assertThatThrownBy(() -> Setup.of(Domain.CAVITY).withUp(new Vec3(0, Double.NaN, 1)))
                .isInstanceOf(MeshFault.class);
        assertThat(Setup.of(Domain.CAVITY).withUp(new Vec3(0, 0, 1e-200)).up()).isEqualTo(Vec3.UP);
    }
}
