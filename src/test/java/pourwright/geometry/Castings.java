package pourwright.geometry;

import java.nio.file.Files;
import java.nio.file.Path;

/** Parts made by formula, for tests of other packages: all lengths in millimetres. */
public final class Castings {
    private static final int SEGMENTS = 96;
    private static final int STEPS = 24;

    private Castings() {}

    /** A round plate, 40 mm in radius and 20 mm thick, with a dent in its underside: the cap of a ball. */
    static Figure dentedPlate(double ballMm, double halfAngleDegrees) {
        double[][] profile = new double[STEPS + 4][];
        for (int i = 0; i <= STEPS; i++) {
            double angle = Math.toRadians(halfAngleDegrees) * i / STEPS;
            double rim = Math.cos(Math.toRadians(halfAngleDegrees));
            profile[i] = new double[] {ballMm * Math.sin(angle), ballMm * (Math.cos(angle) - rim)};
        }
        profile[STEPS + 1] = new double[] {40, 0};
        profile[STEPS + 2] = new double[] {40, 20};
        profile[STEPS + 3] = new double[] {0, 20};
        return Shapes.turned(profile, SEGMENTS);
    }

    /** Volume of the cap, m3. Source: D. Zwillinger, CRC Standard Mathematical Tables, spherical cap, pi h (3 a2 + h2) / 6. */
    public static double capM3(double ballMm, double halfAngleDegrees) {
        double h = ballMm * (1 - Math.cos(Math.toRadians(halfAngleDegrees)));
        double a = ballMm * Math.sin(Math.toRadians(halfAngleDegrees));
        return Math.PI * h * (3 * a * a + h * h) / 6 * 1e-9;
    }

    /** The plate with a dent as a mesh. */
    public static Mesh dented(double ballMm, double halfAngleDegrees) {
        return dentedPlate(ballMm, halfAngleDegrees).mesh();
    }

    /**
     * A slab of 80 x 40 x 10 mm with two square posts of 10 x 10 mm on it, 20 and 10 mm high: in the hollow of a mould each post
     * is a blind pocket of its own volume.
     */
    static Figure postedSlab() {
        return Shapes.blocks(
                new double[] {0, 10, 20, 60, 70, 80},
                new double[] {0, 15, 25, 40},
                new double[] {0, 10, 20, 30},
                (x, y, z) -> z < 10 || y > 15 && y < 25 && (x > 10 && x < 20 || z < 20 && x > 60 && x < 70));
    }

    /** The slab with posts as a mesh. */
    public static Mesh posted() {
        return postedSlab().mesh();
    }

    /** A cube, as a mesh. */
    public static Mesh cube(double sideMm) {
        return Shapes.box(0, 0, 0, sideMm, sideMm, sideMm).mesh();
    }

    /** A ball, as a mesh. */
    public static Mesh ball(double radiusMm) {
        return Shapes.ball(radiusMm, SEGMENTS).mesh();
    }

    /** The slab with posts as a file of bare numbers. */
    public static Path postedFile(Path folder) throws java.io.IOException {
        return Files.write(folder.resolve("posted.stl"), postedSlab().stl());
    }
}
