package pourwright.units;

import java.math.BigDecimal;

/**
 * One unit: SI value = value × numerator / denominator, both whole numbers that a double holds exactly.
 *
 * <p>Keeping the two apart, and not their quotient, means 3 mm is 3/1000 rounded once and not 3 × 0.001 rounded twice.
 *
 * @param reference "" or, for a pressure, "abs" or "gauge" when the person said which
 */
record UnitDef(
        String symbol, Dimension dimension, double numerator, double denominator, Scale scale, String reference) {

    /** Where the zero is. */
    enum Scale {
        LINEAR,
        CELSIUS,
        FAHRENHEIT
    }

    /** 0 °C in K (definition of the Celsius temperature, SI Brochure, 9th ed., 2.3.1). */
    private static final BigDecimal ICE_K = new BigDecimal("273.15");

    /** 0 °C in °F (the Fahrenheit scale as used since the inch-pound units were tied to SI; NIST SP 811, B.8, from memory). */
    private static final BigDecimal ICE_F = new BigDecimal("32");

    private static final BigDecimal FIVE = new BigDecimal("5");
    private static final BigDecimal NINE = new BigDecimal("9");
    private static final int DIGITS = 25;

    double toSi(double value) {
        if (scale == Scale.LINEAR || !Double.isFinite(value) || beyondDecimals(value)) {
            return scale == Scale.LINEAR ? value * numerator / denominator : value;
        }
        BigDecimal v = decimal(value);
        BigDecimal celsius =
                scale == Scale.CELSIUS ? v : divide(v.subtract(ICE_F).multiply(FIVE), NINE);
        return celsius.add(ICE_K).doubleValue();
    }

    double fromSi(double si) {
        if (scale == Scale.LINEAR || !Double.isFinite(si) || beyondDecimals(si)) {
            return scale == Scale.LINEAR ? si * denominator / numerator : si;
        }
        BigDecimal celsius = decimal(si).subtract(ICE_K);
        return scale == Scale.CELSIUS
                ? celsius.doubleValue()
                : divide(celsius.multiply(NINE), FIVE).add(ICE_F).doubleValue();
    }

    /** The size of one degree or one unit in SI, without the zero: for differences. */
    double stepSi(double difference) {
        return difference * numerator / denominator;
    }

    boolean absolute() {
        return reference.equals("abs");
    }

    boolean gauge() {
        return reference.equals("gauge");
    }

    /** The symbol with what it is counted from: "mbar abs". */
    String shown() {
        return reference.isEmpty() ? symbol : symbol + " " + reference;
    }

    /** Decimal arithmetic, because 296.15 − 273.15 in doubles is not 23. */
    private static BigDecimal decimal(double v) {
        return new BigDecimal(Double.toString(v));
    }

    private static BigDecimal divide(BigDecimal a, BigDecimal b) {
        return a.divide(b, new java.math.MathContext(DIGITS));
    }

    /** No temperature is this large; it only keeps the decimals from growing to hundreds of digits. */
    private static boolean beyondDecimals(double v) {
        return Math.abs(v) > 1e15;
    }
}
