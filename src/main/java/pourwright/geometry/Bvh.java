package pourwright.geometry;

import java.util.Arrays;

/**
 * Boxes around groups of triangles in a complete binary tree, built bottom up over triangles that are already in the order
 * of a space-filling curve. Node 1 is the root, node i has children 2i and 2i + 1.
 */
final class Bvh {
    /** Triangles in a leaf: fewer would double the memory, more would test more triangles. */
    static final int LEAF = 4;

    final int leaves;
    private final float[] boxes;
    private final int count;

    Bvh(double[] xyz, int[] triangles) {
        count = triangles.length / 3;
        int needed = Math.max(1, (count + LEAF - 1) / LEAF);
        leaves = Integer.highestOneBit(2 * needed - 1);
        boxes = new float[6 * 2 * leaves];
        Arrays.fill(boxes, Float.POSITIVE_INFINITY);
        for (int node = leaves; node < 2 * leaves; node++) {
            for (int axis = 3; axis < 6; axis++) {
                boxes[6 * node + axis] = Float.NEGATIVE_INFINITY;
            }
        }
        for (int t = 0; t < count; t++) {
            int node = leaves + t / LEAF;
            for (int corner = 0; corner < 3; corner++) {
                include(6 * node, xyz, 3 * triangles[3 * t + corner]);
            }
        }
        for (int node = leaves - 1; node >= 1; node--) {
            for (int axis = 0; axis < 3; axis++) {
                boxes[6 * node + axis] = Math.min(boxes[12 * node + axis], boxes[12 * node + 6 + axis]);
                boxes[6 * node + 3 + axis] = Math.max(boxes[12 * node + 3 + axis], boxes[12 * node + 9 + axis]);
            }
        }
    }

    /** Rounded outwards, so that a box of short numbers surely holds its triangles. */
    private void include(int box, double[] xyz, int vertex) {
        for (int axis = 0; axis < 3; axis++) {
            float value = (float) xyz[vertex + axis];
            boxes[box + axis] = Math.min(boxes[box + axis], Math.nextDown(value));
            boxes[box + 3 + axis] = Math.max(boxes[box + 3 + axis], Math.nextUp(value));
        }
    }

    int firstTriangle(int leafNode) {
        return (leafNode - leaves) * LEAF;
    }

    int endTriangle(int leafNode) {
        return Math.min(count, firstTriangle(leafNode) + LEAF);
    }

    double low(int node, int axis) {
        return boxes[6 * node + axis];
    }

    double high(int node, int axis) {
        return boxes[6 * node + 3 + axis];
    }

    boolean isLeaf(int node) {
        return node >= leaves;
    }

    boolean overlap(int a, int b) {
        int p = 6 * a;
        int q = 6 * b;
        return boxes[p] <= boxes[q + 3]
                && boxes[q] <= boxes[p + 3]
                && boxes[p + 1] <= boxes[q + 4]
                && boxes[q + 1] <= boxes[p + 4]
                && boxes[p + 2] <= boxes[q + 5]
                && boxes[q + 2] <= boxes[p + 5];
    }

    /** Square of the distance from a point to a box; infinite for an empty box. */
    double distanceSquared(int node, Vec3 p) {
        double dx = Math.max(0, Math.max(low(node, 0) - p.x(), p.x() - high(node, 0)));
        double dy = Math.max(0, Math.max(low(node, 1) - p.y(), p.y() - high(node, 1)));
        double dz = Math.max(0, Math.max(low(node, 2) - p.z(), p.z() - high(node, 2)));
        return dx * dx + dy * dy + dz * dz;
    }

    /** Whether the ray from a point meets a box, with a little room for rounding. */
    boolean meets(int node, double[] from, double[] direction, double room) {
        double enter = 0;
        double leave = Double.POSITIVE_INFINITY;
        for (int axis = 0; axis < 3; axis++) {
            double low = boxes[6 * node + axis] - room - from[axis];
            double high = boxes[6 * node + 3 + axis] + room - from[axis];
            if (Math.abs(direction[axis]) < 1e-12) {
                if (low > 0 || high < 0) {
                    return false;
                }
                continue;
            }
            double a = low / direction[axis];
            double b = high / direction[axis];
            enter = Math.max(enter, Math.min(a, b));
            leave = Math.min(leave, Math.max(a, b));
        }
        return enter <= leave;
    }
}
