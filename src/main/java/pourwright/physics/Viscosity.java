package pourwright.physics;

/** How a curing mix thickens. */
public final class Viscosity {

    private Viscosity() {}

    /**
     * Viscosity of a mix some time after mixing: start viscosity × (1 - t/gel time)^(-k), k = ln 2 / -ln(1 - s),
     * so that it has doubled at the share s of the gel time and has no limit at gel.
     * Valid at one temperature, for a mix whose working time is corrected for mass and temperature.
     * Source: the power law towards gel is common practice for thermosets; the share 0.4 to 0.6 is from memory.
     *
     * @param startPaS      viscosity just after mixing, Pa s
     * @param timeS         time since mixing, s
     * @param gelS          time from mixing to gel, s; infinite for a liquid that does not cure
     * @param doublingShare share s of the gel time at which the viscosity has doubled, between 0 and 1
     * @return viscosity, Pa s; infinite at gel and after
     * @throws PhysicsException when an input is not a number, negative or out of range
     */
    public static double atTimePaS(double startPaS, double timeS, double gelS, double doublingShare) {
        Checked.positive("viscosity", startPaS, "Pa s");
        Checked.zeroOrMore("time since mixing", timeS, "s");
        checkGelS(gelS);
        double exponent = growthExponent(doublingShare);
        if (timeS >= gelS) {
            return Double.POSITIVE_INFINITY;
        }
        return startPaS * Math.pow(1 - timeS / gelS, -exponent);
    }

    /**
     * The exponent k = ln 2 / -ln(1 - s) of the growth law.
     *
     * @param doublingShare share s of the gel time at which the viscosity has doubled, between 0 and 1
     * @return k, no unit
     * @throws PhysicsException when the share is not strictly between 0 and 1
     */
    public static double growthExponent(double doublingShare) {
        if (!(doublingShare > 0 && doublingShare < 1)) {
            throw new PhysicsException("The share of the gel time at which the viscosity has doubled must lie between "
                    + "0 and 1, but it is " + doublingShare + ".");
        }
        return Math.log(2) / -Math.log1p(-doublingShare);
    }

    /** A time to gel must be above zero; infinity stands for a liquid that does not cure. */
    static void checkGelS(double gelS) {
        if (gelS != Double.POSITIVE_INFINITY) {
            Checked.positive("time to gel", gelS, "s");
        }
    }
}
