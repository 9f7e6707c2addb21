package pourwright.degas;

import java.util.ArrayList;
import java.util.List;
import pourwright.physics.Bubble;
import pourwright.physics.Constants;
import pourwright.physics.Froth;

/**
 * The bubbles of one column of liquid that nothing stirs: how they swell, rise, break at the top and leave.
 *
 * <p>As in {@link pourwright.physics.FrothCourse}, each size leaves from below like a settling suspension: below its front
 * there is none of it, above it as much as ever, and heights are counted as shares of the liquid. Added here: head and
 * Laplace pressure on every bubble, viscosity that grows, vapour that helps to swell, and the crowd.
 *
 * <p>Where bubbles do not touch, a front passes v (1 - e)^4.65 / h of the liquid per second (Richardson and Zaki 1954,
 * e the gas fraction at the top). Where they touch, from e = 0.64 on (random close packing), they no longer rise past each
 * other. Then the top layer breaks, one diameter in each life of its film, 7 viscosity / (density g radius), as there; so
 * the front passes 1.29 × Stokes × (1 - e) / h. Gas beyond the cap breaks at once, the coarse first, in proportion to d².
 */
final class Column {

    /** Source: Richardson and Zaki 1954, creeping flow. */
    static final double HINDRANCE_EXPONENT = 4.65;

    /** Gas fraction from which bubbles touch: random close packing of spheres. */
    static final double TOUCHING = 0.64;

    /** One diameter per film life over the Stokes speed: 18/(2 × 7). */
    static final double BREAKING_OVER_STOKES = 9.0 / 7;

    /** Life of a bare film over viscosity / (density g radius): Debregeas, de Gennes and Brochard-Wyart, Science 279:1704, 1998. */
    private static final double FILM_LIFE = 7;

    /** Lives in one step beyond which a bubble is as good as gone. */
    private static final double MOST_LIVES = 30;

    /** Boiling bubbles are held at this share of the pressure, or they would swell without bound. */
    private static final double LEAST_OWN_SHARE = 0.05;

    private static final double AT_CAP = 1e-9;
    private static final int MOST_TURNS = 60;

    private final Mix mix;
    private final double airPa;
    private final double liquidM3;
    private final double liquidDepthM;
    private final double weightPa;
    private final double[] diameterAtAirM;
    private final double[] gas;
    private final double[] passed;
    private final double[] swollenM;
    private final double[] laplacePa;

    Column(Mix mix, Bubbles bubbles, double airPa, double liquidM3, double liquidDepthM) {
        this.mix = mix;
        this.airPa = airPa;
        this.liquidM3 = liquidM3;
        this.liquidDepthM = liquidDepthM;
        this.weightPa = mix.density() * Constants.G * liquidDepthM;
        int count = bubbles.classes().size();
        diameterAtAirM = new double[count];
        gas = new double[count];
        passed = new double[count];
        swollenM = new double[count];
        laplacePa = new double[count];
        for (int i = 0; i < count; i++) {
            diameterAtAirM[i] = bubbles.classes().get(i).diameterAtAirM();
            gas[i] = bubbles.classes().get(i).gasPaM3();
        }
    }

    /** Sizes every bubble for a pressure over the liquid and the vapour in it; must precede what uses the sizes. */
    void swell(double overPa, double vapourPa) {
        for (int i = 0; i < gas.length; i++) {
            if (passed[i] >= 1) {
                continue;
            }
            double ownPa = ownPa(overPa + weightPa * (1 - passed[i]), vapourPa);
            swollenM[i] = Bubble.expandedDiameterM(diameterAtAirM[i], airPa, ownPa, mix.density(), 0, mix.sigma());
            laplacePa[i] = mix.sigma() == 0 ? 0 : 4 * mix.sigma() / swollenM[i];
        }
    }

    private static double ownPa(double pressurePa, double vapourPa) {
        return Math.max(pressurePa - vapourPa, LEAST_OWN_SHARE * pressurePa);
    }

    /** Volume of all gas in the column, m3: each bubble under its own head. */
    double gasM3(double overPa, double vapourPa) {
        double sum = 0;
        for (int i = 0; i < gas.length; i++) {
            if (passed[i] < 1) {
                sum += gas[i] * volumePerGas(overPa, vapourPa, laplacePa[i], passed[i]);
            }
        }
        return sum;
    }

    /** Integral of 1/(pressure + head) over the liquid above the front, 1/Pa. */
    private double volumePerGas(double overPa, double vapourPa, double skinPa, double front) {
        double topPa = ownPa(overPa, vapourPa) + skinPa;
        double headPa = weightPa * (1 - front);
        double ratio = headPa / topPa;
        return ratio < 1e-6 ? (1 - front) / topPa * (1 - ratio / 2) : Math.log1p(ratio) / weightPa;
    }

    /** Gas fraction at the top, where the gas leaves. */
    double topFraction(double overPa, double vapourPa) {
        double perLiquid = 0;
        for (int i = 0; i < gas.length; i++) {
            if (passed[i] < 1) {
                perLiquid += gas[i] / (ownPa(overPa, vapourPa) + laplacePa[i]);
            }
        }
        return Froth.gasFractionOf(1 + perLiquid / liquidM3);
    }

    /** Gas still in the column, Pa m3. */
    double amount() {
        double sum = 0;
        for (int i = 0; i < gas.length; i++) {
            sum += gas[i] * Math.max(0, 1 - passed[i]);
        }
        return sum;
    }

    /** Speed of a front in liquid shares per second, for the median of its class. */
    private double passingPerS(int i, double viscosityPaS, double crowd) {
        return crowd * Bubble.stokesRiseMPerS(swollenM[i], mix.density(), 0, viscosityPaS) / liquidDepthM;
    }

    /** What the crowd makes of a lone bubble's Stokes speed, as a passing of liquid. */
    double crowd(double topFraction) {
        return topFraction < TOUCHING
                ? mix.speedFactor() * Bubble.hindrance(topFraction, HINDRANCE_EXPONENT)
                : BREAKING_OVER_STOKES * (1 - topFraction);
    }

    /** Gas that leaves per second at the present speeds, Pa m3/s. */
    double outflowPerS(double viscosityPaS, double crowd) {
        double sum = 0;
        for (int i = 0; i < gas.length; i++) {
            if (passed[i] < 1) {
                sum += gas[i] * passingPerS(i, viscosityPaS, crowd);
            }
        }
        return sum;
    }

    /** Moves every front for a time; nothing moves in a gel. */
    void rise(double stepS, double viscosityPaS, double crowd) {
        if (viscosityPaS == Double.POSITIVE_INFINITY) {
            return;
        }
        for (int i = 0; i < gas.length; i++) {
            if (passed[i] < 1) {
                passed[i] = Math.min(1, passed[i] + stepS * passingPerS(i, viscosityPaS, crowd));
            }
        }
    }

    /**
     * Lets touching bubbles merge, each with one other in every life of the film between them: as many as can, so a bound and
     * no best guess. No gas is lost. Coarse ones merge faster, so the order of the sizes stands.
     */
    void merge(double stepS, double viscosityPaS) {
        if (viscosityPaS == Double.POSITIVE_INFINITY) {
            return;
        }
        for (int i = 0; i < gas.length; i++) {
            if (passed[i] < 1) {
                double lifeS = FILM_LIFE * viscosityPaS / (mix.density() * Constants.G * swollenM[i] / 2);
                // The volume doubles in each life, the diameter grows as its third root.
                diameterAtAirM[i] *= Math.exp(Math.log(2) / 3 * Math.min(MOST_LIVES, stepS / lifeS));
            }
        }
    }

    /** Breaks bubbles until the gas takes no more than a volume, the coarse ones faster as the square of their size. */
    void breakDownTo(double mostM3, double overPa, double vapourPa) {
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            double volume = 0;
            double byPace = 0;
            for (int i = 0; i < gas.length; i++) {
                if (passed[i] < 1) {
                    double own = gas[i] * volumePerGas(overPa, vapourPa, laplacePa[i], passed[i]);
                    volume += own;
                    byPace += own * swollenM[i] * swollenM[i];
                }
            }
            if (volume <= mostM3 * (1 + AT_CAP)) {
                return;
            }
            // Newton on the logarithm of the volume, which is convex: it nears the root from one side only.
            double share = Math.log(volume / mostM3) * volume / byPace;
            for (int i = 0; i < gas.length; i++) {
                gas[i] *= Math.exp(-share * swollenM[i] * swollenM[i]);
            }
        }
    }

    /** Largest bubble left, as its diameter under local air pressure, m; 0 when none is left. */
    double largestAtAirM() {
        for (int i = gas.length - 1; i >= 0; i--) {
            if (passed[i] < 1 && gas[i] > 0) {
                // Within a class the coarser go first: the one whose front is at the top now, but none of the next
                // class.
                double atTop = passed[i] > 0 ? diameterAtAirM[i] / Math.sqrt(passed[i]) : Double.POSITIVE_INFINITY;
                double next =
                        i + 1 < gas.length ? Math.sqrt(diameterAtAirM[i] * diameterAtAirM[i + 1]) : diameterAtAirM[i];
                return Math.min(atTop, Math.max(next, diameterAtAirM[i]));
            }
        }
        return 0;
    }

    /** Swollen diameter of the size that half of the gas left is finer than, m; 0 when none is left. */
    double medianM() {
        double half = amount() / 2;
        double sum = 0;
        for (int i = 0; i < gas.length; i++) {
            sum += gas[i] * Math.max(0, 1 - passed[i]);
            if (sum > half) {
                return swollenM[i];
            }
        }
        return 0;
    }

    /** What is left, spread evenly again, as in a new vessel after a pour. */
    Bubbles left() {
        List<Bubbles.Size> sizes = new ArrayList<>();
        for (int i = 0; i < gas.length; i++) {
            double here = gas[i] * Math.max(0, 1 - passed[i]);
            if (here > 0) {
                sizes.add(new Bubbles.Size(diameterAtAirM[i], here));
            }
        }
        return new Bubbles(sizes);
    }
}
