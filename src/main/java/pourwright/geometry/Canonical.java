package pourwright.geometry;

import java.util.Arrays;

/**
 * Vertices and triangles in an order that depends on the shape only: vertices along a space-filling curve, triangles by
 * their vertices. Triangles with two equal corners go; of equal triangles one stays; opposite ones cancel.
 */
final class Canonical {
    private static final int CURVE_BITS = 10;

    final double[] xyz;
    final int[] triangles;
    int dropped;
    int doubled;

    private Canonical(double[] xyz, int[] triangles) {
        this.xyz = xyz;
        this.triangles = triangles;
    }

    static Canonical of(Soup soup, double[] xyz) {
        int[] rank = ranks(xyz);
        double[] sorted = new double[xyz.length];
        for (int v = 0; v < rank.length; v++) {
            System.arraycopy(xyz, 3 * v, sorted, 3 * rank[v], 3);
        }
        int count = soup.triangleCount();
        int[] corners = new int[3 * count];
        int used = 0;
        for (int t = 0; t < count; t++) {
            int a = rank[soup.corner(t, 0)];
            int b = rank[soup.corner(t, 1)];
            int c = rank[soup.corner(t, 2)];
            if (a == b || b == c || a == c) {
                continue;
            }
            // The lowest vertex leads; turning the corners on does not turn the triangle over.
            boolean second = b < a && b < c;
            boolean third = c < a && c < b;
            corners[used++] = second ? b : third ? c : a;
            corners[used++] = second ? c : third ? a : b;
            corners[used++] = second ? a : third ? b : c;
        }
        int kept = used / 3;
        int[] order = sort(corners, kept, rank.length);
        int[] out = new int[used];
        int left = merge(corners, order, out);
        Canonical result = new Canonical(sorted, Arrays.copyOf(out, 3 * left));
        result.dropped = count - kept;
        result.doubled = kept - left;
        return result;
    }

    private static int[] ranks(double[] xyz) {
        int count = xyz.length / 3;
        double[] low = new double[3];
        double[] step = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int v = axis; v < xyz.length; v += 3) {
                least = Math.min(least, xyz[v]);
                most = Math.max(most, xyz[v]);
            }
            low[axis] = least;
            step[axis] = most > least ? ((1 << CURVE_BITS) - 1) / (most - least) : 0;
        }
        long[] keys = new long[count];
        for (int v = 0; v < count; v++) {
            long curve = 0;
            for (int axis = 0; axis < 3; axis++) {
                curve |= spread((int) ((xyz[3 * v + axis] - low[axis]) * step[axis])) << axis;
            }
            long place = Soup.mix(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]) >>> (1 + 3 * CURVE_BITS);
            keys[v] = (curve << (63 - 3 * CURVE_BITS)) | place;
        }
        long[] sorted = keys.clone();
        Arrays.parallelSort(sorted);
        int[] rank = new int[count];
        boolean[] taken = new boolean[count];
        for (int v = 0; v < count; v++) {
            int at = Arrays.binarySearch(sorted, keys[v]);
            while (at > 0 && sorted[at - 1] == keys[v]) {
                at--;
            }
            while (taken[at]) {
                at++;
            }
            taken[at] = true;
            rank[v] = at;
        }
        return rank;
    }

    /** Puts two empty bits between the bits of a number, for the Z-order curve. */
    private static long spread(int value) {
        long bits = value & 0x3FFL;
        bits = (bits | (bits << 16)) & 0x30000FFL;
        bits = (bits | (bits << 8)) & 0x300F00FL;
        bits = (bits | (bits << 4)) & 0x30C30C3L;
        return (bits | (bits << 2)) & 0x9249249L;
    }

    private static int[] sort(int[] corners, int count, int vertices) {
        int[] order = new int[count];
        for (int t = 0; t < count; t++) {
            order[t] = t;
        }
        int[] next = new int[count];
        for (int key = 2; key >= 0; key--) {
            int[] first = new int[vertices + 1];
            for (int t = 0; t < count; t++) {
                first[key(corners, t, key) + 1]++;
            }
            for (int v = 0; v < vertices; v++) {
                first[v + 1] += first[v];
            }
            for (int i = 0; i < count; i++) {
                next[first[key(corners, order[i], key)]++] = order[i];
            }
            int[] swap = order;
            order = next;
            next = swap;
        }
        return order;
    }

    private static int key(int[] corners, int t, int key) {
        int b = corners[3 * t + 1];
        int c = corners[3 * t + 2];
        return key == 0 ? corners[3 * t] : key == 1 ? Math.min(b, c) : Math.max(b, c);
    }

    private static int merge(int[] corners, int[] order, int[] out) {
        int used = 0;
        int from = 0;
        while (from < order.length) {
            int to = from;
            int net = 0;
            do {
                net += corners[3 * order[to] + 1] < corners[3 * order[to] + 2] ? 1 : -1;
                to++;
            } while (to < order.length && same(corners, order[from], order[to]));
            if (net != 0) {
                int b = key(corners, order[from], 1);
                int c = key(corners, order[from], 2);
                out[3 * used] = corners[3 * order[from]];
                out[3 * used + 1] = net > 0 ? b : c;
                out[3 * used + 2] = net > 0 ? c : b;
                used++;
            }
            from = to;
        }
        return used;
    }

    private static boolean same(int[] corners, int s, int t) {
        return key(corners, s, 0) == key(corners, t, 0)
                && key(corners, s, 1) == key(corners, t, 1)
                && key(corners, s, 2) == key(corners, t, 2);
    }
}
