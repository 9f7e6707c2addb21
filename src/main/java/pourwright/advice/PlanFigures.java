package pourwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.facts.Answers;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;

/** Figures that come out of the timetable: they need a whole plan, and a plan needs little more than the liquid. */
public final class PlanFigures {
    private static final String VALID = "the timetable that \"pourwright plan\" lays out for the same answers";

    private static final List<FigureDef> ALL = List.of(
            FigureDef.ofPlan(
                    "time-margin",
                    "How much working time is left at the end?",
                    Dimension.TIME,
                    "working time - the minute at which the last step that needs it ends",
                    VALID),
            FigureDef.ofPlan(
                    "time-share",
                    "What share of the working time is used up?",
                    Dimension.FRACTION,
                    "the minute at which the last step ends / working time",
                    VALID),
            FigureDef.ofPlan(
                    "viscosity-at-pour",
                    "How thick will it be when I pour?",
                    Dimension.VISCOSITY,
                    "fresh viscosity × (1 - minute of the pour / gel time)^-n, n so that it doubles at the doubling share",
                    VALID));

    /** What the timetable rests on, in the order it is asked for. */
    private static final List<String> RESTS_ON = List.of("material", "pot-life", "viscosity");

    private PlanFigures() {}

    /** All definitions. */
    public static List<FigureDef> all() {
        return ALL;
    }

    static Optional<FigureDef> get(String id) {
        return ALL.stream().filter(d -> d.id().equals(id)).findFirst();
    }

    /** The answer that is lacking, if one is. */
    static Optional<String> missing(FigureDef def, Answers answers, Knowledge knowledge) {
        if (answers.get(RESTS_ON.get(0)).isPresent()
                && compute(def, answers, knowledge).isPresent()) {
            return Optional.empty();
        }
        return RESTS_ON.stream().filter(id -> !answers.has(id)).findFirst();
    }

    /** The figure with its definition, if the plan has it. */
    static Optional<Planned> compute(FigureDef def, Answers answers, Knowledge knowledge) {
        if (answers.get(RESTS_ON.get(0)).isEmpty()) {
            return Optional.empty();
        }
        Consultation plan = Advisor.consult(answers, knowledge);
        return plan.figure(def.id())
                .map(v -> new Planned(
                        new FigureValue(
                                v.id(),
                                v.dimension(),
                                v.si(),
                                v.answers(),
                                v.caveat(),
                                def,
                                v.inputs(),
                                () -> new FigureValue.Sensitivity(v.basis(), v.dependsOnMost())),
                        new ArrayList<>(plan.assumed())));
    }

    /**
     * A figure of a plan.
     *
     * @param value the figure
     * @param assumed questions whose class range or usual value stood in
     */
    record Planned(FigureValue value, List<String> assumed) {}
}
