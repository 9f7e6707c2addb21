package pourwright.physics;

import java.util.Locale;

/** Checks of single inputs, so that every refusal reads the same: what, the value, the unit, what was expected. */
final class Checked {

    private Checked() {}

    /** Returns the value when it is an ordinary number. */
    static double finite(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new PhysicsException(
                    "The " + what + " must be an ordinary number" + in(unit) + ", got " + value + ".");
        }
        return value;
    }

    /** Returns the value when it is an ordinary number above zero. */
    static double positive(String what, double value, String unit) {
        finite(what, value, unit);
        if (value <= 0) {
            throw new PhysicsException("The " + what + " must be above zero, got " + text(value, unit) + ".");
        }
        return value;
    }

    /** Returns the value when it is an ordinary number, zero or more. */
    static double zeroOrMore(String what, double value, String unit) {
        finite(what, value, unit);
        if (value < 0) {
            throw new PhysicsException("The " + what + " must be zero or more, got " + text(value, unit) + ".");
        }
        return value;
    }

    /** Returns the value when it lies between two limits, both allowed. */
    static double within(String what, double value, double low, double high, String unit) {
        finite(what, value, unit);
        if (value < low || value > high) {
            throw new PhysicsException("The " + what + " must be between " + text(low, unit) + " and "
                    + text(high, unit) + ", got " + text(value, unit) + ".");
        }
        return value;
    }

    /** Returns the thing when it was given at all. */
    static <T> T given(String what, T thing) {
        if (thing == null) {
            throw new PhysicsException("The " + what + " is missing.");
        }
        return thing;
    }

    /** A value with its unit, to six digits, with a point in every locale. */
    static String text(double value, String unit) {
        String number = String.format(Locale.ROOT, "%.6g", value);
        // Trailing zeros claim digits that nobody typed: 2.00000 becomes 2.
        if (number.indexOf('.') >= 0 && number.indexOf('e') < 0) {
            number = number.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static String in(String unit) {
        return unit.isEmpty() ? "" : " in " + unit;
    }
}
