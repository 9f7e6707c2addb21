package pourwright.physics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;

/**
 * One bubble in a liquid: how fast it rises, how it swells under vacuum, how long it needs to dissolve.
 * Pure functions in SI units.
 */
public final class Bubble {

    /**
     * Reynolds number above which the creeping-flow speeds are too high, so that they must not be used as they are.
     * Source: usual limit in fluid mechanics textbooks, with a drag about 5 % above the law; from memory.
     */
    public static final double STOKES_LIMIT_REYNOLDS = 0.3;

    /** Clean bubble over rigid sphere: the Hadamard-Rybczynski law for a gas much thinner than the liquid. */
    public static final double CLEAN_OVER_STOKES = 1.5;

    /** Below this size of (1 - f) R / b the closed form loses digits to cancellation; points are summed instead. */
    private static final double CLOSED_FORM_FROM = 0.01;

    /** Ten points integrate the smooth remainder to rounding error. */
    private static final GaussIntegrator UNIT_INTERVAL = GaussPoints.legendre(10, 0, 1);

    /** Newton's method from above doubles its digits at each turn; more turns than this cannot change the result. */
    private static final int MOST_TURNS = 60;

    private Bubble() {}

    /**
     * Rise speed of a small bubble with a rigid (dirty) skin: d² g (liquid density - gas density) / (18 viscosity).
     * Valid while {@link #reynolds} is at most {@link #STOKES_LIMIT_REYNOLDS} and other bubbles are far away.
     * Source: Stokes 1851, as in H. C. Verma, Concepts of Physics 1, example 14.9.
     *
     * @param diameterM     bubble diameter, m
     * @param liquidDensity density of the liquid, kg/m3
     * @param gasDensity    density of what is in the bubble, kg/m3; 0 where its weight does not matter
     * @param viscosityPaS  viscosity of the liquid, Pa s
     * @return speed upwards, m/s; negative when the bubble is heavier than the liquid
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double stokesRiseMPerS(
            double diameterM, double liquidDensity, double gasDensity, double viscosityPaS) {
        Checked.zeroOrMore("bubble diameter", diameterM, "m");
        Checked.positive("liquid density", liquidDensity, "kg/m3");
        Checked.zeroOrMore("gas density", gasDensity, "kg/m3");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        return diameterM * diameterM * Constants.G * (liquidDensity - gasDensity) / (18 * viscosityPaS);
    }

    /**
     * Rise speed of a small clean bubble, 1.5 times the Stokes speed. Real bubbles lie between the two.
     * Source: Hadamard-Rybczynski law in Clift, Grace, Weber, Bubbles, Drops and Particles, 1978; from memory.
     *
     * @param diameterM     bubble diameter, m
     * @param liquidDensity density of the liquid, kg/m3
     * @param gasDensity    density of what is in the bubble, kg/m3
     * @param viscosityPaS  viscosity of the liquid, Pa s
     * @return speed upwards, m/s; negative when the bubble is heavier than the liquid
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double cleanRiseMPerS(
            double diameterM, double liquidDensity, double gasDensity, double viscosityPaS) {
        return CLEAN_OVER_STOKES * stokesRiseMPerS(diameterM, liquidDensity, gasDensity, viscosityPaS);
    }

    /**
     * Reynolds number of a moving bubble: density × |speed| × diameter / viscosity.
     * Source: definition, as in Clift, Grace, Weber, Bubbles, Drops and Particles, 1978.
     *
     * @param speedMPerS    speed, m/s, of either sign
     * @param diameterM     bubble diameter, m
     * @param liquidDensity density of the liquid, kg/m3
     * @param viscosityPaS  viscosity of the liquid, Pa s
     * @return Reynolds number, no unit
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double reynolds(double speedMPerS, double diameterM, double liquidDensity, double viscosityPaS) {
        Checked.finite("speed", speedMPerS, "m/s");
        Checked.zeroOrMore("bubble diameter", diameterM, "m");
        Checked.positive("liquid density", liquidDensity, "kg/m3");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        return liquidDensity * Math.abs(speedMPerS) * diameterM / viscosityPaS;
    }

    /**
     * How much a crowd of bubbles slows each of them: (1 - gas fraction)^n.
     * Source: Richardson and Zaki 1954, n 4.65 for creeping flow and 2.4 for fast flow.
     *
     * @param gasFraction share of the volume that is gas, 0 to 1
     * @param n           exponent, no unit, above zero
     * @return speed over the speed of a lone bubble, 0 to 1
     * @throws PhysicsException when the gas fraction is outside 0 to 1 or n is not above zero
     */
    public static double hindrance(double gasFraction, double n) {
        Checked.within("gas fraction", gasFraction, 0, 1, "");
        Checked.positive("hindrance exponent", n, "");
        return Math.pow(1 - gasFraction, n);
    }

    /**
     * Excess pressure inside a bubble in a liquid: 4 surface tension / diameter. A soap film has twice that.
     * Source: Laplace's law, as in K. Subramanya, 1000 Solved Problems in Fluid Mechanics, example 1.15.
     *
     * @param diameterM bubble diameter, m
     * @param sigma     surface tension, N/m
     * @return excess pressure, Pa
     * @throws PhysicsException when the diameter is not above zero or the tension is negative
     */
    public static double laplacePa(double diameterM, double sigma) {
        Checked.positive("bubble diameter", diameterM, "m");
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        return 4 * sigma / diameterM;
    }

    /**
     * Diameter of a bubble after the pressure over the liquid has changed, its gas and temperature staying the same.
     * Solves (pressure + density g depth + 2 sigma/r) r³ = constant. Valid for dry gas well above the vapour pressure
     * of the liquid, and while no gas comes out of solution.
     * Source: Boyle's law with head and Laplace pressure.
     *
     * @param diameterAtStartM diameter at the start pressure, m
     * @param startPa          absolute pressure over the liquid at the start, Pa
     * @param endPa            absolute pressure over the liquid at the end, Pa
     * @param density          density of the liquid, kg/m3
     * @param depthM           depth of the bubble under the surface, m; the same before and after
     * @param sigma            surface tension, N/m
     * @return diameter at the end pressure, m
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double expandedDiameterM(
            double diameterAtStartM, double startPa, double endPa, double density, double depthM, double sigma) {
        Checked.positive("bubble diameter", diameterAtStartM, "m");
        Checked.positive("pressure at the start", startPa, "Pa absolute");
        Checked.positive("pressure at the end", endPa, "Pa absolute");
        Checked.positive("liquid density", density, "kg/m3");
        Checked.zeroOrMore("depth", depthM, "m");
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        double headPa = density * Constants.G * depthM;
        double radiusM = diameterAtStartM / 2;
        return 2 * radiusM(endPa + headPa, sigma, content(startPa + headPa, sigma, radiusM));
    }

    /**
     * Time in which a resting bubble dissolves, after Epstein and Plesset without the start-up term (quasi-steady):
     * dr/dt = -L D / r × (1 - f + b/r) / (1 + 2b/(3r)), with b = 2 sigma / pressure.
     * The denominator follows from the gas balance d[r³ (P + 2 sigma/r)]; a form with 3 sigma/(4 P r) is a misprint.
     * Measured times are about 10 % longer (Duncan and Needham, Langmuir 20:2567, 2004).
     * Source: Epstein and Plesset, J. Chem. Phys. 18:1505, 1950; from memory.
     *
     * @param diameterM         diameter at the start, m
     * @param pressurePa        absolute pressure in the liquid, Pa
     * @param sigma             surface tension, N/m
     * @param ostwald           Ostwald solubility L, gas volume over liquid volume, no unit
     * @param diffusivityM2PerS diffusivity D of the gas in the liquid, m2/s
     * @param saturation        gas dissolved far away over what the liquid holds at the pressure, f, no unit
     * @return time until the bubble is gone, s; infinite when it does not shrink
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double dissolutionTimeS(
            double diameterM,
            double pressurePa,
            double sigma,
            double ostwald,
            double diffusivityM2PerS,
            double saturation) {
        Checked.positive("bubble diameter", diameterM, "m");
        Checked.positive("pressure", pressurePa, "Pa absolute");
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        Checked.positive("Ostwald solubility", ostwald, "");
        Checked.positive("diffusivity", diffusivityM2PerS, "m2/s");
        Checked.zeroOrMore("saturation", saturation, "");
        double radiusM = diameterM / 2;
        double lengthM = 2 * sigma / pressurePa;
        double deficit = 1 - saturation;
        if (deficit * radiusM + lengthM <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return shrinkIntegralM2(radiusM, lengthM, deficit) / (ostwald * diffusivityM2PerS);
    }

    /** Integral of r (r + 2b/3) / (c r + b) from 0 to R: in closed form, or by points where c R is small beside b. */
    private static double shrinkIntegralM2(double radiusM, double lengthM, double deficit) {
        if (Math.abs(deficit) * radiusM < CLOSED_FORM_FROM * lengthM) {
            return radiusM
                    * UNIT_INTERVAL.integrate(share -> {
                        double r = share * radiusM;
                        return r * (r + 2 * lengthM / 3) / (deficit * r + lengthM);
                    });
        }
        double quotient = lengthM * (2.0 / 3 - 1 / deficit) / deficit;
        double logarithm = lengthM > 0 ? lengthM * quotient / deficit * Math.log1p(deficit * radiusM / lengthM) : 0;
        return radiusM * radiusM / (2 * deficit) + quotient * radiusM - logarithm;
    }

    /** What stays the same while a bubble swells: (pressure + 2 sigma/r) r³, proportional to its gas, Pa m3. */
    static double content(double pressurePa, double sigma, double radiusM) {
        return (pressurePa * radiusM + 2 * sigma) * radiusM * radiusM;
    }

    /**
     * The radius at which pressure r³ + 2 sigma r² has the given content. Newton's method by hand, not a library
     * solver: the function is convex and the start lies above the root, so it cannot fail, and it runs many times
     * in each consultation.
     */
    static double radiusM(double pressurePa, double sigma, double content) {
        double r = Math.cbrt(content / pressurePa);
        if (sigma == 0) {
            return r;
        }
        // A tension-ruled bubble starts nearer to the other limit, sqrt(content / 2 sigma), also above the root.
        r = Math.min(r, Math.sqrt(content / (2 * sigma)));
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            double step = (content(pressurePa, sigma, r) - content) / (r * (3 * pressurePa * r + 4 * sigma));
            r -= step;
            if (Math.abs(step) <= 1e-14 * r) {
                break;
            }
        }
        return r;
    }
}
