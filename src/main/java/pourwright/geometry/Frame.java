package pourwright.geometry;

/** The vertices of a mesh turned so that the third coordinate is the height. A turn along an axis changes no digit. */
final class Frame {
    final Vec3 up;
    final Vec3 right;
    final Vec3 ahead;
    /** Coordinates of the vertices along right, ahead and up, counted from the mesh's origin, m. */
    final double[] a;

    final double[] b;
    final double[] h;

    Frame(double[] xyz, Vec3 direction) {
        up = direction.unit();
        right = up.anyNormal();
        ahead = up.cross(right);
        int count = xyz.length / 3;
        a = new double[count];
        b = new double[count];
        h = new double[count];
        for (int v = 0; v < count; v++) {
            double x = xyz[3 * v];
            double y = xyz[3 * v + 1];
            double z = xyz[3 * v + 2];
            a[v] = right.x() * x + right.y() * y + right.z() * z;
            b[v] = ahead.x() * x + ahead.y() * y + ahead.z() * z;
            h[v] = up.x() * x + up.y() * y + up.z() * z;
        }
    }

    /** Twice the area of a triangle as seen from above; positive when its corners run counter-clockwise. */
    double twiceArea(int p, int q, int r) {
        return (a[q] - a[p]) * (b[r] - b[p]) - (b[q] - b[p]) * (a[r] - a[p]);
    }

    /**
     * How often a triangle's rim runs counter-clockwise around the vertical line at a place: 1, 0 or -1. Each edge is
     * judged the same way from both its triangles, so over a closed surface the counts cancel exactly, even where the line
     * runs through edges and vertices. Source: crossing count with half-open edges, and one fixed order for each edge.
     */
    int winding(int p, int q, int r, double pa, double pb) {
        return edge(p, q, pa, pb) + edge(q, r, pa, pb) + edge(r, p, pa, pb);
    }

    private int edge(int p, int q, double pa, double pb) {
        boolean startsAbove = b[p] > pb;
        if (startsAbove == b[q] > pb) {
            return 0;
        }
        int first = Math.min(p, q);
        int second = Math.max(p, q);
        double turn = (a[second] - a[first]) * (pb - b[first]) - (b[second] - b[first]) * (pa - a[first]);
        boolean crossesRight = b[second] > b[first] ? turn > 0 : turn < 0;
        if (!crossesRight) {
            return 0;
        }
        return startsAbove ? -1 : 1;
    }

    /** Height of a triangle's plane at a place within it, m; never outside the triangle's own heights. */
    double heightAt(int p, int q, int r, double pa, double pb) {
        double low = Math.min(h[p], Math.min(h[q], h[r]));
        double high = Math.max(h[p], Math.max(h[q], h[r]));
        double area = twiceArea(p, q, r);
        if (area == 0 || low == high) {
            return high;
        }
        double wq = ((pa - a[p]) * (b[r] - b[p]) - (pb - b[p]) * (a[r] - a[p])) / area;
        double wr = ((a[q] - a[p]) * (pb - b[p]) - (b[q] - b[p]) * (pa - a[p])) / area;
        double height = h[p] + wq * (h[q] - h[p]) + wr * (h[r] - h[p]);
        return Math.min(high, Math.max(low, height));
    }
}
