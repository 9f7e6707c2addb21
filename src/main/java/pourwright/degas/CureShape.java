package pourwright.degas;

import pourwright.physics.Require;

/**
 * The shape of a cure: rate over conversion, (1 + b a^m) (1 - a)^n, apart from its speed.
 * Source: Kamal and Sourour, Polym. Eng. Sci. 13:59, 1973, with one activation energy for both paths (from memory).
 * The shape rules when the heat comes, not how the mix thickens over its gel time.
 *
 * @param selfFeeding b, how much faster the reaction runs on its own products, zero or more
 * @param m           exponent of the conversion, zero or more
 * @param n           exponent of what is left, zero or more
 */
public record CureShape(double selfFeeding, double m, double n) {

    /** Two groups that meet: polyurethane, and silicones near enough. From memory. */
    public static final CureShape SECOND_ORDER = new CureShape(0, 1, 2);

    /** Epoxy with amine, which feeds itself: b about 45, the ratio of the usual pair of rate constants. From memory. */
    public static final CureShape SELF_FEEDING = new CureShape(45, 1, 2);

    /**
     * Checks the shape.
     *
     * @throws pourwright.physics.PhysicsException when a value is not a number or negative
     */
    public CureShape {
        Require.zeroOrMore("self-feeding of the cure", selfFeeding, "");
        Require.zeroOrMore("exponent m", m, "");
        Require.zeroOrMore("exponent n", n, "");
    }
}
