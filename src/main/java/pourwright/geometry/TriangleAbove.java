package pourwright.geometry;

/** The part of a triangle above a level: its area as seen from above, its moment, and its rim on the level. */
final class TriangleAbove {
    private final Frame frame;
    /** Signed area as seen from above, m2. */
    double area;
    /** Integral of the height above the level over that area, m3. */
    double moment;
    /** Length of the triangle's cut with the level, m. */
    double rim;

    TriangleAbove(Frame frame) {
        this.frame = frame;
    }

    /**
     * Cuts a triangle. The volume above a level inside a closed surface is the sum of the moments: the lid on the level adds
     * nothing, since the height above the level is zero there. Source: the divergence theorem applied to the height.
     */
    void cut(int p, int q, int r, double level) {
        double whole = frame.twiceArea(p, q, r) / 2;
        int high = p;
        int middle = q;
        int low = r;
        double[] h = frame.h;
        if (h[middle] > h[high]) {
            int swap = high;
            high = middle;
            middle = swap;
        }
        if (h[low] > h[high]) {
            int swap = high;
            high = low;
            low = swap;
        }
        if (h[low] > h[middle]) {
            int swap = middle;
            middle = low;
            low = swap;
        }
        double top = h[high] - level;
        double mid = h[middle] - level;
        double bottom = h[low] - level;
        if (top <= 0) {
            area = 0;
            moment = 0;
            rim = 0;
        } else if (bottom >= 0) {
            area = whole;
            moment = whole * (top + mid + bottom) / 3;
            rim = mid == 0 ? length(middle, low, 0, 0, high) : 0;
        } else if (mid <= 0) {
            double onLow = top / (top - bottom);
            double onMiddle = top / (top - mid);
            area = whole * onLow * onMiddle;
            moment = area * top / 3;
            rim = length(low, middle, 1 - onLow, 1 - onMiddle, high);
        } else {
            double onHigh = bottom / (bottom - top);
            double onMiddle = bottom / (bottom - mid);
            double below = whole * onHigh * onMiddle;
            area = whole - below;
            moment = whole * (top + mid + bottom) / 3 - below * bottom / 3;
            rim = length(high, middle, 1 - onHigh, 1 - onMiddle, low);
        }
    }

    /** Distance between two points on the edges from a shared corner; shares 1 at the shared corner, 0 at the far ends. */
    private double length(int first, int second, double shareFirst, double shareSecond, int shared) {
        double a = mix(frame.a, first, shared, shareFirst) - mix(frame.a, second, shared, shareSecond);
        double b = mix(frame.b, first, shared, shareFirst) - mix(frame.b, second, shared, shareSecond);
        return Math.sqrt(a * a + b * b);
    }

    private static double mix(double[] of, int far, int shared, double share) {
        return of[far] + share * (of[shared] - of[far]);
    }
}
