package pourwright.degas;

import pourwright.physics.Require;

/**
 * What stands in the chamber at the start of a pull: a batch of mix in its present state.
 *
 * @param mix          the liquid
 * @param massKg       mass of the batch, kg
 * @param bubbles      the bubbles in it
 * @param conversion   conversion of the cure, 0 to 1
 * @param temperatureK temperature, K
 * @param agedS        time since mixing, s
 */
public record Charge(Mix mix, double massKg, Bubbles bubbles, double conversion, double temperatureK, double agedS) {

    /**
     * Checks the charge.
     *
     * @throws pourwright.physics.PhysicsException when something is missing, not a number or out of its range
     */
    public Charge {
        Require.given("mix", mix);
        Require.positive("mass", massKg, "kg");
        Require.given("bubbles", bubbles);
        Require.within("conversion", conversion, 0, 1, "");
        Require.positive("temperature", temperatureK, "K");
        Require.zeroOrMore("time since mixing", agedS, "s");
    }

    /**
     * A batch just mixed.
     *
     * @param mix          the liquid
     * @param massKg       its mass, kg
     * @param airFraction  air stirred in, share of the volume under local air pressure, 0 to below 1
     * @param diameterM    median diameter of the bubbles by volume, m
     * @param sizeSpread   geometric standard deviation of the sizes
     * @param airPa        absolute local air pressure, Pa
     * @param temperatureK temperature, K
     * @return the batch
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public static Charge justMixed(
            Mix mix,
            double massKg,
            double airFraction,
            double diameterM,
            double sizeSpread,
            double airPa,
            double temperatureK) {
        Require.given("mix", mix);
        Require.positive("mass", massKg, "kg");
        Bubbles bubbles = Bubbles.spread(airM3(mix, massKg, airFraction), diameterM, sizeSpread, airPa, mix.sigma());
        return new Charge(mix, massKg, bubbles, 0, temperatureK, 0);
    }

    /**
     * The same after a pour that folds in air. What was left is spread evenly over the new vessel.
     *
     * @param pouredKg    mass poured, kg, at most the mass of the batch
     * @param airFraction air folded in, share of the volume under local air pressure, 0 to below 1
     * @param diameterM   median diameter of the new bubbles by volume, m
     * @param sizeSpread  geometric standard deviation of their sizes
     * @param airPa       absolute local air pressure, Pa
     * @return the charge in the mould
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public Charge poured(double pouredKg, double airFraction, double diameterM, double sizeSpread, double airPa) {
        Require.positive("mass poured", pouredKg, "kg");
        Bubbles folded = Bubbles.spread(airM3(mix, pouredKg, airFraction), diameterM, sizeSpread, airPa, mix.sigma());
        return new Charge(mix, pouredKg, bubbles.part(pouredKg / massKg).and(folded), conversion, temperatureK, agedS);
    }

    /** Volume of the liquid without its air, m3. */
    double liquidM3() {
        return massKg / mix.density();
    }

    private static double airM3(Mix mix, double massKg, double airFraction) {
        Require.within("air fraction", airFraction, 0, 0.9, "");
        return massKg / mix.density() * airFraction / (1 - airFraction);
    }
}
