package pourwright.physics;

/** How high a mix full of air bubbles stands under vacuum. */
public final class Froth {

    private Froth() {}

    /**
     * Height of the froth over the height of the mix: 1 + air fraction × (air pressure / chamber pressure - 1), at most
     * the cap at which packed bubbles break. Valid for air stirred in, before any has escaped; boiling adds to it.
     * Source: Boyle's law. The cap of 5 (gas fraction 0.80) is common practice: a cup four to five times the mix.
     *
     * @param airFraction air stirred in, share of the volume at air pressure, 0 to 1
     * @param airPa       absolute local air pressure, Pa
     * @param chamberPa   absolute chamber pressure, Pa; above air pressure the froth shrinks
     * @param cap         largest factor that holds together, 1 or more
     * @return height factor, no unit
     * @throws PhysicsException when an input is not a number or out of range
     */
    public static double factor(double airFraction, double airPa, double chamberPa, double cap) {
        Checked.within("air fraction", airFraction, 0, 1, "");
        Checked.positive("air pressure", airPa, "Pa absolute");
        Checked.positive("chamber pressure", chamberPa, "Pa absolute");
        checkedFactor("largest froth factor", cap);
        return Math.min(cap, 1 + airFraction * (airPa / chamberPa - 1));
    }

    /**
     * Gas fraction of a froth that stands this many times as high as its liquid: 1 - 1/factor.
     *
     * @param factor height of the froth over the height of its liquid, 1 or more
     * @return gas fraction, 0 to below 1
     * @throws PhysicsException when the factor is below 1 or not a number
     */
    public static double gasFractionOf(double factor) {
        checkedFactor("froth factor", factor);
        return 1 - 1 / factor;
    }

    /**
     * How many times as high as its liquid a froth of this gas fraction stands: 1/(1 - gas fraction).
     *
     * @param gasFraction share of the volume that is gas, 0 to 1
     * @return height factor, 1 or more; infinite for gas alone
     * @throws PhysicsException when the gas fraction is outside 0 to 1
     */
    public static double factorOf(double gasFraction) {
        Checked.within("gas fraction", gasFraction, 0, 1, "");
        return 1 / (1 - gasFraction);
    }

    /** A froth never stands lower than its liquid. */
    static double checkedFactor(String what, double factor) {
        Checked.finite(what, factor, "");
        if (factor < 1) {
            throw new PhysicsException("The " + what + " must be 1 or more, got " + Checked.text(factor, "") + ".");
        }
        return factor;
    }
}
