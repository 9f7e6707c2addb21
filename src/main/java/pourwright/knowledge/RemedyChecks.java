package pourwright.knowledge;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the schema of the remedies cannot say: questions and choices that must exist, and limits that must lie in range. */
final class RemedyChecks {
    private static final Set<String> ANY = Set.of("*", "");

    private final Knowledge k;

    RemedyChecks(Knowledge k) {
        this.k = k;
    }

    void check() {
        Set<String> ids = new HashSet<>();
        for (Remedy r : k.remedies()) {
            String where = "remedy '" + r.id() + "'";
            require(ids.add(r.id()), where, "it stands twice");
            require(
                    k.sources().containsKey(r.source()),
                    where,
                    "the source '" + r.source() + "' is not in sources.json");
            Question q = question(r.answer(), where);
            if (r.how() == Remedy.How.CHOICE) {
                require(r.to() != null && !r.from().isEmpty(), where, "a choice needs 'to' and 'from'");
                choices(q, List.of(r.to()), where);
                choices(q, r.from(), where);
            } else {
                require(q.kind().equals("quantity"), where, "'" + q.id() + "' is not a quantity");
                limit(r, q, where);
            }
            r.when().forEach((id, choices) -> choices(question(id, where), choices, where));
            r.also().forEach((id, choice) -> choices(question(id, where), List.of(choice), where));
            r.forgets().forEach(id -> question(id, where));
        }
    }

    private static void limit(Remedy r, Question q, String where) {
        Double end = r.how() == Remedy.How.SHRINK ? r.least() : r.most();
        require(end != null || r.factor() != null, where, "it does not say how far it goes");
        require(
                end == null || r.how() == Remedy.How.DIVIDE || q.min() <= end && end <= q.max(),
                where,
                "its limit is outside the range of '" + q.id() + "'");
    }

    private Question question(String id, String where) {
        Optional<Question> q =
                k.questions().stream().filter(x -> x.id().equals(id)).findFirst();
        require(q.isPresent(), where, "there is no question '" + id + "' in a plan");
        return q.orElseThrow();
    }

    private static void choices(Question q, List<String> ids, String where) {
        for (String id : ids) {
            require(
                    ANY.contains(id) || q.choice(id).isPresent(),
                    where,
                    "'" + id + "' is no choice of '" + q.id() + "'");
        }
    }

    private static void require(boolean holds, String where, String otherwise) {
        if (!holds) {
            throw new KnowledgeFault(where + ": " + otherwise);
        }
    }
}
