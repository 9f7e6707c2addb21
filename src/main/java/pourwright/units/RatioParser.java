package pourwright.units;

/** The grammar of a mix ratio: two parts with names, units or neither, or a share in per cent. Runs once over the text. */
final class RatioParser {
    private static final String[] BY_WEIGHT = {
        "by weight", "by mass", "weight", "mass", "by wt", "wt", "w/w", "pbw", "by pbw", "w"
    };
    private static final String[] BY_VOLUME = {"by volume", "by vol", "volume", "vol", "v/v", "pbv", "by pbv", "v"};
    private static final String[] PERCENT = {"%", "percent", "per cent", "pct"};
    private static final String[] PER_HUNDRED = {"phr", "parts per hundred", "parts per 100"};
    private static final String[] OF_TOTAL = {"of the total", "of total", "of the mix", "of the whole", "total"};
    private static final String[] OF_BASE = {
        "of the base",
        "of base",
        "of the resin",
        "of resin",
        "on base",
        "on resin",
        "on the base",
        "on the resin",
        "to base",
        "to resin",
        "hardener",
        "catalyst",
        "peroxide",
        "of mekp",
        "mekp",
        "of part a",
        "of a"
    };
    private static final String[] UNITS = {
        "kg", "kilos", "kilo", "grams", "gram", "g", "lbs", "lb", "pounds", "pound", "ml", "litres", "litre", "liters",
        "liter", "l", "cc"
    };
    private static final String[] SEPARATORS = {"to", "and"};

    private final Cursor c;
    private final boolean slashDivides;

    /** How the parts are measured: "weight", "volume" or "". */
    String by = "";

    /** Why reading stopped: words for the sentence, or null. */
    String why;

    /** The two parts; the second null where the first is a share in per cent. */
    RatioTerm first;

    RatioTerm second;
    boolean percent;
    boolean total;
    boolean base;

    /** "20 g per kg": the part that was named first goes into the second. */
    boolean per;

    /** Two numbers with a hyphen and nothing else: a ratio, or a slip. */
    boolean hyphened;

    RatioParser(String clean, boolean slashDivides) {
        this.c = new Cursor(clean);
        this.slashDivides = slashDivides;
    }

    /** Reads it all; false with {@link #why} set if it is no ratio. */
    boolean parse() {
        if (takeBy()) {
            c.mark(":");
        }
        boolean about = AboutWords.before(c);
        PartName[] ahead = namesAhead();
        first = term(ahead == null ? null : ahead[0], about);
        if (first == null) {
            return no("but found no ratio in it.");
        }
        if (percentHere()) {
            return shareOf();
        }
        if (!separator(ahead != null)) {
            hyphened = first.ranged() && c.rest().isEmpty();
            return hyphened || no("but a ratio needs two parts.");
        }
        second = term(ahead == null ? null : ahead[1], about);
        if (second == null) {
            return no("but a ratio needs two parts.");
        }
        if (!second.ranged() && (c.word("to") || c.mark("-"))) {
            double high = number();
            second = new RatioTerm(second.low(), high, second.name(), second.unit(), second.about());
        }
        if (percentHere()) {
            return percentRange();
        }
        takeBy();
        return end();
    }

    /** "2 to 3 %". */
    private boolean percentRange() {
        first = new RatioTerm(first.low(), second.high(), first.name(), first.unit(), first.about() || second.about());
        second = null;
        return shareOf();
    }

    private boolean shareOf() {
        percent = true;
        takeBy();
        total = c.oneOf(OF_TOTAL) != null;
        boolean more = !total;
        while (more) {
            more = c.oneOf(OF_BASE) != null;
            base |= more;
        }
        if (c.mark("(")) {
            // Its own echo: "2 % of base (100:2)".
            number();
            c.mark(":");
            number();
            c.mark(")");
        }
        takeBy();
        return end();
    }

    private boolean percentHere() {
        if (c.oneOf(PER_HUNDRED) != null) {
            base = true;
            return true;
        }
        return c.oneOf(PERCENT) != null || c.mark("%");
    }

    private RatioTerm term(PartName given, boolean about) {
        boolean rough = AboutWords.before(c) || about;
        PartName name = PartName.take(c);
        double low = number();
        if (Double.isNaN(low) && per) {
            low = 1;
        }
        if (Double.isNaN(low)) {
            return null;
        }
        int from = c.at;
        double high = c.mark("-") || c.mark("..") ? number() : low;
        if (Double.isNaN(high)) {
            c.at = from;
            high = low;
        }
        rough |= AboutWords.behind(c);
        String unit = percentAhead() ? "" : unit();
        takeBy();
        name = better(name, percentAhead() ? PartName.NONE : PartName.take(c));
        takeBy();
        name = better(name, given == null ? PartName.NONE : given);
        return new RatioTerm(low, high, name, unit, rough);
    }

    private boolean percentAhead() {
        int from = c.at;
        boolean saidBefore = base;
        boolean ahead = percentHere();
        c.at = from;
        base = saidBefore;
        return ahead;
    }

    private static PartName better(PartName a, PartName b) {
        return a.noun() || b.none() ? a : b;
    }

    /** "A:B = 100:90": the names before the numbers, or null. */
    private PartName[] namesAhead() {
        int from = c.at;
        PartName one = PartName.take(c);
        if (!one.none() && separator(false)) {
            PartName other = PartName.take(c);
            if (!other.none()) {
                if (!c.mark("=") && !c.mark(":")) {
                    c.word("is");
                }
                return new PartName[] {one, other};
            }
        }
        c.at = from;
        per = false;
        return null;
    }

    private boolean separator(boolean named) {
        if (c.mark(":") || c.mark("/") || c.mark("+") || c.oneOf(SEPARATORS) != null) {
            return true;
        }
        per = c.word("per");
        if (per) {
            return true;
        }
        // "100A 90B" and "2A1B": the letter behind the first number ends it.
        c.spaces();
        return !named && first != null && !first.name().none() && Cursor.digit(c.peek(0));
    }

    private double number() {
        double n = NumberScanner.scan(c, slashDivides);
        if (!Double.isNaN(n)) {
            return n;
        }
        int from = c.at;
        n = NumberWords.scan(c);
        c.spaces();
        String words = c.text.substring(from, c.at).strip();
        if (words.equals("a")) {
            c.at = from;
            return Double.NaN;
        }
        return n;
    }

    private String unit() {
        for (String u : UNITS) {
            if (c.word(u)) {
                return u;
            }
        }
        return "";
    }

    /** "by weight", "(vol)": whether it stood here. */
    private boolean takeBy() {
        int from = c.at;
        c.mark(",");
        boolean bracket = c.mark("(");
        String kind = c.oneOf(BY_WEIGHT) != null ? "weight" : c.oneOf(BY_VOLUME) != null ? "volume" : "";
        if (kind.isEmpty()) {
            c.at = from;
            return false;
        }
        if (bracket) {
            c.mark(")");
        }
        by = kind;
        return true;
    }

    private boolean end() {
        c.mark(".");
        return c.rest().isEmpty() || no("but cannot place " + TypedText.quote(c.rest()) + ".");
    }

    private boolean no(String reason) {
        why = reason;
        return false;
    }
}
