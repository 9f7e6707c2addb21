package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Question;

/**
 * Finds the observations that would put one given cause first: one alone, else two together. The table says which to try;
 * what is offered was diagnosed anew, so it holds.
 */
final class Wished {
    private static final int MOST = 3;

    /** Diagnoses made anew at most. */
    private static final int MOST_TRIED = 120;

    /** Observations that speak most for the cause: pairs are made of these. */
    private static final int MOST_PAIRED = 30;

    private final Diagnoser diagnoser;
    private final State s;
    private final String cause;
    private int tried;

    Wished(Diagnoser diagnoser, State s, String cause) {
        this.diagnoser = diagnoser;
        this.s = s;
        this.cause = cause;
    }

    /** An answer and how far it puts the cause ahead of what leads now, in decibans. */
    private record Turn(Question question, Question.Choice choice, double ahead) {}

    Diagnosis.Wish find(DiagnosticKnowledge k) {
        List<Turn> turns = new ArrayList<>();
        for (Question q : k.observations()) {
            if (q.id().equals("symptom") || q.choices().isEmpty() || !q.suits(s.material())) {
                continue;
            }
            Belief without = Without.question(q.id(), s);
            for (Question.Choice c : q.choices()) {
                if (!s.answers().choices(q.id()).contains(c.id())) {
                    turns.add(new Turn(q, c, ahead(without, q, c)));
                }
            }
        }
        turns.sort(Comparator.comparingDouble((Turn t) -> -t.ahead())
                .thenComparing(t -> t.question().id() + t.choice().id()));
        List<List<Diagnosis.Otherwise>> sets = new ArrayList<>();
        int singles = 0;
        for (Turn t : turns) {
            if (sets.size() < MOST && singles < MOST_TRIED / 2 && t.ahead() > Double.NEGATIVE_INFINITY) {
                singles++;
                add(sets, List.of(t));
            }
        }
        if (sets.isEmpty()) {
            pairs(turns.subList(0, Math.min(MOST_PAIRED, turns.size())), sets);
        }
        return new Diagnosis.Wish(cause, sets, tried);
    }

    private void pairs(List<Turn> turns, List<List<Diagnosis.Otherwise>> sets) {
        for (int sum = 1; sum < 2 * turns.size(); sum++) {
            for (int i = Math.max(0, sum - turns.size() + 1); i < sum - i; i++) {
                Turn a = turns.get(i);
                Turn b = turns.get(sum - i);
                if (sets.size() < MOST
                        && tried < MOST_TRIED
                        && !a.question().id().equals(b.question().id())) {
                    add(sets, List.of(a, b));
                }
            }
        }
    }

    private double ahead(Belief without, Question q, Question.Choice c) {
        Belief then = without.with(s.table().of(q.id(), c.id()), s.table().ruledOut(q.id(), c.id()));
        double leads = then.ranked().stream()
                .filter(id -> !id.equals(cause))
                .mapToDouble(then::decibans)
                .max()
                .orElse(0);
        return then.causes().contains(cause) ? then.decibans(cause) - leads : Double.NEGATIVE_INFINITY;
    }

    private void add(List<List<Diagnosis.Otherwise>> sets, List<Turn> turns) {
        Answers answers = s.answers();
        for (Turn t : turns) {
            String id = t.choice().id();
            Answer answer = t.question().several() ? new Answer.Several(List.of(id)) : new Answer.Choice(id);
            answers = answers.with(t.question().id(), answer, id);
        }
        tried++;
        List<String> ranked = diagnoser.state(answers).belief().ranked();
        if (!ranked.isEmpty() && ranked.get(0).equals(cause)) {
            sets.add(turns.stream()
                    .map(t -> new Diagnosis.Otherwise(
                            t.question().id(), t.choice().id(), cause))
                    .toList());
        }
    }
}
