package pourwright.advice;

import java.util.Map;
import java.util.Optional;
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
    private static final double GRAMS_BELOW_KG = 20;

    private final Knowledge knowledge;
    private final Answers answers;
    private final Map<String, FigureValue> figures;
    private final Map<String, String> units;

    public Wording(Knowledge knowledge, Answers answers, Map<String, FigureValue> figures) {
        this(knowledge, answers, figures, Map.of());
    }

    private Wording(Knowledge knowledge, Answers answers, Map<String, FigureValue> figures, Map<String, String> units) {
        this.knowledge = knowledge;
        this.answers = answers;
        this.figures = figures;
        this.units = units;
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
        String absolute = one(planned.si().typical(), Dimension.PRESSURE);
        if (reading == null || !answers.choice("gauge-kind").equals("below-local-air")) {
            return absolute;
        }
        String unit = answers.get("gauge-reading").orElse(null) instanceof Answer.Quantity q
                        && UnitBook.knows(q.unit(), Dimension.PRESSURE)
                ? q.unit()
                : "inHg";
        return Show.quantity(reading.si().typical(), unit, Dimension.PRESSURE) + " on your dial (" + absolute
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
                .map(t ->
                        "can " + t.can().name() + " (" + one(t.kg(), Dimension.MASS) + (t.all() ? ", all of it)" : ")"))
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

    private static String guideline(Guideline g) {
        if (g.unit().equals("1") && g.value() > 0 && g.value() < 1) {
            return Show.quantity(g.value(), "%", Dimension.FRACTION);
        }
        Dimension d = Knowledge.dimensionOf(g.unit());
        return Show.quantity(UnitBook.toSi(g.value(), g.unit(), d), g.unit(), d);
    }

    /** A typed answer as it was typed; anything else in the unit that suits, with its range where it has one. */
    public String show(FigureValue v) {
        if (!units.containsKey(v.id())
                && answers.get(v.id()).orElse(null) instanceof Answer.Quantity q
                && v.si().equals(q.si())) {
            return q.echo();
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
        Dimension d = asPeopleSay(size, v.dimension());
        String unit = wanted == null ? unit(size, d) : wanted;
        return Show.quantity(rounded(si, unit, d), unit, d);
    }

    private static String range(FigureValue v, String wanted) {
        Estimate e = v.si();
        Dimension d = asPeopleSay(e.typical(), v.dimension());
        if (Double.isInfinite(e.low())) {
            return "never";
        }
        if (Double.isInfinite(e.typical())) {
            return "never, or " + one(e.low(), d, wanted) + " at best";
        }
        if (Double.isInfinite(e.high())) {
            return one(e.typical(), d, wanted) + " or more";
        }
        String unit = wanted == null ? unit(e.typical(), d) : wanted;
        boolean narrow = e.exact() || e.low() > 0 && e.high() / e.low() < WIDE;
        if (narrow || d == Dimension.MASS) {
            return one(e.typical(), d, unit);
        }
        return one(e.typical(), d, unit) + " (" + bare(e.low(), unit, d) + " to " + bare(e.high(), unit, d) + ")";
    }

    private static String bare(double si, String unit, Dimension d) {
        String shown = Show.quantity(rounded(si, unit, d), unit, d);
        int join = shown.lastIndexOf('\u00a0');
        return join < 0 ? shown : shown.substring(0, join);
    }

    /** One value alone, in the unit that suits it. */
    public static String one(double si, Dimension dimension) {
        return one(si, dimension, null);
    }

    private static String one(double si, Dimension dimension, String wanted) {
        Dimension d = asPeopleSay(si, dimension);
        String unit = wanted == null ? unit(si, d) : wanted;
        return Show.quantity(rounded(si, unit, d), unit, d);
    }

    /** A plain number below one is a share, and a share is said in per cent. */
    private static Dimension asPeopleSay(double si, Dimension d) {
        return d == Dimension.NUMBER && si > 0 && si < 1 ? Dimension.FRACTION : d;
    }

    private static String unit(double si, Dimension d) {
        if (d == Dimension.MASS && si < GRAMS_BELOW_KG) {
            return "g";
        }
        return Show.bestUnit(si, d);
    }

    /** No more digits than the value deserves: two, and whole grams for what goes on a scale. */
    private static double rounded(double si, String unit, Dimension d) {
        double v = UnitBook.fromSi(si, unit, d);
        if (v == 0 || Double.isInfinite(v)) {
            return si;
        }
        int digits = d == Dimension.MASS || d == Dimension.VOLUME ? 3 : d == Dimension.TEMPERATURE ? 3 : 2;
        if (d == Dimension.PRESSURE && Math.abs(v) >= 100 || d == Dimension.MASS && Math.abs(v) >= 100) {
            digits = 4;
        }
        double scale = Math.pow(10, digits - 1 - Math.floor(Math.log10(Math.abs(v))));
        double shown = scale >= 1 ? Math.round(v * scale) / scale : Math.round(v * scale) * Math.round(1 / scale);
        return UnitBook.toSi(shown, unit, d);
    }
}
