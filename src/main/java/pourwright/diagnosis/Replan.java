package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Cause;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/**
 * Plans the job again with a cause's prevention put in, and says what changes: old against new.
 *
 * @param changes the answers that change, as "id = new (was old)"
 * @param verdicts the verdict before and after
 * @param differ whether the two verdicts differ
 * @param figures figures that change, as "id: old, then new"
 */
public record Replan(List<String> changes, String verdicts, boolean differ, List<String> figures) {
    private static final List<String> SHOWN = List.of(
            "time-margin",
            "time-share",
            "planned-pressure",
            "froth-volume",
            "batch-count",
            "working-time",
            "smallest-cleared-bubble",
            "viscosity-at-pour",
            "residue-diameter",
            "pressure-cure-diameter-ratio",
            "dew-margin",
            "depth-share");
    private static final int MOST = 4;
    private static final double NOTABLE = 0.02;

    /** The change in the plan; none when the prevention changes no answer, or the liquid is not known. */
    public static Optional<Replan> of(Cause.Prevention p, Answers answers, Knowledge knowledge) {
        Answers job = Answers.NONE;
        for (Question q : knowledge.questions()) {
            Answers.Given g = answers.all().get(q.id());
            if (g != null) {
                job = job.with(q.id(), g.answer(), g.raw());
            }
        }
        if (job.get("material").isEmpty()) {
            return Optional.empty();
        }
        List<String> changes = new ArrayList<>();
        Answers after = job;
        for (Map.Entry<String, String> e : p.set().entrySet()) {
            after = put(after, e.getKey(), e.getValue(), knowledge, changes);
        }
        for (Map.Entry<String, Double> e : p.times().entrySet()) {
            if (job.get(e.getKey()).orElse(null) instanceof Answer.Quantity q) {
                double f = e.getValue();
                Estimate si = new Estimate(q.si().low() * f, q.si().typical() * f, q.si().high() * f);
                Question about = knowledge.question(e.getKey()).orElseThrow();
                String echo = Wording.one(si.typical(), pourwright.units.Dimension.named(about.quantity()));
                changes.add(e.getKey() + " = " + echo + " (was " + q.echo() + ")");
                after = after.with(e.getKey(), new Answer.Quantity(si, q.unit(), echo), echo);
            }
        }
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    compared(Advisor.consult(job, knowledge), Advisor.consult(after, knowledge), changes, knowledge));
        } catch (BadAnswer e) {
            // The change does not go with another answer of this job: there is nothing to compare.
            return Optional.empty();
        }
    }

    /** True when the plan notices the change. */
    public boolean tells() {
        return !figures.isEmpty() || differ;
    }

    private static Answers put(Answers job, String id, String value, Knowledge knowledge, List<String> changes) {
        Question q = knowledge.question(id).orElseThrow();
        AnswerReader.Outcome read = new AnswerReader(knowledge).fromProgram(q, value);
        if (!(read instanceof AnswerReader.Understood u)) {
            throw new IllegalStateException("a prevention sets '" + id + "' to '" + value + "'");
        }
        Answers.Given before = job.all().get(id);
        if (before != null && before.answer().equals(u.answer())) {
            return job;
        }
        String was = before == null || before.raw() == null
                ? "not known"
                : before.raw().toString();
        changes.add(id + " = " + value + " (was " + was + ")");
        return job.with(id, u.answer(), value);
    }

    private static Replan compared(Consultation before, Consultation after, List<String> changes, Knowledge knowledge) {
        Wording old = new Wording(knowledge, before.answers(), before.figures());
        Wording now = new Wording(knowledge, after.answers(), after.figures());
        List<String> figures = new ArrayList<>();
        for (String id : SHOWN) {
            Optional<FigureValue> a = before.figure(id);
            Optional<FigureValue> b = after.figure(id);
            if (figures.size() < MOST && b.isPresent() && (a.isEmpty() || differs(a.get(), b.get()))) {
                figures.add(id + ": " + a.map(old::show).orElse("none") + ", then " + now.show(b.get()));
            }
        }
        String verdicts = before.verdict().word() + ", then " + after.verdict().word();
        return new Replan(List.copyOf(changes), verdicts, before.verdict() != after.verdict(), List.copyOf(figures));
    }

    private static boolean differs(FigureValue a, FigureValue b) {
        double x = a.si().typical();
        double y = b.si().typical();
        return Math.abs(x - y) > NOTABLE * Math.max(Math.abs(x), Math.abs(y));
    }
}
