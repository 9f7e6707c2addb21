package pourwright.geometry;

/** The point of a surface nearest to a place. */
final class Nearest {
    private final Mesh mesh;
    private Vec3 from = Vec3.UP;
    private double best;
    /** The triangle that holds the nearest point. */
    int triangle;
    /** The nearest point, counted from the mesh's origin, m. */
    Vec3 point = Vec3.UP;

    Nearest(Mesh mesh) {
        this.mesh = mesh;
    }

    /** Looks for the nearest point; gives its distance, m. */
    double find(Vec3 place) {
        from = place;
        best = Double.POSITIVE_INFINITY;
        triangle = -1;
        visit(1);
        return Math.sqrt(best);
    }

    private void visit(int node) {
        if (mesh.boxes.distanceSquared(node, from) >= best) {
            return;
        }
        if (mesh.boxes.isLeaf(node)) {
            for (int t = mesh.boxes.firstTriangle(node); t < mesh.boxes.endTriangle(node); t++) {
                Vec3 on = onTriangle(t);
                Vec3 apart = on.minus(from);
                double square = apart.dot(apart);
                if (square < best) {
                    best = square;
                    triangle = t;
                    point = on;
                }
            }
            return;
        }
        int first = 2 * node;
        boolean swap = mesh.boxes.distanceSquared(first + 1, from) < mesh.boxes.distanceSquared(first, from);
        visit(swap ? first + 1 : first);
        visit(swap ? first : first + 1);
    }

    private Vec3 onTriangle(int t) {
        Vec3 p = mesh.local(mesh.triangles[3 * t]);
        Vec3 q = mesh.local(mesh.triangles[3 * t + 1]);
        Vec3 r = mesh.local(mesh.triangles[3 * t + 2]);
        Vec3 normal = q.minus(p).cross(r.minus(p));
        double square = normal.dot(normal);
        if (square > 0) {
            Vec3 on = from.minus(normal.times(from.minus(p).dot(normal) / square));
            boolean within = q.minus(p).cross(on.minus(p)).dot(normal) >= 0
                    && r.minus(q).cross(on.minus(q)).dot(normal) >= 0
                    && p.minus(r).cross(on.minus(r)).dot(normal) >= 0;
            if (within) {
                return on;
            }
        }
        Vec3 onPq = onSegment(p, q);
        Vec3 onQr = onSegment(q, r);
        Vec3 onRp = onSegment(r, p);
        Vec3 nearer = apart(onPq) <= apart(onQr) ? onPq : onQr;
        return apart(nearer) <= apart(onRp) ? nearer : onRp;
    }

    private double apart(Vec3 p) {
        return p.minus(from).length();
    }

    private Vec3 onSegment(Vec3 p, Vec3 q) {
        Vec3 along = q.minus(p);
        double square = along.dot(along);
        double share = square == 0 ? 0 : Math.min(1, Math.max(0, from.minus(p).dot(along) / square));
        return p.plus(along.times(share));
    }
}
