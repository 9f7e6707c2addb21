package pourwright.advice;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.figures.Money;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.stock.CanUse;
import pourwright.stock.Cans;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** Fills figures into sentences, in units people use. Number and unit are joined by a no-break space. */
public final class Wording {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z:-]+)}");
    private static final double WIDE = 1.05;

    /** Pressures that count from true zero: in inches of mercury they would pass for what a dial shows. */
    private static final Set<String> LEVELS = Set.of(
            "barometric-pressure",
            "absolute-pressure",
            "reachable-pressure",
            "vapour-pressure",
            "boil-off-pressure",
            "planned-pressure",
            "start-pressure",
            "target-pressure",
            "pump-ultimate",
            "leak-floor",
            "base-pressure-measured",
            "work-pressure",
            "water-vapour-pressure",
            "vacuum-pressure",
            "rise-level");

    private final Knowledge knowledge;
    private final Answers answers;
    private final Map<String, FigureValue> figures;
    private final Map<String, String> units;
    private final Amounts amounts;

    public Wording(Knowledge knowledge, Answers answers, Map<String, FigureValue> figures) {
        this(knowledge, answers, figures, Map.of());
    }

    private Wording(Knowledge knowledge, Answers answers, Map<String, FigureValue> figures, Map<String, String> units) {
        this.knowledge = knowledge;
        this.answers = answers;
        this.figures = figures;
        this.units = units;
        this.amounts = Amounts.of(answers);
    }

    /** The same, with one figure shown in a unit of the person's liking. */
    public Wording in(String figure, String unit) {
        return new Wording(knowledge, answers, figures, Map.of(figure, unit));
    }

    /** The sentence with every {@code {name}} filled in; a name nobody can fill is said to be unknown. */
    public String fill(String sentence) {
        Matcher m = PLACE.matcher(sentence);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(out, Matcher.quoteReplacement(value(m.group(1))));
        }
        return m.appendTail(out).toString();
    }

    private String value(String name) {
        if (name.startsWith("guideline:")) {
            Guideline g = knowledge.guidelines().get(name.substring("guideline:".length()));
            if (g == null) {
                throw new IllegalStateException("no guideline is called '" + name + "'");
            }
            return guideline(g);
        }
        MaterialClass material = knowledge.materials().get(answers.choice("material"));
        switch (name) {
            case "material":
                return material == null ? "the liquid" : material.name();
            case "gauge-target":
                return gaugeTarget();
            case "first-can":
                return can(material, 0);
            case "second-can":
                return can(material, 1);
            case "cans-first":
                return cans("cans-first", "need-first");
            case "cans-second":
                return cans("cans-second", "part-mass-b");
            default:
                FigureValue v = figures.get(name);
                return v == null ? "(not known)" : show(v);
        }
    }

    /** How deep to go, as the person's own gauge shows it: a dial that counts from local air, or an absolute one. */
    private String gaugeTarget() {
        FigureValue planned = figures.get("planned-pressure");
        FigureValue reading = figures.get("planned-reading");
        if (planned == null) {
            return "(not known)";
        }
        String absolute = amounts.one(planned.si().typical(), Dimension.PRESSURE);
        if (reading == null || !answers.choice("gauge-kind").equals("below-local-air")) {
            return level(absolute, planned.si().typical());
        }
        String unit = answers.get("gauge-reading").orElse(null) instanceof Answer.Quantity q
                        && UnitBook.knows(q.unit(), Dimension.PRESSURE)
                ? q.unit()
                : amounts.pressure().orElse("inHg");
        // Two numbers in inches, one from local air and one from zero, would be mixed up at the pump.
        String zero =
                absolute.endsWith("inHg") ? Amounts.USUAL.one(planned.si().typical(), Dimension.PRESSURE) : absolute;
        return Show.quantity(reading.si().typical(), unit, Dimension.PRESSURE) + " on your dial (" + zero
                + " absolute)";
    }

    private static String can(MaterialClass m, int i) {
        String plain = i == 0 ? "the first part" : "the second part";
        return m == null || m.mix().names().size() <= i
                ? plain
                : m.mix().names().get(i);
    }

    /** What to take of which can, oldest first: "can 3 (450 g, all of it), then can 5 (368 g)". */
    private String cans(String question, String need) {
        FigureValue v = figures.get(need);
        String text = answers.text(question);
        if (v == null || text.isEmpty()) {
            return "(not known)";
        }
        return CanUse.of(Cans.read(text), v.si().typical()).taken().stream()
                .map(t -> "can " + t.can().name() + " (" + amounts.one(t.kg(), Dimension.MASS)
                        + (t.all() ? ", all of it)" : ")"))
                .collect(Collectors.joining(", then "));
    }

    /** The age of a can is said in whole days, as its dates are. */
    private static boolean isAge(String figure) {
        return figure.startsWith("opened-") || figure.startsWith("bought-") || figure.startsWith("past-date-");
    }

    private static String days(double s) {
        long days = Math.round(s / UnitBook.toSi(1, "d", Dimension.TIME));
        return days + (days == 1 ? "\u00a0day" : "\u00a0days");
    }

    /** The one word for the money of all prices, or nothing. */
    public Optional<String> currency() {
        return Money.of(answers);
    }

    private String money(double value) {
        return Money.amount(value) + currency().map(w -> "\u00a0" + w).orElse("");
    }

    private String moneyRange(Estimate e) {
        String typical = Money.amount(e.typical());
        String low = Money.amount(e.low());
        String high = Money.amount(e.high());
        boolean one = low.equals(typical) && high.equals(typical);
        return money(e.typical()) + (one ? "" : " (" + low + " to " + high + ")");
    }

    private String guideline(Guideline g) {
        if (g.unit().equals("1") && g.value() > 0 && g.value() < 1) {
            return Show.quantity(g.value(), "%", Dimension.FRACTION);
        }
        Dimension d = Knowledge.dimensionOf(g.unit());
        double si = UnitBook.toSi(g.value(), g.unit(), d);
        String own = Show.quantity(si, g.unit(), d);
        return amounts.beside(new Answer.Quantity(Estimate.exactly(si), g.unit(), own), d)
                .map(other -> own + " (" + other + ")")
                .orElse(own);
    }

    /** A pressure from true zero in inches of mercury says so, with the mbar that an absolute gauge would show. */
    private static String level(String shown, double si) {
        return shown.endsWith("inHg") ? shown + " absolute (" + Amounts.USUAL.one(si, Dimension.PRESSURE) + ")" : shown;
    }

    /** A typed answer as it was typed; anything else in the unit that suits, with its range where it has one. */
    public String show(FigureValue v) {
        if (!units.containsKey(v.id())
                && answers.get(v.id()).orElse(null) instanceof Answer.Quantity q
                && v.si().equals(q.si())) {
            return amounts.beside(q, v.dimension())
                    .map(other -> q.echo() + " (" + other + ")")
                    .orElse(q.echo());
        }
        if (Money.is(v.id())) {
            return moneyRange(v.si());
        }
        if (isAge(v.id())) {
            return days(v.si().typical());
        }
        return range(v, units.get(v.id()));
    }

    /** One end of a figure's range, in the unit the figure is shown in. */
    public String end(FigureValue v, double si) {
        String wanted = units.get(v.id());
        if (Money.is(v.id())) {
            return money(si);
        }
        if (isAge(v.id())) {
            return days(si);
        }
        if (Double.isInfinite(si)) {
            return v.dimension() == Dimension.TIME ? "never" : "without limit";
        }
        double size = Double.isInfinite(v.si().typical()) ? si : v.si().typical();
        Dimension d = Amounts.asPeopleSay(size, v.dimension());
        String unit = wanted == null ? amounts.unit(size, d) : wanted;
        return Show.quantity(Amounts.rounded(si, unit, d), unit, d);
    }

    private String range(FigureValue v, String wanted) {
        Estimate e = v.si();
        Dimension d = Amounts.asPeopleSay(e.typical(), v.dimension());
        if (Double.isInfinite(e.low())) {
            return "never";
        }
        if (Double.isInfinite(e.typical())) {
            return "never, or " + amounts.one(e.low(), d, wanted) + " at best";
        }
        if (Double.isInfinite(e.high())) {
            return amounts.one(e.typical(), d, wanted) + " or more";
        }
        String unit = wanted == null ? amounts.unit(e.typical(), d) : wanted;
        boolean narrow = e.exact() || e.low() > 0 && e.high() / e.low() < WIDE;
        if (narrow || d == Dimension.MASS) {
            String one = amounts.one(e.typical(), d, unit);
            return wanted == null && LEVELS.contains(v.id()) ? level(one, e.typical()) : one;
        }
        String span = bare(e.low(), unit, d) + " to " + bare(e.high(), unit, d);
        String one = amounts.one(e.typical(), d, unit);
        return wanted == null && LEVELS.contains(v.id()) && unit.equals("inHg")
                ? one + " absolute (" + span + "; " + Amounts.USUAL.one(e.typical(), d) + ")"
                : one + " (" + span + ")";
    }

    private static String bare(double si, String unit, Dimension d) {
        String shown = Show.quantity(Amounts.rounded(si, unit, d), unit, d);
        // Of a unit of two words, such as "US gal", none may stay.
        int join = shown.indexOf('\u00a0');
        return join < 0 ? shown : shown.substring(0, join);
    }

    /** One value alone, in the usual unit that suits it. */
    public static String one(double si, Dimension dimension) {
        return Amounts.USUAL.one(si, dimension);
    }

    /** The units that this job is shown in. */
    public Amounts amounts() {
        return amounts;
    }
}
