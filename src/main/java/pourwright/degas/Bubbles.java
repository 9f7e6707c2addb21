package pourwright.degas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.physics.Bubble;
import pourwright.physics.Require;

/**
 * Bubbles in a liquid, by size.
 *
 * @param classes the sizes, each with its gas; may be empty
 */
public record Bubbles(List<Size> classes) {

    /** No bubbles at all. */
    public static final Bubbles NONE = new Bubbles(List.of());

    /** Sizes that stand for a spread, even on the logarithm of size, out to three standard deviations. */
    private static final int EACH_SIDE = 12;

    private static final double REACH = 3;

    /**
     * Bubbles of one size.
     *
     * @param diameterAtAirM diameter under local air pressure, m, above zero
     * @param gasPaM3        gas in all of them together, pressure times volume at room temperature, Pa m3
     */
    public record Size(double diameterAtAirM, double gasPaM3) {

        /**
         * Checks the size.
         *
         * @throws pourwright.physics.PhysicsException when a value is not a number, or the diameter is not above zero
         */
        public Size {
            Require.positive("bubble diameter", diameterAtAirM, "m");
            Require.zeroOrMore("gas in the bubbles", gasPaM3, "Pa m3");
        }
    }

    /**
     * Checks that the classes are given; the list is copied.
     *
     * @throws pourwright.physics.PhysicsException when the list is missing
     */
    public Bubbles {
        classes = List.copyOf(Require.given("sizes of bubbles", classes));
    }

    /**
     * Bubbles with a log-normal spread of sizes, by volume.
     *
     * @param volumeM3   volume of all bubbles under local air pressure, m3, zero or more
     * @param diameterM  median diameter by volume under local air pressure, m, above zero
     * @param sizeSpread geometric standard deviation, 1 for one size, to 3
     * @param airPa      absolute local air pressure, Pa, above zero
     * @param sigma      surface tension, N/m, zero or more
     * @return the bubbles, coarse ones last
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public static Bubbles spread(double volumeM3, double diameterM, double sizeSpread, double airPa, double sigma) {
        Require.zeroOrMore("volume of the bubbles", volumeM3, "m3");
        Require.positive("bubble diameter", diameterM, "m");
        Require.within("spread of bubble sizes", sizeSpread, 1, 3, "");
        Require.positive("air pressure", airPa, "Pa absolute");
        if (volumeM3 == 0) {
            return NONE;
        }
        if (sizeSpread == 1) {
            return new Bubbles(List.of(size(volumeM3, diameterM, airPa, sigma)));
        }
        double all = 0;
        double[] shares = new double[2 * EACH_SIDE + 1];
        double[] deviations = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            deviations[i] = (i - EACH_SIDE) * REACH / EACH_SIDE;
            shares[i] = Math.exp(-deviations[i] * deviations[i] / 2);
            all += shares[i];
        }
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            double d = diameterM * Math.pow(sizeSpread, deviations[i]);
            sizes.add(size(volumeM3 * shares[i] / all, d, airPa, sigma));
        }
        return new Bubbles(sizes);
    }

    private static Size size(double volumeM3, double diameterM, double airPa, double sigma) {
        return new Size(diameterM, volumeM3 * (airPa + Bubble.laplacePa(diameterM, sigma)));
    }

    /**
     * These and others together, as after a pour that folds in air.
     *
     * @param others the other bubbles
     * @return all of them
     */
    public Bubbles and(Bubbles others) {
        List<Size> all = new ArrayList<>(classes);
        all.addAll(others.classes());
        all.sort(Comparator.comparingDouble(Size::diameterAtAirM));
        return new Bubbles(all);
    }

    /**
     * The same sizes with a share of the gas, as in a part of the liquid.
     *
     * @param share share, 0 to 1
     * @return the bubbles of that part
     */
    public Bubbles part(double share) {
        Require.within("share of the liquid", share, 0, 1, "");
        return new Bubbles(classes.stream()
                .map(s -> new Size(s.diameterAtAirM(), s.gasPaM3() * share))
                .toList());
    }

    /**
     * All gas in the bubbles.
     *
     * @return gas, Pa m3 at room temperature
     */
    public double gasPaM3() {
        double sum = 0;
        for (Size size : classes) {
            sum += size.gasPaM3();
        }
        return sum;
    }

    /**
     * Volume of all bubbles under local air pressure.
     *
     * @param airPa absolute local air pressure, Pa, above zero
     * @param sigma surface tension, N/m
     * @return volume, m3
     */
    public double volumeAtAirM3(double airPa, double sigma) {
        double sum = 0;
        for (Size size : classes) {
            sum += size.gasPaM3() / (airPa + Bubble.laplacePa(size.diameterAtAirM(), sigma));
        }
        return sum;
    }
}
