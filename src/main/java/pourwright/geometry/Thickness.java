package pourwright.geometry;

/**
 * The thinnest place of a solid, by rays from the middle of triangles straight inwards to the wall across. An estimate: only
 * so many rays are cast, and only walls that roughly face each other count, so that corners do not.
 */
final class Thickness {
    private static final int RAYS = 2000;
    /** Cosine of the angle up to which the far wall faces the near one: 45 degrees. */
    private static final double FACING = 0.7;

    private final Mesh mesh;
    private final double room;
    private double nearest;
    private int hit;

    Thickness(Mesh mesh) {
        this.mesh = mesh;
        this.room = mesh.noiseM();
    }

    static double thinnestM(Mesh mesh) {
        return new Thickness(mesh).run();
    }

    private double run() {
        int step = Math.max(1, mesh.triangleCount() / RAYS);
        double thinnest = Double.POSITIVE_INFINITY;
        for (int t = 0; t < mesh.triangleCount(); t += step) {
            Vec3 normal = normal(t);
            double length = normal.length();
            if (length == 0) {
                continue;
            }
            Vec3 inwards = normal.times(-1 / length);
            cast(middle(t), inwards, t);
            if (hit >= 0) {
                Vec3 far = normal(hit);
                if (far.dot(inwards) >= FACING * far.length()) {
                    thinnest = Math.min(thinnest, nearest);
                }
            }
        }
        return thinnest;
    }

    /** How far it is from a place along a direction to the surface, leaving out one triangle, m; not a number if never. */
    double across(Vec3 from, Vec3 along, int self) {
        cast(from, along, self);
        return hit < 0 ? Double.NaN : nearest;
    }

    Vec3 middle(int t) {
        return corner(t, 0).plus(corner(t, 1)).plus(corner(t, 2)).times(1.0 / 3);
    }

    private Vec3 corner(int t, int i) {
        return mesh.local(mesh.triangles[3 * t + i]);
    }

    Vec3 normal(int t) {
        Vec3 p = corner(t, 0);
        return corner(t, 1).minus(p).cross(corner(t, 2).minus(p));
    }

    private void cast(Vec3 from, Vec3 along, int self) {
        nearest = Double.POSITIVE_INFINITY;
        hit = -1;
        double[] start = {from.x(), from.y(), from.z()};
        double[] direction = {along.x(), along.y(), along.z()};
        int[] stack = new int[80];
        int depth = 0;
        stack[depth++] = 1;
        while (depth > 0) {
            int node = stack[--depth];
            if (!mesh.boxes.meets(node, start, direction, room)) {
                continue;
            }
            if (!mesh.boxes.isLeaf(node)) {
                stack[depth++] = 2 * node;
                stack[depth++] = 2 * node + 1;
                continue;
            }
            for (int t = mesh.boxes.firstTriangle(node); t < mesh.boxes.endTriangle(node); t++) {
                if (t != self) {
                    meet(t, from, along);
                }
            }
        }
    }

    /** Source: T. Moeller, B. Trumbore, Fast, minimum storage ray-triangle intersection, Journal of Graphics Tools 2, 1997. */
    private void meet(int t, Vec3 from, Vec3 along) {
        Vec3 p = corner(t, 0);
        Vec3 e = corner(t, 1).minus(p);
        Vec3 f = corner(t, 2).minus(p);
        Vec3 across = along.cross(f);
        double det = e.dot(across);
        if (det == 0) {
            return;
        }
        Vec3 offset = from.minus(p);
        double u = offset.dot(across) / det;
        Vec3 turned = offset.cross(e);
        double v = along.dot(turned) / det;
        double distance = f.dot(turned) / det;
        if (u >= 0 && v >= 0 && u + v <= 1 && distance > room && distance < nearest) {
            nearest = distance;
            hit = t;
        }
    }
}
