package pourwright.diagnosis;

import java.util.List;
import java.util.Optional;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Question;

/** Finds the observation that parts the first two causes best: the test to do next. */
final class Parted {
    private Parted() {}

    static Optional<Diagnosis.Parting> firstTwo(DiagnosticKnowledge k, State s) {
        List<String> ranked = s.belief().ranked();
        if (ranked.size() < 2) {
            return Optional.empty();
        }
        String first = ranked.get(0);
        String second = ranked.get(1);
        Diagnosis.Parting best = null;
        int widest = 0;
        for (Question q : k.observations()) {
            boolean open = !s.answers().has(q.id()) || s.unsettled().contains(q.id());
            if (!open || !q.suits(s.material())) {
                continue;
            }
            String forFirst = "";
            String forSecond = "";
            int most = Integer.MIN_VALUE;
            int least = Integer.MAX_VALUE;
            for (Question.Choice c : q.choices()) {
                int between = weight(s, q, c, first) - weight(s, q, c, second);
                if (between > most) {
                    most = between;
                    forFirst = c.id();
                }
                if (between < least) {
                    least = between;
                    forSecond = c.id();
                }
            }
            if (!q.choices().isEmpty() && most > 0 && least < 0 && most - least > widest) {
                widest = most - least;
                best = new Diagnosis.Parting(q.id(), forFirst, forSecond);
            }
        }
        return Optional.ofNullable(best);
    }

    private static int weight(State s, Question q, Question.Choice c, String cause) {
        return s.table().of(q.id(), c.id()).stream()
                .filter(e -> e.cause().equals(cause))
                .mapToInt(Evidence::decibans)
                .sum();
    }
}
