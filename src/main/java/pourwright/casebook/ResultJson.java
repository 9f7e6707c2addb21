package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.Map;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Step;
import pourwright.advice.Wording;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.figures.Money;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** A consultation or a figure as one JSON object. Its shape is fixed: other programs depend on it. */
public final class ResultJson {
    /** Raised when a part changes its name or meaning; new parts do not raise it. */
    private static final int FORMAT = 1;

    private static final char JOIN = '\u00a0';

    private final Knowledge knowledge;

    public ResultJson(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** An empty result that says in which form it is. */
    static ObjectNode result() {
        return Json.object().put("format", FORMAT);
    }

    /** The whole of a consultation. */
    public ObjectNode of(Consultation c) {
        ObjectNode out = result();
        out.put("verdict", c.verdict().word());
        ArrayNode findings = out.putArray("findings");
        c.findings().forEach(f -> findings.add(finding(f)));
        out.set("figures", figures(c.figures(), c.answers()));
        ArrayNode timetable = out.putArray("timetable");
        c.timetable().forEach(s -> timetable.add(step(s)));
        texts(out, "methods", c.methods());
        texts(out, "rules-fired", c.rulesFired());
        texts(out, "assumed", c.assumed());
        texts(out, "unasked", c.unasked());
        return out;
    }

    /** Figures by id. */
    ObjectNode figures(Map<String, FigureValue> all, Answers answers) {
        Wording wording = new Wording(knowledge, answers, all);
        ObjectNode figures = Json.object();
        all.forEach((id, v) -> figures.set(id, quantity(v, wording)));
        return figures;
    }

    /** One figure on its own, with its formula, sources and what it depends on most. */
    public ObjectNode figure(FigureValue v, Wording wording, Collection<String> assumed) {
        ObjectNode out = result();
        ObjectNode q = quantity(v, wording);
        FigureDef def = v.defined().orElse(null);
        if (def != null) {
            q.put("formula", def.words());
            texts(q, "sources", def.sources());
        }
        q.put("depends-on-most", v.strongest());
        out.putObject("figures").set(v.id(), q);
        texts(out, "assumed", assumed);
        return out;
    }

    /** What went wrong, in the shape programs expect. */
    public static ObjectNode error(BadAnswer e) {
        return error(e.field(), e.getMessage());
    }

    /** What went wrong, in the shape programs expect. */
    public static ObjectNode error(String field, String message) {
        ObjectNode out = Json.object();
        out.putObject("error").put("field", field).put("message", plain(message));
        return out;
    }

    static ObjectNode finding(Finding f) {
        ObjectNode out = Json.object();
        out.put("id", f.id());
        out.put("topic", f.topic());
        out.put("strength", f.strength().word());
        out.put("say", plain(f.say()));
        out.put("because", plain(f.because()));
        out.put("rule", f.rule().id());
        texts(out, "sources", f.rule().sources());
        texts(out, "answers", f.answers());
        texts(out, "figures", f.figures());
        return out;
    }

    static ObjectNode quantity(FigureValue v, Wording wording) {
        ObjectNode q = quantity(v.si(), v.dimension(), wording.show(v));
        if (v.caveat() == null) {
            q.put("valid", true);
        } else {
            q.put("valid", plain(v.caveat()));
        }
        if (Money.is(v.id())) {
            wording.currency().ifPresent(w -> q.put("currency", w));
        }
        if (v.ownRuns() > 0) {
            q.put("own-runs", v.ownRuns());
            number(q, "own-factor", v.ownFactor());
        }
        return q;
    }

    private static ObjectNode step(Step s) {
        ObjectNode out = Json.object();
        out.set("at", quantity(s.atS(), Dimension.TIME, clock(s.atS().typical())));
        out.set("lasts", quantity(s.lastsS(), Dimension.TIME, clock(s.lastsS().typical())));
        out.put("step", plain(s.say()));
        out.put("watch-for", plain(s.watch()));
        return out;
    }

    private static String clock(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "never";
        }
        return seconds < 0 ? "-" + Show.time(-seconds) : Show.time(seconds);
    }

    static ObjectNode quantity(Estimate e, Dimension d, String shown) {
        ObjectNode q = Json.object();
        number(q, "value", e.typical());
        number(q, "low", e.low());
        number(q, "high", e.high());
        q.put("unit", d.siUnit());
        q.put("shown", plain(shown));
        return q;
    }

    /** A quantity known exactly, SI, in the unit that suits it. */
    static ObjectNode exactly(double si, Dimension d) {
        return quantity(Estimate.exactly(si), d, Show.quantity(si, Show.bestUnit(si, d), d));
    }

    /** A value that is never reached has no number: JSON knows no infinity. */
    static void number(ObjectNode q, String name, double value) {
        if (Double.isInfinite(value)) {
            q.putNull(name);
        } else {
            q.put(name, value);
        }
    }

    static void texts(ObjectNode out, String name, Collection<String> all) {
        ArrayNode array = out.putArray(name);
        all.forEach(array::add);
    }

    private static String plain(String text) {
        return text.replace(JOIN, ' ');
    }
}
