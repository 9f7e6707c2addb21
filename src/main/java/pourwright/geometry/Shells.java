package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of a surface that share no vertex: which are outside, which are voids, which lie buried in the solid. After
 * this all normals point out of the solid, as long as nothing crosses.
 */
final class Shells {
    /** Volume over size x surface from which a mesh is no mere sheet: far below any foil, far above rounding. */
    private static final double FLAT = 1e-10;

    final List<String> notes = new ArrayList<>();
    int[] triangles;
    int count;
    int buried;
    int flipped;
    double volumeM3;

    private Shells(int[] triangles) {
        this.triangles = triangles;
    }

    static Shells sort(double[] xyz, int[] triangles, Bvh boxes, boolean simple, double tolerance) {
        Shells result = new Shells(triangles);
        int[] shell = result.label(xyz.length / 3);
        double[] volume = result.volumes(xyz, shell);
        double total = 0;
        double sum = 0;
        for (double v : volume) {
            total += v;
            sum += Math.abs(v);
        }
        double size = diagonal(boxes);
        if (sum <= FLAT * size * result.area(xyz)) {
            throw new MeshFault("The mesh is flat: it holds no volume.");
        }
        if (total < 0) {
            result.flipAll(volume);
            total = -total;
        }
        if (simple && result.count > 1) {
            total = result.nest(xyz, shell, volume, boxes, tolerance);
        }
        result.volumeM3 = total;
        return result;
    }

    private static double diagonal(Bvh boxes) {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            double side = boxes.high(1, axis) - boxes.low(1, axis);
            sum += side * side;
        }
        return Math.sqrt(sum);
    }

    /** The shell of each vertex, counted from 0; -1 for a vertex of no triangle. */
    private int[] label(int vertices) {
        int[] parent = new int[vertices];
        for (int v = 0; v < vertices; v++) {
            parent[v] = v;
        }
        boolean[] used = new boolean[vertices];
        for (int t = 0; t < triangles.length; t += 3) {
            for (int i = 0; i < 3; i++) {
                used[triangles[t + i]] = true;
                int a = JoinTree.root(parent, triangles[t]);
                int b = JoinTree.root(parent, triangles[t + i]);
                parent[Math.max(a, b)] = Math.min(a, b);
            }
        }
        int[] label = new int[vertices];
        for (int v = 0; v < vertices; v++) {
            int root = JoinTree.root(parent, v);
            label[v] = !used[v] ? -1 : root == v ? count++ : label[root];
        }
        return label;
    }

    private double[] volumes(double[] xyz, int[] shell) {
        double[] volume = new double[count];
        for (int t = 0; t < triangles.length; t += 3) {
            int p = 3 * triangles[t];
            int q = 3 * triangles[t + 1];
            int r = 3 * triangles[t + 2];
            double cx = xyz[q + 1] * xyz[r + 2] - xyz[q + 2] * xyz[r + 1];
            double cy = xyz[q + 2] * xyz[r] - xyz[q] * xyz[r + 2];
            double cz = xyz[q] * xyz[r + 1] - xyz[q + 1] * xyz[r];
            volume[shell[triangles[t]]] += (xyz[p] * cx + xyz[p + 1] * cy + xyz[p + 2] * cz) / 6;
        }
        return volume;
    }

    private double area(double[] xyz) {
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            Vec3 p = at(xyz, triangles[t]);
            sum += at(xyz, triangles[t + 1])
                            .minus(p)
                            .cross(at(xyz, triangles[t + 2]).minus(p))
                            .length()
                    / 2;
        }
        return sum;
    }

    private static Vec3 at(double[] xyz, int v) {
        return new Vec3(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    private void flipAll(double[] volume) {
        for (int t = 0; t < triangles.length; t += 3) {
            turn(t);
        }
        for (int s = 0; s < volume.length; s++) {
            volume[s] = -volume[s];
        }
        flipped = triangles.length / 3;
        notes.add("The surface was inside out; all of it was turned over.");
    }

    private void turn(int t) {
        int swap = triangles[t + 1];
        triangles[t + 1] = triangles[t + 2];
        triangles[t + 2] = swap;
    }

    /** Leaves out shells with solid on both sides and turns over those whose outside is inside; gives the volume left. */
    private double nest(double[] xyz, int[] shell, double[] volume, Bvh boxes, double tolerance) {
        Frame frame = new Frame(xyz, Vec3.UP);
        int[] top = new int[count];
        java.util.Arrays.fill(top, -1);
        for (int v = 0; v < shell.length; v++) {
            if (shell[v] >= 0 && (top[shell[v]] < 0 || frame.h[v] > frame.h[top[shell[v]]])) {
                top[shell[v]] = v;
            }
        }
        UpRay ray = new UpRay(triangles, boxes, frame, tolerance);
        boolean[] leave = new boolean[count];
        boolean[] turn = new boolean[count];
        double total = 0;
        int turned = 0;
        for (int s = 0; s < count; s++) {
            ray.cast(xyz, top[s], shell);
            int outside = ray.winding;
            int inside = outside + (volume[s] < 0 ? -1 : 1);
            leave[s] = outside != 0 && inside != 0;
            turn[s] = !leave[s] && (outside != 0) == volume[s] > 0;
            buried += leave[s] ? 1 : 0;
            turned += turn[s] ? 1 : 0;
            total += leave[s] ? 0 : outside != 0 ? -Math.abs(volume[s]) : Math.abs(volume[s]);
        }
        int[] kept = new int[triangles.length];
        int used = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            int s = shell[triangles[t]];
            if (turn[s]) {
                turn(t);
                flipped++;
            }
            if (!leave[s]) {
                System.arraycopy(triangles, t, kept, used, 3);
                used += 3;
            }
        }
        triangles = java.util.Arrays.copyOf(kept, used);
        if (buried > 0) {
            notes.add(buried + " closed pieces lie inside solid and bound nothing; they were left out.");
        }
        if (turned > 0) {
            notes.add(turned + " closed pieces were inside out and were turned over.");
        }
        return total;
    }
}
