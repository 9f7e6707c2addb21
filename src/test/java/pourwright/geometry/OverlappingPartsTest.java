package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Meshes whose parts overlap or touch, as drawing programs hand them over: taken as one body, by columns. */
class OverlappingPartsTest {
    private static final int SEGMENTS = 128;

    private static Vec3 mm(double x, double y, double z) {
        return new Vec3(x * Figure.MM, y * Figure.MM, z * Figure.MM);
    }

    /** S10: two domes of 20 and 16 mm, 28 mm apart, on a plate 6 mm thick; each dome reaches into the plate. */
    private static Mesh domes() {
        Figure plate = Shapes.box(-30, -30, 0, 54, 30, 6);
        return plate.with(Shapes.ball(20, SEGMENTS)
                        .moved(v -> new Vec3(v.x(), v.y(), Math.max(v.z(), -2)))
                        .shifted(0, 0, 6))
                .with(Shapes.ball(16, SEGMENTS)
                        .moved(v -> new Vec3(v.x(), v.y(), Math.max(v.z(), -2)))
                        .shifted(28, 0, 6))
                .mesh();
    }

    @Test
    void theValleyBetweenTwoDomesSealsTheSecond() {
        Trapped trapped = Pockets.find(domes(), Setup.of(Domain.CAVITY).withVents(List.of(mm(0, 0, 26))));

        assertThat(trapped.columnM()).isPositive();
        assertThat(trapped.whole()).hasSize(1);
        assertThat(trapped.whole().get(0).saddleHeightM()).isCloseTo(17.197667e-3, Offset.offset(5e-5));
        assertThat(trapped.whole().get(0).volumeM3()).isCloseTo(1043.261991e-9, Percentage.withPercentage(1));
    }

    @Test
    void bothDomesAreOnePocketWhenOnlyThePlateIsVented() {
        Trapped trapped = Pockets.find(domes(), Setup.of(Domain.CAVITY).withVents(List.of(mm(-29, -29, 6))));

        assertThat(trapped.pockets()).extracting(Pocket::parent).containsExactly(0, 1, 1);
        assertThat(trapped.pockets().get(0).volumeM3()).isCloseTo(24510.406684e-9, Percentage.withPercentage(1));
        assertThat(trapped.pockets().get(1).volumeM3()).isCloseTo(4154.075085e-9, Percentage.withPercentage(1));
        assertThat(trapped.pockets().get(2).volumeM3()).isCloseTo(1043.261991e-9, Percentage.withPercentage(1));
    }

    /** S21: a block with a blind hole drawn as a void whose mouth lies in the underside. */
    @Test
    void aSlantedHoleInTheUndersideThatTouchesItsFace() {
        double th = Math.toRadians(25);
        double rise = 35 * Math.cos(th);
        Figure hole = Shapes.cylinder(1, 0, 1, SEGMENTS)
                .moved(v -> new Vec3(6 * v.x() / Math.cos(th) + v.z() * rise * Math.tan(th), 6 * v.y(), v.z() * rise));
        Mesh block = Shapes.box(-20, -20, 0, 45, 20, 50).with(hole.reversed()).mesh();

        Trapped trapped = Pockets.find(block, Setup.of(Domain.AROUND));

        assertThat(trapped.whole()).hasSize(1);
        assertThat(trapped.whole().get(0).saddleHeightM()).isCloseTo(0, Offset.offset(1e-9));
        assertThat(trapped.whole().get(0).volumeM3()).isCloseTo(3958.406744e-9, Percentage.withPercentage(1));
    }

    /** S22: a blind hole in an upright wall, rising inwards at 20 degrees. */
    @Test
    void aRisingHoleInAWallThatTouchesItsFace() {
        double ph = Math.toRadians(20);
        Figure hole = Shapes.cylinder(5, -20, 40, SEGMENTS).turnedAboutY(90);
        Figure risen = hole.moved(v -> new Vec3(
                v.x() * Math.cos(ph) - v.z() * Math.sin(ph), v.y(), v.x() * Math.sin(ph) + v.z() * Math.cos(ph)));
        // The hole begins outside the wall at x = 0; only what is inside the block is a hole, the rest is void in the
        // open.
        Figure cut = risen.moved(v -> {
            double along = v.x() / Math.cos(ph);
            return v.x() < -5 ? new Vec3(0, v.y(), v.z() - along * Math.sin(ph)) : v;
        });
        Mesh block = Shapes.box(0, -20, -30, 60, 20, 40).with(cut.reversed()).mesh();

        Trapped trapped = Pockets.find(block, Setup.of(Domain.AROUND));

        assertThat(trapped.whole()).hasSize(1);
        assertThat(trapped.whole().get(0).volumeM3()).isCloseTo(1919.730017e-9, Percentage.withPercentage(1));
        assertThat(trapped.whole().get(0).saddleHeightM()).isCloseTo(5.320889e-3, Offset.offset(5e-5));
    }

    @Test
    void anOverlapOfTheSameSenseIsSolidAndNotAHole() {
        Mesh crossed = Shapes.box(0, 0, 0, 40, 10, 10)
                .with(Shapes.box(15, -15, 0.001, 25, 25, 10.001))
                .mesh();

        Trapped trapped = Pockets.find(crossed, Setup.of(Domain.CAVITY).withVents(List.of(mm(20, 5, 10.001))));

        assertThat(trapped.whole()).noneMatch(pocket -> pocket.volumeM3() > 1e-12);
        assertThat(trapped.unreachable()).isEmpty();
    }

    @Test
    void columnsAgreeWithTheSurfaceWhereBothServe() {
        for (KnownSolid solid : KnownSolids.cavities(48)) {
            Mesh mesh = solid.figure().mesh();
            Frame frame = new Frame(mesh.xyz, solid.setup().up());
            Setup setup = Pockets.withGate(mesh, frame, solid.setup());
            Outlets outlets = Outlets.of(mesh, setup);
            double cell = mesh.sizeM() / 400;
            Air exact = SurfaceAir.find(mesh, frame, Domain.CAVITY, outlets);
            Air columns = ColumnAir.find(mesh, frame, Domain.CAVITY, outlets, cell);

            assertThat(total(columns, mesh, setup))
                    .as(solid.name())
                    .isCloseTo(total(exact, mesh, setup), Offset.offset(0.02 * total(exact, mesh, setup) + 20e-12));
        }
    }

    private static double total(Air air, Mesh mesh, Setup setup) {
        Pieces pieces = Pockets.pieces(mesh, air, setup);
        return pieces.roots().stream()
                .filter(pieces::counts)
                .mapToDouble(air::volumeM3)
                .sum();
    }

    @Test
    void aResolutionThatNeedsTooManyColumnsIsAFaultThatNamesOneThatFits() {
        assertThatThrownBy(() -> Pockets.find(domes(), Setup.of(Domain.CAVITY).withResolution(1e-6)))
                .isInstanceOf(MeshFault.class)
                .hasMessageContaining("the smallest that fits");
        assertThatThrownBy(() -> Setup.of(Domain.CAVITY).withResolution(-1)).isInstanceOf(MeshFault.class);
    }
}
