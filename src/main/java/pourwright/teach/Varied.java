package pourwright.teach;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/** The answers of a case with a few of them changed, each within what its question takes. */
final class Varied {
    /** What makes a case another case, what belongs to one day, and what only changes how values are shown. */
    private static final Set<String> KEPT = Set.of(
            "material",
            "job",
            "kit",
            "amount-by",
            "gauge-kind",
            "units",
            "unit-mass",
            "unit-temperature",
            "unit-pressure",
            "unit-volume",
            "pot-life-meaning",
            "ratio-by",
            "mix-ratio",
            "mixed-ago",
            "put-first",
            "put-second",
            "cans-first",
            "cans-second",
            "bench-log");

    private static final List<Double> FACTORS = List.of(0.5, 0.7, 1.4, 2.0);
    /** A dial is read between nothing and the whole of the local air: a little more or less is all there is. */
    private static final List<Double> DIAL = List.of(0.85, 0.9, 0.95, 1.03);

    private static final List<Double> DEGREES = List.of(-6.0, -3.0, 3.0, 6.0);
    private static final int MOST = 3;
    private static final MathContext TWO_DIGITS = new MathContext(2);

    private Varied() {}

    /** One to three answers changed; the same where none of them can be. */
    static Answers of(Answers base, Knowledge k, Draw draw) {
        List<String> can = new ArrayList<>();
        for (Map.Entry<String, Answers.Given> e : base.all().entrySet()) {
            Answer a = e.getValue().answer();
            if (!KEPT.contains(e.getKey()) && (a instanceof Answer.Quantity || a instanceof Answer.Choice)) {
                can.add(e.getKey());
            }
        }
        Answers out = base;
        int changes = 1 + draw.below(MOST);
        for (String id : draw.shuffled(can).stream().limit(changes).toList()) {
            out = changed(out, id, k, draw);
        }
        return out;
    }

    /** One answer changed, in one of two draws; the same where it cannot be. */
    static Answers perhaps(Answers base, String id, Knowledge k, Draw draw) {
        return draw.coin() ? changed(base, id, k, draw) : base;
    }

    private static Answers changed(Answers base, String id, Knowledge k, Draw draw) {
        Question q = k.question(id).orElse(null);
        String typed = q == null ? null : other(q, base.get(id).orElseThrow(), draw);
        return typed != null
                        && new AnswerReader(k).fromProgram(q, typed) instanceof AnswerReader.Understood u
                        && !(u.answer() instanceof Answer.DontKnow)
                ? base.with(id, u.answer(), typed)
                : base;
    }

    private static String other(Question q, Answer now, Draw draw) {
        if (now instanceof Answer.Choice c) {
            List<String> others = q.choices().stream()
                    .map(Question.Choice::id)
                    .filter(id -> !id.equals(c.id()))
                    .toList();
            return others.isEmpty() ? null : draw.of(others);
        }
        Answer.Quantity given = (Answer.Quantity) now;
        Dimension d = Dimension.named(q.quantity());
        String unit = UnitBook.knows(given.unit(), d) ? given.unit() : q.unit();
        double v = UnitBook.fromSi(given.si().typical(), unit, d);
        double next = d == Dimension.TEMPERATURE
                ? v + draw.of(DEGREES)
                : v * draw.of(q.id().equals("gauge-reading") ? DIAL : FACTORS);
        return typed(next, unit);
    }

    /** A value as people type it, to two digits. */
    static String typed(double v, String unit) {
        BigDecimal two = new BigDecimal(v).round(TWO_DIGITS);
        String number = two.signum() == 0 ? "0" : two.stripTrailingZeros().toPlainString();
        return number + (unit.equals("1") ? "" : " " + unit);
    }
}
