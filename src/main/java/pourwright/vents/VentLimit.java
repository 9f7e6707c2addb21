package pourwright.vents;

import java.util.Optional;
import pourwright.geometry.Pocket;
import pourwright.geometry.Vec3;

/**
 * From what volume on a pocket takes a vent, for a round one as deep as wide: hundreds of attitudes are compared by volume alone,
 * and only the best of them with every rule.
 */
final class VentLimit {
    private static final double LEAST_M3 = 1e-12;
    private static final double MOST_M3 = 1e-3;
    private static final int STEPS = 24;

    private VentLimit() {}

    /** The volume, m3; infinite when not even a litre of air takes a vent. */
    static double volumeM3(PocketAdvisor pockets) {
        if (!takes(pockets, MOST_M3)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = LEAST_M3;
        double high = MOST_M3;
        for (int i = 0; i < STEPS; i++) {
            double middle = Math.sqrt(low * high);
            if (takes(pockets, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean takes(PocketAdvisor pockets, double volumeM3) {
        double width = Math.cbrt(4 * volumeM3 / Math.PI);
        double area = Math.PI * width * width / 4;
        Vec3 nowhere = new Vec3(0, 0, 0);
        return pockets.takesVent(
                new Pocket(1, 0, volumeM3, nowhere, width, 0, nowhere, area, width, 0), Optional.empty());
    }
}
