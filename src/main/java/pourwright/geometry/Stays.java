package pourwright.geometry;

import java.util.Arrays;

/** Turns the crossings of columns with the surface into stays inside the domain. */
final class Stays {
    private final Columns columns;
    private final Domain domain;
    private final double thin;
    private final double floor;
    private double[] low = new double[1024];
    private double[] high = new double[1024];
    private int[] ceiling = new int[1024];
    private int used;
    /** Stays inside the solid of one column, as ends and the triangles at the ends. */
    private double[] ends = new double[16];

    private int[] endTriangles = new int[16];
    private int solids;

    /**
     * Prepares.
     *
     * @param thin stays no longer than this are walls or gaps of no thickness, from parts that touch, m
     */
    Stays(Columns columns, Domain domain, double thin, double lowest) {
        this.columns = columns;
        this.domain = domain;
        this.thin = thin;
        this.floor = domain == Domain.AROUND_ON_FLOOR ? lowest : Double.NEGATIVE_INFINITY;
    }

    void from(int[] first, double[] height, int[] triangle, byte[] way) {
        int count = first.length - 1;
        int[] firstStay = new int[count + 1];
        for (int c = 0; c < count; c++) {
            solid(first[c], first[c + 1], height, triangle, way);
            if (domain == Domain.CAVITY) {
                for (int i = 0; i < solids; i++) {
                    put(ends[2 * i], ends[2 * i + 1], endTriangles[2 * i + 1]);
                }
            } else {
                double from = floor;
                for (int i = 0; i < solids; i++) {
                    if (ends[2 * i] - from > thin) {
                        put(from, ends[2 * i], endTriangles[2 * i]);
                    }
                    from = ends[2 * i + 1];
                }
                put(from, Double.POSITIVE_INFINITY, -1);
            }
            firstStay[c + 1] = used;
        }
        columns.firstStay = firstStay;
        columns.low = Arrays.copyOf(low, used);
        columns.high = Arrays.copyOf(high, used);
        columns.ceiling = Arrays.copyOf(ceiling, used);
    }

    private void put(double from, double to, int triangle) {
        if (used == low.length) {
            low = Arrays.copyOf(low, used * 2);
            high = Arrays.copyOf(high, used * 2);
            ceiling = Arrays.copyOf(ceiling, used * 2);
        }
        low[used] = from;
        high[used] = to;
        ceiling[used++] = triangle;
    }

    /** Where the winding number is not zero; first gaps, then walls of no thickness are taken away. */
    private void solid(int from, int to, double[] height, int[] triangle, byte[] way) {
        solids = 0;
        int winding = 0;
        for (int i = from; i < to; i++) {
            int before = winding;
            // Upwards a face whose corners run counter-clockwise from above is where the solid ends.
            winding -= way[i];
            if (before == 0 && winding != 0) {
                boolean goesOn = solids > 0 && height[i] - ends[2 * solids - 1] <= thin;
                if (goesOn) {
                    solids--;
                } else {
                    grow();
                    ends[2 * solids] = height[i];
                    endTriangles[2 * solids] = triangle[i];
                }
            } else if (before != 0 && winding == 0) {
                ends[2 * solids + 1] = height[i];
                endTriangles[2 * solids + 1] = triangle[i];
                solids++;
            }
        }
        int kept = 0;
        for (int i = 0; i < solids; i++) {
            if (ends[2 * i + 1] - ends[2 * i] > thin) {
                ends[2 * kept] = ends[2 * i];
                ends[2 * kept + 1] = ends[2 * i + 1];
                endTriangles[2 * kept] = endTriangles[2 * i];
                endTriangles[2 * kept + 1] = endTriangles[2 * i + 1];
                kept++;
            }
        }
        solids = kept;
    }

    private void grow() {
        if (2 * solids + 2 > ends.length) {
            ends = Arrays.copyOf(ends, ends.length * 2);
            endTriangles = Arrays.copyOf(endTriangles, ends.length);
        }
    }
}
