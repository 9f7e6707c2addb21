package pourwright.units;

import java.util.ArrayList;
import java.util.List;

/** Reads one amount: a number with its unit, feet with inches, hours with minutes. */
final class AmountReader {
    private static final String[] ABOUT = {
        "about", "around", "roughly", "approximately", "approx", "circa", "maybe", "nearly", "almost", "more or less"
    };
    private static final String[] FILLER = {"it is", "it's", "exactly", "just", "the"};
    private static final String[] ABOUT_AFTER = {
        "-ish", "ish", "or so", "approximately", "approx", "about", "more or less"
    };
    private static final String[] VACUUM = {"of vacuum", "vacuum", "vac"};
    private static final int PARTS = 3;

    private final Cursor c;
    private final Expect e;
    private final String typed;

    /** Why reading stopped, or null. */
    Reading failure;

    AmountReader(Cursor c, Expect e, String typed) {
        this.c = c;
        this.e = e;
        this.typed = typed;
    }

    /** The amount at the cursor, or null with {@link #failure} set. */
    Amount read(boolean betweenForm) {
        boolean about = before();
        boolean negative = sign();
        Amount a = positive(betweenForm);
        if (a == null) {
            return null;
        }
        Amount signed = negative ? a.negated() : a;
        return about || after() ? signed.vague() : signed;
    }

    private Amount positive(boolean betweenForm) {
        double number = NumberScanner.scan(c, true);
        boolean inWords = Double.isNaN(number);
        if (inWords) {
            c.spaces();
            inWords = c.peek(0) == 'a';
            number = NumberWords.scan(c);
        }
        if (Double.isNaN(number)) {
            return fail(Sentences.notUnderstood(typed, e));
        }
        if (c.peek(0) == ':' && Cursor.digit(c.peek(1)) && e.dimension() == Dimension.TIME) {
            return clock(number);
        }
        if (c.word("and a half")) {
            number += 0.5;
        }
        boolean about = after();
        Amount first = unit(number);
        if (inWords && first != null && first.bare()) {
            return fail(Sentences.notUnderstood(typed, e));
        }
        if (first != null && !first.bare()) {
            if (c.word("and a half")) {
                first = new Amount(first.value() + 0.5, first.unit(), first.key(), false);
            }
            first = compound(first, betweenForm);
        }
        return first == null || !about ? first : first.vague();
    }

    /** The unit behind a number; a bare amount if there is none; null with a failure if it is one of another kind. */
    private Amount unit(double number) {
        int from = c.at;
        UnitScanner.Match m = UnitScanner.match(c, e.dimension());
        if (m == null) {
            return new Amount(number, null, "", false);
        }
        UnitDef unit = UnitBook.pick(m.units(), e.dimension());
        if (unit != null) {
            return new Amount(number, unit, m.key(), false);
        }
        if (e.dimension() == Dimension.TEMPERATURE && degreesOnly(m.key())) {
            return new Amount(number, null, "", false);
        }
        if (m.units()[0].symbol().equals("%")) {
            if (e.dimension() == Dimension.PRESSURE) {
                c.oneOf(VACUUM);
            }
            return new Amount(number, m.units()[0], "%", false);
        }
        c.at = from;
        return fail(Sentences.otherKind(typed, m.units()[0].dimension(), e));
    }

    private static boolean degreesOnly(String key) {
        return key.equals("°")
                || key.equals("deg")
                || key.equals("degree")
                || key.equals("degrees")
                || key.equals("degs");
    }

    /** Further, smaller parts: "1 h 30 min", 5'3", "2 lb 3 oz". The value is then in the smallest unit typed. */
    private Amount compound(Amount first, boolean betweenForm) {
        Amount sum = first;
        for (int part = 1; part < PARTS; part++) {
            int from = c.at;
            if (!betweenForm && !c.word("and")) {
                c.mark(",");
            }
            // 5'-3" is five foot three; a hyphen between other marks is a range.
            if (sum.key().equals("'") && c.peek(0) == '-') {
                c.at++;
            }
            double number = NumberScanner.scan(c, true);
            UnitScanner.Match m = Double.isNaN(number) ? null : UnitScanner.match(c, e.dimension());
            UnitDef smaller = m == null ? implied(sum) : UnitBook.pick(m.units(), e.dimension());
            boolean hyphened = from < c.text.length() && c.text.charAt(from) == '-';
            if (Double.isNaN(number)
                    || !under(number, smaller, sum.unit())
                    || (hyphened && (m == null || !inches(m.key())))) {
                c.at = from;
                return sum;
            }
            double si = sum.unit().toSi(sum.value()) + smaller.toSi(number);
            sum = new Amount(smaller.fromSi(si), smaller, m == null ? smaller.symbol() : m.key(), false);
        }
        return sum;
    }

    private static boolean inches(String key) {
        return key.equals("\"") || key.equals("''");
    }

    private static boolean under(double number, UnitDef smaller, UnitDef larger) {
        return smaller != null
                && smaller.scale() == UnitDef.Scale.LINEAR
                && larger.scale() == UnitDef.Scale.LINEAR
                && larger.dimension() == smaller.dimension()
                && larger.dimension() != Dimension.PRESSURE
                && smaller.stepSi(1) < larger.stepSi(1)
                && smaller.stepSi(number) < larger.stepSi(1) * (1 + 1e-9);
    }

    /** The unit a second number has when none is typed: "5 ft 3", "1h30", 10'30. */
    private static UnitDef implied(Amount larger) {
        boolean shortMinute = larger.key().equals("'") || larger.key().equals("m");
        return switch (larger.unit().symbol()) {
            case "ft" -> UnitBook.find("in", Dimension.LENGTH);
            case "h" -> UnitBook.find("min", Dimension.TIME);
            case "min" -> shortMinute ? UnitBook.find("s", Dimension.TIME) : null;
            default -> null;
        };
    }

    /** "1:30 h", "1:30 min", "1:30:00"; without a unit it is asked about. */
    private Amount clock(double first) {
        c.at++;
        double second = NumberScanner.scan(c, false);
        double third = Double.NaN;
        if (c.peek(0) == ':' && Cursor.digit(c.peek(1))) {
            c.at++;
            third = NumberScanner.scan(c, false);
        }
        if (second >= 60 || third >= 60 || Double.isNaN(second)) {
            return fail(Sentences.notUnderstood(typed, e));
        }
        UnitDef seconds = UnitBook.need("s", Dimension.TIME);
        UnitDef minutes = UnitBook.need("min", Dimension.TIME);
        if (!Double.isNaN(third)) {
            c.word("h");
            return new Amount(first * 3600 + second * 60 + third, seconds, "s", false);
        }
        UnitScanner.Match m = UnitScanner.match(c, e.dimension());
        UnitDef unit = m == null ? null : UnitBook.pick(m.units(), e.dimension());
        if (unit != null && unit.symbol().equals("h")) {
            return new Amount(first * 60 + second, minutes, "min", false);
        }
        if (unit != null && unit.symbol().equals("min")) {
            return new Amount(first * 60 + second, seconds, "s", false);
        }
        failure = unit == null ? askClock(first, second) : Sentences.notUnderstood(typed, e);
        return null;
    }

    private Reading askClock(double first, double second) {
        List<String> meanings = new ArrayList<>();
        if (e.fits(first * 3600 + second * 60)) {
            meanings.add(Sentences.parts(first, "h", second, "min"));
        }
        if (e.fits(first * 60 + second)) {
            meanings.add(Sentences.parts(first, "min", second, "s"));
        }
        return meanings.isEmpty() ? Sentences.notUnderstood(typed, e) : Sentences.clock(typed, meanings);
    }

    private boolean before() {
        boolean about = false;
        for (int i = 0; i < PARTS; i++) {
            c.oneOf(FILLER);
            String word = c.oneOf(ABOUT);
            // The point after "approx" ends the short form; the point after "about" would belong to ".5".
            if ("approx".equals(word) && c.peek(0) == '.') {
                c.at++;
            }
            // All three are read, whatever the first finds: each moves on in the text.
            boolean tilde = c.mark("~");
            boolean circa = circa();
            about = about || word != null || tilde || circa;
        }
        return about;
    }

    /** "c. 300", "c300" and "ca 300", but not the c of "cm". */
    private boolean circa() {
        int from = c.at;
        if (c.mark("ca") || c.mark("c")) {
            c.mark(".");
            c.spaces();
            if (Cursor.digit(c.peek(0))) {
                return true;
            }
        }
        c.at = from;
        return false;
    }

    private boolean after() {
        return c.oneOf(ABOUT_AFTER) != null;
    }

    private boolean sign() {
        if (c.mark("-") || c.word("minus") || c.word("negative")) {
            return true;
        }
        c.mark("+");
        return false;
    }

    private Amount fail(Reading why) {
        failure = why;
        return null;
    }
}
