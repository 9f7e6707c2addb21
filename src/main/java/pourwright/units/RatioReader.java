package pourwright.units;

import java.util.List;

/**
 * Reads a mix ratio as people type it: "10:1", "100A:90B by weight", "2 %", "10 parts to 1".
 *
 * <p>A percentage is of the base unless the text says "of total"; at a prompt it is asked about where the two differ enough to matter.
 */
public final class RatioReader {
    /** No two-part liquid is mixed more unevenly than this; class range, common practice. */
    static final double MOST = 500;

    /** Below this the two meanings of a percentage differ by less than scales do. Common practice. */
    private static final double ASK_PERCENT = 5;

    private static final String EXAMPLE = " Give two parts, for example 10:1 or 100:90 by weight.";
    private static final String[] BY_WEIGHT = {
        "by weight", "by mass", "weight", "mass", "by wt", "wt", "w/w", "pbw", "by pbw", "w"
    };
    private static final String[] BY_VOLUME = {"by volume", "by vol", "volume", "vol", "v/v", "pbv", "by pbv", "v"};
    private static final String[] PARTS = {"parts of", "part of", "parts", "part", "pts", "pt"};
    private static final String[] NOUNS = {
        "resin", "base", "hardener", "catalyst", "powder", "plaster", "water", "component", "of"
    };
    private static final String[] PERCENT = {"%", "percent", "per cent", "pct"};
    private static final String[] OF_TOTAL = {"of the total", "of total", "of the mix", "of the whole", "total"};
    private static final String[] OF_BASE = {
        "of the base",
        "of base",
        "of the resin",
        "of resin",
        "on base",
        "on resin",
        "on the base",
        "hardener",
        "catalyst",
        "peroxide",
        "of part a",
        "of a"
    };

    private final String typed;
    private final Cursor c;
    private final boolean slashDivides;
    private String by = "";

    private RatioReader(String typed, String clean, boolean slashDivides) {
        this.typed = typed;
        this.c = new Cursor(clean);
        this.slashDivides = slashDivides;
    }

    /** What {@code typed} means; null means "don't know". {@code prompt}: whether a person is there to be asked. */
    public static RatioReading read(String typed, boolean prompt) {
        if (typed == null) {
            return new DontKnow();
        }
        if (typed.length() > TypedText.LONGEST) {
            return bad(typed, "which is too long.");
        }
        String clean = TypedText.clean(typed);
        if (clean.isEmpty()) {
            return new Bad("I read nothing." + EXAMPLE);
        }
        if (DontKnow.says(clean)) {
            return new DontKnow();
        }
        if (clean.contains("drop")) {
            return new Ask(
                    "I read " + TypedText.quote(typed)
                            + ". Drops differ from bottle to bottle, so weigh them: 1 % of 30 g is 0.3 g. "
                            + "How much by weight?",
                    List.of("1 % by weight", "1.5 % by weight", "2 % by weight"));
        }
        if (clean.equals("equal parts") || clean.equals("equal") || clean.equals("half and half")) {
            return new RatioReader(typed, clean, false).ratio(1, 1);
        }
        RatioReading first = new RatioReader(typed, clean, false).whole(prompt);
        // "1/2 to 1" has a slash that divides; "100/10" has one that separates. The second is tried first.
        return first instanceof Bad ? better(first, new RatioReader(typed, clean, true).whole(prompt)) : first;
    }

    private static RatioReading better(RatioReading first, RatioReading second) {
        return second instanceof Bad ? first : second;
    }

    private RatioReading whole(boolean prompt) {
        if (takeBy()) {
            c.mark(":");
        }
        char firstLabel = label();
        double first = number();
        if (Double.isNaN(first)) {
            return bad(typed, "but found no ratio in it.");
        }
        if (c.oneOf(PERCENT) != null || c.mark("%")) {
            return percent(first, prompt);
        }
        String firstUnit = unit();
        firstLabel = firstLabel == 0 ? label() : firstLabel;
        takeBy();
        firstLabel = firstLabel == 0 ? label() : firstLabel;
        if (!(c.mark(":") || c.mark("/") || c.word("to") || c.word("and") || c.mark("+"))) {
            return bad(typed, "but a ratio needs two parts.");
        }
        char secondLabel = label();
        double second = number();
        if (Double.isNaN(second)) {
            return bad(typed, "but a ratio needs two parts.");
        }
        String secondUnit = unit();
        secondLabel = secondLabel == 0 ? label() : secondLabel;
        takeBy();
        secondLabel = secondLabel == 0 ? label() : secondLabel;
        if (!end()) {
            return bad(typed, "but cannot place " + TypedText.quote(c.rest()) + ".");
        }
        boolean labelsClash = firstLabel != 0 && firstLabel == secondLabel;
        if (labelsClash || firstUnit.isEmpty() != secondUnit.isEmpty()) {
            return bad(typed, "but the two parts do not match.");
        }
        double a = first;
        double b = second;
        if (!firstUnit.isEmpty()) {
            Dimension d = UnitBook.knows(firstUnit, Dimension.MASS) ? Dimension.MASS : Dimension.VOLUME;
            if (!UnitBook.knows(secondUnit, d)) {
                return bad(typed, "which sets a weight against a volume.");
            }
            by = d == Dimension.MASS ? "weight" : "volume";
            if (!firstUnit.equals(secondUnit)) {
                a = UnitBook.toSi(first, firstUnit, d);
                b = UnitBook.toSi(second, secondUnit, d);
                // The smaller amount becomes the one, so that the ratio reads as ratios do.
                double least = Math.min(a, b);
                a = least > 0 ? a / least : a;
                b = least > 0 ? b / least : b;
            }
        }
        return firstLabel == 'b' || secondLabel == 'a' ? ratio(b, a) : ratio(a, b);
    }

    private RatioReading percent(double p, boolean prompt) {
        takeBy();
        boolean total = c.oneOf(OF_TOTAL) != null;
        boolean base = !total && c.oneOf(OF_BASE) != null;
        takeBy();
        if (!end()) {
            return bad(typed, "but cannot place " + TypedText.quote(c.rest()) + ".");
        }
        if (!(p > 0) || (total && p >= 100)) {
            return bad(typed, "but no mix has that share.");
        }
        String share = NumberText.echoed(p) + Show.JOIN + "%";
        if (!total && !base && prompt && p >= ASK_PERCENT) {
            String kind = by.isEmpty() ? "" : " by " + by;
            List<String> meanings = List.of(share + " of base" + kind, share + " of total" + kind);
            return new Ask("I read " + share + ". Is that " + Sentences.list(meanings) + "?", meanings);
        }
        double first = total ? 100 - p : 100;
        if (outside(first, p)) {
            return tooUneven();
        }
        String parts = NumberText.echoed(first) + ":" + NumberText.echoed(p);
        return new Ratio(first, p, by, true, share + (total ? " of total (" : " of base (") + parts + ")" + byText());
    }

    private RatioReading ratio(double first, double second) {
        if (!(first > 0) || !(second > 0)) {
            return bad(typed, "but each part must be more than nothing.");
        }
        if (outside(first, second)) {
            return tooUneven();
        }
        return new Ratio(
                first, second, by, false, NumberText.echoed(first) + ":" + NumberText.echoed(second) + byText());
    }

    private static boolean outside(double first, double second) {
        double ratio = first / second;
        return !Double.isFinite(first) || !Double.isFinite(second) || !(ratio <= MOST) || !(ratio >= 1 / MOST);
    }

    private Bad tooUneven() {
        return bad(typed, "but a ratio must lie from 500:1 to 1:500.");
    }

    private String byText() {
        return by.isEmpty() ? "" : " by " + by;
    }

    private double number() {
        double n = NumberScanner.scan(c, slashDivides);
        return Double.isNaN(n) ? NumberWords.scan(c) : n;
    }

    /** "A" or "part B": which component a number belongs to, or 0. */
    private char label() {
        while (c.oneOf(PARTS) != null || c.oneOf(NOUNS) != null) {
            // Words that name the parts say nothing about their size.
        }
        char found = c.word("a") ? 'a' : c.word("b") ? 'b' : 0;
        if (found != 0) {
            c.mark("=");
        }
        return found;
    }

    private String unit() {
        for (String u : new String[] {"kg", "grams", "gram", "g", "lbs", "lb", "ml", "litres", "liters", "l", "cc"}) {
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
        return c.rest().isEmpty();
    }

    private static Bad bad(String typed, String why) {
        return new Bad("I read " + TypedText.quote(typed) + ", " + why + EXAMPLE);
    }
}
