package pourwright.follow;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pourwright.advice.Consultation;
import pourwright.advice.Step;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;

/**
 * Where a followed plan stands: which step is due, when, and what is left of the working time. A delay moves every later step
 * by as much.
 */
public final class Follow {
    private static final String MIX = "mix";

    private final Knowledge knowledge;
    private final List<Step> before;
    private final List<Step> after;
    private final Optional<Estimate> workingS;

    /** @param c the plan to follow */
    public Follow(Consultation c, Knowledge knowledge) {
        this.knowledge = knowledge;
        this.workingS = c.figure("working-time").map(FigureValue::si);
        double gelS = workingS.map(Estimate::typical).orElse(Double.POSITIVE_INFINITY);
        this.before = c.timetable().stream().filter(s -> s.atS().typical() < 0).toList();
        // What comes after the gel takes no hand at the bench: it stays on the plan.
        this.after = c.timetable().stream()
                .filter(s -> s.atS().typical() >= 0 && s.atS().typical() <= gelS && Double.isFinite(doneAtS(s)))
                .toList();
    }

    /** The steps before mixing, in their order. */
    public List<Step> before() {
        return before;
    }

    /** All steps that are followed, in their order. */
    public List<Step> steps() {
        return Stream.concat(before.stream(), after.stream()).toList();
    }

    /** The step that is due, once mixing has begun; none when all is done. */
    public Optional<Step> due(FollowLog log) {
        return after.stream().filter(s -> !log.settles(s.id())).findFirst();
    }

    /** When a step would be done by the plan, seconds from the start of mixing. */
    public double doneAtS(Step s) {
        boolean atStart = knowledge.steps().get(s.id()).doneAtStart();
        return s.atS().typical() + (atStart ? 0 : s.lastsS().typical());
    }

    /** How much later than planned the last step was done, s; negative when it was earlier. */
    public double lateS(FollowLog log) {
        double late = 0;
        for (FollowLog.Entry e : log.entries()) {
            Optional<Step> step =
                    after.stream().filter(s -> s.id().equals(e.what())).findFirst();
            if (step.isPresent()) {
                late = e.atS() - doneAtS(step.get());
            }
        }
        return late;
    }

    /** When a step should be done, with the delay so far. The gel waits for nobody. */
    public double dueAtS(Step s, FollowLog log) {
        return s.id().equals("gel") ? doneAtS(s) : doneAtS(s) + lateS(log);
    }

    /** What is left of the working time at a moment, s; negative where it is over. */
    public Optional<Estimate> leftS(double nowS) {
        return workingS.map(w -> new Estimate(w.low() - nowS, w.typical() - nowS, w.high() - nowS));
    }

    /** When the last step before the gel will be done at this pace, s; none when there is no more of them. */
    public Optional<Double> endsAtS(FollowLog log, double nowS) {
        Optional<Step> due = due(log);
        List<Step> left = after.stream()
                .filter(s -> !s.id().equals("gel") && !log.settles(s.id()))
                .toList();
        if (due.isEmpty() || left.isEmpty()) {
            return Optional.empty();
        }
        // A step that should have been done by now cannot be done before now.
        double behind = Math.max(0, nowS - dueAtS(due.get(), log));
        return Optional.of(dueAtS(left.get(left.size() - 1), log) + behind);
    }

    /** True when the step is the mixing, at whose start the clock starts. */
    public static boolean startsTheClock(Step s) {
        return s.id().equals(MIX);
    }
}
