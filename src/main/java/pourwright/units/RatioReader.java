package pourwright.units;

import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * Reads a mix ratio as people type it: "10:1", "100A:90B by weight", "2 %", "10 parts to 1", "20 g per kg".
 *
 * <p>A percentage is of the base unless the text says "of total"; at a prompt it is asked about where the two differ enough to matter.
 * So are the letters A and B where the parts differ. A mix is made to one exact ratio: a rough one and a range are asked about.
 */
public final class RatioReader {
    /** No two-part liquid is mixed more unevenly than this; class range, common practice. */
    static final double MOST = 500;

    /** Below this the two meanings of a percentage differ by less than scales do. Common practice. */
    private static final double ASK_PERCENT = 5;

    private static final Set<String> EQUAL = Set.of("equal parts", "equal", "half and half", "half half");

    /** What goes into a polyester besides the peroxide, and must never be poured together with it. Common practice. */
    private static final List<String> THIRD_PARTS = List.of("accelerator", "promoter", "cobalt", "activator", "drier");

    private final String typed;
    private final RatioParser read;

    private RatioReader(String typed, RatioParser read) {
        this.typed = typed;
        this.read = read;
    }

    /** What {@code typed} means; null means "don't know". {@code prompt}: whether a person is there to be asked. */
    public static RatioReading read(String typed, boolean prompt) {
        if (typed == null) {
            return new DontKnow();
        }
        if (typed.length() > TypedText.LONGEST) {
            return RatioWords.bad(typed, "which is too long.");
        }
        String clean = TypedText.clean(typed);
        if (clean.isEmpty()) {
            return RatioWords.nothing();
        }
        if (DontKnow.says(clean)) {
            return new DontKnow();
        }
        if (clean.contains("drop")) {
            return RatioWords.drops(typed);
        }
        if (THIRD_PARTS.stream().anyMatch(clean::contains)) {
            return RatioWords.thirdPart(typed);
        }
        String whole = EQUAL.contains(clean) ? "1:1" : clean;
        RatioReading first = whole(typed, whole, false, prompt);
        // "1/2 to 1" has a slash that divides; "100/10" has one that separates. The second is tried first.
        return first instanceof Bad ? better(first, whole(typed, whole, true, prompt)) : first;
    }

    private static RatioReading better(RatioReading first, RatioReading second) {
        return second instanceof Bad ? first : second;
    }

    private static RatioReading whole(String typed, String clean, boolean slashDivides, boolean prompt) {
        RatioParser parser = new RatioParser(clean, slashDivides);
        if (!parser.parse()) {
            return RatioWords.bad(typed, parser.why);
        }
        RatioReader reader = new RatioReader(typed, parser);
        return parser.percent ? reader.percent(prompt) : reader.parts(prompt);
    }

    private RatioReading parts(boolean prompt) {
        RatioTerm a = read.first;
        if (read.hyphened) {
            Bad none = sound(a.low(), a.high());
            return none == null ? RatioWords.rough(typed, text(a.low(), a.high(), "", "")) : none;
        }
        RatioTerm b = read.second;
        if (PartName.clash(a.name(), b.name()) || a.unit().isEmpty() != b.unit().isEmpty()) {
            return RatioWords.bad(typed, "but the two parts do not match.");
        }
        boolean powderAlone =
                a.name().role() == PartName.Role.POWDER && b.name().none()
                        || b.name().role() == PartName.Role.POWDER && a.name().none();
        if (powderAlone) {
            return RatioWords.bad(typed, "but need the name of the other part too.");
        }
        if (!a.unit().isEmpty()) {
            Dimension d = UnitBook.knows(a.unit(), Dimension.MASS) ? Dimension.MASS : Dimension.VOLUME;
            if (!UnitBook.knows(b.unit(), d)) {
                return RatioWords.bad(typed, "which sets a weight against a volume.");
            }
            read.by = d == Dimension.MASS ? "weight" : "volume";
            double unit = UnitBook.toSi(1, a.unit(), d) / UnitBook.toSi(1, b.unit(), d);
            if (!a.unit().equals(b.unit())) {
                // Both in the smaller of the two units, so that what was typed stays whole.
                a = unit > 1 ? scaled(a, unit) : a;
                b = unit < 1 ? scaled(b, 1 / unit) : b;
            }
        }
        boolean named = a.name().noun() || b.name().noun();
        boolean turned = named || !read.per ? PartName.turned(a.name(), b.name()) : read.per;
        RatioTerm one = turned ? b : a;
        RatioTerm other = turned ? a : b;
        if (one.ranged() && other.ranged()) {
            return RatioWords.bad(typed, "but only one part can be a range.");
        }
        for (RatioTerm t : new RatioTerm[] {one, other}) {
            if (!t.sound()) {
                return RatioWords.bad(typed, "but each part must be more than nothing.");
            }
        }
        Bad none = sound(one.low(), other.high());
        none = none == null ? sound(one.high(), other.low()) : none;
        if (none != null) {
            return none;
        }
        return asked(one, other, prompt);
    }

    private RatioReading asked(RatioTerm one, RatioTerm other, boolean prompt) {
        String first = one.name().noun() ? one.name().word() : "";
        String second = other.name().noun() ? other.name().word() : "";
        if (one.ranged()) {
            return RatioWords.oneOf(typed, one.low(), one.high(), v -> text(v, other.low(), first, second));
        }
        if (other.ranged()) {
            return RatioWords.oneOf(typed, other.low(), other.high(), v -> text(one.low(), v, first, second));
        }
        String exact = text(one.low(), other.low(), first, second);
        if (one.about() || other.about()) {
            return RatioWords.rough(typed, exact);
        }
        boolean letters = one.name().letter() || other.name().letter();
        boolean nouns = one.name().noun() || other.name().noun();
        if (prompt && letters && !nouns && one.low() != other.low()) {
            return RatioWords.whichCan(typed, one.low(), other.low(), byText());
        }
        return new Ratio(one.low(), other.low(), read.by, false, exact);
    }

    private static RatioTerm scaled(RatioTerm t, double by) {
        double exact = Math.abs(by - Math.rint(by)) < 1e-9 * by ? Math.rint(by) : by;
        return new RatioTerm(t.low() * exact, t.high() * exact, t.name(), t.unit(), t.about());
    }

    private RatioReading percent(boolean prompt) {
        RatioTerm p = read.first;
        boolean possible = p.low() > 0 && p.high() >= p.low() && (!read.total || p.high() < 100);
        if (!possible) {
            return RatioWords.bad(typed, "but no mix has that share.");
        }
        DoubleFunction<String> exact = v -> share(v) + (read.total ? " of total" : " of base") + byText();
        Bad none = sound(read.total ? 100 - p.low() : 100, p.low());
        none = none == null ? sound(read.total ? 100 - p.high() : 100, p.high()) : none;
        if (none != null) {
            return none;
        }
        boolean ofTotalToo = p.high() < 100 && sound(100 - p.high(), p.high()) == null;
        boolean ofWhat = !read.total && !read.base && prompt && p.high() >= ASK_PERCENT && ofTotalToo;
        if (p.ranged()) {
            return ofWhat
                    ? RatioWords.oneOf(
                            typed,
                            p.low(),
                            p.high(),
                            v -> share(v) + " of base" + byText(),
                            v -> share(v) + " of total" + byText())
                    : RatioWords.oneOf(typed, p.low(), p.high(), exact);
        }
        if (ofWhat) {
            return RatioWords.percentOfWhat(share(p.low()), byText());
        }
        if (p.about()) {
            return RatioWords.rough(typed, exact.apply(p.low()));
        }
        double first = read.total ? 100 - p.low() : 100;
        String parts = NumberText.echoed(first) + ":" + NumberText.echoed(p.low());
        String of = share(p.low()) + (read.total ? " of total (" : " of base (") + parts + ")" + byText();
        return new Ratio(first, p.low(), read.by, true, of);
    }

    private static String share(double p) {
        return NumberText.echoed(p) + Show.JOIN + "%";
    }

    /** Why no mix is made so, or null. */
    private Bad sound(double first, double second) {
        if (!(first > 0) || !(second > 0)) {
            return RatioWords.bad(typed, "but each part must be more than nothing.");
        }
        double ratio = first / second;
        boolean outside = !Double.isFinite(first)
                || !Double.isFinite(second)
                || !(ratio <= MOST * (1 + 1e-9))
                || !(ratio >= 1 / MOST * (1 - 1e-9));
        return outside ? RatioWords.bad(typed, "but a ratio must lie from 500:1 to 1:500.") : null;
    }

    /** "10:1", or with the names that were typed "10 resin : 1 hardener"; either can be typed again. */
    private String text(double first, double second, String one, String other) {
        String a = NumberText.echoed(first) + (one.isEmpty() ? "" : " " + one);
        String b = NumberText.echoed(second) + (other.isEmpty() ? "" : " " + other);
        return a + (one.isEmpty() && other.isEmpty() ? ":" : " : ") + b + byText();
    }

    private String byText() {
        return read.by.isEmpty() ? "" : " by " + read.by;
    }
}
