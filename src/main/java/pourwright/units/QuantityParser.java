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
    private static final String GIVE_OR_TAKE = "give or take";
    private static final String[] TOLERANCE = {"plus or minus", "plus minus", GIVE_OR_TAKE};
    private static final String[] TOLERANCE_MARKS = {"±", "+/-", "+-", "+ / -"};
    private static final String[] RANGE = {"to", "until", "or", "through", "and up to"};

    private static final String[] PULLED = {
        "it pulled",
        "it pulls",
        "i pulled",
        "we pulled",
        "pulled",
        "pulls",
        "pulling",
        "it reads",
        "gauge reads",
        "reads"
    };
    private static final String[] DEGASSED = {
        "degassed for",
        "degassed it for",
        "degas for",
        "degassing for",
        "under vacuum for",
        "vacuumed for",
        "pulled for"
    };
    private static final String[] LASTED = {"it took", "took", "left it for", "left for", "for"};

    /** The same value in two units may be rounded this much; common practice. */
    private static final double SAME_SHARE = 0.05;

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
        boolean minutes = lead();
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
        if (minutes && first.bare()) {
            first = Amount.of(first.value(), UnitBook.need("min", Dimension.TIME), "min");
        }
        Typed out = behind(first, between, vacuum);
        while (out != null && c.mark("(")) {
            out = bracket(out);
        }
        if (out == null) {
            return null;
        }
        c.spaces();
        while (!c.done() && (c.peek(0) == '.' || c.peek(0) == ',' || c.peek(0) == '!' || c.peek(0) == ' ')) {
            c.at++;
        }
        return c.done() ? out : fail(Sentences.leftOver(typed, c.rest(), first, e));
    }

    /**
     * "It pulled 29 inches", "left it for 2 h": what a person says before the amount itself. True when it was about
     * degassing, which is told in minutes; common practice.
     */
    private boolean lead() {
        if (e.dimension() == Dimension.PRESSURE) {
            c.oneOf(PULLED);
        }
        if (e.dimension() == Dimension.TIME) {
            boolean degassed = c.oneOf(DEGASSED) != null;
            if (!degassed) {
                c.oneOf(LASTED);
            }
            return degassed;
        }
        return false;
    }

    /** What stands in brackets behind a value: its ends, or the same in another unit. */
    private Typed bracket(Typed out) {
        Amount inside = amounts.read(false);
        if (inside == null) {
            return fail(amounts.failure);
        }
        Amount first = out.first();
        if (range()) {
            Amount high = amounts.read(false);
            if (high == null) {
                return fail(amounts.failure);
            }
            boolean ends = out.form() == Typed.Form.VALUE && c.mark(")");
            Amount low = inside.bare() && !high.bare() ? inside.withUnitOf(high) : inside;
            return ends
                    ? out.withEnds(first.bare() ? low : given(low, first), first.bare() ? high : given(high, first))
                    : fail(Sentences.notUnderstood(typed, e));
        }
        boolean same = c.mark(")") && !inside.bare() && !first.bare() && alike(first, inside);
        return same ? out.sure() : fail(Sentences.notUnderstood(typed, e));
    }

    private static Amount given(Amount end, Amount first) {
        return end.bare() ? end.withUnitOf(first) : end;
    }

    private static boolean alike(Amount a, Amount b) {
        double one = Math.abs(a.unit().toSi(a.value()));
        double other = Math.abs(b.unit().toSi(b.value()));
        return a.unit().dimension() == b.unit().dimension()
                && Math.abs(one - other) <= SAME_SHARE * Math.max(one, other);
    }

    private Typed behind(Amount first, boolean between, boolean vacuum) {
        c.spaces();
        if (between ? c.word("and") || range() : tolerance()) {
            return between ? ranged(first, vacuum) : tolerated(first, vacuum);
        }
        if (between) {
            return fail(Sentences.oneSided(typed, e));
        }
        return range() ? ranged(first, vacuum) : Typed.value(first, vacuum);
    }

    private Typed ranged(Amount first, boolean vacuum) {
        Amount second = amounts.read(false);
        if (second == null) {
            return fail(amounts.failure);
        }
        Amount low = first.bare() && !second.bare() ? first.withUnitOf(second) : first;
        Amount high = second.bare() && !first.bare() ? second.withUnitOf(first) : second;
        return Typed.range(low, high, vacuum);
    }

    private Typed tolerated(Amount first, boolean vacuum) {
        // "300 g, give or take" says no more than "about".
        if (c.rest().isEmpty() && c.text.endsWith(GIVE_OR_TAKE)) {
            return Typed.value(first.vague(), vacuum);
        }
        Amount second = amounts.read(false);
        if (second == null) {
            return fail(amounts.failure);
        }
        boolean percent = second.key().equals("%") && e.dimension() != Dimension.FRACTION;
        if (percent) {
            return Typed.tolerance(first, second, true, vacuum);
        }
        Amount value = first.bare() && !second.bare() ? first.withUnitOf(second) : first;
        Amount plus = second.bare() && !first.bare() ? second.withUnitOf(first) : second;
        return Typed.tolerance(value, plus, false, vacuum);
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
        int from = c.at;
        if (c.mark(",") && c.word(GIVE_OR_TAKE)) {
            return true;
        }
        c.at = from;
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
