package pourwright.units;

/** Reads one number without a sign: decimals, thousands, fractions, powers of ten. Never uses the machine's language. */
final class NumberScanner {
    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
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

    /** "e-3" or "x 10^-3". */
    private boolean power() {
        int from = c.at;
        boolean e = c.peek(0) == 'e';
        if (e) {
            c.at++;
        } else if (!((c.mark("x") || c.mark("*")) && c.mark("10^"))) {
            c.at = from;
            return false;
        }
        int sign = c.peek(0) == '-' || c.peek(0) == '+' ? 1 : 0;
        if (!Cursor.digit(c.peek(sign))) {
            c.at = from;
            return false;
        }
        digits.append('e');
        if (sign == 1) {
            digits.append(c.peek(0));
            c.at++;
        }
        take();
        return true;
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
        // 1-1/2 is one and a half; only without spaces round the hyphen, and only with a proper fraction.
        boolean joined = c.peek(0) == '-';
        if (joined) {
            c.at++;
        } else {
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
