package pourwright.casebook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;

/** What a person set, as a file of the workshop holds it. */
final class FileNumber {
    /** More digits than anybody reads off a data sheet. */
    private static final int DIGITS = 6;

    /** What steers a terminal, or is no character at all. */
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}]");

    private FileNumber() {}

    /** The value, written out and without idle zeros. */
    static BigDecimal of(double v) {
        BigDecimal n = new BigDecimal(v).round(new MathContext(DIGITS));
        return n.signum() == 0
                ? BigDecimal.ZERO
                : new BigDecimal(n.stripTrailingZeros().toPlainString());
    }

    /** The same with its unit, as a person would type it. */
    static String typed(double v, String unit) {
        return of(v).toPlainString() + (unit.equals("1") ? "" : " " + unit);
    }

    /** True when a text holds what no line of a file should. */
    static boolean controls(String text) {
        return CONTROL.matcher(text).find();
    }
}
