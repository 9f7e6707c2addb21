package pourwright.units;

import java.util.ArrayList;
import java.util.List;

/** Reads one amount: a number with its unit, feet with inches, hours with minutes. */
final class AmountReader {
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
        boolean about = AboutWords.before(c);
        boolean negative = sign();
        Amount a = positive(betweenForm);
        if (a == null) {
            return null;
        }
        Amount signed = negative ? a.negated() : a;
        return about || AboutWords.behind(c) ? signed.vague() : signed;
    }

    private Amount positive(boolean betweenForm) {
        boolean about = c.word("a couple of") || c.word("couple of");
        double number = about ? 2 : NumberScanner.scan(c, true);
        boolean article = false;
        if (Double.isNaN(number)) {
            c.spaces();
            int from = c.at;
            number = NumberWords.scan(c);
            String words = c.text.substring(from, c.at);
            article = words.equals("a") || words.equals("an");
        }
        if (Double.isNaN(number)) {
            return fail(Sentences.notUnderstood(typed, e));
        }
        if (c.peek(0) == ':' && Cursor.digit(c.peek(1)) && e.dimension() == Dimension.TIME) {
            return clock(number);
        }
        number += andAPart();
        about |= AboutWords.behind(c);
        Amount first = unit(number);
        if (article && first != null && first.bare()) {
            return fail(Sentences.notUnderstood(typed, e));
        }
        if (first != null && !first.bare()) {
            first = Amount.of(first.value() + andAPart(), first.unit(), first.key());
            first = compound(first, betweenForm);
        }
        return first == null || !about ? first : first.vague();
    }

    /** "An hour and a half", "two and a quarter hours". */
    private double andAPart() {
        return c.word("and a half") ? 0.5 : c.word("and a quarter") ? 0.25 : 0;
    }

    /** The unit behind a number; a bare amount if there is none; null with a failure if it is one of another kind. */
    private Amount unit(double number) {
        int from = c.at;
        UnitScanner.Match m = UnitScanner.match(c, e.dimension());
        if (m == null) {
            return Amount.bare(number);
        }
        UnitDef unit = UnitBook.pick(m.units(), e.dimension());
        if (unit != null) {
            return weightOunces(m.key())
                    ? new Amount(number, unit, m.key(), false, ounces(number))
                    : Amount.of(number, unit, m.key());
        }
        if (e.dimension() == Dimension.TEMPERATURE && degreesOnly(m.key())) {
            return Amount.bare(number);
        }
        if (m.units()[0].symbol().equals("%")) {
            if (e.dimension() == Dimension.PRESSURE) {
                c.oneOf(VACUUM);
            }
            return Amount.of(number, m.units()[0], "%");
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
            sum = together(sum, number, smaller, m == null ? smaller.symbol() : m.key(), smaller.fromSi(si));
        }
        return sum;
    }

    /**
     * Feet with inches and hours with minutes are shown back as they are said. Pounds with ounces are not: a scale
     * is read in one of the two. Common practice.
     */
    private static Amount together(Amount larger, double number, UnitDef smaller, String key, double sum) {
        if (smaller.dimension() != Dimension.TIME && smaller.dimension() != Dimension.LENGTH) {
            return Amount.of(sum, smaller, larger.unit().symbol() + " and " + key);
        }
        String said = larger.shown() + Show.JOIN + Show.joined(NumberText.echoed(number), smaller);
        return new Amount(sum, smaller, key, false, said);
    }

    /** An ounce that was called a weight is shown back as one: without the word it could be a volume. */
    private static boolean weightOunces(String key) {
        return (key.startsWith("oz") || key.startsWith("ounce")) && (key.endsWith("weight") || key.endsWith("wt"))
                || key.startsWith("weightoz");
    }

    private static String ounces(double number) {
        return NumberText.echoed(number) + Show.JOIN + "oz" + Show.JOIN + "weight";
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
            case "lb" -> UnitBook.find("oz", Dimension.MASS);
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
        if (second >= 60 || third >= 60 || Double.isNaN(second) || Double.isInfinite(first)) {
            return fail(Sentences.notUnderstood(typed, e));
        }
        UnitDef seconds = UnitBook.need("s", Dimension.TIME);
        UnitDef minutes = UnitBook.need("min", Dimension.TIME);
        if (!Double.isNaN(third)) {
            c.word("h");
            String said = Sentences.parts(first, "h", second, "min");
            return new Amount(
                    first * 3600 + second * 60 + third,
                    seconds,
                    "s",
                    false,
                    said + Show.JOIN + Show.joined(NumberText.echoed(third), seconds));
        }
        UnitScanner.Match m = UnitScanner.match(c, e.dimension());
        UnitDef unit = m == null ? null : UnitBook.pick(m.units(), e.dimension());
        if (unit != null && unit.symbol().equals("h")) {
            return new Amount(first * 60 + second, minutes, "min", false, Sentences.parts(first, "h", second, "min"));
        }
        if (unit != null && unit.symbol().equals("min")) {
            return new Amount(first * 60 + second, seconds, "s", false, Sentences.parts(first, "min", second, "s"));
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
