package pourwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes a checked mesh from the triangles of a file. Repairs only what has one answer, and says each repair. */
final class MeshBuilder {
    /** Longest part that is served; beyond it the unit is surely wrong. */
    private static final double LARGEST_M = 1e5;

    private static final double UNUSUALLY_LARGE_M = 20;
    private static final double UNUSUALLY_SMALL_M = 0.001;
    /** Offset over size from which 32-bit numbers leave fewer than about four digits for the part itself. */
    private static final double FAR_OFFSET = 2000;

    private final List<String> notes = new ArrayList<>();
    private double[] xyz;
    private int[] triangles;
    private Vec3 low = new Vec3(0, 0, 0);
    private Vec3 high = new Vec3(0, 0, 0);
    private Vec3 origin = new Vec3(0, 0, 0);

    private MeshBuilder() {}

    static Mesh build(Soup soup, double metresPerUnit) {
        return new MeshBuilder().mesh(soup, metresPerUnit);
    }

    private Mesh mesh(Soup soup, double metresPerUnit) {
        if (!(metresPerUnit > 0) || Double.isInfinite(metresPerUnit)) {
            throw new MeshFault("The length of a unit must be above zero.");
        }
        notes.addAll(soup.notes);
        place(soup, metresPerUnit);
        Canonical order = Canonical.of(soup, xyz);
        xyz = order.xyz;
        triangles = order.triangles;
        noteCanonical(order);
        Closing closing = new Closing(xyz, triangles, origin, noise());
        triangles = closing.triangles;
        notes.addAll(closing.notes);
        if (triangles.length < 12) {
            throw new MeshFault(
                    "The mesh has " + triangles.length / 3 + " triangles with area; a closed part needs at least 4.");
        }
        Bvh boxes = new Bvh(xyz, triangles);
        int crossings = SelfCrossing.count(xyz, triangles, boxes, closing.closed, noise());
        Shells shells = Shells.sort(xyz, triangles, boxes, crossings == 0, noise());
        notes.addAll(shells.notes);
        boolean fewer = shells.triangles.length != triangles.length;
        triangles = shells.triangles;
        if (fewer) {
            boxes = new Bvh(xyz, triangles);
        }
        Edges edges = new Edges(vertexCount(), triangles, triangles.length / 3);
        noteCrossings(crossings, edges);
        MeshReport report = new MeshReport(
                triangles.length / 3,
                vertexCount(),
                soup.pointsGiven() - soup.vertices(),
                order.dropped,
                flat(),
                order.doubled,
                closing.flipped + shells.flipped,
                closing.split,
                edges.manyFaced,
                shells.count,
                shells.buried,
                crossings,
                low,
                high,
                shells.volumeM3,
                area(),
                notes);
        return new Mesh(xyz, triangles, edges, boxes, origin, report);
    }

    private int vertexCount() {
        return xyz.length / 3;
    }

    private void place(Soup soup, double scale) {
        int count = soup.vertices();
        xyz = new double[3 * count];
        double[] least = new double[3];
        double[] most = new double[3];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (int v = 0; v < count; v++) {
            for (int axis = 0; axis < 3; axis++) {
                double value = soup.coordinate(v, axis) * scale;
                xyz[3 * v + axis] = value;
                least[axis] = Math.min(least[axis], value);
                most[axis] = Math.max(most[axis], value);
            }
        }
        if (count == 0) {
            throw new MeshFault("The mesh has no triangle.");
        }
        low = new Vec3(least[0], least[1], least[2]);
        high = new Vec3(most[0], most[1], most[2]);
        origin = low.plus(high).times(0.5);
        for (int v = 0; v < count; v++) {
            xyz[3 * v] -= origin.x();
            xyz[3 * v + 1] -= origin.y();
            xyz[3 * v + 2] -= origin.z();
        }
        judgeSize();
    }

    private void judgeSize() {
        Vec3 extent = high.minus(low);
        double longest = Math.max(extent.x(), Math.max(extent.y(), extent.z()));
        if (longest > LARGEST_M) {
            throw new MeshFault(
                    "The mesh is " + round(longest) + " m long, which is too large for a part; check the unit.");
        }
        if (longest == 0) {
            throw new MeshFault("The mesh has no size: all its vertices are at one place.");
        }
        if (longest > UNUSUALLY_LARGE_M || longest < UNUSUALLY_SMALL_M) {
            notes.add("The part is " + round(longest * 1000) + " mm long; check that the unit is right.");
        }
        double farthest = Math.max(low.length(), high.length());
        if (farthest > FAR_OFFSET * longest) {
            notes.add("The part lies far from the origin of its coordinates, so its shape has lost digits.");
        }
    }

    private static String round(double value) {
        return String.format(java.util.Locale.ROOT, "%.3g", value);
    }

    /** The step of 32-bit numbers of this size, m. */
    private double noise() {
        double most = 0;
        for (double value : new double[] {low.x(), low.y(), low.z(), high.x(), high.y(), high.z()}) {
            most = Math.max(most, Math.abs(value));
        }
        return 2.4e-7 * most;
    }

    private void noteCanonical(Canonical order) {
        if (order.dropped > 0) {
            notes.add(order.dropped + " triangles without area were left out.");
        }
        if (order.doubled > 0) {
            notes.add(order.doubled + " triangles that lie on an equal or opposite one were left out.");
        }
    }

    private void noteCrossings(int crossings, Edges edges) {
        if (crossings > 0) {
            String count = crossings >= SelfCrossing.MOST ? "At least " + crossings : String.valueOf(crossings);
            notes.add(count + " pairs of triangles cross or lie on each other; overlapping parts are taken as one.");
        }
        if (edges.manyFaced > 0) {
            notes.add(edges.manyFaced + " edges are shared by more than two triangles.");
        }
    }

    private int flat() {
        int count = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            double longest = Math.max(side(t, t + 1), Math.max(side(t + 1, t + 2), side(t + 2, t)));
            count += normal(t).length() <= 1e-12 * longest * longest ? 1 : 0;
        }
        return count;
    }

    private double side(int p, int q) {
        return corner(p).minus(corner(q)).length();
    }

    private double area() {
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            sum += normal(t).length() / 2;
        }
        return sum;
    }

    private Vec3 normal(int t) {
        Vec3 p = corner(t);
        return corner(t + 1).minus(p).cross(corner(t + 2).minus(p));
    }

    private Vec3 corner(int at) {
        int v = 3 * triangles[at];
        return new Vec3(xyz[v], xyz[v + 1], xyz[v + 2]);
    }
}
