package pourwright.physics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How long bubbles need to rise out of a curing liquid under a given chamber pressure.
 *
 * <p>The bubble swells as its head shrinks, and the liquid thickens while it rises. Both parts separate: the integral
 * of 1/d² over the depth (seven points) equals the integral of 1/viscosity over time (closed form). Bubbles that touch
 * and froth are another matter, see {@link FrothCourse}. Speeds hold while {@link #reynoldsAtSurface} is at most
 * {@link Bubble#STOKES_LIMIT_REYNOLDS}; beyond it the real time is longer than the one given.
 */
public final class BubbleClearing {

    /** Seven points give the depth integral to 1e-5 even where the head rules the size of the bubble. */
    private static final GaussIntegrator OVER_DEPTH = GaussPoints.legendre(7, 0, 1);

    /** Relative accuracy of the smallest cleared bubble: far below any input's own accuracy. */
    private static final double LOG_DIAMETER_ACCURACY = 1e-10;

    /** The solver doubles the width of its bracket at most this often, so each call is bounded. */
    private static final int MOST_EVALUATIONS = 200;

    private BubbleClearing() {}

    /**
     * Time for a bubble to rise through the whole depth. It starts at the bottom, at the moment the mix is as thick as
     * said; its diameter is the one it has there under air pressure.
     * Speed: speedFactor × Stokes with the weight of the gas left out (0.1 %); size: Boyle with head and Laplace
     * pressure; viscosity: {@link Viscosity#atTimePaS}.
     *
     * @param diameterAtAirM diameter under local air pressure, m
     * @param depthM         depth of liquid to rise through, m
     * @param chamberPa      absolute pressure over the liquid, Pa
     * @param airPa          absolute local air pressure, Pa
     * @param density        density of the liquid, kg/m3
     * @param viscosityPaS   viscosity at the start, Pa s
     * @param gelS           time from the start to gel, s; infinite for a liquid that does not cure
     * @param doublingShare  share of the gel time at which the viscosity has doubled, between 0 and 1
     * @param sigma          surface tension, N/m
     * @param speedFactor    rise speed over the Stokes speed: 1 for a dirty bubble to 1.5 for a clean one
     * @return time, s; infinite when the liquid gels first
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double timeS(
            double diameterAtAirM,
            double depthM,
            double chamberPa,
            double airPa,
            double density,
            double viscosityPaS,
            double gelS,
            double doublingShare,
            double sigma,
            double speedFactor) {
        Checked.positive("bubble diameter", diameterAtAirM, "m");
        check(depthM, chamberPa, airPa, density, viscosityPaS, gelS, sigma, speedFactor);
        double exponent = Viscosity.growthExponent(doublingShare);
        double perUncuredS = 18 * viscosityPaS / (speedFactor * Constants.G * density);
        double uncuredS = perUncuredS * slownessPerM(diameterAtAirM, depthM, chamberPa, airPa, density, sigma);
        return curedS(uncuredS, gelS, exponent);
    }

    /**
     * The smallest bubble that rises out within a time: the inverse of {@link #timeS} in the diameter.
     *
     * @param withinS       time at hand from the start, s; time after gel does not count
     * @param depthM        depth of liquid to rise through, m
     * @param chamberPa     absolute pressure over the liquid, Pa
     * @param airPa         absolute local air pressure, Pa
     * @param density       density of the liquid, kg/m3
     * @param viscosityPaS  viscosity at the start, Pa s
     * @param gelS          time from the start to gel, s; infinite for a liquid that does not cure
     * @param doublingShare share of the gel time at which the viscosity has doubled, between 0 and 1
     * @param sigma         surface tension, N/m
     * @param speedFactor   rise speed over the Stokes speed: 1 for a dirty bubble to 1.5 for a clean one
     * @return diameter under local air pressure, m; infinite when no time is at hand; zero for no depth
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double smallestClearedM(
            double withinS,
            double depthM,
            double chamberPa,
            double airPa,
            double density,
            double viscosityPaS,
            double gelS,
            double doublingShare,
            double sigma,
            double speedFactor) {
        Checked.zeroOrMore("time at hand", withinS, "s");
        check(depthM, chamberPa, airPa, density, viscosityPaS, gelS, sigma, speedFactor);
        double exponent = Viscosity.growthExponent(doublingShare);
        if (depthM == 0) {
            return 0;
        }
        if (withinS == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double perUncuredS = 18 * viscosityPaS / (speedFactor * Constants.G * density);
        double target = Math.log(uncuredS(withinS, gelS, exponent) / perUncuredS);
        // Without tension the slowness goes exactly as 1/d², which gives the answer, or a start just below it.
        double startM = Math.exp((Math.log(slownessPerM(1, depthM, chamberPa, airPa, density, 0)) - target) / 2);
        if (sigma == 0) {
            return startM;
        }
        UnivariateFunction excess = logDiameter ->
                Math.log(slownessPerM(Math.exp(logDiameter), depthM, chamberPa, airPa, density, sigma)) - target;
        return Math.exp(solve(excess, Math.log(startM)));
    }

    /**
     * Reynolds number of the bubble where it is fastest, at the surface, in the liquid as it was at the start.
     * Above {@link Bubble#STOKES_LIMIT_REYNOLDS} the times of this class are too short.
     *
     * @param diameterAtAirM diameter at the bottom under local air pressure, m
     * @param depthM         depth of liquid, m
     * @param chamberPa      absolute pressure over the liquid, Pa
     * @param airPa          absolute local air pressure, Pa
     * @param density        density of the liquid, kg/m3
     * @param viscosityPaS   viscosity at the start, Pa s
     * @param sigma          surface tension, N/m
     * @param speedFactor    rise speed over the Stokes speed
     * @return Reynolds number, no unit
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double reynoldsAtSurface(
            double diameterAtAirM,
            double depthM,
            double chamberPa,
            double airPa,
            double density,
            double viscosityPaS,
            double sigma,
            double speedFactor) {
        Checked.positive("bubble diameter", diameterAtAirM, "m");
        check(depthM, chamberPa, airPa, density, viscosityPaS, Double.POSITIVE_INFINITY, sigma, speedFactor);
        double startRadiusM = diameterAtAirM / 2;
        double content = Bubble.content(airPa + density * Constants.G * depthM, sigma, startRadiusM);
        double diameterM = 2 * Bubble.radiusM(chamberPa, sigma, content);
        double speedMPerS = speedFactor * Bubble.stokesRiseMPerS(diameterM, density, 0, viscosityPaS);
        return Bubble.reynolds(speedMPerS, diameterM, density, viscosityPaS);
    }

    /** Integral of 1/d² over the depth, 1/m: how slow the rise is, apart from the liquid. */
    private static double slownessPerM(
            double diameterAtAirM, double depthM, double chamberPa, double airPa, double density, double sigma) {
        double weightPaPerM = density * Constants.G;
        double content = Bubble.content(airPa + weightPaPerM * depthM, sigma, diameterAtAirM / 2);
        return depthM
                * OVER_DEPTH.integrate(share -> {
                    double radiusM = Bubble.radiusM(chamberPa + weightPaPerM * depthM * share, sigma, content);
                    return 1 / (4 * radiusM * radiusM);
                });
    }

    /** The time on the clock in a curing liquid for what would take uncuredS if it stayed thin. */
    private static double curedS(double uncuredS, double gelS, double exponent) {
        if (gelS == Double.POSITIVE_INFINITY) {
            return uncuredS;
        }
        double spent = (exponent + 1) * uncuredS / gelS;
        if (spent >= 1) {
            return Double.POSITIVE_INFINITY;
        }
        return gelS * -Math.expm1(Math.log1p(-spent) / (exponent + 1));
    }

    /** The inverse of curedS. */
    private static double uncuredS(double onClockS, double gelS, double exponent) {
        if (gelS == Double.POSITIVE_INFINITY) {
            return onClockS;
        }
        double share = Math.min(1, onClockS / gelS);
        return gelS / (exponent + 1) * -Math.expm1((exponent + 1) * Math.log1p(-share));
    }

    /** The root of a falling function of log diameter, looked for outwards from a start. */
    private static double solve(UnivariateFunction excess, double start) {
        double width = 0.1;
        double low = start;
        double high = start;
        while (excess.value(high) > 0) {
            high += width;
            width *= 2;
        }
        width = 0.1;
        while (excess.value(low) < 0) {
            low -= width;
            width *= 2;
        }
        if (low == high) {
            return low;
        }
        return new BracketingNthOrderBrentSolver(LOG_DIAMETER_ACCURACY, 5).solve(MOST_EVALUATIONS, excess, low, high);
    }

    private static void check(
            double depthM,
            double chamberPa,
            double airPa,
            double density,
            double viscosityPaS,
            double gelS,
            double sigma,
            double speedFactor) {
        Checked.zeroOrMore("depth", depthM, "m");
        Checked.positive("chamber pressure", chamberPa, "Pa absolute");
        Checked.positive("air pressure", airPa, "Pa absolute");
        Checked.positive("liquid density", density, "kg/m3");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        Viscosity.checkGelS(gelS);
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        Checked.positive("speed factor", speedFactor, "");
    }
}
