package pourwright.advice;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** Fills figures into sentences, in units people use. Number and unit are joined by a no-break space. */
public final class Wording {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z:-]+)}");
    private static final double WIDE = 1.05;

    private final Knowledge knowledge;
    private final Answers answers;
    private final Map<String, FigureValue> figures;

    public Wording(Knowledge knowledge, Answers answers, Map<String, FigureValue> figures) {
        this.knowledge = knowledge;
        this.answers = answers;
        this.figures = figures;
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
            case "first-can":
                return can(material, 0);
            case "second-can":
                return can(material, 1);
            default:
                FigureValue v = figures.get(name);
                return v == null ? "(not known)" : show(v);
        }
    }

    private static String can(MaterialClass m, int i) {
        String plain = i == 0 ? "the first part" : "the second part";
        return m == null || m.mix().names().size() <= i ? plain : m.mix().names().get(i);
    }

    private static String guideline(Guideline g) {
        Dimension d = Knowledge.dimensionOf(g.unit());
        return Show.quantity(UnitBook.toSi(g.value(), g.unit(), d), g.unit(), d);
    }

    /** A typed answer as it was typed; anything else in the unit that suits, with its range where it has one. */
    public String show(FigureValue v) {
        if (answers.get(v.id()).orElse(null) instanceof Answer.Quantity q && v.si().equals(q.si())) {
            return q.echo();
        }
        return range(v);
    }

    private static String range(FigureValue v) {
        Estimate e = v.si();
        String unit = Show.bestUnit(Double.isInfinite(e.typical()) ? e.low() : e.typical(), v.dimension());
        if (Double.isInfinite(e.low())) {
            return "never";
        }
        if (Double.isInfinite(e.typical())) {
            return "never, or " + Show.quantity(e.low(), unit, v.dimension()) + " at best";
        }
        if (Double.isInfinite(e.high())) {
            return Show.quantity(e.typical(), unit, v.dimension()) + " or more";
        }
        if (e.low() > 0 && e.high() / e.low() < WIDE) {
            return Show.quantity(e.typical(), unit, v.dimension());
        }
        return Show.range(e.low(), e.typical(), e.high(), unit, v.dimension());
    }
}
