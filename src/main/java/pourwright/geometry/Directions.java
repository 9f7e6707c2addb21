package pourwright.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Directions worth trying as up. */
public final class Directions {
    /** Parts stand on flat faces; so many of the largest are tried, each both ways. */
    private static final int FACES = 24;

    private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));
    private static final double STEPS = 500;

    private Directions() {}

    /** Whether a direction lies within an angle of an axis: for keeping a show face down, or a side from being up. */
    public static Predicate<Vec3> within(Vec3 axis, double degrees) {
        Vec3 unit = axis.unit();
        double cosine = Math.cos(Math.toRadians(degrees));
        return direction -> direction.unit().dot(unit) >= cosine;
    }

    /**
     * Directions spread evenly over the sphere. Source: the Fibonacci lattice, as in A. Gonzalez, Measurement of areas on a
     * sphere, Mathematical Geosciences 42, 2010.
     */
    static List<Vec3> sphere(int count) {
        List<Vec3> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double z = 1 - (2 * i + 1.0) / count;
            double r = Math.sqrt(1 - z * z);
            all.add(new Vec3(r * Math.cos(i * GOLDEN_ANGLE), r * Math.sin(i * GOLDEN_ANGLE), z));
        }
        return all;
    }

    /** The axes, and the normals of the largest flat faces, both ways. */
    static List<Vec3> ofFaces(Mesh mesh) {
        Map<List<Long>, double[]> faces = new HashMap<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            Vec3 p = mesh.local(mesh.triangles[3 * t]);
            Vec3 normal = mesh.local(mesh.triangles[3 * t + 1])
                    .minus(p)
                    .cross(mesh.local(mesh.triangles[3 * t + 2]).minus(p));
            double area = normal.length();
            if (area == 0) {
                continue;
            }
            Vec3 n = normal.times(1 / area);
            List<Long> key = List.of(Math.round(n.x() * STEPS), Math.round(n.y() * STEPS), Math.round(n.z() * STEPS));
            double[] sum = faces.computeIfAbsent(key, k -> new double[4]);
            sum[0] += area;
            sum[1] += normal.x();
            sum[2] += normal.y();
            sum[3] += normal.z();
        }
        List<Vec3> all = new ArrayList<>(List.of(
                new Vec3(0, 0, 1),
                new Vec3(0, 0, -1),
                new Vec3(1, 0, 0),
                new Vec3(-1, 0, 0),
                new Vec3(0, 1, 0),
                new Vec3(0, -1, 0)));
        faces.entrySet().stream()
                .sorted((e, f) -> {
                    int byArea = Double.compare(f.getValue()[0], e.getValue()[0]);
                    return byArea != 0
                            ? byArea
                            : e.getKey().toString().compareTo(f.getKey().toString());
                })
                .limit(FACES)
                .forEach(e -> {
                    double[] sum = e.getValue();
                    Vec3 n = new Vec3(sum[1], sum[2], sum[3]).unit();
                    addNew(all, n);
                    addNew(all, n.times(-1));
                });
        return all;
    }

    private static void addNew(List<Vec3> all, Vec3 direction) {
        if (all.stream().noneMatch(known -> known.dot(direction) > 1 - 1e-9)) {
            all.add(direction);
        }
    }
}
