package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import pourwright.kit.KitAdvice;
import pourwright.kit.KitReading;
import pourwright.kit.Sizing;
import pourwright.kitfit.Drift;
import pourwright.kitfit.KitDrift;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;

/** What was found about a kit as one JSON object. Its shape is fixed: other programs depend on it. */
public final class KitJson {
    private final ResultJson parts;

    public KitJson(Knowledge knowledge) {
        this.parts = new ResultJson(knowledge);
    }

    /**
     * The whole of it.
     *
     * @param drift of the kit's history, where it has one
     */
    public ObjectNode of(KitAdvice a, Optional<KitDrift> drift) {
        ObjectNode out = ResultJson.result();
        out.put("verdict", a.verdict().word());
        ArrayNode findings = out.putArray("findings");
        a.findings().forEach(f -> findings.add(ResultJson.finding(f)));
        out.set("figures", parts.figures(a.figures(), a.answers()));
        ObjectNode tests = out.putObject("tests");
        a.fall().ifPresent(f -> test(tests, "pump-down", f.verdict(), a.fallReadings()));
        a.rise().ifPresent(r -> test(tests, "rise", r.verdict(), a.riseReadings()));
        a.sizing().ifPresent(s -> out.set("sizing", sizing(s)));
        drift.ifPresent(d -> out.set("drift", drift(d)));
        ResultJson.texts(out, "rules-fired", a.rulesFired());
        ResultJson.texts(out, "assumed", a.assumed());
        ResultJson.texts(out, "unasked", a.unasked());
        return out;
    }

    private static void test(ObjectNode tests, String name, Enum<?> verdict, Iterable<KitReading> readings) {
        ObjectNode test = tests.putObject(name);
        test.put("shows", word(verdict));
        ArrayNode all = test.putArray("readings");
        for (KitReading r : readings) {
            ObjectNode one = all.addObject();
            one.set("time", ResultJson.exactly(r.timeS(), Dimension.TIME));
            one.put("typed", r.typed());
            one.set("pressure", ResultJson.exactly(r.pressurePa(), Dimension.PRESSURE));
        }
    }

    private static ObjectNode sizing(Sizing s) {
        ObjectNode out = Json.object();
        ArrayNode wants = out.putArray("materials");
        s.wants().forEach(w -> wants.addObject().put("id", w.id()).put("vacuum-helps", w.vacuum()));
        s.pick().ifPresent(p -> out.putObject("pump").put("kind", p.kind()).set("speed", flow(p.speedM3PerS())));
        ArrayNode kinds = out.putArray("kinds");
        for (Sizing.Kind k : s.kinds()) {
            ObjectNode one = kinds.addObject().put("kind", k.id());
            k.serves().ifPresent(v -> one.set("from-speed", flow(v)));
            if (k.serves().isEmpty()) {
                one.put("ruled-out-by", k.material()).put("why", k.why().replace('\u00a0', ' '));
            }
        }
        ArrayNode enough = out.putArray("bigger-stops-helping");
        for (Sizing.Enough e : s.enough()) {
            ObjectNode one = enough.addObject().put("material", e.material()).put("limit", word(e.limit()));
            one.set("speed", flow(e.speedM3PerS()));
        }
        return out;
    }

    private static ObjectNode flow(double m3PerS) {
        return ResultJson.exactly(m3PerS, Dimension.FLOW);
    }

    private static ObjectNode drift(KitDrift d) {
        ObjectNode out = Json.object();
        out.put("overall", word(d.overall()));
        part(out, "effective-speed-measured", d.speed(), Dimension.FLOW);
        part(out, "base-pressure-measured", d.base(), Dimension.PRESSURE);
        part(out, "leak-rate-measured", d.leak(), Dimension.LEAK);
        return out;
    }

    private static void part(ObjectNode out, String name, Drift d, Dimension dimension) {
        ObjectNode one = out.putObject(name);
        one.put("verdict", word(d.verdict())).put("measurements", d.measurements());
        if (d.perYear().known()) {
            one.put("per-year", d.perYear().value());
            one.put("low", d.perYear().low());
            one.put("high", d.perYear().high());
            one.put("unit", dimension.siUnit() + " per year");
            one.put("chance", d.chance());
        }
    }

    private static String word(Enum<?> e) {
        return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
