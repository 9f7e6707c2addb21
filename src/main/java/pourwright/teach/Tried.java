package pourwright.teach;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.advice.OneFigure;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.RankedCause;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;

/** An experiment of a lesson, computed for what the learner sets. */
public final class Tried {
    private static final int CAUSES = 3;

    private final Lesson.Experiment experiment;
    private final Diagnoser diagnoser;
    private final Knowledge knowledge;

    /** @param diagnoser what a diagnosis knows; its base is the knowledge of the figures as well */
    public Tried(Lesson.Experiment experiment, Diagnoser diagnoser) {
        this.experiment = experiment;
        this.diagnoser = diagnoser;
        this.knowledge = diagnoser.knowledge().base();
    }

    /** Which way a figure goes. */
    public enum Way {
        /** It gets larger. */
        MORE,
        /** It gets smaller. */
        LESS,
        /** It stays as it is. */
        SAME
    }

    /**
     * What comes out.
     *
     * @param figures for an experiment with figures
     * @param causes for one with causes: the first three
     */
    public record Outcome(List<OneFigure.Result> figures, List<RankedCause> causes) {}

    /** The answers with this one to the question that is varied, as it is typed. */
    public Answers answers(String typed) {
        return NumberExercise.Typed.with(typed(experiment.answers(), knowledge), experiment.vary(), typed, knowledge);
    }

    /** The figure that shows that a belief is wrong. */
    public static OneFigure.Result of(Lesson.Shown shown, Knowledge knowledge) {
        return InUnits.of(OneFigure.named(shown.figure(), knowledge), typed(shown.answers(), knowledge));
    }

    private static Answers typed(Map<String, String> answers, Knowledge knowledge) {
        Answers all = Answers.NONE;
        for (var e : answers.entrySet()) {
            all = NumberExercise.Typed.with(all, e.getKey(), e.getValue(), knowledge);
        }
        return all;
    }

    /**
     * What comes out with these answers.
     *
     * @throws BadAnswer when they cannot be: then its sentence says what the most would be
     */
    public Outcome of(Answers answers) {
        if (experiment.ofCauses()) {
            return new Outcome(
                    List.of(),
                    diagnoser.diagnose(answers).ranked().stream().limit(CAUSES).toList());
        }
        List<OneFigure.Result> figures = new ArrayList<>();
        for (String f : experiment.figures()) {
            figures.add(InUnits.of(OneFigure.named(f, knowledge), answers));
        }
        return new Outcome(List.copyOf(figures), List.of());
    }

    /** Which way the first figure goes from the first answer to the second; none for causes. */
    public Optional<Way> way() {
        if (experiment.ofCauses()) {
            return Optional.empty();
        }
        double a = first(experiment.first());
        double b = first(experiment.then());
        double least = knowledge.guidelineSi("lesson-same-within") * Math.max(Math.abs(a), Math.abs(b));
        return Optional.of(Math.abs(a - b) <= least ? Way.SAME : b > a ? Way.MORE : Way.LESS);
    }

    private double first(String typed) {
        return of(answers(typed)).figures().get(0).value().si().typical();
    }
}
