package pourwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.FigureBook;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.figures.Missing;
import pourwright.figures.Scope;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** One figure on its own, from just the answers it needs; what is absent counts as none and is said. */
public final class OneFigure {
    private static final int SHOWN = 40;

    private final FigureDef def;
    private final Knowledge knowledge;
    private final boolean ofPlan;

    private OneFigure(FigureDef def, Knowledge knowledge, boolean ofPlan) {
        this.def = def;
        this.knowledge = knowledge;
        this.ofPlan = ofPlan;
    }

    /**
     * The figure of that name.
     *
     * @throws BadAnswer when there is none, with the names it may be a slip of
     */
    public static OneFigure named(String name, Knowledge knowledge) {
        Optional<FigureDef> own = FigureBook.get(name);
        if (own.isPresent()) {
            return new OneFigure(own.get(), knowledge, false);
        }
        return new OneFigure(PlanFigures.get(name).orElseThrow(() -> none(name)), knowledge, true);
    }

    private static BadAnswer none(String name) {
        Map<String, String> names = new TreeMap<>();
        FigureBook.all().forEach(d -> names.put(d.id(), d.asks()));
        PlanFigures.all().forEach(d -> names.put(d.id(), d.asks()));
        List<String> near = Nearest.of(name, names);
        return new BadAnswer(
                "figure",
                "There is no figure \"" + (name.length() > SHOWN ? name.substring(0, SHOWN) + "…" : name) + "\"."
                        + (near.isEmpty() ? "" : " Did you mean " + String.join(" or ", near) + "?")
                        + " \"pourwright figure\" lists them by what they answer.");
    }

    /** What it is. */
    public FigureDef definition() {
        return def;
    }

    /** The first answer that is lacking and was not asked for yet; empty when the figure can be had, or never will be. */
    public Optional<Missing.Wanted> missing(Answers answers) {
        if (ofPlan) {
            return PlanFigures.missing(def, answers, knowledge).map(q -> new Missing.Wanted(q, List.of(def)));
        }
        return new Scope(answers, knowledge, false).firstMissing(def);
    }

    /**
     * The figure with the words to show it.
     *
     * @param definition what it is
     * @param value the figure
     * @param wording shows values in people's units
     * @param assumed inputs that nobody gave and that counted as none or as usual
     */
    public record Result(FigureDef definition, FigureValue value, Wording wording, List<String> assumed) {}

    /**
     * Computes it.
     *
     * @param in the unit to show it in, or null for the person's own or the usual one
     * @throws BadAnswer when an input is missing, the unit is none of this kind, or the answer lies outside its validity
     */
    public Result of(Answers answers, String in) {
        String unit = in == null ? null : OwnUnit.wanted(in, def.dimension());
        List<String> assumed = new ArrayList<>();
        FigureValue value;
        if (ofPlan) {
            PlanFigures.Planned planned = PlanFigures.compute(def, answers, knowledge)
                    .orElseThrow(() -> lacking(answers, missing(answers).map(Missing.Wanted::question)));
            value = planned.value();
            assumed.addAll(planned.assumed());
        } else {
            Scope scope = new Scope(answers, knowledge, false);
            value = scope.get(def.id()).orElseThrow(() -> refused(scope, answers));
            assumed.addAll(scope.assumed());
            assumed.addAll(scope.neutral());
        }
        Map<String, FigureValue> shown = new TreeMap<>();
        shown.put(value.id(), value);
        Optional<String> own = unit == null ? OwnUnit.of(value, answers) : Optional.of(unit);
        Wording wording = new Wording(knowledge, answers, shown);
        return new Result(def, value, own.map(u -> wording.in(value.id(), u)).orElse(wording), assumed);
    }

    private BadAnswer refused(Scope scope, Answers answers) {
        if (scope.failures().containsKey("absolute-pressure")) {
            return Impossible.reading(scope, answers, knowledge);
        }
        Optional<Missing.Wanted> missing = scope.firstMissing(def);
        if (missing.isEmpty() && !scope.failures().isEmpty()) {
            String own = scope.failures().get(def.id());
            return new BadAnswer(
                    def.id(), own == null ? scope.failures().values().iterator().next() : own);
        }
        return lacking(answers, missing.map(Missing.Wanted::question));
    }

    private static String example(Question q) {
        if (!q.choices().isEmpty()) {
            return ", one of " + q.choices().stream().map(Question.Choice::id).collect(Collectors.joining(", ")) + ".";
        }
        return q.example() == null ? "." : ", for example " + q.id() + "=\"" + q.example() + "\".";
    }

    private BadAnswer lacking(Answers answers, Optional<String> missing) {
        if (missing.isPresent()) {
            return new BadAnswer(
                    missing.get(),
                    "\"" + def.id() + "\" also needs '" + missing.get() + "'"
                            + knowledge
                                    .question(missing.get())
                                    .map(OneFigure::example)
                                    .orElse(".")
                            + " \"pourwright figure " + def.id() + "\" asks for it.");
        }
        List<String> unknown = answers.all().entrySet().stream()
                .filter(e -> e.getValue().answer() instanceof Answer.DontKnow)
                .map(Map.Entry::getKey)
                .toList();
        if (!unknown.isEmpty()) {
            return new BadAnswer(
                    unknown.get(0),
                    "\"" + def.id() + "\" cannot be had without '" + unknown.get(0) + "'. "
                            + knowledge.question(unknown.get(0)).orElseThrow().help());
        }
        return new BadAnswer(
                def.id(),
                "These answers do not fit \"" + def.id() + "\""
                        + (def.valid().isEmpty() ? "." : ": it holds for " + def.valid() + "."));
    }
}
