package pourwright.console;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Nearest;
import pourwright.advice.Strength;
import pourwright.advice.Wording;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.remedy.Fix;
import pourwright.remedy.FixSearch;
import pourwright.remedy.Fixes;
import pourwright.remedy.Goal;

/** The smallest changes that make a plan work, as lines of text. */
public final class FixPage {
    private final Fixes fixes;
    private final Knowledge knowledge;
    private final int width;

    public FixPage(Fixes fixes, Knowledge knowledge, int width) {
        this.fixes = fixes;
        this.knowledge = knowledge;
        this.width = width;
    }

    /** The lines for what was typed after the word: nothing, or "without ID, ID". */
    static List<String> typed(String rest, Consultation c, Knowledge knowledge, int width) {
        Set<String> keep = new LinkedHashSet<>();
        if (!rest.isBlank()) {
            String ids = rest.strip().replaceFirst("^(?:without|keep)\\b", "");
            if (ids.equals(rest.strip())) {
                return Wrap.text(
                        "Say \"fix\", or \"fix without pump-speed\" to leave that answer as it is.", width, "", "");
            }
            for (String id : ids.strip().split("[\\s,]+")) {
                if (knowledge.question(id).isEmpty()) {
                    return Wrap.text(unknown(id, knowledge), width, "", "");
                }
                keep.add(id);
            }
        }
        return new FixPage(FixSearch.of(c, keep, knowledge), knowledge, width).lines();
    }

    private static String unknown(String id, Knowledge knowledge) {
        Map<String, String> asked = knowledge.questions().stream().collect(Collectors.toMap(q -> q.id(), q -> q.ask()));
        List<String> near = Nearest.of(id, asked);
        return "No answer is called \"" + Clean.quoted(id) + "\"."
                + (near.isEmpty() ? "" : " Perhaps " + String.join(" or ", near) + ".");
    }

    /** All of it. */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        if (fixes.goal() == Goal.NOTHING) {
            return wrap("The job works as you described it: there is nothing to change.", "", "");
        }
        out.addAll(wrap(headline(), "", ""));
        for (Fix fix : fixes.fixes()) {
            out.add("");
            fix(out, fix);
        }
        if (!fixes.works() && !fixes.stuck().isEmpty()) {
            out.add("");
            out.addAll(wrap("No change that was tried takes this away:", "", ""));
            fixes.stuck().forEach(f -> out.addAll(wrap(f.say(), "  - ", "    ")));
        }
        out.add("");
        out.addAll(wrap(searched(), "", ""));
        return out;
    }

    private String headline() {
        int n = fixes.fixes().size();
        String works = fixes.goal() == Goal.VACUUM ? "let the mix be degassed" : "make it work";
        String one = fixes.goal() == Goal.VACUUM ? "lets the mix be degassed" : "makes it work";
        if (fixes.works()) {
            return n == 1
                    ? "One way " + one + "."
                    : n + " ways " + works + ", the least costly first. Each is enough on its own.";
        }
        return "None of the changes that were tried " + one + "." + (n == 0 ? "" : " These help most.");
    }

    private String searched() {
        String sure = fixes.works()
                ? "each alone, then together where one was not enough"
                : fixes.whole()
                        ? "each alone and in pairs"
                        : "each alone, in many pairs, and the helpful ones together; the search ended at its limit";
        String tried = "Searched: " + fixes.remedies() + " changes that suit this job, " + sure + ". " + fixes.tried()
                + " plans were worked out for it.";
        return tried + " \"fix without pump-speed\" leaves that answer as it is.";
    }

    private void fix(List<String> out, Fix fix) {
        boolean first = true;
        for (var change : fix.changes()) {
            out.addAll(wrap(change.say(), first ? "* " : "  and: ", "    "));
            first = false;
        }
        String costs =
                fix.changes().stream().map(c -> c.remedy().whyCost()).distinct().collect(Collectors.joining(" "));
        out.addAll(wrap(costs, "    cost " + fix.cost() + ": ", "      "));
        Consultation before = fixes.before();
        Wording old = new Wording(knowledge, before.answers(), before.figures());
        Wording now = new Wording(knowledge, fix.after().answers(), fix.after().figures());
        for (String id : fix.figures()) {
            out.addAll(wrap(
                    shown(before, id, old) + ", then " + shown(fix.after(), id, now), "    " + id + ": ", "      "));
        }
        if (!fix.works()) {
            fix.after().findings().stream()
                    .filter(FixPage::hinders)
                    .forEach(f -> out.addAll(wrap(f.say(), "    still: ", "      ")));
        }
        fix.difference().fresh().stream()
                .filter(Finding::isCaution)
                .forEach(f -> out.addAll(wrap(f.say(), "    new caution: ", "      ")));
        out.addAll(wrap(typed(fix), "    to see all of it: what-if ", "      "));
    }

    private static boolean hinders(Finding f) {
        return f.strength() == Strength.STOP || f.strength() == Strength.CHANGE;
    }

    private static String typed(Fix fix) {
        return fix.answers().entrySet().stream()
                .map(e -> e.getKey() + "=" + (e.getValue() == null ? "don't know" : e.getValue()))
                .collect(Collectors.joining(" "));
    }

    private static String shown(Consultation c, String id, Wording wording) {
        Optional<FigureValue> v = c.figure(id);
        return v.isEmpty() ? "none" : wording.show(v.get());
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
