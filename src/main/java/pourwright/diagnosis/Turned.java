package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Question;

/** Finds single answers that would put another cause first: what would make it something else. */
final class Turned {
    private static final int MOST = 3;

    private Turned() {}

    /** One answer and how far it would put the new cause ahead, in decibans. */
    private record Turn(Diagnosis.Otherwise otherwise, double ahead) {}

    static List<Diagnosis.Otherwise> by(DiagnosticKnowledge k, State s) {
        List<String> ranked = s.belief().ranked();
        if (ranked.isEmpty()) {
            return List.of();
        }
        String first = ranked.get(0);
        List<Turn> turns = new ArrayList<>();
        for (Question q : k.observations()) {
            if (q.id().equals("symptom") || q.choices().isEmpty() || !q.suits(s.material())) {
                continue;
            }
            List<String> said = s.answers().choices(q.id());
            Belief without = Without.question(q.id(), s);
            for (Question.Choice c : q.choices()) {
                if (said.contains(c.id())) {
                    continue;
                }
                Belief then =
                        without.with(s.table().of(q.id(), c.id()), s.table().ruledOut(q.id(), c.id()));
                List<String> now = then.ranked();
                if (!now.isEmpty() && !now.get(0).equals(first)) {
                    turns.add(new Turn(
                            new Diagnosis.Otherwise(q.id(), c.id(), now.get(0)),
                            then.decibans(now.get(0)) - then.decibans(first)));
                }
            }
        }
        turns.sort(Comparator.comparingDouble((Turn t) -> -t.ahead())
                .thenComparing(t -> t.otherwise().toString()));
        List<Diagnosis.Otherwise> out = new ArrayList<>();
        for (Turn t : turns) {
            // One answer for each other cause says more than three for the same.
            if (out.size() < MOST
                    && out.stream()
                            .noneMatch(o -> o.cause().equals(t.otherwise().cause()))) {
                out.add(t.otherwise());
            }
        }
        return List.copyOf(out);
    }
}
