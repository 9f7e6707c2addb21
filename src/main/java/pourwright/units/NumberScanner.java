package pourwright.units;

/** Reads one number without a sign: decimals, thousands, fractions, powers of ten. Never uses the machine's language. */
final class NumberScanner {
    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final double[] VULGAR_VALUE = {
        1 / 2.0, 1 / 3.0, 2 / 3.0, 1 / 4.0, 3 / 4.0, 1 / 5.0, 2 / 5.0, 3 / 5.0, 4 / 5.0, 1 / 6.0, 5 / 6.0, 1 / 8.0,
        3 / 8.0, 5 / 8.0, 7 / 8.0
    };

    private final Cursor c;
    private final boolean slashDivides;
    private final StringBuilder digits = new StringBuilder();

    private NumberScanner(Cursor c, boolean slashDivides) {
        this.c = c;
        this.slashDivides = slashDivides;
    }

    /**
     * The number at the cursor, or NaN with the cursor unmoved if there is none; infinite if too large or divided by zero.
     *
     * @param slashDivides whether 1/2 is a half; in a mix ratio it is one to two
     */
    static double scan(Cursor c, boolean slashDivides) {
        c.spaces();
        return new NumberScanner(c, slashDivides).number();
    }

    private double number() {
        double vulgar = vulgar(0);
        if (!Double.isNaN(vulgar)) {
            c.at++;
            return vulgar;
        }
        if (!Cursor.digit(c.peek(0)) && !(c.peek(0) == '.' && Cursor.digit(c.peek(1)))) {
            return Double.NaN;
        }
        boolean whole = decimal();
        whole &= !power();
        double value = Double.parseDouble(digits.toString());
        return whole ? withFraction(value) : value;
    }

    /** Digits with thousands and decimals; true if it was a whole number. */
    private boolean decimal() {
        int lead = take();
        char comma = lead >= 1 && lead <= 3 && !leadingZero() ? group() : 0;
        if (c.peek(0) == '.' && Cursor.digit(c.peek(1)) && comma != '.') {
            c.at++;
            digits.append('.');
            take();
            return false;
        }
        if (c.peek(0) == ',' && Cursor.digit(c.peek(1)) && comma != ',') {
            c.at++;
            digits.append('.');
            take();
            return false;
        }
        // A full stop that ends nothing but the number: "5." or "5. min", never the two dots of a range.
        if (c.peek(0) == '.' && c.peek(1) != '.' && comma == 0) {
            c.at++;
        }
        return true;
    }

    /** Groups of three behind a comma or a space, or behind dots when a decimal comma follows; returns the separator or 0. */
    private char group() {
        char sep = c.peek(0);
        if ((sep != ',' && sep != ' ' && sep != '.') || (sep == '.' && !dotsThenComma())) {
            return 0;
        }
        boolean any = false;
        while (c.peek(0) == sep && three(1) && !(sep == ' ' && c.peek(4) == '/')) {
            c.at++;
            take();
            any = true;
        }
        return any ? sep : 0;
    }

    private boolean dotsThenComma() {
        int i = 0;
        while (c.peek(i) == '.' && three(i + 1)) {
            i += 4;
        }
        return i > 0 && c.peek(i) == ',' && Cursor.digit(c.peek(i + 1));
    }

    /** Exactly three digits from there. */
    private boolean three(int ahead) {
        return Cursor.digit(c.peek(ahead))
                && Cursor.digit(c.peek(ahead + 1))
                && Cursor.digit(c.peek(ahead + 2))
                && !Cursor.digit(c.peek(ahead + 3));
    }

    /** "0,125" is an eighth: nobody writes thousands behind a nought. */
    private boolean leadingZero() {
        return digits.length() > 0 && digits.charAt(0) == '0';
    }

    private int take() {
        int n = 0;
        while (Cursor.digit(c.peek(0))) {
            digits.append(c.peek(0));
            c.at++;
            n++;
        }
        return n;
    }

    /** "e-3", "x 10^-3", "x 10-3", or "10^-3" by itself. */
    private boolean power() {
        int from = c.at;
        boolean itself = digits.toString().equals("10") && (c.peek(0) == '^' || raised(c.peek(0)));
        boolean times = !itself && c.peek(0) != 'e' && (c.mark("x") || c.mark("*")) && c.mark("10");
        if (!itself && !times && c.peek(0) != 'e') {
            c.at = from;
            return false;
        }
        if (c.peek(0) == '^' || !times && !itself) {
            c.at++;
        }
        // "5 x 103 mm" is no power: the exponent behind x 10 needs a sign, a raised figure or the mark before it.
        boolean plain = times && c.peek(-1) != '^' && Cursor.digit(c.peek(0));
        String exponent = plain ? "" : exponent();
        if (exponent.isEmpty()) {
            c.at = from;
            return false;
        }
        if (itself) {
            digits.setLength(1);
        }
        digits.append('e').append(exponent);
        return true;
    }

    /** Sign and digits, small raised ones too; "" with the cursor unmoved if there are none. */
    private String exponent() {
        int from = c.at;
        StringBuilder out = new StringBuilder();
        if (c.peek(0) == '-' || c.peek(0) == '⁻') {
            out.append('-');
            c.at++;
        } else if (c.peek(0) == '+') {
            c.at++;
        }
        int sign = out.length();
        while (Cursor.digit(c.peek(0)) || RAISED.indexOf(c.peek(0)) >= 0 && c.peek(0) != 0) {
            int small = RAISED.indexOf(c.peek(0));
            out.append(small >= 0 ? (char) ('0' + small) : c.peek(0));
            c.at++;
        }
        if (out.length() == sign) {
            c.at = from;
            return "";
        }
        return out.toString();
    }

    private static boolean raised(char c) {
        return c == '⁻' || c != 0 && RAISED.indexOf(c) >= 0;
    }

    /** A slash or a mixed number behind a whole number. */
    private double withFraction(double whole) {
        int from = c.at;
        if (slashDivides && c.mark("/")) {
            double below = integer();
            if (!Double.isNaN(below)) {
                return below == 0 ? Double.POSITIVE_INFINITY : whole / below;
            }
            c.at = from;
        }
        if (whole < 1) {
            return whole;
        }
        // 1-1/2 is one and a half, with or without spaces: from one down to a half would be no range.
        c.spaces();
        boolean joined = c.peek(0) == '-';
        if (joined) {
            c.at++;
            c.spaces();
        }
        double part = vulgar(0);
        if (!Double.isNaN(part)) {
            c.at++;
            return whole + part;
        }
        if (joined || c.at > from) {
            double above = integer();
            if (!Double.isNaN(above) && c.peek(0) == '/') {
                c.at++;
                double below = integer();
                if (!Double.isNaN(below) && above < below && above > 0) {
                    return whole + above / below;
                }
            }
        }
        c.at = from;
        return whole;
    }

    private double integer() {
        c.spaces();
        int from = c.at;
        while (Cursor.digit(c.peek(0))) {
            c.at++;
        }
        return c.at == from ? Double.NaN : Double.parseDouble(c.text.substring(from, c.at));
    }

    private double vulgar(int ahead) {
        int i = VULGAR.indexOf(c.peek(ahead));
        return i < 0 ? Double.NaN : VULGAR_VALUE[i];
    }
}
