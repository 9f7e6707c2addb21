package pourwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text: a decimal point, a comma every three digits, no useless digits; the same on every machine. */
final class NumberText {
    private static final int SHOWN_DIGITS = 3;
    private static final int END_DIGITS = 6;

    /** More than anybody types, and fewer than a double holds: what was typed is shown, what conversion adds is not. */
    private static final int ECHO_DIGITS = 12;

    /** Decimals longer than this are shown as a fraction if they are one. */
    private static final int TIDY_DIGITS = 9;

    private static final int[] PARTS = {3, 6, 7, 9, 11, 12, 13};

    /** From here on numbers are written with a power of ten. */
    private static final double LARGE = 1e9;

    private static final double SMALL = 1e-4;

    private NumberText() {}

    /** Three digits that count; whole numbers are kept whole below a thousand million, and four digits are not cut to three. */
    static String shown(double v) {
        if (!Double.isFinite(v)) {
            return Show.endless(v);
        }
        double size = Math.abs(v);
        if (size >= 100 && size < 9999.5) {
            return write(round(v, 0));
        }
        if (size < LARGE && nearlyWhole(v)) {
            return write(round(v, 0));
        }
        return write(significant(v, SHOWN_DIGITS));
    }

    /** A number as it was typed, so that reading it again gives the same; a third is shown as 1/3. */
    static String echoed(double v) {
        if (!Double.isFinite(v)) {
            return Show.endless(v);
        }
        if (Math.abs(v) < LARGE && nearlyWhole(v)) {
            return write(round(v, 0));
        }
        BigDecimal decimal = significant(v, ECHO_DIGITS).stripTrailingZeros();
        String fraction = decimal.precision() > TIDY_DIGITS ? fraction(v) : null;
        return fraction == null ? write(decimal) : fraction;
    }

    /** Six digits that count, for the ends that "about" stands for. */
    static String end(double v) {
        if (!Double.isFinite(v)) {
            return Show.endless(v);
        }
        return Math.abs(v) < LARGE && nearlyWhole(v) ? write(round(v, 0)) : write(significant(v, END_DIGITS));
    }

    /** "1/3", "2 5/7"; null when it is no such fraction. */
    private static String fraction(double v) {
        double whole = Math.floor(v);
        if (!(v > 0) || whole > 1000) {
            return null;
        }
        for (int parts : PARTS) {
            double above = (v - whole) * parts;
            if (Math.abs(above - Math.rint(above)) < 1e-12 * Math.max(1, whole) * parts && Math.rint(above) > 0) {
                String part = (long) Math.rint(above) + "/" + parts;
                return whole == 0 ? part : (long) whole + " " + part;
            }
        }
        return null;
    }

    /** Rounded to a step of 10^exponent, but to no more than three digits unless it is whole. */
    static String stepped(double v, int exponent) {
        if (v != 0 && exponent < (int) Math.floor(Math.log10(Math.abs(v))) - SHOWN_DIGITS + 1) {
            return shown(v);
        }
        return write(round(v, -exponent));
    }

    private static boolean nearlyWhole(double v) {
        return Math.abs(v - Math.rint(v)) <= 1e-9 * Math.abs(v) && (v == 0 || Math.rint(v) != 0);
    }

    private static BigDecimal round(double v, int decimals) {
        return decimal(v).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static BigDecimal significant(double v, int digits) {
        return decimal(v).round(new MathContext(digits, RoundingMode.HALF_UP));
    }

    /** The shortest decimal of the double: 0.15 is rounded as 0.15, not as the binary number below it. */
    private static BigDecimal decimal(double v) {
        return new BigDecimal(Double.toString(v));
    }

    private static String write(BigDecimal exact) {
        if (exact.signum() == 0) {
            return "0";
        }
        BigDecimal v = exact.stripTrailingZeros();
        double size = v.abs().doubleValue();
        if (size >= LARGE || size < SMALL) {
            return power(v);
        }
        String plain = v.toPlainString();
        int first = plain.charAt(0) == '-' ? 1 : 0;
        int dot = plain.indexOf('.');
        int whole = dot < 0 ? plain.length() : dot;
        StringBuilder out = new StringBuilder(plain);
        for (int i = whole - 3; i > first; i -= 3) {
            out.insert(i, ',');
        }
        return out.toString();
    }

    private static String power(BigDecimal v) {
        String digits = v.unscaledValue().abs().toString();
        int exponent = digits.length() - 1 - v.scale();
        StringBuilder out = new StringBuilder();
        if (v.signum() < 0) {
            out.append('-');
        }
        out.append(digits.charAt(0));
        if (digits.length() > 1) {
            out.append('.').append(digits, 1, digits.length());
        }
        return out.append('e').append(exponent).toString();
    }
}
