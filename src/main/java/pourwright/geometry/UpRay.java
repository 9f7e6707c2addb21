package pourwright.geometry;

/** A ray straight up from a place: what it meets first, and how often it leaves the solid more than it enters it. */
final class UpRay {
    private final int[] triangles;
    private final Bvh boxes;
    private final Frame frame;
    private final double[] direction;
    private final double room;
    private final int[] stack = new int[80];
    private final double[] from = new double[3];
    /** The winding number just above the start: not zero inside the solid. */
    int winding;
    /** The first triangle met, or -1. */
    int nearest;
    /** Height of the first meeting. */
    double nearestH;

    /**
     * Prepares rays.
     *
     * @param room how far boxes are widened for rounding, m
     */
    UpRay(int[] triangles, Bvh boxes, Frame frame, double room) {
        this.triangles = triangles;
        this.boxes = boxes;
        this.frame = frame;
        this.room = room;
        this.direction = new double[] {frame.up.x(), frame.up.y(), frame.up.z()};
    }

    /**
     * Casts from a vertex. Triangles at this vertex and those no higher than it are passed over.
     *
     * @param group  for each vertex the group it belongs to; vertices of the start's own group are passed over; null for none
     */
    void cast(double[] xyz, int vertex, int[] group) {
        from[0] = xyz[3 * vertex];
        from[1] = xyz[3 * vertex + 1];
        from[2] = xyz[3 * vertex + 2];
        run(frame.a[vertex], frame.b[vertex], frame.h[vertex], vertex, group);
    }

    /** Casts from a place that is no vertex, counted from the mesh's origin. */
    void cast(Vec3 place) {
        from[0] = place.x();
        from[1] = place.y();
        from[2] = place.z();
        run(place.dot(frame.right), place.dot(frame.ahead), place.dot(frame.up), -1, null);
    }

    private void run(double pa, double pb, double ph, int vertex, int[] group) {
        winding = 0;
        nearest = -1;
        nearestH = Double.POSITIVE_INFINITY;
        int depth = 0;
        stack[depth++] = 1;
        while (depth > 0) {
            int node = stack[--depth];
            if (!boxes.meets(node, from, direction, room)) {
                continue;
            }
            if (boxes.isLeaf(node)) {
                for (int t = boxes.firstTriangle(node); t < boxes.endTriangle(node); t++) {
                    meet(t, pa, pb, ph, vertex, group);
                }
            } else {
                stack[depth++] = 2 * node;
                stack[depth++] = 2 * node + 1;
            }
        }
    }

    private void meet(int t, double pa, double pb, double ph, int vertex, int[] group) {
        int p = triangles[3 * t];
        int q = triangles[3 * t + 1];
        int r = triangles[3 * t + 2];
        if (p == vertex || q == vertex || r == vertex || (group != null && group[p] == group[vertex])) {
            return;
        }
        if (frame.h[p] <= ph && frame.h[q] <= ph && frame.h[r] <= ph) {
            return;
        }
        int turns = frame.winding(p, q, r, pa, pb);
        if (turns == 0) {
            return;
        }
        double height = frame.heightAt(p, q, r, pa, pb);
        if (height <= ph) {
            return;
        }
        winding += turns;
        if (height < nearestH) {
            nearestH = height;
            nearest = t;
        }
    }
}
