package pourwright.physics;

/**
 * Rate law of a thermoset: da/dt = (k1 + k2 a^m) (1 - a)^n, k = A exp(-E/RT) for each of the two.
 * Valid for one temperature range and before the resin turns to glass.
 * Source: Kamal and Sourour, Polym. Eng. Sci. 13:59, 1973; from memory.
 *
 * @param factor1PerS    front factor A1 of the uncatalysed path, 1/s
 * @param energy1JPerMol activation energy E1, J/mol
 * @param factor2PerS    front factor A2 of the path that feeds itself, 1/s
 * @param energy2JPerMol activation energy E2, J/mol
 * @param m              exponent of the conversion
 * @param n              exponent of what is left
 */
public record KamalSourour(
        double factor1PerS, double energy1JPerMol, double factor2PerS, double energy2JPerMol, double m, double n) {

    /** @throws PhysicsException when a constant is not a number or negative */
    public KamalSourour {
        Checked.zeroOrMore("first front factor", factor1PerS, "1/s");
        Checked.zeroOrMore("first activation energy", energy1JPerMol, "J/mol");
        Checked.zeroOrMore("second front factor", factor2PerS, "1/s");
        Checked.zeroOrMore("second activation energy", energy2JPerMol, "J/mol");
        Checked.zeroOrMore("exponent m", m, "");
        Checked.zeroOrMore("exponent n", n, "");
    }

    /**
     * The rate of cure.
     *
     * @param conversion   share of the groups that have reacted, 0 to 1
     * @param temperatureK temperature, K
     * @return rate, 1/s
     * @throws PhysicsException when the conversion is outside 0 to 1 or the temperature is not above zero
     */
    public double ratePerS(double conversion, double temperatureK) {
        Checked.within("conversion", conversion, 0, 1, "");
        Checked.positive("temperature", temperatureK, "K");
        double thermal = 1 / (Constants.GAS_CONSTANT * temperatureK);
        return (factor1PerS * Math.exp(-energy1JPerMol * thermal)
                        + factor2PerS * Math.exp(-energy2JPerMol * thermal) * Math.pow(conversion, m))
                * Math.pow(1 - conversion, n);
    }

    /**
     * Time to a conversion at constant temperature.
     *
     * @param temperatureK temperature, K
     * @param conversion   the conversion asked about, 0 to below 1
     * @return time, s; infinite when nothing starts the reaction
     * @throws PhysicsException when an input is out of range
     */
    public double isothermalTimeS(double temperatureK, double conversion) {
        return Cure.timeToConversionS(this::ratePerS, temperatureK, 0, conversion);
    }

    /**
     * Time to a conversion when the mix keeps all its heat; its temperature is start + rise × conversion.
     *
     * @param startK     temperature at the start, K
     * @param riseK      adiabatic rise at full conversion, K
     * @param conversion the conversion asked about, 0 to below 1
     * @return time, s; infinite when nothing starts the reaction
     * @throws PhysicsException when an input is out of range
     */
    public double adiabaticTimeS(double startK, double riseK, double conversion) {
        return Cure.timeToConversionS(this::ratePerS, startK, riseK, conversion);
    }
}
