package pourwright.ask;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.advice.Consultation;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.remedy.Ladder;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/** The answers that could be given to one question instead, nearest first: every choice, or the steps of a grid. */
final class Settings {
    /** Steps of a grid that has zero in it, from one end to the other. */
    private static final int STEPS = 40;

    /** Nobody sets a value finer. */
    private static final int DIGITS = 3;

    /** Parts that people mix by; common practice. */
    private static final List<String> RATIOS =
            List.of("1:1", "2:1", "3:1", "4:1", "5:1", "10:1", "20:1", "100:2", "100:1", "1:2", "1:3");

    private final Question question;
    private final Setting.Grade grade;
    private final List<Setting> choices = new ArrayList<>();
    private final List<List<Setting>> directions = new ArrayList<>();
    private final AnswerReader reader;

    private Settings(Question question, Consultation c, Knowledge k) {
        this.question = question;
        this.reader = new AnswerReader(k);
        this.grade = k.materials().values().stream().anyMatch(m -> m.values().containsKey(question.id()))
                        || question.kind().equals("material")
                ? Setting.Grade.NATURE
                : Setting.Grade.OWN;
        Answer now = c.answers().get(question.id()).orElse(null);
        switch (question.kind()) {
            case "material" -> k.materials().keySet().forEach(id -> choice(id, now));
            case "choice" -> question.choices().forEach(ch -> choice(ch.id(), now));
            case "ratio" -> RATIOS.forEach(r -> choice(r, now));
            case "quantity" -> grids(c);
            default -> {}
        }
        if (now != null && !question.kind().equals("material")) {
            choices.add(new Setting(question.id(), new Answer.DontKnow(), null, Setting.Grade.UNKNOWN, 0));
        }
    }

    /** What could be answered to this question instead. */
    static Settings of(Question question, Consultation c, Knowledge k) {
        return new Settings(question, c, k);
    }

    /** Answers of which none is nearer than another. */
    List<Setting> choices() {
        return choices;
    }

    /** Values upwards and values downwards, each the nearest first. */
    List<List<Setting>> directions() {
        return directions;
    }

    private void choice(String typed, Answer now) {
        if (reader.fromProgram(question, typed) instanceof AnswerReader.Understood u
                && !u.answer().equals(now)) {
            choices.add(new Setting(question.id(), u.answer(), typed, grade, 0));
        }
    }

    private void grids(Consultation c) {
        Dimension d = Dimension.named(question.quantity());
        String unit = unit(d, c.answers());
        double now = now(c, d, unit);
        double min = UnitBook.fromSi(UnitBook.toSi(question.min(), question.unit(), d), unit, d);
        double max = UnitBook.fromSi(UnitBook.toSi(question.max(), question.unit(), d), unit, d);
        if (c.answers().get(question.id()).isEmpty()) {
            // To know the value may be all it takes, even where it is the usual one.
            choice(typed(now, unit), null);
        }
        directions.add(settings(steps(now, max, min, max, d), unit));
        directions.add(settings(steps(now, min, min, max, d), unit));
    }

    private static List<Double> steps(double from, double to, double min, double max, Dimension d) {
        if (d == Dimension.TEMPERATURE) {
            return Ladder.byDegree(from, to);
        }
        if (min > 0) {
            return Ladder.byRatio(from, to);
        }
        if (min == 0 && from > 0) {
            // Down to a thousandth by ratio, then nothing at all.
            List<Double> steps = new ArrayList<>(Ladder.byRatio(from, to > 0 ? to : Math.min(from, max) / 1000));
            if (to == 0) {
                steps.add(0.0);
            }
            return steps;
        }
        if (min == 0) {
            return Ladder.byRatio(max / 1000, max);
        }
        double step = round((max - min) / STEPS);
        List<Double> steps = new ArrayList<>();
        double sign = to > from ? 1 : -1;
        double first = sign > 0 ? Math.floor(from / step) + 1 : Math.ceil(from / step) - 1;
        for (double n = first; sign * (to - n * step) >= 0; n += sign) {
            steps.add(n * step);
        }
        return steps;
    }

    /** One, two or five times a power of ten. */
    private static double round(double v) {
        double decade = Math.pow(10, Math.floor(Math.log10(v)));
        return decade * (v / decade < 2 ? 1 : v / decade < 5 ? 2 : 5);
    }

    private List<Setting> settings(List<Double> values, String unit) {
        List<Setting> all = new ArrayList<>();
        for (double v : values) {
            String typed = typed(v, unit);
            if (reader.fromProgram(question, typed) instanceof AnswerReader.Understood u) {
                all.add(new Setting(question.id(), u.answer(), typed, grade, all.size() + 1));
            }
        }
        return all;
    }

    /** A value as people type it, to three digits. */
    static String typed(double v, String unit) {
        BigDecimal exact = new BigDecimal(v).round(new MathContext(DIGITS));
        String number = exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
        return number + (unit.equals("1") ? "" : " " + unit);
    }

    /** The value as it is: what was answered, what stood in, or what the question gives as its example. */
    private double now(Consultation c, Dimension d, String unit) {
        Optional<Double> si = c.figure(question.id())
                .map(v -> v.si().typical())
                .filter(Double::isFinite)
                .or(() -> reader.fromProgram(question, question.example()) instanceof AnswerReader.Understood u
                                && u.answer() instanceof Answer.Quantity q
                        ? Optional.of(q.si().typical())
                        : Optional.empty());
        return si.map(x -> UnitBook.fromSi(x, unit, d)).orElse((question.min() + question.max()) / 2);
    }

    /** The person's own unit, except where it may count from local air. */
    private String unit(Dimension d, Answers answers) {
        return d != Dimension.PRESSURE
                        && answers.get(question.id()).orElse(null) instanceof Answer.Quantity given
                        && UnitBook.knows(given.unit(), d)
                ? given.unit()
                : question.unit();
    }
}
