package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.Evidence;
import pourwright.diagnosis.RankedCause;
import pourwright.diagnosis.Replan;
import pourwright.knowledge.Cause;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Json;

/** A diagnosis as one JSON object. Its shape is fixed: other programs depend on it. */
public final class DiagnosisJson {
    private static final int REPLANNED = 3;

    private final Diagnoser diagnoser;
    private final DiagnosticKnowledge k;
    private final ResultJson parts;

    public DiagnosisJson(Diagnoser diagnoser) {
        this.diagnoser = diagnoser;
        this.k = diagnoser.knowledge();
        this.parts = new ResultJson(k.base());
    }

    /** When another cause would come first: each set of observations was diagnosed anew. */
    public static void whyNot(ObjectNode out, Diagnosis.Wish wish) {
        ObjectNode one = out.withArray("why-not").addObject();
        one.put("cause", wish.cause());
        ArrayNode sets = one.putArray("would-come-first-if");
        wish.sets().forEach(set -> {
            ObjectNode answers = sets.addObject();
            set.forEach(o -> answers.put(o.question(), o.choice()));
        });
        one.put("tried", wish.tried());
    }

    /**
     * The whole of a diagnosis.
     *
     * @param words what a line of text was read as, question id to words; empty when there was none
     * @param notUnderstood what of that line was not understood
     */
    public ObjectNode of(Diagnosis d, Map<String, String> words, List<String> notUnderstood) {
        ObjectNode out = ResultJson.result();
        ArrayNode findings = out.putArray("findings");
        d.findings().forEach(f -> findings.add(ResultJson.finding(f)));
        ArrayNode causes = out.putArray("causes");
        for (int i = 0; i < d.ranked().size(); i++) {
            causes.add(cause(d.ranked().get(i), d, i < REPLANNED));
        }
        out.put("fits", d.fits());
        d.parting()
                .ifPresent(p -> out.putObject("parting")
                        .put("observation", p.question())
                        .put("for-first", p.forFirst())
                        .put("for-second", p.forSecond()));
        ArrayNode otherwise = out.putArray("otherwise");
        diagnoser
                .otherwise(d.answers())
                .forEach(o -> otherwise
                        .addObject()
                        .put("observation", o.question())
                        .put("answer", o.choice())
                        .put("cause", o.cause()));
        ResultJson.texts(out, "ruled-out", d.ruledOut());
        out.set("figures", parts.figures(d.figures(), d.answers()));
        if (!words.isEmpty()) {
            ObjectNode heard = out.putObject("heard");
            words.forEach((id, text) -> heard.putObject(id)
                    .put("words", text)
                    .put("answer", String.join(", ", d.answers().choices(id))));
        }
        if (!notUnderstood.isEmpty()) {
            ResultJson.texts(out, "not-understood", notUnderstood);
        }
        ResultJson.texts(out, "rules-fired", d.rulesFired());
        ResultJson.texts(out, "assumed", d.assumed());
        ResultJson.texts(out, "unasked", d.unasked());
        return out;
    }

    private ObjectNode cause(RankedCause c, Diagnosis d, boolean replanned) {
        ObjectNode out = Json.object();
        out.put("id", c.cause().id());
        out.put("name", c.cause().name());
        out.put("probability", c.probability());
        out.put("decibans", c.decibans());
        evidence(out.putArray("for"), c, true);
        evidence(out.putArray("against"), c, false);
        ResultJson.texts(out, "unknown", c.unknown());
        out.put("test", c.cause().test());
        out.put("repair", c.cause().repair());
        ArrayNode prevent = out.putArray("prevent");
        for (Cause.Prevention p : c.cause().prevent()) {
            ObjectNode one = prevent.addObject().put("say", p.say());
            if (replanned) {
                Replan.of(p, d.answers(), k.base()).ifPresent(r -> {
                    ResultJson.texts(one, "changes", r.changes());
                    one.put("verdicts", r.verdicts().replace('\u00a0', ' '));
                    ResultJson.texts(
                            one,
                            "figures",
                            r.figures().stream()
                                    .map(f -> f.replace('\u00a0', ' '))
                                    .toList());
                });
            }
        }
        return out;
    }

    private static void evidence(ArrayNode out, RankedCause c, boolean speaksFor) {
        for (Evidence e : c.evidence()) {
            if (e.decibans() > 0 == speaksFor) {
                out.addObject()
                        .put("observation", e.question())
                        .put("answer", e.choice())
                        .put("decibans", e.decibans())
                        .put("rule", e.conclusion().rule().id());
            }
        }
    }
}
