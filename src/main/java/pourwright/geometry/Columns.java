package pourwright.geometry;

/**
 * The domain as vertical columns on a grid: each stay of a column inside the domain is an interval with exact ends.
 * Parts that overlap count as one: inside is where the winding number is not zero.
 */
final class Columns {
    /** Most columns: their stays and links then need about 600 MB. */
    static final int MOST = 4_000_000;

    private static final int USUAL_PER_SIDE = 512;
    /** Parts of a cell by which the grid is shifted, so that faces on round numbers do not fall on column centres. */
    private static final double SHIFT_A = 0.6180339887;

    private static final double SHIFT_B = 0.4142135624;

    final double cell;
    final int across;
    final int along;
    final double startA;
    final double startB;
    /** For each column the range of its stays. */
    int[] firstStay;
    /** Lower and upper end of each stay, m above the mesh's origin. */
    double[] low;

    double[] high;
    /** Triangle at the upper end of each stay, or -1 under the open air. */
    int[] ceiling;

    private final Mesh mesh;
    private final Frame frame;

    private Columns(Mesh mesh, Frame frame, double cell, int across, int along, double startA, double startB) {
        this.mesh = mesh;
        this.frame = frame;
        this.cell = cell;
        this.across = across;
        this.along = along;
        this.startA = startA;
        this.startB = startB;
    }

    static Columns of(Mesh mesh, Frame frame, Domain domain, double resolutionM) {
        double[] a = range(frame.a);
        double[] b = range(frame.b);
        double longest = Math.max(a[1] - a[0], b[1] - b[0]);
        double cell = resolutionM > 0 ? resolutionM : longest / USUAL_PER_SIDE;
        double across = Math.ceil((a[1] - a[0]) / cell) + 3;
        double along = Math.ceil((b[1] - b[0]) / cell) + 3;
        if (across * along > MOST) {
            double smallest = cell * Math.sqrt(across * along / MOST) * 1.01;
            throw new MeshFault(String.format(
                    java.util.Locale.ROOT,
                    "A resolution of %.3g mm needs %.0f columns, about %.0f MB; the smallest that fits is %.3g mm.",
                    cell * 1000,
                    across * along,
                    across * along * 150 / 1e6,
                    smallest * 1000));
        }
        // One column more on every side: around a master there is always open air beside it.
        Columns columns = new Columns(
                mesh,
                frame,
                cell,
                (int) across,
                (int) along,
                a[0] - (1 + SHIFT_A) * cell + 0.5 * cell,
                b[0] - (1 + SHIFT_B) * cell + 0.5 * cell);
        columns.fill(domain);
        return columns;
    }

    private static double[] range(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return new double[] {low, high};
    }

    double centreA(int column) {
        return startA + column % across * cell;
    }

    double centreB(int column) {
        int row = column / across;
        return startB + row * cell;
    }

    int column(double a, double b) {
        int i = (int) Math.rint((a - startA) / cell);
        int j = (int) Math.rint((b - startB) / cell);
        return Math.min(along - 1, Math.max(0, j)) * across + Math.min(across - 1, Math.max(0, i));
    }

    private interface Hit {
        void at(int column, int triangle, int turns, double a, double b);
    }

    private void hits(Hit hit) {
        int[] corners = mesh.triangles;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int p = corners[3 * t];
            int q = corners[3 * t + 1];
            int r = corners[3 * t + 2];
            int i0 = from(Math.min(frame.a[p], Math.min(frame.a[q], frame.a[r])), startA);
            int i1 = to(Math.max(frame.a[p], Math.max(frame.a[q], frame.a[r])), startA, across);
            int j0 = from(Math.min(frame.b[p], Math.min(frame.b[q], frame.b[r])), startB);
            int j1 = to(Math.max(frame.b[p], Math.max(frame.b[q], frame.b[r])), startB, along);
            for (int j = j0; j <= j1; j++) {
                double b = startB + j * cell;
                for (int i = i0; i <= i1; i++) {
                    double a = startA + i * cell;
                    int turns = frame.winding(p, q, r, a, b);
                    if (turns != 0) {
                        hit.at(j * across + i, t, turns, a, b);
                    }
                }
            }
        }
    }

    private int from(double value, double start) {
        return Math.max(0, (int) Math.floor((value - start) / cell));
    }

    private int to(double value, double start, int count) {
        return Math.min(count - 1, (int) Math.ceil((value - start) / cell));
    }

    private void fill(Domain domain) {
        int count = across * along;
        int[] first = new int[count + 1];
        hits((column, t, turns, a, b) -> first[column + 1]++);
        for (int c = 0; c < count; c++) {
            first[c + 1] += first[c];
        }
        double[] height = new double[first[count]];
        int[] triangle = new int[first[count]];
        byte[] way = new byte[first[count]];
        int[] put = java.util.Arrays.copyOf(first, count);
        hits((column, t, turns, a, b) -> {
            int at = put[column]++;
            int[] c = mesh.triangles;
            double h = frame.heightAt(c[3 * t], c[3 * t + 1], c[3 * t + 2], a, b);
            // Kept in order of height while they arrive: a column meets few triangles.
            while (at > first[column] && height[at - 1] > h) {
                height[at] = height[at - 1];
                triangle[at] = triangle[at - 1];
                way[at] = way[at - 1];
                at--;
            }
            height[at] = h;
            triangle[at] = t;
            way[at] = (byte) turns;
        });
        new Stays(this, domain, mesh.noiseM(), lowest()).from(first, height, triangle, way);
    }

    private double lowest() {
        double low = Double.POSITIVE_INFINITY;
        for (int v : mesh.triangles) {
            low = Math.min(low, frame.h[v]);
        }
        return low;
    }
}
