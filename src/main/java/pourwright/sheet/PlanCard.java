package pourwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.advice.Verdict;
import pourwright.advice.Wording;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.Verb;

/** The card of a job that is repeated: masses, cup, depth, times, what must and must not be, hazards. */
public final class PlanCard {
    private static final int MOST = 3;

    private PlanCard() {}

    /**
     * The card of a plan.
     *
     * @param title what to call the job; blank for liquid and job
     * @param version what made it
     */
    public static Card of(Consultation c, Knowledge knowledge, String title, String version) {
        Sheet s = SheetMaker.of(c, knowledge, title, Optional.empty(), version);
        boolean stop = c.verdict() == Verdict.STOP;
        List<Card.Group> groups = new ArrayList<>();
        groups.add(new Card.Group(
                stop ? "STOP: do not do it like this" : "Change this first",
                c.findings().stream()
                        .filter(f -> f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)
                        .map(f -> Card.Line.of(f.say()))
                        .toList()));
        List<Finding> musts = musts(c);
        List<Finding> nots = nots(c);
        if (!stop) {
            groups.add(new Card.Group("On the scale", weighings(s)));
            groups.add(Card.Group.of("Cup and vacuum", cup(s, c, knowledge)));
            groups.add(new Card.Group("Times", times(s, c, knowledge)));
            groups.add(new Card.Group("Do", lines(musts)));
            groups.add(new Card.Group("Do not plan on", lines(nots)));
        }
        int left = stop ? 0 : Math.max(0, musts.size() - MOST) + Math.max(0, nots.size() - MOST);
        return new Card(
                s.title(),
                stop
                        ? ""
                        : "For this job done again as it was planned. Another amount, liquid or kit wants a plan of its own.",
                groups,
                s.cautions().stream().map(x -> x.hazard() + ". " + x.say()).toList(),
                List.of(
                        "The safety data sheet decides.",
                        left == 0
                                ? ""
                                : "Not on this card: " + left + " further pieces of advice. The plan itself has them.",
                        s.closing(),
                        s.version()));
    }

    /** What to do; what a mould wants, among it. */
    private static List<Finding> musts(Consultation c) {
        return c.findings().stream()
                .filter(f -> f.strength() == Strength.DO && !f.isCaution())
                .toList();
    }

    /** What was ruled out. */
    private static List<Finding> nots(Consultation c) {
        List<String> refused = c.conclusions().stream()
                .filter(x -> x.verb() == Verb.REFUSE)
                .map(x -> x.rule().id())
                .toList();
        return c.findings().stream().filter(f -> refused.contains(f.id())).toList();
    }

    private static List<Card.Line> lines(List<Finding> findings) {
        return findings.stream().limit(MOST).map(f -> parted("", f.say())).toList();
    }

    /** The first sentence in large type, what follows it in small. */
    private static Card.Line parted(String before, String say) {
        String[] two = say.split("(?<=[.!?])\\s+", 2);
        return new Card.Line(before + two[0], two.length > 1 ? two[1] : "");
    }

    private static List<Card.Line> weighings(Sheet s) {
        List<Card.Line> out = new ArrayList<>();
        for (int i = 0; i < s.weighings().size(); i++) {
            boolean last = i == s.weighings().size() - 1;
            out.add(new Card.Line(s.weighings().get(i), last ? s.scaleNote() : ""));
        }
        if (out.isEmpty() && !s.scaleNote().isEmpty()) {
            out.add(Card.Line.of(s.scaleNote()));
        }
        return out;
    }

    private static List<String> cup(Sheet s, Consultation c, Knowledge knowledge) {
        List<String> out = new ArrayList<>();
        Wording wording = new Wording(knowledge, c.answers(), c.figures());
        boolean froths = s.facts().stream().anyMatch(f -> f.label().equals("Froth wants"));
        if (froths) {
            String has = c.figure("cup-volume")
                    .map(v -> "Cup: " + wording.show(v) + ". ")
                    .orElse("");
            out.add(has
                    + c.figure("froth-volume")
                            .map(v -> "The froth wants " + wording.show(v) + ".")
                            .orElse(""));
        }
        if (!s.gauge().isEmpty()) {
            out.add("Pull to " + s.gauge() + ".");
        }
        return out;
    }

    private static List<Card.Line> times(Sheet s, Consultation c, Knowledge knowledge) {
        List<Card.Line> out = new ArrayList<>();
        Wording wording = new Wording(knowledge, c.answers(), c.figures());
        String working = c.figure("working-time")
                .map(v -> "Working time " + wording.show(v))
                .orElse("");
        String by = c.figure("pour-by").map(v -> "pour by " + wording.show(v)).orElse("");
        if (!working.isEmpty() || !by.isEmpty()) {
            out.add(Card.Line.of(
                    (working.isEmpty() ? "P" + by.substring(1) : by.isEmpty() ? working : working + "; " + by) + "."));
        }
        // What comes before mixing begins is one line: on the wall hang the minutes that count.
        List<Sheet.Row> before =
                s.rows().stream().filter(r -> r.at().strip().startsWith("-")).toList();
        if (!before.isEmpty()) {
            out.add(new Card.Line(
                    "Begin " + before.get(0).at().strip().substring(1) + " before mixing.",
                    before.stream()
                            .map(r -> r.at().strip() + "\u00a0" + r.step())
                            .collect(Collectors.joining(" "))));
        }
        s.rows().stream()
                .filter(r -> !before.contains(r))
                .forEach(r -> out.add(parted(r.at().strip() + "  ", r.step())));
        return out;
    }
}
