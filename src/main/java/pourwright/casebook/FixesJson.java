package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Wording;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.remedy.Change;
import pourwright.remedy.Fix;
import pourwright.remedy.Fixes;

/** The smallest changes as parts of the JSON object of a plan. */
public final class FixesJson {
    private FixesJson() {}

    /** Adds what a search found to the object of its plan. */
    public static void into(ObjectNode plan, Fixes fixes, Knowledge knowledge) {
        ArrayNode all = plan.putArray("fixes");
        fixes.fixes().forEach(f -> all.add(fix(f, fixes.before(), knowledge)));
        ObjectNode search = plan.putObject("fix-search");
        search.put("goal", fixes.goal().name().toLowerCase(Locale.ROOT));
        search.put("works", fixes.works());
        search.put("changes", fixes.remedies());
        search.put("tried", fixes.tried());
        search.put("whole", fixes.whole());
        ResultJson.texts(
                search, "stuck", fixes.stuck().stream().map(Finding::id).toList());
    }

    private static ObjectNode fix(Fix fix, Consultation before, Knowledge knowledge) {
        ObjectNode out = Json.object();
        out.put("works", fix.works());
        out.put("cost", fix.cost());
        ArrayNode changes = out.putArray("changes");
        fix.changes().forEach(c -> changes.add(change(c)));
        ObjectNode answers = out.putObject("answers");
        fix.answers().forEach((id, typed) -> {
            if (typed == null) {
                answers.putNull(id);
            } else {
                answers.put(id, typed);
            }
        });
        out.put("verdict", fix.after().verdict().word());
        ResultJson.texts(
                out, "gone", fix.difference().gone().stream().map(Finding::id).toList());
        ResultJson.texts(
                out, "fresh", fix.difference().fresh().stream().map(Finding::id).toList());
        ObjectNode figures = out.putObject("figures");
        Wording old = new Wording(knowledge, before.answers(), before.figures());
        Wording now = new Wording(knowledge, fix.after().answers(), fix.after().figures());
        for (String id : fix.figures()) {
            ObjectNode both = figures.putObject(id);
            before.figure(id).ifPresent(v -> both.set("old", ResultJson.quantity(v, old)));
            fix.after().figure(id).ifPresent(v -> both.set("new", ResultJson.quantity(v, now)));
        }
        return out;
    }

    private static ObjectNode change(Change c) {
        ObjectNode out = Json.object();
        out.put("id", c.remedy().id());
        out.put("say", c.say().replace('\u00a0', ' '));
        out.put("answer", c.answer());
        out.put("to", c.typed());
        out.put("cost", c.remedy().cost());
        out.put("source", c.remedy().source());
        return out;
    }
}
