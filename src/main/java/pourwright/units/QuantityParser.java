package pourwright.units;

/** The grammar of a whole answer: one amount, a range, or an amount with a tolerance. Runs once over the text. */
final class QuantityParser {
    private static final String[] ONE_SIDED = {
        "up to",
        "at least",
        "at most",
        "less than",
        "more than",
        "no more than",
        "no less than",
        "over",
        "under",
        "below",
        "above",
        "max",
        "min",
        "maximum",
        "minimum"
    };
    private static final String[] ONE_SIDED_MARKS = {"<", ">", "≤", "≥"};
    private static final String[] TOLERANCE = {"plus or minus", "plus minus", "give or take"};
    private static final String[] TOLERANCE_MARKS = {"±", "+/-", "+-", "+ / -"};
    private static final String[] RANGE = {"to", "until", "or", "through", "and up to"};

    private final String typed;
    private final Expect e;
    private final Cursor c;
    private final AmountReader amounts;

    /** Why reading stopped, or null. */
    Reading failure;

    QuantityParser(String typed, String clean, Expect e) {
        this.typed = typed;
        this.e = e;
        this.c = new Cursor(clean);
        this.amounts = new AmountReader(c, e, typed);
    }

    /** The shape of the text, or null with {@link #failure} set. */
    Typed parse() {
        boolean vacuum =
                e.dimension() == Dimension.PRESSURE && (c.word("vacuum of") || c.word("vacuum") || c.word("vac"));
        if (oneSided()) {
            return fail(Sentences.oneSided(typed, e));
        }
        boolean between = c.word("between");
        if (!between) {
            c.word("from");
        }
        Amount first = amounts.read(between);
        if (first == null) {
            return fail(amounts.failure);
        }
        Typed out = behind(first, between, vacuum);
        if (out == null) {
            return null;
        }
        c.spaces();
        while (!c.done() && (c.peek(0) == '.' || c.peek(0) == ',' || c.peek(0) == '!' || c.peek(0) == ' ')) {
            c.at++;
        }
        return c.done() ? out : fail(Sentences.leftOver(typed, c.rest(), first, e));
    }

    private Typed behind(Amount first, boolean between, boolean vacuum) {
        c.spaces();
        if (between ? c.word("and") || range() : tolerance()) {
            return between ? ranged(first, vacuum) : tolerated(first, vacuum);
        }
        if (between) {
            return fail(Sentences.oneSided(typed, e));
        }
        return range() ? ranged(first, vacuum) : new Typed(Typed.Form.VALUE, first, null, false, vacuum);
    }

    private Typed ranged(Amount first, boolean vacuum) {
        Amount second = amounts.read(false);
        if (second == null) {
            return fail(amounts.failure);
        }
        Amount low = first.bare() && !second.bare() ? first.withUnitOf(second) : first;
        Amount high = second.bare() && !first.bare() ? second.withUnitOf(first) : second;
        return new Typed(Typed.Form.RANGE, low, high, false, vacuum);
    }

    private Typed tolerated(Amount first, boolean vacuum) {
        Amount second = amounts.read(false);
        if (second == null) {
            return fail(amounts.failure);
        }
        boolean percent = second.key().equals("%") && e.dimension() != Dimension.FRACTION;
        if (percent) {
            return new Typed(Typed.Form.TOLERANCE, first, second, true, vacuum);
        }
        Amount value = first.bare() && !second.bare() ? first.withUnitOf(second) : first;
        Amount plus = second.bare() && !first.bare() ? second.withUnitOf(first) : second;
        return new Typed(Typed.Form.TOLERANCE, value, plus, false, vacuum);
    }

    private boolean oneSided() {
        for (String mark : ONE_SIDED_MARKS) {
            if (c.mark(mark)) {
                return true;
            }
        }
        return c.oneOf(ONE_SIDED) != null;
    }

    private boolean tolerance() {
        for (String mark : TOLERANCE_MARKS) {
            if (c.mark(mark)) {
                return true;
            }
        }
        return c.oneOf(TOLERANCE) != null;
    }

    private boolean range() {
        if (c.mark("..")) {
            while (c.peek(0) == '.') {
                c.at++;
            }
            return true;
        }
        return c.mark("-") || c.oneOf(RANGE) != null;
    }

    private Typed fail(Reading why) {
        failure = why;
        return null;
    }
}
