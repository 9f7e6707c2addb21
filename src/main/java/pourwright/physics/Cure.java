package pourwright.physics;

import java.util.function.DoubleBinaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** How fast a mix cures, by temperature and mass. */
public final class Cure {

    /** Relative error of a time to conversion, far below what rate constants are known to. */
    private static final double TIME_RELATIVE = 1e-9;

    /** Smallest and largest step in conversion. */
    private static final double SMALLEST_STEP = 1e-13;

    private static final double LARGEST_STEP = 0.1;

    private Cure() {}

    /**
     * Rate at one temperature over the rate at another: exp(-E/R (1/to - 1/from)).
     * Valid over a few tens of kelvin, while one reaction rules.
     * Source: Arrhenius law. Ten kelvin double the rate at 20 °C for E of about 51 kJ/mol.
     *
     * @param fromK                  temperature of the known rate, K
     * @param toK                    temperature asked about, K
     * @param activationEnergyJPerMol activation energy E, J/mol, zero or more
     * @return factor on the rate, no unit; above 1 when it is warmer
     * @throws PhysicsException when a temperature is not above zero or the energy is negative
     */
    public static double rateFactor(double fromK, double toK, double activationEnergyJPerMol) {
        Checked.positive("known temperature", fromK, "K");
        Checked.positive("temperature asked about", toK, "K");
        Checked.zeroOrMore("activation energy", activationEnergyJPerMol, "J/mol");
        return Math.exp(activationEnergyJPerMol / Constants.GAS_CONSTANT * (1 / fromK - 1 / toK));
    }

    /**
     * Working time at another temperature and in another mass: rated time / rate factor × (rated mass / mass)^n.
     * Source: Arrhenius law; the power of the mass is common practice, n about 0.4 (0.25 to 0.55). It holds for cups
     * within about a factor of ten of the rated mass, not for thin layers.
     *
     * @param ratedS                 working time as rated, s
     * @param ratedK                 temperature of the rating, K
     * @param temperatureK           temperature of the mix, K
     * @param activationEnergyJPerMol activation energy, J/mol
     * @param ratedMassKg            mass of the rating, kg
     * @param massKg                 mass mixed, kg
     * @param exponent               exponent n of the mass, zero or more
     * @return working time, s
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double workingTimeS(
            double ratedS,
            double ratedK,
            double temperatureK,
            double activationEnergyJPerMol,
            double ratedMassKg,
            double massKg,
            double exponent) {
        Checked.positive("rated working time", ratedS, "s");
        Checked.positive("rated mass", ratedMassKg, "kg");
        Checked.positive("mass", massKg, "kg");
        Checked.zeroOrMore("exponent of the mass", exponent, "");
        return ratedS
                / rateFactor(ratedK, temperatureK, activationEnergyJPerMol)
                * Math.pow(ratedMassKg / massKg, exponent);
    }

    /**
     * How much a mix warms if it keeps all its heat: heat of cure / specific heat. The most that is possible.
     * Source: heat balance.
     *
     * @param heatJPerKg         heat of full cure, J/kg
     * @param specificHeatJPerKgK specific heat of the mix, J/(kg K)
     * @return rise, K
     * @throws PhysicsException when the heat is negative or the specific heat is not above zero
     */
    public static double adiabaticRiseK(double heatJPerKg, double specificHeatJPerKgK) {
        Checked.zeroOrMore("heat of cure", heatJPerKg, "J/kg");
        Checked.positive("specific heat", specificHeatJPerKgK, "J/(kg K)");
        return heatJPerKg / specificHeatJPerKgK;
    }

    /**
     * Time to a conversion when the mix warms by a fixed rise times its conversion: the integral of 1/rate.
     * A rise of zero is a constant temperature; the adiabatic rise is a mix that keeps all its heat.
     * The equation is solved for time over conversion, so the end is exact and no event has to be searched.
     *
     * @param ratePerS   rate of conversion, 1/s, as a function of conversion and temperature in K
     * @param startK     temperature at the start, K
     * @param riseK      rise at full conversion, K, zero or more
     * @param conversion the conversion asked about, 0 to below 1
     * @return time, s; infinite when the rate is zero at the start
     * @throws PhysicsException when an input is out of range, or the rate is not above zero on the way
     */
    public static double timeToConversionS(
            DoubleBinaryOperator ratePerS, double startK, double riseK, double conversion) {
        Checked.positive("temperature", startK, "K");
        Checked.zeroOrMore("temperature rise", riseK, "K");
        Checked.within("conversion", conversion, 0, Math.nextDown(1.0), "");
        if (conversion == 0) {
            return 0;
        }
        if (ratePerS.applyAsDouble(0, startK) == 0) {
            return Double.POSITIVE_INFINITY;
        }
        OrdinaryDifferentialEquation timeOverConversion = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double a, double[] timeS) {
                double rate = ratePerS.applyAsDouble(a, startK + riseK * a);
                return new double[] {1 / Checked.positive("rate of cure", rate, "1/s")};
            }
        };
        double absoluteS = TIME_RELATIVE * conversion / ratePerS.applyAsDouble(0, startK);
        return new DormandPrince853Integrator(SMALLEST_STEP, LARGEST_STEP, absoluteS, TIME_RELATIVE)
                .integrate(timeOverConversion, new ODEState(0, new double[] {0}), conversion)
                .getPrimaryState()[0];
    }
}
