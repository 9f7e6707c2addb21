package pourwright.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/**
 * What the answer to one question would settle: the plan with each plausible answer against the plan without one.
 *
 * @param question the question
 * @param reasons why it is asked: one for each rule that wants it
 * @param trials the plans; none when the question cannot be tried
 */
public record Deciding(Question question, List<String> reasons, List<Swing.Trial> trials) {
    /** More choices than this are not all tried: nobody would read them. */
    private static final int MOST_CHOICES = 16;

    /** Where nobody knows a range, half and twice the example are plausible. */
    private static final double[] FACTORS = {0.5, 1, 2};

    public Deciding {
        reasons = List.copyOf(reasons);
        trials = List.copyOf(trials);
    }

    /** What the answer would settle in a plan with these other answers. */
    public static Deciding of(Question q, Answers answers, Knowledge k) {
        Answers open = answers.without(q.id());
        if (open.get("material").isEmpty()) {
            return new Deciding(q, List.of(), List.of());
        }
        try {
            Consultation without = Advisor.consult(open, k);
            List<String> reasons = without.needs().stream()
                    .filter(n -> n.question().equals(q.id()))
                    .flatMap(n -> n.rules().stream())
                    .map(r -> r.because())
                    .distinct()
                    .toList();
            List<Swing.Trial> trials = new ArrayList<>();
            for (Setting s : plausible(q, without, k)) {
                try {
                    trials.add(new Swing.Trial(s, Difference.between(without, Advisor.consult(s.in(open), k))));
                } catch (BadAnswer e) {
                    // Not plausible with the other answers.
                }
            }
            return new Deciding(q, reasons, trials);
        } catch (BadAnswer e) {
            return new Deciding(q, List.of(), List.of());
        }
    }

    private static List<Setting> plausible(Question q, Consultation c, Knowledge k) {
        if (q.kind().equals("choice")) {
            List<Setting> choices = Settings.of(q, c, k).choices();
            return choices.size() > MOST_CHOICES ? List.of() : choices;
        }
        if (!q.kind().equals("quantity")) {
            return List.of();
        }
        Optional<FigureValue> known = c.figure(q.id()).filter(v -> Double.isFinite(v.si().high()));
        List<Double> values = new ArrayList<>();
        if (known.isPresent() && !known.get().si().exact()) {
            values.addAll(List.of(
                    known.get().si().low(),
                    known.get().si().typical(),
                    known.get().si().high()));
        } else if (new AnswerReader(k).fromProgram(q, q.example()) instanceof AnswerReader.Understood u
                && u.answer() instanceof Answer.Quantity example) {
            for (double f : FACTORS) {
                values.add(example.si().typical() * f);
            }
        }
        Set<Setting> settings = new LinkedHashSet<>();
        values.forEach(v -> Sensitive.typed(q, v, k).ifPresent(settings::add));
        return List.copyOf(settings);
    }
}
