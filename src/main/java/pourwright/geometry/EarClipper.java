package pourwright.geometry;

/**
 * Cuts a polygon in space into triangles by taking ears off, so that concave polygons come out right.
 * Source: G. H. Meisters, Polygons have ears, American Mathematical Monthly 82, 1975.
 */
final class EarClipper {

    private EarClipper() {}

    /**
     * Cuts a polygon.
     *
     * @param xyz  coordinates of all vertices, three for each
     * @param ring the polygon's vertices in order
     * @return vertices, three for each triangle, the same way round
     */
    static int[] triangles(double[] xyz, int[] ring) {
        int count = ring.length;
        double[] u = new double[count];
        double[] v = new double[count];
        flatten(xyz, ring, u, v);
        int[] next = new int[count];
        int[] before = new int[count];
        for (int i = 0; i < count; i++) {
            next[i] = (i + 1) % count;
            before[i] = (i + count - 1) % count;
        }
        int[] out = new int[3 * (count - 2)];
        int used = 0;
        int left = count;
        int at = 0;
        int tried = 0;
        while (left > 3) {
            // When no proper ear is left, the polygon crosses itself: cut anyway, so that its edges stay matched.
            if (tried > left || isEar(u, v, next, before, at)) {
                out[used++] = ring[before[at]];
                out[used++] = ring[at];
                out[used++] = ring[next[at]];
                next[before[at]] = next[at];
                before[next[at]] = before[at];
                at = before[at];
                left--;
                tried = 0;
            } else {
                at = next[at];
                tried++;
            }
        }
        out[used++] = ring[before[at]];
        out[used++] = ring[at];
        out[used] = ring[next[at]];
        return out;
    }

    /** Lays the polygon into the coordinate plane it faces most, the same way round as seen from its front. */
    private static void flatten(double[] xyz, int[] ring, double[] u, double[] v) {
        double[] normal = new double[3];
        for (int i = 0; i < ring.length; i++) {
            int p = 3 * ring[i];
            int q = 3 * ring[(i + 1) % ring.length];
            for (int axis = 0; axis < 3; axis++) {
                int b = (axis + 1) % 3;
                int c = (axis + 2) % 3;
                normal[axis] += (xyz[p + b] - xyz[q + b]) * (xyz[p + c] + xyz[q + c] - 2 * xyz[3 * ring[0] + c]);
            }
        }
        int most = 0;
        for (int axis = 1; axis < 3; axis++) {
            if (Math.abs(normal[axis]) > Math.abs(normal[most])) {
                most = axis;
            }
        }
        int first = (most + 1) % 3;
        int second = (most + 2) % 3;
        double turn = normal[most] < 0 ? -1 : 1;
        for (int i = 0; i < ring.length; i++) {
            u[i] = xyz[3 * ring[i] + first];
            v[i] = turn * xyz[3 * ring[i] + second];
        }
    }

    private static boolean isEar(double[] u, double[] v, int[] next, int[] before, int at) {
        int a = before[at];
        int c = next[at];
        if (turn(u, v, a, at, c) <= 0) {
            return false;
        }
        for (int p = next[c]; p != a; p = next[p]) {
            if (turn(u, v, a, at, p) >= 0 && turn(u, v, at, c, p) >= 0 && turn(u, v, c, a, p) >= 0) {
                boolean corner = same(u, v, p, a) || same(u, v, p, at) || same(u, v, p, c);
                if (!corner) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean same(double[] u, double[] v, int p, int q) {
        return u[p] == u[q] && v[p] == v[q];
    }

    private static double turn(double[] u, double[] v, int a, int b, int c) {
        return (u[b] - u[a]) * (v[c] - v[a]) - (v[b] - v[a]) * (u[c] - u[a]);
    }
}
