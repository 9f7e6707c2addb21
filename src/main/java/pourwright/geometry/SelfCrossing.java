package pourwright.geometry;

/**
 * Pairs of triangles that cross, touch or lie on each other without sharing a vertex. Pairs that share a vertex are not
 * looked at: next to each other they always touch.
 */
final class SelfCrossing {
    /** Counting stops here; one pair already decides which way pockets are found. */
    static final int MOST = 1000;

    private final double[] xyz;
    private final int[] triangles;
    private final Bvh boxes;
    private final TriangleTouch touch;
    private final Edges edges;
    private final double tolerance;
    private int found;

    private SelfCrossing(double[] xyz, int[] triangles, Bvh boxes, Edges edges, double tolerance) {
        this.xyz = xyz;
        this.triangles = triangles;
        this.boxes = boxes;
        this.touch = new TriangleTouch(xyz);
        this.edges = edges;
        this.tolerance = tolerance;
    }

    /**
     * Counts pairs, at most {@link #MOST}.
     *
     * @param tolerance distance below which surfaces count as touching, in the unit of the coordinates
     */
    static int count(double[] xyz, int[] triangles, Bvh boxes, Edges edges, double tolerance) {
        SelfCrossing search = new SelfCrossing(xyz, triangles, boxes, edges, tolerance);
        search.within(1);
        return search.found;
    }

    private void within(int node) {
        if (found >= MOST) {
            return;
        }
        if (boxes.isLeaf(node)) {
            for (int a = boxes.firstTriangle(node); a < boxes.endTriangle(node); a++) {
                for (int b = a + 1; b < boxes.endTriangle(node); b++) {
                    pair(a, b);
                }
            }
            return;
        }
        within(2 * node);
        within(2 * node + 1);
        between(2 * node, 2 * node + 1);
    }

    private void between(int p, int q) {
        if (found >= MOST || !boxes.overlap(p, q)) {
            return;
        }
        if (boxes.isLeaf(p)) {
            for (int a = boxes.firstTriangle(p); a < boxes.endTriangle(p); a++) {
                for (int b = boxes.firstTriangle(q); b < boxes.endTriangle(q); b++) {
                    pair(a, b);
                }
            }
            return;
        }
        between(2 * p, 2 * q);
        between(2 * p, 2 * q + 1);
        between(2 * p + 1, 2 * q);
        between(2 * p + 1, 2 * q + 1);
    }

    private void pair(int a, int b) {
        if (found >= MOST) {
            return;
        }
        for (int i = 0; i < 3; i++) {
            int v = triangles[3 * a + i];
            if (v == triangles[3 * b] || v == triangles[3 * b + 1] || v == triangles[3 * b + 2]) {
                return;
            }
        }
        if (boxesApart(a, b)) {
            return;
        }
        if (!touch.test(triangles, a, b, tolerance)) {
            return;
        }
        // Neighbours one vertex apart may touch where the surface is finely divided; only those that truly cross count.
        if (!neighbours(a, b) || touch.test(triangles, a, b, -tolerance)) {
            found++;
        }
    }

    private boolean neighbours(int a, int b) {
        for (int i = 3 * a; i < 3 * a + 3; i++) {
            int v = triangles[i];
            for (int at = edges.firstNeighbour[v]; at < edges.firstNeighbour[v + 1]; at++) {
                int w = edges.neighbours[at];
                if (w == triangles[3 * b] || w == triangles[3 * b + 1] || w == triangles[3 * b + 2]) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean boxesApart(int a, int b) {
        for (int axis = 0; axis < 3; axis++) {
            double a0 = xyz[3 * triangles[3 * a] + axis];
            double a1 = xyz[3 * triangles[3 * a + 1] + axis];
            double a2 = xyz[3 * triangles[3 * a + 2] + axis];
            double b0 = xyz[3 * triangles[3 * b] + axis];
            double b1 = xyz[3 * triangles[3 * b + 1] + axis];
            double b2 = xyz[3 * triangles[3 * b + 2] + axis];
            if (Math.max(a0, Math.max(a1, a2)) < Math.min(b0, Math.min(b1, b2))
                    || Math.max(b0, Math.max(b1, b2)) < Math.min(a0, Math.min(a1, a2))) {
                return true;
            }
        }
        return false;
    }
}
