package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pourwright.figures.FigureValue;
import pourwright.geometry.Attitude;
import pourwright.geometry.MeshReport;
import pourwright.geometry.Pocket;
import pourwright.geometry.Trapped;
import pourwright.geometry.Vec3;
import pourwright.geometry.VentPlan;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;
import pourwright.vents.MeshFindings;
import pourwright.vents.Treatment;
import pourwright.vents.VentAdvice;

/** What was found about trapped air as one JSON object. Its shape is fixed: other programs depend on it. */
public final class VentsJson {
    /** Figures that are about the job, whatever the pocket. */
    private static final Set<String> OF_THE_JOB =
            Set.of("mix-volume", "pour-time", "barometric-pressure", "planned-pressure", "working-time", "viscosity");

    private final ResultJson parts;

    public VentsJson(Knowledge knowledge) {
        this.parts = new ResultJson(knowledge);
    }

    /** The whole of it. */
    public ObjectNode of(VentAdvice a) {
        ObjectNode out = ResultJson.result();
        out.put("verdict", a.verdict().word());
        ArrayNode findings = out.putArray("findings");
        a.findings().forEach(f -> findings.add(ResultJson.finding(f)));
        Map<String, FigureValue> figures = new TreeMap<>();
        OF_THE_JOB.forEach(id -> a.job().figure(id).ifPresent(v -> figures.put(id, v)));
        out.set("figures", parts.figures(figures, a.job().answers()));
        ArrayNode pockets = out.putArray("pockets");
        int number = 0;
        for (Treatment t : a.treatments()) {
            pockets.add(pocket(t, ++number, a));
        }
        a.mesh().ifPresent(m -> mesh(out, m));
        ResultJson.texts(out, "rules-fired", a.rulesFired());
        Set<String> assumed = new TreeSet<>(a.assumed());
        assumed.addAll(a.job().assumed());
        a.mesh().filter(m -> m.trapped().gateAssumed()).ifPresent(m -> assumed.add("mesh-gate"));
        ResultJson.texts(out, "assumed", assumed);
        ResultJson.texts(out, "unasked", a.job().unasked());
        return out;
    }

    private ObjectNode pocket(Treatment t, int number, VentAdvice a) {
        ObjectNode out = Json.object();
        out.put("id", t.pocket().map(Pocket::id).orElse(number));
        t.pocket().filter(p -> p.parent() > 0).ifPresent(p -> out.put("parent", p.parent()));
        figure(out, "volume", t, "pocket-volume");
        t.pocket().ifPresent(p -> {
            place(out, "peak", p.peak());
            out.set("saddle", quantity(p.saddleHeightM(), Dimension.LENGTH));
            out.set("depth", quantity(p.depthM(), Dimension.LENGTH));
            out.set("mouth-width", quantity(p.mouthWidthM(), Dimension.LENGTH));
            out.set("head", quantity(p.headM(), Dimension.LENGTH));
        });
        if (t.pocket().isEmpty()) {
            out.put("count", a.count());
        }
        figure(out, "bubble", t, "pocket-bubble");
        figure(out, "residue", t, "pocket-residue");
        figure(out, "residue-diameter", t, "residue-diameter");
        out.put("decision", t.decision());
        if (t.vented()) {
            figure(out, "vent-diameter", t, "vent-diameter");
        }
        t.lean().ifPresent(up -> place(out, "lean-up", up));
        out.put("say", t.say().replace('\u00a0', ' '));
        out.put("because", t.rule().because());
        out.put("rule", t.rule().id());
        ResultJson.texts(out, "sources", t.rule().sources());
        return out;
    }

    private void figure(ObjectNode out, String name, Treatment t, String id) {
        t.figure(id)
                .ifPresent(v -> out.set(
                        name, parts.figures(Map.of(id, v), t.job().answers()).get(id)));
    }

    private static void mesh(ObjectNode out, MeshFindings m) {
        Trapped trapped = m.trapped();
        MeshReport report = m.mesh().report();
        ArrayNode attitudes = out.putArray("attitudes");
        m.attitudes().forEach(a -> attitudes.add(attitude(a)));
        ArrayNode vents = out.putArray("vents");
        m.vents().vents().forEach(v -> vents.add(vent(v)));
        out.put("vents-enough", m.vents().enough());
        out.set("left", quantity(m.vents().left().trappedM3(), Dimension.VOLUME));
        out.put("no-outlet", trapped.noOutlet());
        ObjectNode mesh = out.putObject("mesh");
        mesh.put("triangles", report.triangles());
        Vec3 size = report.high().minus(report.low());
        place(mesh, "size", size);
        mesh.set("volume", quantity(report.volumeM3(), Dimension.VOLUME));
        mesh.set("trapped", quantity(trapped.trappedM3(), Dimension.VOLUME));
        if (trapped.gate() != null) {
            place(mesh, "gate", trapped.gate());
        }
        mesh.set("fill-height", quantity(trapped.fillHeightM(), Dimension.LENGTH));
        mesh.set("column", quantity(trapped.columnM(), Dimension.LENGTH));
        mesh.put("ignored", trapped.ignored());
        mesh.set("ignored-volume", quantity(trapped.ignoredM3(), Dimension.VOLUME));
        regions(mesh, "unreachable", trapped.unreachable());
        regions(mesh, "low-places", trapped.lowPlaces());
        ArrayNode notes = mesh.putArray("notes");
        report.notes().forEach(notes::add);
        trapped.notes().forEach(notes::add);
    }

    private static void regions(ObjectNode out, String name, Iterable<Trapped.Region> regions) {
        ArrayNode all = out.putArray(name);
        for (Trapped.Region r : regions) {
            ObjectNode one = all.addObject();
            one.set("volume", quantity(r.volumeM3(), Dimension.VOLUME));
            place(one, "place", r.place());
        }
    }

    private static ObjectNode attitude(Attitude a) {
        ObjectNode out = Json.object();
        place(out, "up", a.up());
        out.put("vents", a.vents());
        out.set("trapped", quantity(a.trappedM3(), Dimension.VOLUME));
        out.set("fill-height", quantity(a.fillHeightM(), Dimension.LENGTH));
        return out;
    }

    private static ObjectNode vent(VentPlan.Vent v) {
        ObjectNode out = Json.object();
        place(out, "place", v.place());
        out.set("height", quantity(v.heightM(), Dimension.LENGTH));
        out.set("frees", quantity(v.freedM3(), Dimension.VOLUME));
        out.set("rise", quantity(v.riseM(), Dimension.LENGTH));
        return out;
    }

    private static void place(ObjectNode out, String name, Vec3 at) {
        out.putArray(name).add(at.x()).add(at.y()).add(at.z());
    }

    private static ObjectNode quantity(double si, Dimension d) {
        return ResultJson.exactly(si, d);
    }
}
