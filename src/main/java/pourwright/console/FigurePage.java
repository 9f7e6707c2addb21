package pourwright.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pourwright.advice.OneFigure;
import pourwright.advice.PlanFigures;
import pourwright.advice.Wording;
import pourwright.figures.FigureBook;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;

/** A figure on its own as lines of {@code label: value}, and the list of all figures by what they answer. */
public final class FigurePage {
    private final Knowledge knowledge;
    private final Explained explained;
    private final int width;

    public FigurePage(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.explained = new Explained(knowledge, width);
        this.width = width;
    }

    /** The figure: its value first, then what it is and how far to trust it. */
    public List<String> lines(OneFigure.Result r) {
        FigureValue v = r.value();
        FigureDef d = r.definition();
        List<String> out = new ArrayList<>();
        add(out, v.id() + " = ", r.wording().show(v));
        String caveat = v.caveat();
        if (caveat != null) {
            add(out, "careful: ", caveat);
        }
        add(out, "answers: ", d.asks());
        range(out, v, r.wording());
        add(out, "how: ", d.words());
        if (!d.valid().isEmpty()) {
            add(out, "holds for: ", d.valid());
        }
        add(out, "source: ", d.sources().stream().map(explained::source).collect(Collectors.joining("; ")));
        if (!v.strongest().isEmpty()) {
            add(out, "depends most on: ", named(v.strongest()));
        }
        if (!r.assumed().isEmpty()) {
            add(out, "assumed: ", r.assumed().stream().map(this::named).collect(Collectors.joining(", ")));
        }
        return out;
    }

    private void range(List<String> out, FigureValue v, Wording wording) {
        if (v.si().exact()) {
            add(out, "range: ", "none, since every answer is one exact value");
            return;
        }
        add(out, "low: ", wording.end(v, v.si().low()));
        add(out, "typical: ", wording.end(v, v.si().typical()));
        add(out, "high: ", wording.end(v, v.si().high()));
    }

    /** A range out of three guidelines is called by its middle one, with what that is for. */
    private String named(String input) {
        String[] parts = input.split(",");
        if (parts.length < 3) {
            return input;
        }
        Guideline g = knowledge.guidelines().get(parts[1]);
        return g == null ? parts[1] : parts[1] + " (" + g.note().replaceAll("\\.$", "") + ")";
    }

    /** All figures by topic, each with the question it answers. */
    public List<String> all() {
        List<String> out = new ArrayList<>();
        topics().forEach((topic, defs) -> {
            if (!out.isEmpty()) {
                out.add("");
            }
            out.addAll(Wrap.text(topic, width, "About ", "  "));
            defs.forEach(d -> out.addAll(Wrap.text(d.asks(), width, "  " + d.id() + ": ", "      ")));
        });
        out.add("");
        out.addAll(Wrap.text("\"pourwright figure NAME\" asks for what it needs and computes it.", width, "", "  "));
        return out;
    }

    /** The figures a person can ask for, by topic. */
    public static Map<String, List<FigureDef>> topics() {
        Map<String, List<FigureDef>> topics = new LinkedHashMap<>();
        FigureBook.topics()
                .forEach((topic, defs) -> topics.put(
                        topic,
                        defs.stream()
                                .filter(d -> !d.valid().startsWith("used inside"))
                                .toList()));
        topics.put("the timetable", PlanFigures.all());
        return topics;
    }

    private void add(List<String> out, String label, String text) {
        out.addAll(Wrap.text(text, width, label, "  "));
    }
}
