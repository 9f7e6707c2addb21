package pourwright.degas;

import pourwright.physics.Constants;
import pourwright.physics.KamalSourour;
import pourwright.physics.Require;

/**
 * How a mix reacts: rate by conversion and temperature, the conversion at gel, the heat.
 *
 * <p>With one activation energy the conversion is a function of age alone, where age is the share of the gel time that a
 * mix kept at one temperature would have behind it. The age of a conversion is tabled once, by Simpson's rule.
 */
public final class Reaction {

    /** Panels of the table of age; with a cubic between rows it is good to 1e-7. */
    private static final int PANELS = 200;

    private final KamalSourour law;
    private final double gelConversion;
    private final double adiabaticRiseK;
    private final double[] age;

    private Reaction(KamalSourour law, double gelConversion, double adiabaticRiseK, double[] age) {
        this.law = law;
        this.gelConversion = gelConversion;
        this.adiabaticRiseK = adiabaticRiseK;
        this.age = age;
    }

    /**
     * A reaction of known speed.
     *
     * @param shape          rate over conversion
     * @param ratePerS       rate at the start of the reaction at the reference temperature, 1/s, above zero
     * @param referenceK     reference temperature, K, above zero
     * @param energyJPerMol  activation energy, J/mol, zero or more
     * @param gelConversion  conversion at gel, above 0 and below 1
     * @param adiabaticRiseK rise at full conversion when no heat is lost, K, zero or more
     * @return the reaction
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public static Reaction of(
            CureShape shape,
            double ratePerS,
            double referenceK,
            double energyJPerMol,
            double gelConversion,
            double adiabaticRiseK) {
        Require.given("shape of the cure", shape);
        Require.positive("rate of cure", ratePerS, "1/s");
        Require.positive("reference temperature", referenceK, "K");
        Require.zeroOrMore("activation energy", energyJPerMol, "J/mol");
        Require.positive("conversion at gel", gelConversion, "");
        Require.within("conversion at gel", gelConversion, 0, Math.nextDown(1.0), "");
        Require.zeroOrMore("adiabatic rise", adiabaticRiseK, "K");
        double factorPerS = ratePerS * Math.exp(energyJPerMol / (Constants.GAS_CONSTANT * referenceK));
        KamalSourour law = new KamalSourour(
                factorPerS, energyJPerMol, shape.selfFeeding() * factorPerS, energyJPerMol, shape.m(), shape.n());
        return new Reaction(law, gelConversion, adiabaticRiseK, ages(law, referenceK, gelConversion));
    }

    private static double[] ages(KamalSourour law, double atK, double gelConversion) {
        double[] table = new double[PANELS + 1];
        double width = gelConversion / PANELS;
        for (int i = 1; i <= PANELS; i++) {
            double left = (i - 1) * width;
            double sum = 1 / law.ratePerS(left, atK)
                    + 4 / law.ratePerS(left + width / 2, atK)
                    + 1 / law.ratePerS(left + width, atK);
            table[i] = table[i - 1] + sum * width / 6;
        }
        double gelS = table[PANELS];
        for (int i = 0; i <= PANELS; i++) {
            table[i] /= gelS;
        }
        return table;
    }

    /**
     * The same reaction at another speed.
     *
     * @param factor factor on the speed, above zero
     * @return the faster or slower reaction
     */
    Reaction faster(double factor) {
        return new Reaction(
                new KamalSourour(
                        law.factor1PerS() * factor,
                        law.energy1JPerMol(),
                        law.factor2PerS() * factor,
                        law.energy2JPerMol(),
                        law.m(),
                        law.n()),
                gelConversion,
                adiabaticRiseK,
                age);
    }

    /**
     * Rate of conversion.
     *
     * @param conversion   conversion, 0 to 1
     * @param temperatureK temperature, K
     * @return rate, 1/s
     */
    public double ratePerS(double conversion, double temperatureK) {
        return law.ratePerS(conversion, temperatureK);
    }

    /**
     * Age of a conversion: the share of the gel time that a mix kept at one temperature has behind it.
     *
     * @param conversion conversion, 0 to 1
     * @return age, 0 at mixing, 1 at gel and beyond
     */
    public double ageAt(double conversion) {
        if (conversion >= gelConversion) {
            return 1;
        }
        double place = Math.max(0, conversion) / gelConversion * PANELS;
        int row = (int) place;
        double u = place - row;
        double v = 1 - u;
        double slopeLeft = slope(row);
        double slopeRight = slope(row + 1);
        // Cubic Hermite form with slopes from the neighbouring rows.
        return v * v * (age[row] * (1 + 2 * u) + slopeLeft * u) + u * u * (age[row + 1] * (1 + 2 * v) - slopeRight * v);
    }

    /** Conversion of an age between 0 and 1: the reverse of {@link #ageAt}, by halving. */
    double conversionAtAge(double wanted) {
        double low = 0;
        double high = gelConversion;
        while (high - low > 1e-13) {
            double middle = (low + high) / 2;
            if (ageAt(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double slope(int row) {
        if (row == 0) {
            return (4 * age[1] - 3 * age[0] - age[2]) / 2;
        }
        if (row == PANELS) {
            return (3 * age[PANELS] - 4 * age[PANELS - 1] + age[PANELS - 2]) / 2;
        }
        return (age[row + 1] - age[row - 1]) / 2;
    }

    /**
     * Time to gel at one temperature.
     *
     * @param temperatureK temperature, K
     * @return time, s
     */
    public double isothermalGelS(double temperatureK) {
        return law.isothermalTimeS(temperatureK, gelConversion);
    }

    /**
     * The rate law, to hand on to other parts of the physics.
     *
     * @return the law
     */
    public KamalSourour law() {
        return law;
    }

    /**
     * Conversion at gel.
     *
     * @return conversion, 0 to 1
     */
    public double gelConversion() {
        return gelConversion;
    }

    /**
     * Rise at full conversion when no heat is lost.
     *
     * @return rise, K
     */
    public double adiabaticRiseK() {
        return adiabaticRiseK;
    }
}
