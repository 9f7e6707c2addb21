package pourwright.geometry;

/** One view from the side onto a grid of small squares: across is a level direction, up is up. */
final class SideView {
    final int width;
    final int height;
    final double stepAcross;
    final double stepUp;
    private final Vec3 across;
    private final Vec3 up;
    private final double left;
    private final double bottom;

    /**
     * A view that holds a mesh with a margin of one square.
     *
     * @param across     level direction to the right of the picture
     * @param stepAcross width of a square, m
     * @param stepUp     height of a square, m
     */
    SideView(Mesh mesh, Frame frame, Vec3 across, double stepAcross, double stepUp) {
        this.across = across;
        this.up = frame.up;
        this.stepAcross = stepAcross;
        this.stepUp = stepUp;
        double[] a = range(mesh, across);
        double[] h = range(mesh, up);
        left = a[0] - stepAcross;
        bottom = h[0] - stepUp;
        width = (int) Math.ceil((a[1] - a[0]) / stepAcross) + 2;
        height = (int) Math.ceil((h[1] - h[0]) / stepUp) + 2;
    }

    static double[] range(Mesh mesh, Vec3 along) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v : mesh.triangles) {
            double at = mesh.local(v).dot(along);
            low = Math.min(low, at);
            high = Math.max(high, at);
        }
        return new double[] {low, high};
    }

    /** Squares from the left edge, for a place counted from the mesh's origin. */
    double x(Vec3 place) {
        return (place.dot(across) - left) / stepAcross;
    }

    /** Squares from the bottom edge. */
    double y(Vec3 place) {
        return (place.dot(up) - bottom) / stepUp;
    }

    double y(double h) {
        return (h - bottom) / stepUp;
    }

    /** Height of the middle of a row of squares, m above the mesh's origin. */
    double heightOfRow(int row) {
        return bottom + (row + 0.5) * stepUp;
    }

    /** Which squares the mesh covers. */
    boolean[] body(Mesh mesh) {
        boolean[] mask = new boolean[width * height];
        double[] corners = new double[9];
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int i = 0; i < 3; i++) {
                System.arraycopy(mesh.xyz, 3 * mesh.triangles[3 * t + i], corners, 3 * i, 3);
            }
            paint(mask, corners, 3);
        }
        return mask;
    }

    /** Which squares a pocket covers. */
    boolean[] pocket(Trapped trapped, Pocket pocket) {
        boolean[] mask = new boolean[width * height];
        trapped.spaces().show(pocket, (corners, count) -> paint(mask, corners, count));
        return mask;
    }

    /** Fills a flat convex shape row by row; every square that its rim passes is filled too. */
    private void paint(boolean[] mask, double[] corners, int count) {
        double[] x = new double[count];
        double[] y = new double[count];
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            Vec3 place = new Vec3(corners[3 * i], corners[3 * i + 1], corners[3 * i + 2]);
            x[i] = x(place);
            y[i] = y(place);
            low = Math.min(low, y[i]);
            high = Math.max(high, y[i]);
        }
        int from = Math.max(0, (int) Math.floor(low));
        int to = Math.min(height - 1, (int) Math.ceil(high) - 1);
        for (int row = from; row <= to; row++) {
            row(mask, x, y, row);
        }
    }

    private void row(boolean[] mask, double[] x, double[] y, int row) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            double bottomOf = Math.max(row, Math.min(y[i], y[j]));
            double topOf = Math.min(row + 1.0, Math.max(y[i], y[j]));
            if (bottomOf > topOf) {
                continue;
            }
            double slope = y[i] == y[j] ? 0 : (x[j] - x[i]) / (y[j] - y[i]);
            double p = y[i] == y[j] ? x[i] : x[i] + slope * (bottomOf - y[i]);
            double q = y[i] == y[j] ? x[j] : x[i] + slope * (topOf - y[i]);
            least = Math.min(least, Math.min(p, q));
            most = Math.max(most, Math.max(p, q));
        }
        int from = Math.max(0, (int) Math.floor(least + 1e-9));
        int to = Math.min(width - 1, (int) Math.ceil(most - 1e-9) - 1);
        for (int i = from; i <= to; i++) {
            mask[row * width + i] = true;
        }
    }
}
