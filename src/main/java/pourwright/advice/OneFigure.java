package pourwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.facts.Answers;
import pourwright.figures.FigureBook;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.figures.Scope;
import pourwright.knowledge.Knowledge;

/** One figure on its own, from just the answers it needs; what is absent counts as none and is said. */
public final class OneFigure {
    private static final int SHOWN = 40;

    private OneFigure() {}

    private static String shortened(String name) {
        return name.length() > SHOWN ? name.substring(0, SHOWN) + "…" : name;
    }

    /**
     * The figure with the words to show it.
     *
     * @param value the figure
     * @param wording shows values in people's units
     * @param assumed inputs that nobody gave and that counted as none or as usual
     */
    public record Result(FigureValue value, Wording wording, List<String> assumed) {}

    /**
     * Computes one figure.
     *
     * @throws BadAnswer when there is no such figure, an input is missing, or the answer lies outside its validity
     */
    public static Result of(String name, Answers answers, Knowledge knowledge) {
        FigureDef def = FigureBook.get(name)
                .orElseThrow(() -> new BadAnswer(
                        "figure",
                        "There is no figure \"" + shortened(name)
                                + "\". \"pourwright figure\" lists them by what they answer."));
        Scope scope = new Scope(answers, knowledge, false);
        Optional<FigureValue> value = scope.get(name);
        if (value.isEmpty()) {
            for (Map.Entry<String, String> failed : scope.failures().entrySet()) {
                if (failed.getKey().equals("absolute-pressure")) {
                    throw Impossible.reading(scope, answers, knowledge);
                }
            }
            if (!scope.failures().isEmpty()) {
                throw new BadAnswer(name, scope.failures().values().iterator().next());
            }
            String missing = scope.firstMissing(def);
            throw new BadAnswer(
                    missing,
                    "\"" + name + "\" also needs '" + missing + "'"
                            + knowledge
                                    .question(missing)
                                    .filter(q -> q.example() != null)
                                    .map(q -> ", for example " + missing + "=\"" + q.example() + "\".")
                                    .orElse("."));
        }
        Map<String, FigureValue> shown = new TreeMap<>();
        shown.put(name, value.get());
        List<String> assumed = new ArrayList<>(scope.assumed());
        assumed.addAll(scope.neutral());
        return new Result(value.get(), new Wording(knowledge, answers, shown), assumed);
    }
}
