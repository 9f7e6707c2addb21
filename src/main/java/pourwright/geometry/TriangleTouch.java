package pourwright.geometry;

/**
 * Whether two triangles meet, by separating axes: the two normals and, when they are not in one plane, the nine products
 * of edges; in one plane, the normals of the six edges within it.
 * Source: the separating axis theorem for convex bodies, as in C. Ericson, Real-Time Collision Detection, 2005.
 */
final class TriangleTouch {
    /** Sine of the angle below which two edges count as parallel: their product then says nothing. */
    private static final double PARALLEL = 1e-9;

    /** Sine of the angle below which two triangles lie in one plane. */
    private static final double ONE_PLANE = 1e-6;

    private final double[] xyz;
    private final double[] p = new double[9];
    private final double[] q = new double[9];
    private final double[] axis = new double[3];
    private final double[] edgesP = new double[9];
    private final double[] edgesQ = new double[9];
    private final double[] normalP = new double[3];
    private final double[] normalQ = new double[3];

    TriangleTouch(double[] xyz) {
        this.xyz = xyz;
    }

    /** Whether the triangles overlap, or come nearer than a tolerance along every axis tried; below zero: overlap by more. */
    boolean test(int[] triangles, int a, int b, double tolerance) {
        load(triangles, a, p, edgesP, normalP);
        load(triangles, b, q, edgesQ, normalQ);
        if (noArea(normalP, edgesP) || noArea(normalQ, edgesQ)) {
            return false;
        }
        if (apart(normalP, tolerance) || apart(normalQ, tolerance)) {
            return false;
        }
        cross(normalP, 0, normalQ, 0, axis);
        boolean onePlane = square(axis, 0) <= ONE_PLANE * ONE_PLANE * square(normalP, 0) * square(normalQ, 0);
        // Neighbours in one plane come as near as a thin triangle between them; only a true overlap counts there.
        double room = onePlane ? -Math.abs(tolerance) : tolerance;
        for (int i = 0; i < 3; i++) {
            cross(normalP, 0, edgesP, 3 * i, axis);
            if (apart(axis, room)) {
                return false;
            }
            cross(normalQ, 0, edgesQ, 3 * i, axis);
            if (apart(axis, room)) {
                return false;
            }
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                cross(edgesP, 3 * i, edgesQ, 3 * j, axis);
                if (!parallel(i, j) && apart(axis, tolerance)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A triangle without area bounds nothing, and its missing normal would leave axes untried. */
    private static boolean noArea(double[] normal, double[] edges) {
        double longest = Math.max(square(edges, 0), Math.max(square(edges, 3), square(edges, 6)));
        return square(normal, 0) <= PARALLEL * PARALLEL * longest * longest;
    }

    private boolean parallel(int i, int j) {
        double product = square(axis, 0);
        return product <= PARALLEL * PARALLEL * square(edgesP, 3 * i) * square(edgesQ, 3 * j);
    }

    private static double square(double[] v, int at) {
        return v[at] * v[at] + v[at + 1] * v[at + 1] + v[at + 2] * v[at + 2];
    }

    private void load(int[] triangles, int t, double[] corners, double[] edges, double[] normal) {
        for (int i = 0; i < 3; i++) {
            int v = 3 * triangles[3 * t + i];
            corners[3 * i] = xyz[v];
            corners[3 * i + 1] = xyz[v + 1];
            corners[3 * i + 2] = xyz[v + 2];
        }
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                edges[3 * i + k] = corners[3 * ((i + 1) % 3) + k] - corners[3 * i + k];
            }
        }
        cross(edges, 0, edges, 3, normal);
    }

    private static void cross(double[] a, int i, double[] b, int j, double[] out) {
        double x = a[i + 1] * b[j + 2] - a[i + 2] * b[j + 1];
        double y = a[i + 2] * b[j] - a[i] * b[j + 2];
        double z = a[i] * b[j + 1] - a[i + 1] * b[j];
        out[0] = x;
        out[1] = y;
        out[2] = z;
    }

    private boolean apart(double[] along, double gap) {
        double length = Math.sqrt(square(along, 0));
        if (length == 0) {
            return false;
        }
        double lowP = Double.POSITIVE_INFINITY;
        double highP = Double.NEGATIVE_INFINITY;
        double lowQ = Double.POSITIVE_INFINITY;
        double highQ = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 9; i += 3) {
            double a = p[i] * along[0] + p[i + 1] * along[1] + p[i + 2] * along[2];
            double b = q[i] * along[0] + q[i + 1] * along[1] + q[i + 2] * along[2];
            lowP = Math.min(lowP, a);
            highP = Math.max(highP, a);
            lowQ = Math.min(lowQ, b);
            highQ = Math.max(highQ, b);
        }
        double room = gap * length;
        return highP < lowQ - room || highQ < lowP - room;
    }
}
