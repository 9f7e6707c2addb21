package pourwright.knowledge;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/** What the schemas cannot say: keys that must exist in another file, units that must fit, words that must be unique. */
final class KnowledgeChecks {
    private static final Set<String> EFFECTS = Set.of("strong", "possible", "none");
    private static final Set<String> FAMILIES = Set.of(
            "silicone",
            "polyurethane",
            "epoxy",
            "styrene-resin",
            "acrylic",
            "gypsum",
            "polysulfide",
            "alginate",
            "latex",
            "wax",
            "cement",
            "filled");

    private final Knowledge k;

    private KnowledgeChecks(Knowledge k) {
        this.k = k;
    }

    static void check(Knowledge k) {
        new KnowledgeChecks(k).all();
    }

    private void all() {
        k.sources().values().forEach(s -> require(s.title() != null, "sources.json", "a source has no title"));
        Map<String, String> words = new HashMap<>();
        k.materials().values().forEach(m -> material(m, words));
        k.guidelines().forEach((id, g) -> {
            source(g.source(), "guideline '" + id + "'");
            Knowledge.dimensionOf(g.unit());
        });
        k.cautions().forEach((id, c) -> source(c.source(), "caution '" + id + "'"));
        k.terms().forEach((id, t) -> source(t.source(), "term '" + id + "'"));
        k.pumps().forEach((id, p) -> {
            source(p.source(), "pump '" + id + "'");
            value(p.speed(), Dimension.FLOW, "pump '" + id + "' speed");
            value(p.ultimate(), Dimension.PRESSURE, "pump '" + id + "' ultimate");
        });
        k.processes().forEach((id, p) -> source(p.source(), "process '" + id + "'"));
        k.agents().forEach((id, a) -> {
            source(a.source(), "agent '" + id + "'");
            a.effects()
                    .forEach((group, e) -> require(
                            EFFECTS.contains(e.effect()), "agent '" + id + "'", "an effect is one of " + EFFECTS));
        });
        k.steps().forEach((id, s) -> source(s.source(), "step '" + id + "'"));
        k.decisions().forEach((id, d) -> source(d.source(), "decision '" + id + "'"));
        questions();
        new RemedyChecks(k).check();
        k.emergencies().forEach(e -> source(e.source(), "emergencies.json, '" + e.id() + "'"));
        new EmergencyChecks(k.emergencies()).check();
    }

    private void material(MaterialClass m, Map<String, String> words) {
        String where = "materials/" + m.id() + ".json";
        m.values().forEach((name, v) -> value(v, ClassValues.dimension(name), where + " at /values/" + name));
        require(FAMILIES.contains(m.family()), where, "a family is one of " + FAMILIES);
        source(m.permission().source(), where + " at /permission");
        source(m.mix().source(), where + " at /mix");
        for (String w : m.says()) {
            String other = words.put(w.toLowerCase(Locale.ROOT), m.id());
            require(other == null || other.equals(m.id()), where, "the word '" + w + "' also means " + other);
        }
    }

    private void questions() {
        Set<String> ids = new HashSet<>();
        for (Question q : k.questions()) {
            String where = "question '" + q.id() + "'";
            require(ids.add(q.id()), where, "it stands twice");
            switch (q.kind()) {
                case "quantity" -> {
                    Dimension d = Dimension.named(q.quantity());
                    require(UnitBook.knows(q.unit(), d), where, "'" + q.unit() + "' is not a unit of " + q.quantity());
                    require(q.min() < q.max(), where, "its range is empty");
                }
                case "choice" -> require(q.choices().size() > 1, where, "it has no choices");
                case "material", "ratio", "text", "places", "log", "cans" -> {}
                default ->
                    throw new KnowledgeFault(
                            where + ": kind must be material, choice, quantity, ratio, text or places");
            }
            if (q.unknown() != null) {
                source(q.unknown().source(), where);
            }
        }
    }

    private void value(Value v, Dimension d, String where) {
        require(
                UnitBook.knows(v.unit(), d),
                where,
                "'" + v.unit() + "' is not a unit of " + d.name().toLowerCase(Locale.ROOT));
        source(v.source(), where);
    }

    private void source(String key, String where) {
        require(key != null && k.sources().containsKey(key), where, "the source '" + key + "' is not in sources.json");
    }

    private static void require(boolean holds, String where, String otherwise) {
        if (!holds) {
            throw new KnowledgeFault(where + ": " + otherwise);
        }
    }
}
