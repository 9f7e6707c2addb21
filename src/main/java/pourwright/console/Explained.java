package pourwright.console;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Source;
import pourwright.units.Dimension;

/** The lines that explain: figures, answers and sources, the same on every page. */
final class Explained {
    /** Keys that name no work: their own words say all there is to say. */
    private static final Set<String> NO_WORK =
            Set.of("common-practice", "from-memory", "typical-data-sheet", "typical-supplier-note");

    private final Knowledge knowledge;
    private final int width;

    Explained(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /** A figure with its formula, validity and sources. */
    List<String> figure(FigureValue v, Wording wording, String label) {
        List<String> out = new ArrayList<>(wrapped(v.id() + " = " + wording.show(v), label, "    "));
        FigureDef def = v.defined().orElse(null);
        if (def != null) {
            out.addAll(wrapped(def.words(), "      how: ", "        "));
            if (!def.valid().isEmpty()) {
                out.addAll(wrapped(def.valid(), "      holds for: ", "        "));
            }
            out.addAll(wrapped(
                    def.sources().stream().map(this::source).collect(Collectors.joining("; ")),
                    "      source: ",
                    "        "));
        }
        if (v.ownRuns() > 0) {
            out.addAll(wrapped(
                    "multiplied by " + Wording.one(v.ownFactor(), Dimension.NUMBER) + ", as " + v.ownRuns()
                            + (v.ownRuns() == 1 ? " run" : " runs") + " of your own showed",
                    "      own: ",
                    "        "));
        }
        if (!v.dependsOnMost().isEmpty() && !v.dependsOnMost().contains(",")) {
            out.addAll(wrapped(v.dependsOnMost(), "      depends most on: ", "        "));
        }
        if (v.caveat() != null) {
            out.addAll(wrapped(v.caveat(), "      careful: ", "        "));
        }
        return out;
    }

    /** What was answered to a question, or what stood in. */
    String answer(String id, Answers answers, Collection<String> assumed) {
        Answers.Given given = answers.all().get(id);
        String said;
        if (given == null) {
            said = "not asked; " + (assumed.contains(id) ? "the class range or a usual value stood in" : "left open");
        } else if (given.answer() instanceof Answer.DontKnow) {
            said = "don't know";
        } else {
            said = Page.said(id, given.answer(), knowledge);
        }
        return id + " = " + said;
    }

    /** A source as one line. */
    String source(String key) {
        Source s = knowledge.sources().get(key);
        if (s == null || NO_WORK.contains(key)) {
            return key.replace('-', ' ');
        }
        String read = Boolean.FALSE.equals(s.read()) ? " (cited from memory)" : "";
        return Arrays.asList(
                                s.author() == null ? "" : s.author(),
                                s.title(),
                                s.year() == null ? "" : s.year(),
                                s.where() == null ? "" : s.where())
                        .stream()
                        .filter(p -> !p.isBlank())
                        .collect(Collectors.joining(", "))
                + read;
    }

    private List<String> wrapped(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
