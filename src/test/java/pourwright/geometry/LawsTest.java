package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.testing.Generated;

/** Laws that follow from the definition, on bodies of random blocks with random openings and directions. */
class LawsTest {
    private static final int SIDE = 5;

    /** A random body, a direction up at an angle, and vents on its surface. */
    private record Case(Figure figure, Vec3 up, List<Vec3> vents, Domain domain, Generated chance) {
        Setup setup() {
            Setup setup = Setup.of(domain).withUp(up);
            return domain == Domain.CAVITY ? setup.withVents(vents) : setup;
        }

        Trapped find() {
            return Pockets.find(figure.mesh(), setup());
        }

        @Override
        public String toString() {
            return domain + ", " + chance;
        }
    }

    static Stream<Case> cases() {
        return Generated.tries(23, 24).map(g -> {
            boolean[] solid = new boolean[SIDE * SIDE * SIDE];
            int blocks = g.whole(20, 90);
            for (int i = 0; i < blocks; i++) {
                solid[g.whole(0, solid.length - 1)] = true;
            }
            double[] xs = lines(g);
            double[] ys = lines(g);
            double[] zs = lines(g);
            Figure figure = Shapes.blocks(
                    xs, ys, zs, (x, y, z) -> solid[(cell(xs, x) * SIDE + cell(ys, y)) * SIDE + cell(zs, z)]);
            Vec3 up = g.whole(0, 2) == 0 ? Vec3.UP : new Vec3(g.uniform(-1, 1), g.uniform(-1, 1), g.uniform(0.1, 1));
            List<Vec3> vents = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                vents.add(onSurface(figure, g));
            }
            return new Case(figure, up, vents, g.pick(Domain.CAVITY, Domain.AROUND, Domain.AROUND_ON_FLOOR), g);
        });
    }

    private static double[] lines(Generated g) {
        double[] at = new double[SIDE + 1];
        for (int i = 1; i <= SIDE; i++) {
            at[i] = at[i - 1] + g.uniform(3, 12);
        }
        return at;
    }

    private static int cell(double[] lines, double x) {
        return (int) IntStream.range(1, lines.length).filter(i -> lines[i] < x).count();
    }

    private static Vec3 onSurface(Figure figure, Generated g) {
        int[] t = figure.triangles.get(g.whole(0, figure.triangles.size() - 1));
        double p = g.uniform(0, 1);
        double q = g.uniform(0, 1 - p);
        Vec3 a = at(figure, t[0]);
        return a.plus(at(figure, t[1]).minus(a).times(p))
                .plus(at(figure, t[2]).minus(a).times(q));
    }

    private static Vec3 at(Figure figure, int corner) {
        double[] c = figure.corners.get(corner);
        return new Vec3(c[0], c[1], c[2]).times(Figure.MM);
    }

    private static void same(Trapped found, Trapped expected, double scale, double shift) {
        assertThat(found.pockets()).hasSameSizeAs(expected.pockets());
        double volume = expected.cavityM3() * scale * scale * scale;
        List<Pocket> f = sorted(found);
        List<Pocket> e = sorted(expected);
        for (int i = 0; i < f.size(); i++) {
            assertThat(f.get(i).volumeM3())
                    .isCloseTo(e.get(i).volumeM3() * scale * scale * scale, Offset.offset(1e-9 * volume));
        }
        double[] heights =
                f.stream().mapToDouble(Pocket::saddleHeightM).sorted().toArray();
        double[] before = e.stream()
                .mapToDouble(p -> p.saddleHeightM() * scale + shift)
                .sorted()
                .toArray();
        for (int i = 0; i < heights.length; i++) {
            assertThat(heights[i]).isCloseTo(before[i], Offset.offset(1e-7 * scale));
        }
    }

    private static List<Pocket> sorted(Trapped trapped) {
        return trapped.pockets().stream()
                .sorted(java.util.Comparator.comparingDouble(Pocket::volumeM3))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void movingTurningMirroringAndScalingChangeNothingElse(Case c) {
        Trapped base = c.find();
        Vec3 by = new Vec3(7.25, -3.5, 11.125);
        Setup moved = c.setup()
                .withVents(c.setup().vents().stream()
                        .map(v -> v.plus(by.times(Figure.MM)))
                        .toList());
        same(
                Pockets.find(c.figure.shifted(by.x(), by.y(), by.z()).mesh(), moved),
                base,
                1,
                by.dot(moved.up()) * Figure.MM);

        double angle = c.chance.uniform(0, 6);
        Setup turned = turn(c.setup(), angle);
        same(Pockets.find(c.figure.moved(v -> turn(v, angle)).mesh(), turned), base, 1, 0);

        Setup mirrored = new Setup(
                c.domain,
                mirror(c.up),
                List.of(),
                c.setup().vents().stream().map(LawsTest::mirror).toList(),
                0,
                Double.NaN,
                0);
        same(Pockets.find(c.figure.moved(LawsTest::mirror).reversed().mesh(), mirrored), base, 1, 0);

        Setup scaled = c.setup()
                .withVents(c.setup().vents().stream().map(v -> v.times(25.4)).toList());
        same(Pockets.find(c.figure.moved(v -> v.times(25.4)).mesh(), scaled), base, 25.4, 0);
        same(Pockets.find(c.figure.mesh(), c.setup().withUp(c.up.times(1e-3))), base, 1, 0);
    }

    private static Vec3 turn(Vec3 v, double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        Vec3 w = new Vec3(cos * v.x() - sin * v.y(), sin * v.x() + cos * v.y(), v.z());
        return new Vec3(w.x(), cos * w.y() - sin * w.z(), sin * w.y() + cos * w.z());
    }

    private static Setup turn(Setup setup, double angle) {
        return setup.withUp(turn(setup.up(), angle))
                .withVents(setup.vents().stream().map(v -> turn(v, angle)).toList());
    }

    private static Vec3 mirror(Vec3 v) {
        return new Vec3(-v.x(), v.y(), v.z());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void orderOfTrianglesAndKindOfFileChangeNothingAtAll(Case c) {
        Figure shuffled = c.figure.copy();
        Collections.shuffle(shuffled.triangles, new Random(5));
        shuffled.triangles.replaceAll(t -> new int[] {t[1], t[2], t[0]});
        Mesh mesh = Figure.read(c.figure.stl(), "a");
        List<Pocket> expected = Pockets.find(mesh, c.setup()).pockets();

        assertThat(Pockets.find(Figure.read(shuffled.stl(), "a"), c.setup()).pockets())
                .isEqualTo(expected);
        assertThat(Pockets.find(Figure.read(shuffled.textStl(), "a"), c.setup()).pockets())
                .isEqualTo(expected);
        assertThat(Pockets.find(Figure.read(c.figure.obj(), "a.obj"), c.setup()).pockets())
                .isEqualTo(expected);
        same(Pockets.find(Figure.read(c.figure.ply(ByteOrder.BIG_ENDIAN), "a"), c.setup()), c.find(), 1, 0);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void splittingTrianglesWithoutMovingTheSurfaceChangesNothing(Case c) {
        Figure split = new Figure();
        split.corners.addAll(c.figure.corners);
        for (int[] t : c.figure.triangles) {
            double[] p = c.figure.corners.get(t[0]);
            double[] q = c.figure.corners.get(t[1]);
            double[] r = c.figure.corners.get(t[2]);
            int m = split.corner((p[0] + q[0] + r[0]) / 3, (p[1] + q[1] + r[1]) / 3, (p[2] + q[2] + r[2]) / 3);
            split.triangle(t[0], t[1], m);
            split.triangle(t[1], t[2], m);
            split.triangle(t[2], t[0], m);
        }

        same(Pockets.find(split.mesh(), c.setup()), c.find(), 1, 0);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void oneMoreVentNeverTrapsMoreAndOrderAndRepeatsDoNotMatter(Case c) {
        if (c.domain != Domain.CAVITY) {
            return;
        }
        Mesh mesh = c.figure.mesh();
        double before = Double.POSITIVE_INFINITY;
        for (int count = 1; count <= c.vents.size(); count++) {
            Trapped now = Pockets.find(mesh, c.setup().withVents(c.vents.subList(0, count)));
            // A region without an opening is unreachable and counted apart; a vent into it moves it here.
            double all = now.trappedM3()
                    + now.unreachable().stream()
                            .mapToDouble(Trapped.Region::volumeM3)
                            .sum();
            if (!now.noOutlet()) {
                assertThat(all).isLessThanOrEqualTo(before + 1e-9 * now.cavityM3());
                before = all;
            }
        }
        List<Vec3> repeated = new ArrayList<>(c.vents);
        Collections.reverse(repeated);
        repeated.add(c.vents.get(0));
        same(Pockets.find(mesh, c.setup().withVents(repeated)), c.find(), 1, 0);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void pocketsObeyTheirBounds(Case c) {
        Trapped trapped = c.find();
        double parts = 0;
        for (Pocket pocket : trapped.pockets()) {
            assertThat(pocket.volumeM3()).isPositive();
            assertThat(pocket.saddleHeightM()).isLessThan(pocket.peakHeightM());
            double children = trapped.pockets().stream()
                    .filter(other -> other.parent() == pocket.id())
                    .peek(other -> assertThat(other.saddleHeightM()).isGreaterThan(pocket.saddleHeightM()))
                    .mapToDouble(Pocket::volumeM3)
                    .sum();
            assertThat(children).isLessThanOrEqualTo(pocket.volumeM3() * (1 + 1e-9));
            parts += pocket.parent() == 0 ? pocket.volumeM3() : 0;
        }
        assertThat(trapped.trappedM3()).isCloseTo(parts, Offset.offset(1e-15));
        if (c.domain == Domain.CAVITY) {
            assertThat(parts).isLessThanOrEqualTo(trapped.cavityM3() * (1 + 1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void ventsAtAllTopsLeaveNoAir(Case c) {
        VentPlan plan = VentPlacer.place(c.figure.mesh(), c.setup(), pocket -> true, 200);

        assertThat(plan.enough()).isTrue();
        assertThat(plan.left().trappedM3())
                .isLessThanOrEqualTo(1e-9 * plan.left().cavityM3());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void trappedAirChangesSteadilyWithTheTilt(Case c) {
        Mesh mesh = c.figure.mesh();
        Setup setup =
                c.domain == Domain.CAVITY ? c.setup() : Setup.of(Domain.AROUND).withUp(c.up);
        double area = mesh.report().areaM2() * mesh.sizeM();
        Vec3 aside = setup.up().anyNormal();
        // Start off any exact tie, where a ceiling that is level is free and a tilted one is not.
        double before = Double.NaN;
        for (int i = 1; i <= 8; i++) {
            double tilt = 1e-4 * i;
            double now = Pockets.find(mesh, setup.withUp(setup.up().plus(aside.times(tilt))))
                    .trappedM3();
            if (!Double.isNaN(before)) {
                assertThat(Math.abs(now - before)).isLessThanOrEqualTo(1e-4 * area);
            }
            before = now;
        }
    }
}
