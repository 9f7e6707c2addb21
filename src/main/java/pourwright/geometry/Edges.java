package pourwright.geometry;

import java.util.Arrays;

/**
 * The edges of a set of triangles, sorted. Each use of an edge by a triangle is a half-edge.
 * A surface is closed when every edge is used as often one way as the other.
 */
final class Edges {
    final int[] firstNeighbour;
    final int[] neighbours;
    /** Edges that are not used equally often both ways. */
    int open;
    /** Edges used by exactly two triangles, both the same way: one of the two is turned over. */
    int sameWay;
    /** Edges used by more than two triangles. */
    int manyFaced;
    /** For each half-edge, the lower vertex's bucket in {@link #half}. */
    final int[] firstHalf;
    /** Half-edges by lower vertex: other vertex, then 2 x triangle corner + (1 when it runs from high to low). */
    final long[] half;

    Edges(int vertices, int[] triangles, int count) {
        firstHalf = new int[vertices + 1];
        for (int i = 0; i < 3 * count; i++) {
            firstHalf[Math.min(triangles[i], triangles[next(i)]) + 1]++;
        }
        for (int v = 0; v < vertices; v++) {
            firstHalf[v + 1] += firstHalf[v];
        }
        half = new long[3 * count];
        int[] fill = Arrays.copyOf(firstHalf, vertices);
        for (int i = 0; i < 3 * count; i++) {
            int from = triangles[i];
            int to = triangles[next(i)];
            boolean down = from > to;
            half[fill[down ? to : from]++] = ((long) (down ? from : to) << 32) | (2L * i + (down ? 1 : 0));
        }
        int[] degree = new int[vertices + 1];
        for (int v = 0; v < vertices; v++) {
            Arrays.sort(half, firstHalf[v], firstHalf[v + 1]);
            for (int at = firstHalf[v]; at < firstHalf[v + 1]; at = groupEnd(at, firstHalf[v + 1])) {
                look(at, groupEnd(at, firstHalf[v + 1]));
                degree[v + 1]++;
                degree[other(at) + 1]++;
            }
        }
        for (int v = 0; v < vertices; v++) {
            degree[v + 1] += degree[v];
        }
        firstNeighbour = degree;
        neighbours = new int[degree[vertices]];
        int[] put = Arrays.copyOf(degree, vertices);
        for (int v = 0; v < vertices; v++) {
            for (int at = firstHalf[v]; at < firstHalf[v + 1]; at = groupEnd(at, firstHalf[v + 1])) {
                int w = other(at);
                neighbours[put[v]++] = w;
                neighbours[put[w]++] = v;
            }
        }
    }

    /** The half-edge that follows in the same triangle. */
    static int next(int corner) {
        return corner % 3 == 2 ? corner - 2 : corner + 1;
    }

    int other(int at) {
        return (int) (half[at] >>> 32);
    }

    int corner(int at) {
        return (int) (half[at] & 0xFFFFFFFFL) >>> 1;
    }

    boolean down(int at) {
        return (half[at] & 1) == 1;
    }

    /** Where the half-edges of the same edge end. */
    int groupEnd(int from, int limit) {
        int to = from + 1;
        while (to < limit && other(to) == other(from)) {
            to++;
        }
        return to;
    }

    /** Uses one way less uses the other way. */
    int balance(int from, int to) {
        int balance = 0;
        for (int at = from; at < to; at++) {
            balance += down(at) ? -1 : 1;
        }
        return balance;
    }

    private void look(int from, int to) {
        int balance = balance(from, to);
        if (balance != 0) {
            open++;
        }
        if (to - from == 2 && balance != 0) {
            sameWay++;
        }
        if (to - from > 2) {
            manyFaced++;
        }
    }
}
