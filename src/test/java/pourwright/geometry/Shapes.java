package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Closed surfaces by formula, in millimetres: turned shapes, prisms, and bodies of blocks. */
final class Shapes {

    /** Whether a block of a grid is solid, by its middle. */
    interface Solid {
        boolean at(double x, double y, double z);
    }

    private Shapes() {}

    static Figure box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return blocks(new double[] {x0, x1}, new double[] {y0, y1}, new double[] {z0, z1}, (x, y, z) -> true);
    }

    /** The surface of all solid blocks of a grid, with no face between two solid blocks. */
    static Figure blocks(double[] xs, double[] ys, double[] zs, Solid solid) {
        Figure out = new Figure();
        int[][][] at = new int[xs.length][ys.length][zs.length];
        for (int i = 0; i < xs.length; i++) {
            for (int j = 0; j < ys.length; j++) {
                for (int k = 0; k < zs.length; k++) {
                    at[i][j][k] = out.corner(xs[i], ys[j], zs[k]);
                }
            }
        }
        for (int i = 0; i + 1 < xs.length; i++) {
            for (int j = 0; j + 1 < ys.length; j++) {
                for (int k = 0; k + 1 < zs.length; k++) {
                    if (!is(xs, ys, zs, i, j, k, solid)) {
                        continue;
                    }
                    if (!is(xs, ys, zs, i - 1, j, k, solid)) {
                        out.quad(at[i][j][k], at[i][j][k + 1], at[i][j + 1][k + 1], at[i][j + 1][k]);
                    }
                    if (!is(xs, ys, zs, i + 1, j, k, solid)) {
                        out.quad(at[i + 1][j][k], at[i + 1][j + 1][k], at[i + 1][j + 1][k + 1], at[i + 1][j][k + 1]);
                    }
                    if (!is(xs, ys, zs, i, j - 1, k, solid)) {
                        out.quad(at[i][j][k], at[i + 1][j][k], at[i + 1][j][k + 1], at[i][j][k + 1]);
                    }
                    if (!is(xs, ys, zs, i, j + 1, k, solid)) {
                        out.quad(at[i][j + 1][k], at[i][j + 1][k + 1], at[i + 1][j + 1][k + 1], at[i + 1][j + 1][k]);
                    }
                    if (!is(xs, ys, zs, i, j, k - 1, solid)) {
                        out.quad(at[i][j][k], at[i][j + 1][k], at[i + 1][j + 1][k], at[i + 1][j][k]);
                    }
                    if (!is(xs, ys, zs, i, j, k + 1, solid)) {
                        out.quad(at[i][j][k + 1], at[i + 1][j][k + 1], at[i + 1][j + 1][k + 1], at[i][j + 1][k + 1]);
                    }
                }
            }
        }
        return out;
    }

    private static boolean is(double[] xs, double[] ys, double[] zs, int i, int j, int k, Solid solid) {
        if (i < 0 || j < 0 || k < 0 || i + 1 >= xs.length || j + 1 >= ys.length || k + 1 >= zs.length) {
            return false;
        }
        return solid.at((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2, (zs[k] + zs[k + 1]) / 2);
    }

    /**
     * A profile turned about the z axis. Pairs of radius and height; the solid lies to the left of the path as it goes up.
     * A path that ends where it began makes a ring.
     */
    static Figure turned(double[][] profile, int segments) {
        Figure out = new Figure();
        List<int[]> rings = new ArrayList<>();
        boolean ring =
                profile[0][0] == profile[profile.length - 1][0] && profile[0][1] == profile[profile.length - 1][1];
        int count = ring ? profile.length - 1 : profile.length;
        for (int p = 0; p < count; p++) {
            int[] at = new int[segments];
            boolean axis = profile[p][0] == 0;
            for (int s = 0; s < segments; s++) {
                double angle = 2 * Math.PI * s / segments;
                boolean again = axis && s > 0;
                at[s] = again
                        ? at[0]
                        : out.corner(profile[p][0] * Math.cos(angle), profile[p][0] * Math.sin(angle), profile[p][1]);
            }
            rings.add(at);
        }
        for (int p = 0; p + 1 < profile.length; p++) {
            int[] low = rings.get(p);
            int[] high = rings.get((p + 1) % count);
            for (int s = 0; s < segments; s++) {
                int t = (s + 1) % segments;
                if (low[s] != low[t]) {
                    out.triangle(low[s], low[t], high[t]);
                }
                if (high[s] != high[t]) {
                    out.triangle(low[s], high[t], high[s]);
                }
            }
        }
        return out;
    }

    /** Points of a circle in the plane of radius and height, from one angle to another, degrees from the radius axis. */
    static double[][] arc(double centreR, double centreZ, double radius, double from, double to, int steps) {
        double[][] path = new double[steps + 1][];
        for (int i = 0; i <= steps; i++) {
            double angle = Math.toRadians(from + (to - from) * i / steps);
            double r = centreR + radius * Math.cos(angle);
            path[i] = new double[] {Math.abs(r) < 1e-12 ? 0 : r, centreZ + radius * Math.sin(angle)};
        }
        return path;
    }

    static double[][] path(double[][]... parts) {
        List<double[]> all = new ArrayList<>();
        for (double[][] part : parts) {
            for (double[] p : part) {
                if (all.isEmpty() || !java.util.Arrays.equals(all.get(all.size() - 1), p)) {
                    all.add(p);
                }
            }
        }
        return all.toArray(double[][]::new);
    }

    static Figure ball(double radius, int segments) {
        return turned(arc(0, 0, radius, -90, 90, segments / 2), segments);
    }

    static Figure torus(double large, double small, int segments) {
        double[][] ring = arc(large, 0, small, 0, 360, segments);
        ring[segments] = ring[0];
        return turned(ring, segments);
    }

    static Figure cylinder(double radius, double low, double high, int segments) {
        return turned(new double[][] {{0, low}, {radius, low}, {radius, high}, {0, high}}, segments);
    }

    /** A polygon in the x-z plane, counter-clockwise with x to the right and z up, stretched along y. */
    static Figure prism(double[][] outline, double y0, double y1) {
        Figure out = new Figure();
        int count = outline.length;
        double[] flat = new double[3 * count];
        int[] ring = new int[count];
        for (int i = 0; i < count; i++) {
            out.corner(outline[i][0], y0, outline[i][1]);
            flat[3 * i] = outline[i][0];
            flat[3 * i + 1] = outline[i][1];
            ring[i] = i;
        }
        for (double[] p : outline) {
            out.corner(p[0], y1, p[1]);
        }
        int[] cut = EarClipper.triangles(flat, ring);
        for (int i = 0; i < cut.length; i += 3) {
            out.triangle(cut[i], cut[i + 1], cut[i + 2]);
            out.triangle(count + cut[i], count + cut[i + 2], count + cut[i + 1]);
        }
        for (int i = 0; i < count; i++) {
            int j = (i + 1) % count;
            out.quad(j, i, count + i, count + j);
        }
        return out;
    }
}
