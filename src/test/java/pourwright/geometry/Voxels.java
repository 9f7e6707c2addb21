package pourwright.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * An independent way to the same answer, for tests only: a grid of small cubes, inside decided by the crossings of
 * level rays, and air flooded from the outlets, always at the highest level first. It shares no code with the search.
 * Source: priority flood, Barnes, Lehman, Mulla, Computers and Geosciences 62, 2014, turned upside down.
 */
public final class Voxels {
    private final int nx;
    private final int ny;
    private final int nz;
    private final double cell;
    private final double[] low;
    private final boolean[] free;
    private final int[] level;

    private Voxels(double[] low, double[] high, double cell) {
        this.cell = cell;
        // A cube of margin on every side, and a shift so that no face falls on a middle.
        this.low = new double[] {low[0] - 1.31 * cell, low[1] - 1.17 * cell, low[2] - 1.43 * cell};
        nx = (int) Math.ceil((high[0] - this.low[0]) / cell) + 2;
        ny = (int) Math.ceil((high[1] - this.low[1]) / cell) + 2;
        nz = (int) Math.ceil((high[2] - this.low[2]) / cell) + 2;
        free = new boolean[nx * ny * nz];
        level = new int[nx * ny * nz];
    }

    /**
     * Volume of trapped air, in the cube of the unit of the corners.
     *
     * @param corners    corners of a closed surface, already turned so that up is the third axis
     * @param triangles  three corners each, counter-clockwise from outside
     * @param vent       the only outlet of a cavity; null for a master in an open-top box
     * @param cubesAlong cubes along the longest side
     */
    public static double trapped(List<double[]> corners, List<int[]> triangles, double[] vent, int cubesAlong) {
        double[] low = new double[3];
        double[] high = new double[3];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
        for (double[] c : corners) {
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(low[i], c[i]);
                high[i] = Math.max(high[i], c[i]);
            }
        }
        double longest = Math.max(high[0] - low[0], Math.max(high[1] - low[1], high[2] - low[2]));
        Voxels grid = new Voxels(low, high, longest / cubesAlong);
        grid.inside(corners, triangles, vent != null);
        return grid.flood(vent);
    }

    private void inside(List<double[]> corners, List<int[]> triangles, boolean cavity) {
        byte[] turns = new byte[free.length];
        for (int[] t : triangles) {
            double[] p = corners.get(t[0]);
            double[] q = corners.get(t[1]);
            double[] r = corners.get(t[2]);
            int j0 = index(Math.min(p[1], Math.min(q[1], r[1])), 1);
            int j1 = index(Math.max(p[1], Math.max(q[1], r[1])), 1) + 1;
            int k0 = index(Math.min(p[2], Math.min(q[2], r[2])), 2);
            int k1 = index(Math.max(p[2], Math.max(q[2], r[2])), 2) + 1;
            for (int k = Math.max(0, k0); k <= Math.min(nz - 1, k1); k++) {
                for (int j = Math.max(0, j0); j <= Math.min(ny - 1, j1); j++) {
                    double x = crossing(p, q, r, middle(j, 1), middle(k, 2));
                    if (!Double.isNaN(x)) {
                        int i = Math.max(0, (int) Math.ceil((x - low[0]) / cell - 0.5));
                        if (i < nx) {
                            if (faces(p, q, r)) {
                                turns[at(i, j, k)]++;
                            } else {
                                turns[at(i, j, k)]--;
                            }
                        }
                    }
                }
            }
        }
        for (int k = 0; k < nz; k++) {
            for (int j = 0; j < ny; j++) {
                int winding = 0;
                for (int i = 0; i < nx; i++) {
                    winding += turns[at(i, j, k)];
                    free[at(i, j, k)] = (winding != 0) == cavity;
                }
            }
        }
    }

    /** Whether a triangle faces along the first axis. */
    private static boolean faces(double[] p, double[] q, double[] r) {
        return (q[1] - p[1]) * (r[2] - p[2]) - (q[2] - p[2]) * (r[1] - p[1]) > 0;
    }

    /** Where a ray along the first axis passes a triangle, by areas; not a number when it does not. */
    private static double crossing(double[] p, double[] q, double[] r, double y, double z) {
        double a = (q[1] - y) * (r[2] - z) - (q[2] - z) * (r[1] - y);
        double b = (r[1] - y) * (p[2] - z) - (r[2] - z) * (p[1] - y);
        double c = (p[1] - y) * (q[2] - z) - (p[2] - z) * (q[1] - y);
        boolean inside = a > 0 && b > 0 && c > 0 || a < 0 && b < 0 && c < 0;
        return inside ? (a * p[0] + b * q[0] + c * r[0]) / (a + b + c) : Double.NaN;
    }

    private int at(int i, int j, int k) {
        return (k * ny + j) * nx + i;
    }

    private double middle(int index, int axis) {
        return low[axis] + (index + 0.5) * cell;
    }

    private int index(double value, int axis) {
        return (int) Math.floor((value - low[axis]) / cell - 0.5);
    }

    /** Floods level by level from the top; each cube keeps the highest level at which air can still leave it. */
    private double flood(double[] vent) {
        Arrays.fill(level, -1);
        int[] queue = new int[free.length];
        long reached = 0;
        long all = 0;
        int start = vent == null ? -1 : nearestFree(vent);
        int ventLayer = vent == null ? nz : (int) Math.floor((vent[2] - low[2]) / cell - 0.5);
        double trapped = 0;
        for (int k = nz - 1; k >= 0; k--) {
            int head = 0;
            int tail = 0;
            if (vent == null && k == nz - 1) {
                for (int j = 0; j < ny; j++) {
                    for (int i = 0; i < nx; i++) {
                        tail = reach(at(i, j, k), k, queue, tail);
                    }
                }
            } else if (vent != null && k == Math.min(ventLayer, nz - 1)) {
                tail = reach(start, k, queue, tail);
            }
            // Cubes of this layer that hang on those reached at higher levels.
            for (int j = 0; j < ny && k + 1 < nz; j++) {
                for (int i = 0; i < nx; i++) {
                    if (level[at(i, j, k + 1)] >= 0) {
                        tail = reach(at(i, j, k), k, queue, tail);
                    }
                }
            }
            while (head < tail) {
                int cube = queue[head++];
                int i = cube % nx;
                int j = cube / nx % ny;
                int m = cube / nx / ny;
                tail = i > 0 ? reach(cube - 1, k, queue, tail) : tail;
                tail = i + 1 < nx ? reach(cube + 1, k, queue, tail) : tail;
                tail = j > 0 ? reach(cube - nx, k, queue, tail) : tail;
                tail = j + 1 < ny ? reach(cube + nx, k, queue, tail) : tail;
                tail = m + 1 < nz ? reach(cube + nx * ny, k, queue, tail) : tail;
                tail = m > k ? reach(cube - nx * ny, k, queue, tail) : tail;
                reached++;
                // Reached only at a level below itself: the part above that level stays.
                trapped += m > k ? 1 : 0;
            }
        }
        for (boolean is : free) {
            all += is ? 1 : 0;
        }
        if (reached > all) {
            throw new IllegalStateException("flooded more than there is");
        }
        return trapped * cell * cell * cell;
    }

    private int reach(int cube, int k, int[] queue, int tail) {
        if (!free[cube] || level[cube] >= 0) {
            return tail;
        }
        level[cube] = k;
        queue[tail] = cube;
        return tail + 1;
    }

    private int nearestFree(double[] place) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int cube = 0; cube < free.length; cube++) {
            if (free[cube]) {
                double dx = middle(cube % nx, 0) - place[0];
                double dy = middle(cube / nx % ny, 1) - place[1];
                double dz = middle(cube / nx / ny, 2) - place[2];
                double square = dx * dx + dy * dy + dz * dz;
                if (square < least) {
                    least = square;
                    best = cube;
                }
            }
        }
        return best;
    }
}
