package pourwright.physics;

/**
 * Viscosity of a reacting resin by its conversion: A exp(E/RT) [ag / (ag - a)]^(p + q a).
 * A published model to check simpler ones against; its constants differ from resin to resin.
 * Source: Castro and Macosko, AIChE J. 28:250, 1982; from memory.
 *
 * @param frontPaS               the factor A, Pa s
 * @param activationEnergyJPerMol flow activation energy E, J/mol
 * @param gelConversion          conversion ag at gel, above 0, at most 1
 * @param p                      constant part of the exponent
 * @param q                      part of the exponent that grows with conversion
 */
public record CastroMacosko(double frontPaS, double activationEnergyJPerMol, double gelConversion, double p, double q) {

    /** The polyurethane of the paper; constants from memory. */
    public static final CastroMacosko POLYURETHANE = new CastroMacosko(1.03e-7, 41.3e3, 0.65, 1.5, 1.0);

    /** @throws PhysicsException when a constant is not a number, negative or out of range */
    public CastroMacosko {
        Checked.positive("viscosity factor", frontPaS, "Pa s");
        Checked.zeroOrMore("flow activation energy", activationEnergyJPerMol, "J/mol");
        Checked.positive("conversion at gel", gelConversion, "");
        Checked.within("conversion at gel", gelConversion, 0, 1, "");
        Checked.zeroOrMore("exponent p", p, "");
        Checked.zeroOrMore("exponent q", q, "");
    }

    /**
     * The viscosity at a conversion and temperature.
     *
     * @param conversion   share of the groups that have reacted, 0 to 1
     * @param temperatureK temperature, K
     * @return viscosity, Pa s; infinite at gel and beyond, which is to be shown as "gelled"
     * @throws PhysicsException when the conversion is outside 0 to 1 or the temperature is not above zero
     */
    public double viscosityPaS(double conversion, double temperatureK) {
        Checked.within("conversion", conversion, 0, 1, "");
        Checked.positive("temperature", temperatureK, "K");
        if (conversion >= gelConversion) {
            return Double.POSITIVE_INFINITY;
        }
        return frontPaS
                * Math.exp(activationEnergyJPerMol / (Constants.GAS_CONSTANT * temperatureK))
                * Math.pow(gelConversion / (gelConversion - conversion), p + q * conversion);
    }
}
