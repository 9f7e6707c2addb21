package pourwright.remedy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Consultation;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.knowledge.Remedy;
import pourwright.knowledge.Value;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** One remedy on one job: the values it can take, the smallest change first, and the answers each of them makes. */
final class Move {
    /** Smaller batches are lost in the cup; common practice. */
    private static final double LEAST_BATCH_KG = 0.02;

    private final Remedy remedy;
    private final String unit;
    private final Dimension dimension;
    private final double now;
    private final List<Double> values;

    private Move(Remedy remedy, String unit, Dimension dimension, double now, List<Double> values) {
        this.remedy = remedy;
        this.unit = unit;
        this.dimension = dimension;
        this.now = now;
        this.values = values;
    }

    /** The remedy on this job, or none when it cannot be made here. */
    static Optional<Move> of(Remedy r, Consultation c, Knowledge k) {
        MaterialClass material = k.materials().get(c.answers().choice("material"));
        if (!r.suits(material) || !r.when().entrySet().stream().allMatch(e -> holds(e.getKey(), e.getValue(), c))) {
            return Optional.empty();
        }
        Move move = switch (r.how()) {
            case CHOICE -> choice(r, c);
            case DIVIDE -> divided(r, c);
            default -> ladder(r, c, k, material);
        };
        return move.values.isEmpty() ? Optional.empty() : Optional.of(move);
    }

    private static boolean holds(String question, List<String> choices, Consultation c) {
        if (c.answers().get(question).isEmpty()) {
            return choices.contains("");
        }
        String choice = c.answers().choice(question);
        return choices.contains("*") || !choice.isEmpty() && choices.contains(choice);
    }

    private static Move choice(Remedy r, Consultation c) {
        return new Move(r, "", null, 0, holds(r.answer(), r.from(), c) ? List.of(0.0) : List.of());
    }

    private static Move divided(Remedy r, Consultation c) {
        List<Double> counts = new ArrayList<>();
        double mass = c.figure("mix-mass").map(v -> v.si().typical()).orElse(0.0);
        for (double n = 2; n <= r.most() && mass / n >= LEAST_BATCH_KG; n++) {
            counts.add(n);
        }
        return new Move(r, "g", Dimension.MASS, mass, counts);
    }

    private static Move ladder(Remedy r, Consultation c, Knowledge k, MaterialClass material) {
        Question q = k.question(r.answer()).orElseThrow();
        Dimension d = Dimension.named(q.quantity());
        String unit = unit(q, d, c.answers());
        Optional<FigureValue> is = c.figure(r.answer())
                .or(() -> r.answer().equals("target-pressure") ? c.figure("planned-pressure") : Optional.empty());
        if (is.isEmpty() || !Double.isFinite(is.get().si().typical())) {
            return new Move(r, unit, d, 0, List.of());
        }
        boolean up = r.how() == Remedy.How.GROW;
        double nowSi = is.get().si().typical();
        double endSi = UnitBook.toSi(up ? q.max() : q.min(), q.unit(), d);
        Double own = up ? r.most() : r.least();
        if (own != null) {
            endSi = nearer(up, endSi, UnitBook.toSi(own, q.unit(), d));
        }
        if (r.factor() != null) {
            endSi = nearer(up, endSi, up ? nowSi * r.factor() : nowSi / r.factor());
        }
        Value ofClass = material.values().get(r.answer());
        if (ofClass != null) {
            // What the class is not sold with cannot be bought.
            endSi = nearer(up, endSi, up ? ofClass.si(d).high() : ofClass.si(d).low());
        }
        double now = UnitBook.fromSi(nowSi, unit, d);
        double end = UnitBook.fromSi(endSi, unit, d);
        boolean away = up ? end > now : end < now;
        List<Double> values =
                !away ? List.of() : d == Dimension.TEMPERATURE ? Ladder.byDegree(now, end) : Ladder.byRatio(now, end);
        return new Move(r, unit, d, now, values);
    }

    private static double nearer(boolean up, double a, double b) {
        return up ? Math.min(a, b) : Math.max(a, b);
    }

    /** The person's own unit, except where it may count from local air. */
    private static String unit(Question q, Dimension d, Answers answers) {
        return d != Dimension.PRESSURE
                        && answers.get(q.id()).orElse(null) instanceof Answer.Quantity given
                        && UnitBook.knows(given.unit(), d)
                ? given.unit()
                : q.unit();
    }

    Remedy remedy() {
        return remedy;
    }

    /** How many values it can take. */
    int rungs() {
        return values.size();
    }

    /** Every answer it touches. */
    Set<String> touches() {
        Set<String> ids = new LinkedHashSet<>();
        ids.add(remedy.answer());
        ids.addAll(remedy.also().keySet());
        ids.addAll(remedy.forgets());
        if (remedy.how() == Remedy.How.DIVIDE) {
            ids.add("amount-by");
        }
        return ids;
    }

    /** The answers with this change made. */
    Answers made(Answers answers, int rung) {
        Answers next = answers;
        for (String id : remedy.forgets()) {
            next = next.without(id);
        }
        for (var e : remedy.also().entrySet()) {
            next = next.with(e.getKey(), new Answer.Choice(e.getValue()), e.getValue());
        }
        if (remedy.how() == Remedy.How.CHOICE) {
            return next.with(remedy.answer(), new Answer.Choice(remedy.to()), remedy.to());
        }
        if (remedy.how() == Remedy.How.DIVIDE) {
            next = next.with("amount-by", new Answer.Choice("mass"), "mass");
        }
        double v = value(rung);
        Estimate si = Estimate.exactly(UnitBook.toSi(v, unit, dimension));
        return next.with(remedy.answer(), new Answer.Quantity(si, unit, shown(v)), typed(v));
    }

    /** The change in words. */
    Change change(int rung) {
        if (remedy.how() == Remedy.How.CHOICE) {
            return new Change(remedy, remedy.to(), remedy.say(), 0);
        }
        double v = value(rung);
        String say = remedy.say()
                .replace("{new}", shown(v))
                .replace("{count}", String.valueOf(Math.round(values.get(rung))));
        double size = remedy.how() == Remedy.How.DIVIDE
                ? Math.log(values.get(rung))
                : dimension == Dimension.TEMPERATURE ? Math.abs(v - now) / 10 : Math.abs(Math.log(v / now));
        return new Change(remedy, typed(v), say, size);
    }

    private double value(int rung) {
        if (remedy.how() == Remedy.How.DIVIDE) {
            // Whole grams, and no gram too few: all batches together are the whole mix.
            return Math.ceil(now * 1000 / values.get(rung) - 1e-9);
        }
        return values.get(rung);
    }

    private String shown(double v) {
        return Show.quantity(UnitBook.toSi(v, unit, dimension), unit, dimension);
    }

    private String typed(double v) {
        String number = v == Math.rint(v) && Math.abs(v) < 1e9
                ? String.valueOf((long) v)
                : String.format(Locale.ROOT, "%.6f", v).replaceAll("0+$", "");
        return number + " " + unit;
    }
}
