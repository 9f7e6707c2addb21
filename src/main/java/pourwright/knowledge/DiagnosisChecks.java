package pourwright.knowledge;

import java.util.HashSet;
import java.util.Set;

/** What the schemas cannot say of causes, observations and base rates. */
final class DiagnosisChecks {
    private static final String SYMPTOM = "symptom";
    private static final Set<String> EFFORTS = Set.of("look", "recall", "test");

    private DiagnosisChecks() {}

    static void check(DiagnosticKnowledge k) {
        Set<String> ids = new HashSet<>();
        k.base().questions().forEach(q -> ids.add(q.id()));
        for (Question q : k.observations()) {
            require(ids.add(q.id()), "question '" + q.id() + "'", "it stands twice");
            require(EFFORTS.contains(q.effort()), "question '" + q.id() + "'", "effort is one of " + EFFORTS);
        }
        Question symptom = k.observation(SYMPTOM)
                .orElseThrow(() -> new KnowledgeFault("questions/diagnose.json: there is no question 'symptom'"));
        for (Question.Choice c : symptom.choices()) {
            require(
                    k.rates().shares(c.id(), null).size() > 0,
                    "diagnosis/base-rates.json",
                    "the symptom '" + c.id() + "' has no row 'any'");
        }
        k.causes().values().forEach(c -> cause(c, symptom, k));
    }

    private static void cause(Cause c, Question symptom, DiagnosticKnowledge k) {
        String where = "causes/" + c.id() + ".json";
        require(!c.arises().isEmpty(), where, "it arises under no symptom");
        c.arises().forEach((s, group) -> {
            require(symptom.choice(s).isPresent(), where, "'" + s + "' is no symptom");
            require(
                    k.rates().symptoms().get(s).values().stream().anyMatch(r -> r.containsKey(group)),
                    where,
                    "no base rate names the group '" + group + "' under '" + s + "'");
        });
        require(k.base().sources().containsKey(c.source()), where, "the source '" + c.source() + "' is unknown");
        c.cautions()
                .forEach(
                        id -> require(k.base().cautions().containsKey(id), where, "no caution is called '" + id + "'"));
        for (Cause.Prevention p : c.prevent()) {
            p.set().keySet().forEach(id -> question(id, where, k));
            p.times().keySet().forEach(id -> question(id, where, k));
        }
    }

    private static void question(String id, String where, DiagnosticKnowledge k) {
        require(
                k.base().questions().stream().anyMatch(q -> q.id().equals(id)),
                where,
                "a plan has no question '" + id + "'");
    }

    private static void require(boolean holds, String where, String otherwise) {
        if (!holds) {
            throw new KnowledgeFault(where + ": " + otherwise);
        }
    }
}
