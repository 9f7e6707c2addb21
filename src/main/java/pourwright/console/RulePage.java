package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.advice.Consultation;
import pourwright.advice.Nearest;
import pourwright.advice.Wording;
import pourwright.ask.RuleProse;
import pourwright.casebook.RuleCases;
import pourwright.facts.Basis;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.RuleText;

/** A rule as prose: what it says, why, from where, when it speaks, what shows it, and whose numbers it goes by. */
public final class RulePage {
    private static final int MOST_MISSES = 2;

    private final Knowledge knowledge;
    private final int width;

    public RulePage(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /** The rule that was typed, or what comes near it. */
    public List<String> lines(String typed, Consultation plan) {
        if (typed.isBlank()) {
            return wrap("Say which rule: \"rule cup-too-small\". \"rules\" lists their ids.", "", "");
        }
        String id = typed.strip().substring(typed.strip().lastIndexOf('/') + 1);
        Optional<RuleCard> card = RuleBook.card(id);
        if (card.isPresent()) {
            return lines(card.get(), plan);
        }
        return wrap(unknown(id), "", "");
    }

    /** What to say where no rule has that id. */
    public static String unknown(String id) {
        Map<String, String> names =
                RuleBook.allCards().collect(Collectors.toMap(RuleCard::id, RuleCard::says, (a, b) -> a));
        List<String> near = Nearest.of(id, names);
        return "No rule is called \"" + Clean.quoted(id) + "\"."
                + (near.isEmpty() ? "" : " Perhaps " + String.join(" or ", near) + ".")
                + " \"pourwright rules\" lists all.";
    }

    private List<String> lines(RuleCard card, Consultation plan) {
        RuleText text = RuleText.of(card);
        RuleProse prose = new RuleProse(knowledge, Map.of());
        List<String> out = new ArrayList<>(wrap(card.says() + ". (" + card.folder() + "/" + card.id() + ")", "", ""));
        out.addAll(wrap(card.because(), "  because: ", "    "));
        prose.conditions(text).forEach(c -> out.addAll(wrap(c + ".", "  when ", "    ")));
        prose.conclusions(text).forEach(c -> out.addAll(wrap(c, "  then ", "    ")));
        for (String g : prose.guidelines(text)) {
            out.addAll(wrap(guideline(knowledge.guidelines().get(g)), "  " + g + ": ", "    "));
        }
        if (plan != null) {
            Wording wording = new Wording(knowledge, plan.answers(), plan.figures());
            prose.figures(text)
                    .forEach(f -> plan.figure(f)
                            .ifPresent(v -> out.addAll(
                                    wrap(wording.show(v) + ", " + from(v) + ".", "  here " + f + ": ", "    "))));
        }
        cases(out, RuleCases.of(card));
        Explained explained = new Explained(knowledge, width);
        card.sources().forEach(s -> out.addAll(wrap(explained.source(s), "  source: ", "    ")));
        return out;
    }

    private String guideline(Guideline g) {
        String owner = g.owner().equals("workshop")
                ? "set by your workshop's guidelines.json"
                : "set by the shipped guidelines";
        return RuleProse.shown(g) + ", " + owner + " ("
                + new Explained(knowledge, width).source(g.source()) + ")."
                + (g.safety() ? " It guards safety: a workshop may tighten it, never loosen it." : "") + " " + g.note();
    }

    /** Who set a value. */
    public static String from(FigureValue v) {
        Basis basis = v.basis();
        String input = v.defined().isPresent() && !v.dependsOnMost().isEmpty()
                ? "and depends most on " + v.dependsOnMost() + ", "
                : "";
        String computed = v.defined().isPresent() ? "computed " : "";
        return computed
                + input
                + switch (basis) {
                    case TYPED -> "as you said";
                    case DATA_SHEET -> "from your workshop's data sheet";
                    case CLASS -> "from the class";
                    case ASSUMED -> "a usual value";
                };
    }

    private void cases(List<String> out, RuleCases cases) {
        cases.fires().stream().limit(1).forEach(a -> out.addAll(wrap(answers(a), "  it speaks with: ", "    ")));
        cases.misses().stream()
                .limit(MOST_MISSES)
                .forEach(m -> out.addAll(wrap(m.why() + ".", "  it is silent where ", "    ")));
    }

    private static String answers(Map<String, String> answers) {
        return answers.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining("; "));
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
