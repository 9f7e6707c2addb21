package pourwright.geometry;

/** Sorts by height, highest first; equal heights keep their order. A radix sort, since sorting is most of the work. */
final class HeightOrder {
    private static final int DIGIT_BITS = 16;
    private static final int DIGITS = 1 << DIGIT_BITS;

    private HeightOrder() {}

    /** Indices of the heights from the highest to the lowest. */
    static int[] descending(double[] height) {
        int count = height.length;
        long[] keys = new long[count];
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            long bits = Double.doubleToLongBits(height[i] + 0.0);
            // Flipped so that unsigned order of the bits is descending order of the numbers.
            keys[i] = bits < 0 ? bits : ~(bits | Long.MIN_VALUE);
            order[i] = i;
        }
        int[] next = new int[count];
        for (int shift = 0; shift < Long.SIZE; shift += DIGIT_BITS) {
            int[] first = new int[DIGITS + 1];
            for (int i = 0; i < count; i++) {
                first[(int) (keys[i] >>> shift & (DIGITS - 1)) + 1]++;
            }
            for (int d = 0; d < DIGITS; d++) {
                first[d + 1] += first[d];
            }
            for (int i = 0; i < count; i++) {
                int index = order[i];
                next[first[(int) (keys[index] >>> shift & (DIGITS - 1))]++] = index;
            }
            int[] swap = order;
            order = next;
            next = swap;
        }
        return order;
    }
}
