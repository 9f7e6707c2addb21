package pourwright.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.facts.Answer;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/**
 * Which uncertain answer to measure next. Each is tried at its low and at its high end, or at every choice where nobody
 * has chosen, while all others stay as they are.
 */
public final class Sensitive {
    private static final String MARGIN = "time-margin";
    private static final String WORKING = "working-time";

    private Sensitive() {}

    /** All uncertain answers, the one that matters most first: the verdict, then the time to spare, then advice. */
    public static List<Swing> of(Consultation c, Knowledge knowledge) {
        List<Swing> swings = new ArrayList<>();
        for (Question q : knowledge.questions()) {
            ends(q, c, knowledge).ifPresent(e -> swing(q, e, c, knowledge).ifPresent(swings::add));
        }
        swings.sort(Comparator.comparing((Swing s) -> !s.turnsVerdict())
                .thenComparing(s -> -Math.rint(s.marginShare() * 100))
                .thenComparing(s -> -s.moved()));
        return List.copyOf(swings);
    }

    private record Ends(Swing.Why why, List<Setting> settings) {}

    private static Optional<Ends> ends(Question q, Consultation c, Knowledge k) {
        boolean answered = c.answers().get(q.id()).isPresent();
        if (q.kind().equals("choice")) {
            boolean open = !answered && (c.answers().has(q.id()) || c.unasked().contains(q.id()));
            return open
                    ? Optional.of(new Ends(
                            Swing.Why.OPEN,
                            Settings.of(q, c, k).choices().stream().toList()))
                    : Optional.empty();
        }
        Optional<FigureValue> figure = c.figure(q.id()).filter(v -> v.defined().isEmpty());
        if (!q.kind().equals("quantity")
                || figure.isEmpty()
                || !answered && !c.assumed().contains(q.id())) {
            return Optional.empty();
        }
        Estimate si = figure.get().si();
        if (si.exact() || !Double.isFinite(si.high())) {
            return Optional.empty();
        }
        Swing.Why why = answered
                ? Swing.Why.RANGE
                : figure.get().basis() == pourwright.facts.Basis.CLASS ? Swing.Why.CLASS : Swing.Why.USUAL;
        List<Setting> both = new ArrayList<>();
        for (double end : new double[] {si.low(), si.high()}) {
            typed(q, end, k).ifPresent(both::add);
        }
        return both.size() < 2 ? Optional.empty() : Optional.of(new Ends(why, both));
    }

    /** An answer at one end, as a person would type it; none where no person would. */
    static Optional<Setting> typed(Question q, double si, Knowledge k) {
        Dimension d = Dimension.named(q.quantity());
        double value = Math.max(q.min(), Math.min(q.max(), UnitBook.fromSi(si, q.unit(), d)));
        String typed = Settings.typed(value, q.unit());
        return new AnswerReader(k).fromProgram(q, typed) instanceof AnswerReader.Understood u
                        && u.answer() instanceof Answer.Quantity
                ? Optional.of(new Setting(q.id(), u.answer(), typed, Setting.Grade.OWN, 0))
                : Optional.empty();
    }

    private static Optional<Swing> swing(Question q, Ends ends, Consultation c, Knowledge k) {
        List<Swing.Trial> trials = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Setting s : ends.settings) {
            try {
                Consultation then = Advisor.consult(s.in(c.answers()), k);
                trials.add(new Swing.Trial(s, Difference.between(c, then)));
                Optional<Double> margin =
                        then.figure(MARGIN).map(v -> v.si().typical()).filter(Double::isFinite);
                if (margin.isPresent()) {
                    low = Math.min(low, margin.get());
                    high = Math.max(high, margin.get());
                }
            } catch (BadAnswer e) {
                // What cannot be true with the other answers is no end of the range.
            }
        }
        double moves = high > low ? high - low : 0;
        double working =
                c.figure(WORKING).map(v -> v.si().typical()).filter(w -> w > 0).orElse(Double.POSITIVE_INFINITY);
        return trials.isEmpty()
                ? Optional.empty()
                : Optional.of(new Swing(q.id(), ends.why, trials, moves, moves / working));
    }
}
