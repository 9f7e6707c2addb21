package pourwright.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The place on the surface that explains a join seen between columns. Columns straddle a sharp rim or valley and see the
 * join too high. It truly happens at a point where an edge of one part pierces another part, on a sharp edge, or at a vertex.
 */
final class SealSearch {
    /** Half-width of the search in columns: the two columns of the join and what lies beside them. */
    private static final double REACH = 1.6;

    /** Cosine of the angle between two faces from which their edge is sharp: 20 degrees. */
    private static final double SHARP = 0.94;

    /** With more triangles beside a join, the columns are too coarse for this mesh and the join stays as they see it. */
    private static final int MOST_NEAR = 4000;

    private final Mesh mesh;
    private final Frame frame;
    private final double cell;
    private final List<Integer> near = new ArrayList<>();
    double height;
    Vec3 place = Vec3.UP;

    SealSearch(Mesh mesh, Frame frame, double cell) {
        this.mesh = mesh;
        this.frame = frame;
        this.cell = cell;
    }

    /**
     * Looks for the place.
     *
     * @param ceiling triangle over the lower of the two columns; its slope says how far the join can lie below
     * @return whether one was found
     */
    boolean find(double a, double b, double h, int ceiling) {
        double drop = drop(ceiling);
        if (drop <= mesh.noiseM()) {
            return false;
        }
        near.clear();
        Vec3 centre = frame.right.times(a).plus(frame.ahead.times(b)).plus(frame.up.times(h));
        collect(1, centre, Math.sqrt(2 * square(REACH * cell) + drop * drop));
        height = Double.NEGATIVE_INFINITY;
        if (near.size() > MOST_NEAR) {
            return false;
        }
        double[] boxes = boxes();
        for (int i = 0; i < near.size(); i++) {
            for (int j = 0; j < near.size(); j++) {
                if (i != j && overlap(boxes, 6 * i, 6 * j)) {
                    pierce(near.get(i), near.get(j), a, b, h, drop);
                }
            }
        }
        if (height == Double.NEGATIVE_INFINITY) {
            creases(a, b, h, drop);
        }
        if (height == Double.NEGATIVE_INFINITY) {
            for (int t : near) {
                for (int i = 0; i < 3; i++) {
                    offer(mesh.local(mesh.triangles[3 * t + i]), a, b, h, drop);
                }
            }
        }
        return height > Double.NEGATIVE_INFINITY;
    }

    private static double square(double value) {
        return value * value;
    }

    private Vec3 normal(int t) {
        Vec3 p = mesh.local(mesh.triangles[3 * t]);
        return mesh.local(mesh.triangles[3 * t + 1])
                .minus(p)
                .cross(mesh.local(mesh.triangles[3 * t + 2]).minus(p));
    }

    private double[] boxes() {
        double[] boxes = new double[6 * near.size()];
        for (int i = 0; i < near.size(); i++) {
            for (int axis = 0; axis < 3; axis++) {
                double p = mesh.xyz[3 * mesh.triangles[3 * near.get(i)] + axis];
                double q = mesh.xyz[3 * mesh.triangles[3 * near.get(i) + 1] + axis];
                double r = mesh.xyz[3 * mesh.triangles[3 * near.get(i) + 2] + axis];
                boxes[6 * i + axis] = Math.min(p, Math.min(q, r));
                boxes[6 * i + 3 + axis] = Math.max(p, Math.max(q, r));
            }
        }
        return boxes;
    }

    private static boolean overlap(double[] boxes, int s, int t) {
        return boxes[s] <= boxes[t + 3]
                && boxes[t] <= boxes[s + 3]
                && boxes[s + 1] <= boxes[t + 4]
                && boxes[t + 1] <= boxes[s + 4]
                && boxes[s + 2] <= boxes[t + 5]
                && boxes[t + 2] <= boxes[s + 5];
    }

    /** Offers the highest points of sharp edges; the two triangles of an edge meet by its two vertices. */
    private void creases(double a, double b, double h, double drop) {
        Map<Long, Integer> first = new HashMap<>();
        for (int t : near) {
            for (int i = 0; i < 3; i++) {
                long p = mesh.triangles[3 * t + i];
                long q = mesh.triangles[3 * t + (i + 1) % 3];
                Integer other = first.putIfAbsent(Math.min(p, q) << 32 | Math.max(p, q), t);
                if (other != null) {
                    crease(other, t, a, b, h, drop);
                }
            }
        }
    }

    private void crease(int s, int t, double a, double b, double h, double drop) {
        int first = -1;
        int second = -1;
        for (int i = 0; i < 3; i++) {
            int v = mesh.triangles[3 * s + i];
            if (v == mesh.triangles[3 * t] || v == mesh.triangles[3 * t + 1] || v == mesh.triangles[3 * t + 2]) {
                second = first;
                first = v;
            }
        }
        if (second < 0) {
            return;
        }
        Vec3 n = normal(s);
        Vec3 m = normal(t);
        if (n.dot(m) > SHARP * n.length() * m.length()) {
            return;
        }
        Vec3 from = mesh.local(first);
        Vec3 along = mesh.local(second).minus(from);
        double[] range = {0, 1};
        clip(range, from.dot(frame.right) - a, along.dot(frame.right));
        clip(range, from.dot(frame.ahead) - b, along.dot(frame.ahead));
        if (range[0] <= range[1]) {
            Vec3 start = from.plus(along.times(range[0]));
            Vec3 end = from.plus(along.times(range[1]));
            offer(start.dot(frame.up) >= end.dot(frame.up) ? start : end, a, b, h, drop);
        }
    }

    /** Narrows a range of shares to where offset + share x step stays within reach. */
    private void clip(double[] range, double offset, double step) {
        double reach = REACH * cell * (1 - 1e-9);
        if (step == 0) {
            if (Math.abs(offset) > reach) {
                range[1] = -1;
            }
            return;
        }
        double p = (-reach - offset) / step;
        double q = (reach - offset) / step;
        range[0] = Math.max(range[0], Math.min(p, q));
        range[1] = Math.min(range[1], Math.max(p, q));
    }

    private double drop(int t) {
        Vec3 normal = normal(t);
        double up = Math.abs(normal.dot(frame.up));
        double side = Math.sqrt(Math.max(0, normal.dot(normal) - up * up));
        return up == 0 ? 3 * cell : Math.min(3 * cell, REACH * cell * side / up);
    }

    private void collect(int node, Vec3 centre, double reach) {
        if (mesh.boxes.distanceSquared(node, centre) > reach * reach) {
            return;
        }
        if (!mesh.boxes.isLeaf(node)) {
            collect(2 * node, centre, reach);
            collect(2 * node + 1, centre, reach);
            return;
        }
        for (int t = mesh.boxes.firstTriangle(node); t < mesh.boxes.endTriangle(node); t++) {
            near.add(t);
        }
    }

    /** Offers the points where the edges of one triangle pass through another that shares no vertex with it. */
    private void pierce(int s, int t, double a, double b, double h, double drop) {
        int[] corners = mesh.triangles;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                if (corners[3 * s + i] == corners[3 * t + j]) {
                    return;
                }
            }
        }
        Vec3 p = mesh.local(corners[3 * t]);
        Vec3 q = mesh.local(corners[3 * t + 1]);
        Vec3 r = mesh.local(corners[3 * t + 2]);
        Vec3 normal = q.minus(p).cross(r.minus(p));
        for (int i = 0; i < 3; i++) {
            Vec3 from = mesh.local(corners[3 * s + i]);
            Vec3 to = mesh.local(corners[3 * s + (i + 1) % 3]);
            double before = from.minus(p).dot(normal);
            double after = to.minus(p).dot(normal);
            if (before == after || before * after > 0) {
                continue;
            }
            Vec3 on = from.plus(to.minus(from).times(before / (before - after)));
            boolean within = q.minus(p).cross(on.minus(p)).dot(normal) >= 0
                    && r.minus(q).cross(on.minus(q)).dot(normal) >= 0
                    && p.minus(r).cross(on.minus(r)).dot(normal) >= 0;
            if (within) {
                offer(on, a, b, h, drop);
            }
        }
    }

    private void offer(Vec3 point, double a, double b, double h, double drop) {
        double up = point.dot(frame.up);
        boolean beside = Math.abs(point.dot(frame.right) - a) <= REACH * cell
                && Math.abs(point.dot(frame.ahead) - b) <= REACH * cell;
        if (beside && up <= h + mesh.noiseM() && up >= h - drop && up > height) {
            height = up;
            place = point;
        }
    }
}
