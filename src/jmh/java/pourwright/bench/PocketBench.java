package pourwright.bench;

import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import pourwright.geometry.Attitude;
import pourwright.geometry.Attitudes;
import pourwright.geometry.Domain;
import pourwright.geometry.Limits;
import pourwright.geometry.Mesh;
import pourwright.geometry.MeshReader;
import pourwright.geometry.Pockets;
import pourwright.geometry.Setup;
import pourwright.geometry.Trapped;
import pourwright.geometry.Vec3;
import pourwright.geometry.Voxels;

/**
 * Pockets of large meshes: time against triangles and against resolution, with reading beside it, and against a plain
 * labelling of cubes on the same grid. The part is a bumpy ball 250 mm across, made by formula. Ratios compare between
 * machines, seconds do not.
 */
public final class PocketBench {
    private static final double RADIUS_MM = 125;
    private static final double MM = 0.001;
    private static final double BYTES_PER_MIB = 1024.0 * 1024.0;
    private static final int RUNS = 3;

    private PocketBench() {}

    /** Runs and prints; "large" as first word adds the cubes at 0.5 mm, which need about 1.3 GB. */
    public static void main(String[] args) {
        boolean large = args.length > 0 && args[0].equals("large");
        // Warm-up, so that the smallest mesh does not pay for compiling.
        for (int i = 0; i < RUNS; i++) {
            pocketsOf(read(file(200)), 0);
        }
        againstTriangles();
        againstResolution();
        attitudes();
        againstCubes(large);
    }

    private static void againstTriangles() {
        print(
                "pockets against triangles: a cavity with one vent at its side; the surface itself is used, nothing is approximated");
        print(
                "%12s %10s %12s %14s %12s %10s",
                "triangles", "read s", "pockets s", "ns/triangle", "pockets/read", "heap MiB");
        for (int segments : new int[] {224, 316, 448, 632, 1000}) {
            byte[] file = file(segments);
            Timed<Mesh> mesh = best(() -> read(file));
            Timed<Trapped> trapped = best(() -> pocketsOf(mesh.result, 0));
            int triangles = mesh.result.triangleCount();
            print(
                    "%12d %10.3f %12.3f %14.0f %12.2f %10.0f",
                    triangles,
                    mesh.seconds,
                    trapped.seconds,
                    1e9 * trapped.seconds / triangles,
                    trapped.seconds / mesh.seconds,
                    heldMiB());
        }
    }

    private static void againstResolution() {
        print("columns against resolution: the same ball with a small ball overlapping it, so that columns are needed");
        print("%12s %12s %12s %14s", "column mm", "columns", "pockets s", "ns/column");
        Mesh mesh = read(overlapping(320));
        for (double column : new double[] {2, 1, 0.5, 0.25}) {
            Timed<Trapped> trapped = best(() -> pocketsOf(mesh, column * MM));
            double columns = Math.pow(2 * RADIUS_MM * 1.1 / column, 2);
            print("%12.2f %12.0f %12.3f %14.0f", column, columns, trapped.seconds, 1e9 * trapped.seconds / columns);
        }
    }

    private static void attitudes() {
        print("attitudes of a part of 100,000 triangles, each measured with exact volumes");
        print("%12s %12s %16s %12s", "directions", "search s", "ms/direction", "best vents");
        Mesh mesh = read(file(316));
        for (int count : new int[] {100, 200, 400}) {
            Timed<List<Attitude>> found = best(() -> Attitudes.search(
                    mesh, Setup.of(Domain.AROUND), count, up -> true, pocket -> pocket.volumeM3() > 1e-7));
            print(
                    "%12d %12.2f %16.1f %12d",
                    found.result.size(),
                    found.seconds,
                    1000 * found.seconds / found.result.size(),
                    found.result.get(0).vents());
        }
    }

    private static void againstCubes(boolean large) {
        print("against labelling cubes of the same width, 1 million triangles");
        print("%12s %12s %12s %12s", "cube mm", "cubes s", "pockets s", "cubes/pockets");
        List<double[]> corners = new ArrayList<>();
        List<int[]> triangles = new ArrayList<>();
        shape(708, corners, triangles);
        Mesh mesh = read(stl(corners, triangles));
        for (double cube : large ? new double[] {2, 1, 0.5} : new double[] {2, 1}) {
            int along = (int) Math.round(2 * RADIUS_MM * 1.1 / cube);
            Timed<Double> cubes =
                    once(() -> Voxels.trapped(corners, triangles, corners.get(corners.size() / 2), along));
            Timed<Trapped> trapped = best(() -> pocketsOf(mesh, cube * MM));
            print("%12.2f %12.2f %12.3f %12.1f", cube, cubes.seconds, trapped.seconds, cubes.seconds / trapped.seconds);
        }
    }

    private static Trapped pocketsOf(Mesh mesh, double columnM) {
        Setup setup = Setup.of(Domain.CAVITY).withIgnored(1e-9).withResolution(columnM);
        double[] side = point(0.5, 0);
        Vec3 vent = new Vec3(side[0], side[1], side[2]).times(MM);
        return Pockets.find(mesh, setup.withVents(List.of(vent)));
    }

    private static Mesh read(byte[] file) {
        return MeshReader.read(new ByteArrayInputStream(file), "bench.stl", Limits.USUAL, MM);
    }

    /** A point of the ball: latitude from 0 at the bottom to 1 at the top, longitude from 0 to 1. */
    private static double[] point(double latitude, double longitude) {
        double theta = Math.PI * latitude;
        double phi = 2 * Math.PI * longitude;
        double r = RADIUS_MM * (1 + 0.06 * Math.sin(9 * theta) * Math.sin(7 * phi));
        double ring = latitude == 0 || latitude == 1 ? 0 : r * Math.sin(theta);
        return new double[] {ring * Math.cos(phi), ring * Math.sin(phi), -r * Math.cos(theta)};
    }

    private static void shape(int segments, List<double[]> corners, List<int[]> triangles) {
        int rows = segments;
        for (int i = 0; i <= rows; i++) {
            for (int j = 0; j < segments; j++) {
                corners.add(point((double) i / rows, (double) j / segments));
            }
        }
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < segments; j++) {
                int a = i * segments + j;
                int b = i * segments + (j + 1) % segments;
                if (i > 0) {
                    triangles.add(new int[] {a, b, b + segments});
                }
                if (i < rows - 1) {
                    triangles.add(new int[] {a, b + segments, a + segments});
                }
            }
        }
    }

    private static byte[] file(int segments) {
        List<double[]> corners = new ArrayList<>();
        List<int[]> triangles = new ArrayList<>();
        shape(segments, corners, triangles);
        return stl(corners, triangles);
    }

    private static byte[] overlapping(int segments) {
        List<double[]> corners = new ArrayList<>();
        List<int[]> triangles = new ArrayList<>();
        shape(segments, corners, triangles);
        int first = corners.size();
        int count = triangles.size();
        for (int i = 0; i < first; i++) {
            double[] c = corners.get(i);
            corners.add(new double[] {40 + c[0] * 0.3, 20 + c[1] * 0.3, 110 + c[2] * 0.3});
        }
        for (int i = 0; i < count; i++) {
            int[] t = triangles.get(i);
            triangles.add(new int[] {t[0] + first, t[1] + first, t[2] + first});
        }
        return stl(corners, triangles);
    }

    private static byte[] stl(List<double[]> corners, List<int[]> triangles) {
        ByteBuffer out = ByteBuffer.allocate(84 + 50 * triangles.size()).order(ByteOrder.LITTLE_ENDIAN);
        out.position(80);
        out.putInt(triangles.size());
        for (int[] t : triangles) {
            out.putFloat(0).putFloat(0).putFloat(0);
            for (int v : t) {
                for (double x : corners.get(v)) {
                    out.putFloat((float) x);
                }
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    private record Timed<T>(T result, double seconds) {}

    private static <T> Timed<T> once(Supplier<T> work) {
        long start = System.nanoTime();
        T result = work.get();
        return new Timed<>(result, (System.nanoTime() - start) / 1e9);
    }

    private static <T> Timed<T> best(Supplier<T> work) {
        Timed<T> best = once(work);
        for (int i = 1; i < RUNS; i++) {
            Timed<T> next = once(work);
            best = next.seconds < best.seconds ? next : best;
        }
        return best;
    }

    private static double heldMiB() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / BYTES_PER_MIB;
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
