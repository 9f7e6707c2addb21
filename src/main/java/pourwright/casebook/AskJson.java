package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.advice.Finding;
import pourwright.advice.Wording;
import pourwright.ask.Deciding;
import pourwright.ask.RuleProse;
import pourwright.ask.Setting;
import pourwright.ask.Swing;
import pourwright.ask.WhyNotAnswer;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleText;
import pourwright.units.Dimension;

/** Questions to a plan, answered as parts of one JSON object. */
public final class AskJson {
    private final Knowledge knowledge;
    private final ResultJson parts;
    private final Consultation c;
    private final ObjectNode out;

    /** Begins the object for questions to this plan. */
    public AskJson(Consultation c, Knowledge knowledge) {
        this.c = c;
        this.knowledge = knowledge;
        this.parts = new ResultJson(knowledge);
        this.out = ResultJson.result();
        out.put("verdict", c.verdict().word());
    }

    /** The object. */
    public ObjectNode whole() {
        return out;
    }

    /** Where a finding comes from, down to figures, answers and sources. */
    public void how(Finding f) {
        ObjectNode how = ResultJson.finding(f);
        how.put("rule-says", f.rule().says());
        ObjectNode figures = how.putObject("figures");
        for (String id : f.figures()) {
            Wording wording = new Wording(knowledge, c.answers(), c.figures());
            c.figure(id).ifPresent(v -> figures.set(id, tree(v, wording, Set.of())));
        }
        ObjectNode answers = how.putObject("answers");
        ObjectNode given = AnswersJson.write(c.answers());
        for (String id : f.answers()) {
            if (given.has(id)) {
                answers.set(id, given.get(id));
            } else {
                answers.putNull(id);
            }
        }
        array("how").add(how);
    }

    /** A figure with all that it was computed from, down to what was answered; none stands below itself. */
    private ObjectNode tree(FigureValue v, Wording wording, Set<String> above) {
        ObjectNode one =
                (ObjectNode) parts.figure(v, wording, List.of()).path("figures").path(v.id());
        ResultJson.texts(one, "inputs", v.inputs());
        ResultJson.texts(one, "answers", v.answers());
        Set<String> path = new HashSet<>(above);
        path.add(v.id());
        ObjectNode from = Json.object();
        for (String input : v.inputs()) {
            String id = input.substring(input.indexOf(':') + 1);
            if (!path.contains(id)) {
                c.figure(id).ifPresent(x -> from.set(id, tree(x, wording, path)));
            }
        }
        if (!from.isEmpty()) {
            one.set("from", from);
        }
        return one;
    }

    /** What the answer to a question would settle. */
    public void why(Deciding d) {
        ObjectNode why = array("why").addObject();
        why.put("question", d.question().id());
        ResultJson.texts(why, "because", d.reasons());
        ArrayNode trials = why.putArray("would-differ");
        d.trials().forEach(t -> trials.add(trial(t)));
    }

    /** Why not something, and when it would be. */
    public void whyNot(WhyNotAnswer a) {
        ObjectNode not = array("why-not").addObject();
        not.put("wanted", a.wanted().id());
        not.put("kind", a.wanted().kind().word());
        not.put("already", a.already());
        if (a.rule() != null) {
            not.put("rule", a.rule().card().id());
            List<String> conditions = new RuleProse(knowledge, Map.of()).conditions(a.rule());
            ResultJson.texts(
                    not, "not-met", a.lacking().stream().map(conditions::get).toList());
        }
        ResultJson.texts(
                not,
                "against",
                a.against().stream().map(x -> x.rule().id()).distinct().toList());
        ArrayNode ways = not.putArray("would-be-advised-if");
        a.ways().forEach(w -> {
            ObjectNode way = ways.addObject();
            answers(way, w.changes());
            way.put("grade", w.grade().name().toLowerCase(java.util.Locale.ROOT));
            difference(way, w.difference());
        });
        not.put("tried", a.tried());
        not.put("proved", a.proved());
        not.put("whole", a.whole());
        not.put("note", "An explanation, not a recommendation.");
    }

    /** Which uncertain answers matter, the most first. */
    public void sensitive(List<Swing> swings) {
        ArrayNode all = out.putArray("sensitive");
        for (Swing s : swings) {
            ObjectNode one = all.addObject();
            one.put("question", s.question());
            one.put("uncertain", s.why().words());
            one.put("turns-verdict", s.turnsVerdict());
            one.set("moves-margin", ResultJson.exactly(s.marginS(), Dimension.TIME));
            one.put("share-of-working-time", s.marginShare());
            one.put(
                    "how-to-find-it",
                    knowledge.question(s.question()).orElseThrow().help());
            ArrayNode trials = one.putArray("trials");
            s.trials().forEach(t -> trials.add(trial(t)));
        }
    }

    /** What would differ with other answers. */
    public void whatIf(Difference d) {
        ObjectNode what = out.putObject("what-if");
        difference(what, d);
        ObjectNode figures = what.putObject("figures");
        Wording old = new Wording(knowledge, d.before().answers(), d.before().figures());
        Wording now = new Wording(knowledge, d.after().answers(), d.after().figures());
        for (String id : d.figures()) {
            ObjectNode both = figures.putObject(id);
            d.before().figure(id).ifPresent(v -> both.set("old", ResultJson.quantity(v, old)));
            d.after().figure(id).ifPresent(v -> both.set("new", ResultJson.quantity(v, now)));
        }
        ArrayNode steps = what.putArray("timetable");
        for (Difference.Moved m : d.steps()) {
            ObjectNode step = steps.addObject().put("step", m.id());
            Optional.ofNullable(m.before())
                    .ifPresent(s -> ResultJson.number(step, "old-s", s.atS().typical()));
            Optional.ofNullable(m.after())
                    .ifPresent(s -> ResultJson.number(step, "new-s", s.atS().typical()));
        }
    }

    private ArrayNode array(String name) {
        return out.has(name) ? (ArrayNode) out.get(name) : out.putArray(name);
    }

    private static void answers(ObjectNode into, List<Setting> settings) {
        ObjectNode answers = into.putObject("answers");
        settings.forEach(s -> answers.put(s.question(), s.typed()));
    }

    private static ObjectNode trial(Swing.Trial t) {
        ObjectNode one = Json.object();
        answers(one, List.of(t.setting()));
        difference(one, t.difference());
        t.difference()
                .after()
                .figure("time-margin")
                .ifPresent(v -> ResultJson.number(one, "time-margin-s", v.si().typical()));
        return one;
    }

    private static void difference(ObjectNode into, Difference d) {
        into.put("verdict", d.after().verdict().word());
        ResultJson.texts(into, "fresh", d.fresh().stream().map(Finding::id).toList());
        ResultJson.texts(into, "gone", d.gone().stream().map(Finding::id).toList());
    }

    /** A rule as prose, for a program. */
    public static ObjectNode rule(RuleText text, Knowledge knowledge) {
        RuleProse prose = new RuleProse(knowledge, Map.of());
        ObjectNode out = ResultJson.result();
        out.put("id", text.card().id()).put("folder", text.card().folder());
        out.put("topic", text.card().topic()).put("says", text.card().says());
        out.put("because", text.card().because());
        ResultJson.texts(out, "sources", text.card().sources());
        ResultJson.texts(out, "when", prose.conditions(text));
        ResultJson.texts(out, "then", prose.conclusions(text));
        out.put("written", text.written());
        ObjectNode guidelines = out.putObject("guidelines");
        prose.guidelines(text).forEach(id -> {
            var g = knowledge.guidelines().get(id);
            guidelines
                    .putObject(id)
                    .put("value", g.value())
                    .put("unit", g.unit())
                    .put("set-by", g.owner())
                    .put("source", g.source())
                    .put("safety", g.safety());
        });
        RuleCases cases = RuleCases.of(text.card());
        ArrayNode fires = out.putArray("fires");
        cases.fires().forEach(a -> a.forEach(fires.addObject()::put));
        ArrayNode misses = out.putArray("near-misses");
        cases.misses().forEach(m -> {
            ObjectNode one = misses.addObject().put("why", m.why());
            m.answers().forEach(one.putObject("answers")::put);
        });
        return out;
    }
}
