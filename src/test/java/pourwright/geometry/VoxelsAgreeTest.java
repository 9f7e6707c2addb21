package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pockets of figures with ears and limbs against the independent labelling of {@link Voxels}, in four attitudes. One figure
 * is made by formula, the other is a scanned rabbit. Source: Stanford 3D Scanning Repository, as in the package bunny 1.0.1 of the
 * npm registry, public domain.
 */
class VoxelsAgreeTest {
    /** A cube sees a narrow throat only when it is much smaller: the rabbit has folds between its ears. */
    private static final int CUBES = 140;

    private static final int CUBES_OF_SCANNED = 260;
    private static final String SCANNED = "scanned rabbit";
    private static final String ANIMAL = "animal by formula";

    private record Pose(String figure, int attitude, Domain domain) {}

    static Stream<Pose> poses() {
        List<Pose> all = new ArrayList<>();
        for (String figure : List.of(ANIMAL, SCANNED)) {
            for (int attitude = 0; attitude < 4; attitude++) {
                all.add(new Pose(figure, attitude, Domain.CAVITY));
                all.add(new Pose(figure, attitude, Domain.AROUND));
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("poses")
    void trappedAirAgrees(Pose pose) throws IOException {
        Figure figure = pose.figure().equals(ANIMAL) ? animal() : scanned();
        Figure turned = turned(figure, pose.attitude());
        boolean cavity = pose.domain() == Domain.CAVITY;
        double[] vent = cavity ? ventOf(turned) : null;
        Setup setup = Setup.of(pose.domain());
        if (cavity) {
            setup = setup.withVents(List.of(new Vec3(vent[0], vent[1], vent[2]).times(Figure.MM)));
        }
        Mesh mesh = turned.mesh();

        double exact = Pockets.find(mesh, setup).trappedM3() * 1e9;
        double voxels = Voxels.trapped(
                turned.corners, turned.triangles, vent, pose.figure().equals(ANIMAL) ? CUBES : CUBES_OF_SCANNED);

        double body = mesh.report().volumeM3() * 1e9;
        assertThat(voxels).isCloseTo(exact, Offset.offset(Math.max(0.02 * exact, 0.0005 * body)));
    }

    /** The point farthest to one side: a vent there traps what is above it. */
    private static double[] ventOf(Figure figure) {
        return figure.corners.stream()
                .max(java.util.Comparator.comparingDouble(c -> c[0]))
                .orElseThrow();
    }

    private static Figure turned(Figure figure, int attitude) {
        double a = 0.3 + 1.7 * attitude;
        double b = 0.2 + 1.1 * attitude;
        return figure.moved(v -> {
            Vec3 w = new Vec3(
                    Math.cos(a) * v.x() - Math.sin(a) * v.y(), Math.sin(a) * v.x() + Math.cos(a) * v.y(), v.z());
            return new Vec3(
                    w.x(), Math.cos(b) * w.y() - Math.sin(b) * w.z(), Math.sin(b) * w.y() + Math.cos(b) * w.z());
        });
    }

    /** A body with four legs, a head, two ears, a tail and four hollows: one surface, swollen or dented along those directions. */
    private static Figure animal() {
        double[][] limbs = {
            {0.55, 0.4, -0.73, 1.3, 30},
            {0.55, -0.4, -0.73, 1.3, 30},
            {-0.55, 0.4, -0.73, 1.3, 30},
            {-0.55, -0.4, -0.73, 1.3, 30},
            {0.9, 0, 0.43, 0.9, 12},
            {0.75, 0.3, 0.6, 0.9, 60},
            {0.75, -0.3, 0.6, 0.9, 60},
            {-0.98, 0, 0.2, 0.8, 60},
            {0, 0, -1, -0.6, 25},
            {-0.3, 0.9, 0.2, -0.55, 25},
            {-0.2, -0.95, 0.25, -0.55, 25},
            {-0.3, 0, 0.95, -0.6, 25}
        };
        return Shapes.ball(1, 96).moved(v -> {
            double r = 20;
            for (double[] limb : limbs) {
                Vec3 way = new Vec3(limb[0], limb[1], limb[2]).unit();
                r += 20 * limb[3] * Math.exp(limb[4] * (v.dot(way) - 1));
            }
            return v.times(r);
        });
    }

    /** Reads the plain text of the file: three numbers a corner, then "3" and three corners a triangle. */
    private static Figure scanned() throws IOException {
        Figure out = new Figure();
        try (InputStream in = VoxelsAgreeTest.class.getResourceAsStream("/scanned/rabbit.ply")) {
            String text = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
            text.lines().dropWhile(l -> !l.equals("end_header")).skip(1).forEach(line -> {
                String[] n = line.split(" ");
                if (n.length == 3) {
                    out.corner(Double.parseDouble(n[0]), Double.parseDouble(n[1]), Double.parseDouble(n[2]));
                } else {
                    out.triangle(Integer.parseInt(n[1]), Integer.parseInt(n[2]), Integer.parseInt(n[3]));
                }
            });
        }
        return out;
    }
}
