package pourwright.ask;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Facts;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.Verb;

/** Plans of one search: each is worked out once, and no more than a set number of them. */
final class Plans {
    /** Stands beside the conditions of a rule: something rules it out. */
    private static final long RULED_OUT = 1L << 62;

    private final Knowledge knowledge;
    private final Wanted wanted;
    private final List<Alternative> alternatives;
    private final List<String> hindering;
    private final int most;
    private final Map<Answers, Tried> tried = new HashMap<>();

    /**
     * One plan that was worked out.
     *
     * @param possible false when its answers cannot be true together
     * @param holds true when it advises what is wanted
     * @param lacking for each way to come by it, what it lacks, one bit each
     */
    record Tried(boolean possible, boolean holds, long[] lacking) {}

    private static final Tried IMPOSSIBLE = new Tried(false, false, new long[0]);

    Plans(Consultation before, Wanted wanted, List<Alternative> alternatives, Knowledge knowledge, int most) {
        this.knowledge = knowledge;
        this.wanted = wanted;
        this.alternatives = alternatives;
        this.most = most;
        this.hindering = before.findings().stream()
                .filter(Plans::hinders)
                .map(Finding::id)
                .toList();
    }

    private static boolean hinders(Finding f) {
        return f.strength() == Strength.STOP || f.strength() == Strength.CHANGE;
    }

    boolean left() {
        return tried.size() < most;
    }

    int count() {
        return tried.size();
    }

    boolean holds(Answers answers) {
        return of(answers).holds();
    }

    /** The plan of these answers; beyond the limit none is possible any more. */
    Tried of(Answers answers) {
        Tried seen = tried.get(answers);
        if (seen != null) {
            return seen;
        }
        if (!left()) {
            return IMPOSSIBLE;
        }
        Tried now;
        try {
            Consultation c = Advisor.consult(answers, knowledge);
            boolean holds = wanted.holds(c);
            now = new Tried(true, holds, holds ? new long[0] : lacking(c));
        } catch (BadAnswer e) {
            now = IMPOSSIBLE;
        }
        tried.put(answers, now);
        return now;
    }

    /** The whole plan again: kept is only what a search needs. */
    Consultation consultation(Answers answers) {
        return Advisor.consult(answers, knowledge);
    }

    /** What a plan lacks, for each way to come by it. */
    long[] lacking(Consultation c) {
        if (wanted.kind() == Wanted.Kind.VERDICT && alternatives.isEmpty()) {
            return new long[] {hindered(c)};
        }
        List<Object> facts = Facts.of(c, knowledge);
        long out = ruledOut(c) ? RULED_OUT : 0;
        return alternatives.stream().mapToLong(a -> a.lacking(facts) | out).toArray();
    }

    private boolean ruledOut(Consultation c) {
        if (wanted.kind() == Wanted.Kind.METHOD) {
            return c.refused().contains(wanted.id());
        }
        return c.conclusions().stream()
                .filter(x -> x.rule().id().equals(wanted.id()) && x.verb() == Verb.CHOOSE)
                .map(Conclusion::target)
                .anyMatch(c.refused()::contains);
    }

    private long hindered(Consultation c) {
        long mask = 0;
        for (Finding f : c.findings()) {
            if (hinders(f)) {
                int i = hindering.indexOf(f.id());
                mask |= i < 0 ? RULED_OUT : 1L << Math.min(i, 60);
            }
        }
        return mask;
    }
}
