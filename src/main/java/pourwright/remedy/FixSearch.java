package pourwright.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Remedy;

/**
 * Looks for the smallest change. Each remedy alone comes first, with the smallest value that works; then pairs; then, where
 * a job wants more, one after the other, the one that helps most first. Deterministic, and bounded.
 */
public final class FixSearch {
    /** Jobs tried at most: at a millisecond each the answer comes within the second. */
    static final int MOST_TRIED = 400;

    /** Kept back from the pairs at most, for jobs that want more than two changes. */
    private static final int FOR_CHAINS = 150;

    /** Kept back for making a pair that works as small as it can be. */
    private static final int FOR_LEAST = 20;

    private static final int OFFERED = 3;
    private static final int LONGEST_CHAIN = 6;

    /** Values tried along a ladder before the smallest that works is closed in on. */
    private static final int SAMPLES = 4;

    private static final Comparator<Fix> CHEAPEST = Comparator.comparingInt(Fix::cost)
            .thenComparingInt(f -> f.changes().size())
            .thenComparingDouble(Fix::size);

    private final Consultation before;
    private final Goal goal;
    private final List<Tried> tried = new ArrayList<>();
    private final Trials trials;
    private final long start;
    private boolean whole = true;

    /** A remedy on this job with what it does alone: the rung that brings it nearest, and how near. */
    private record Tried(Move move, int rung, long distance) {
        int cost() {
            return move.remedy().cost();
        }
    }

    /** A remedy at one of its rungs. */
    private record Held(Move move, int rung) {}

    private FixSearch(Consultation before, Knowledge knowledge) {
        this.before = before;
        this.goal = Goal.of(before);
        this.trials = new Trials(before, knowledge, goal, MOST_TRIED);
        this.start = goal.distance(before);
    }

    /**
     * The least costly changes that make this plan work.
     *
     * @param before the plan
     * @param keep answers that must stay as they are
     * @param knowledge what is known; the one the plan was made with
     */
    public static Fixes of(Consultation before, Set<String> keep, Knowledge knowledge) {
        FixSearch search = new FixSearch(before, knowledge);
        if (search.goal == Goal.NOTHING) {
            return new Fixes(before, search.goal, List.of(), List.of(), 0, 0, true);
        }
        List<Move> moves = new ArrayList<>();
        for (Remedy r : knowledge.remedies()) {
            Move.of(r, before, knowledge)
                    .filter(m -> m.touches().stream().noneMatch(keep::contains))
                    .ifPresent(moves::add);
        }
        return search.run(moves);
    }

    private Fixes run(List<Move> moves) {
        List<Fix> found = new ArrayList<>();
        for (Move move : moves) {
            alone(move).ifPresent(found::add);
        }
        if (found.size() < OFFERED) {
            pairs(found);
        }
        if (found.isEmpty()) {
            chains(found);
        }
        found.sort(CHEAPEST);
        List<Fix> offered = found.isEmpty() ? nearest() : found;
        return new Fixes(
                before,
                goal,
                offered.subList(0, Math.min(OFFERED, offered.size())),
                trials.stuck(),
                moves.size(),
                trials.count(),
                whole);
    }

    private Answers with(List<Held> held) {
        Answers answers = before.answers();
        for (Held h : held) {
            answers = h.move.made(answers, h.rung);
        }
        return answers;
    }

    private long distance(List<Held> held) {
        return trials.distance(with(held));
    }

    private boolean works(List<Held> held) {
        return distance(held) == 0;
    }

    private Fix fix(List<Held> held) {
        Consultation after = trials.consultation(with(held));
        return new Fix(
                held.stream().map(h -> h.move.change(h.rung)).toList(),
                Difference.between(before, after),
                goal.distance(after) == 0);
    }

    /** One remedy: the first of some values that works, then the smallest of those below it. */
    private Optional<Fix> alone(Move move) {
        int best = move.rungs() - 1;
        long nearest = Trials.IMPOSSIBLE;
        int failed = -1;
        for (int rung : samples(move.rungs())) {
            long distance = distance(List.of(new Held(move, rung)));
            if (distance == 0) {
                List<Held> least = List.of(new Held(move, least(move, failed, rung, List.of())));
                return Optional.of(fix(least));
            }
            if (distance < nearest) {
                nearest = distance;
                best = rung;
            }
            failed = rung;
        }
        tried.add(new Tried(move, nearest < start ? best : move.rungs() - 1, nearest));
        return Optional.empty();
    }

    private static List<Integer> samples(int rungs) {
        List<Integer> at = new ArrayList<>();
        for (int i = 1; i <= SAMPLES; i++) {
            int rung = (int) Math.ceil((double) rungs * i / SAMPLES) - 1;
            if (rung >= 0 && !at.contains(rung)) {
                at.add(rung);
            }
        }
        return at;
    }

    /** The smallest rung that works with the others, between one that does not and one that does. */
    private int least(Move move, int fails, int works, List<Held> others) {
        int low = fails;
        int high = works;
        while (high - low > 1 && trials.left()) {
            int middle = (low + high) >>> 1;
            List<Held> all = new ArrayList<>(others);
            all.add(new Held(move, middle));
            if (works(all)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private void pairs(List<Fix> found) {
        List<List<Tried>> all = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            for (int j = i + 1; j < tried.size(); j++) {
                if (apart(tried.get(i).move, tried.get(j).move)) {
                    all.add(List.of(tried.get(i), tried.get(j)));
                }
            }
        }
        // What helps alone is the likelier half of a pair; the sort is stable, so the order of the file settles the
        // rest.
        all.sort(Comparator.comparingLong(
                        (List<Tried> p) -> -p.stream().filter(this::helps).count())
                .thenComparingInt(p -> p.get(0).cost() + p.get(1).cost()));
        long helpers = tried.stream().filter(this::helps).count();
        int forChains = (int) Math.min(FOR_CHAINS, 2 * LONGEST_CHAIN * helpers);
        for (List<Tried> pair : all) {
            if (!found.isEmpty() && pair.stream().noneMatch(this::helps)) {
                return;
            }
            if (!trials.left(found.isEmpty() ? forChains + FOR_LEAST : FOR_LEAST)) {
                whole = false;
                return;
            }
            List<Held> held = pair.stream().map(t -> new Held(t.move, t.rung)).toList();
            boolean dear = found.size() >= OFFERED
                    && pair.get(0).cost() + pair.get(1).cost()
                            >= found.stream()
                                    .sorted(CHEAPEST)
                                    .skip(OFFERED - 1)
                                    .findFirst()
                                    .orElseThrow()
                                    .cost();
            if (!dear && works(held)) {
                found.add(fix(lessened(held)));
            }
        }
    }

    private boolean helps(Tried t) {
        return t.distance < start;
    }

    private static boolean apart(Move a, Move b) {
        return a.touches().stream().noneMatch(b.touches()::contains);
    }

    /** The same changes, each as small as the others allow, and none that is not needed. */
    private List<Held> lessened(List<Held> held) {
        List<Held> now = new ArrayList<>(held);
        for (int i = now.size() - 1; i >= 0 && now.size() > 1; i--) {
            List<Held> others = new ArrayList<>(now);
            others.remove(i);
            if (trials.left() && works(others)) {
                now = others;
            }
        }
        for (int i = 0; i < now.size(); i++) {
            Held h = now.get(i);
            List<Held> others = new ArrayList<>(now);
            others.remove(i);
            now.set(i, new Held(h.move, least(h.move, -1, h.rung, others)));
            if (!works(now)) {
                now.set(i, h);
            }
        }
        return now;
    }

    /** Jobs that want more than two changes: the one that helps most for its cost first, then the next. */
    private void chains(List<Fix> found) {
        List<Held> first = chain(null);
        if (!works(first)) {
            return;
        }
        List<Held> least = lessened(first);
        found.add(fix(least));
        for (Held without : least) {
            if (found.size() < OFFERED && trials.left()) {
                List<Held> other = chain(without.move);
                if (works(other)) {
                    Fix fix = fix(lessened(other));
                    if (found.stream().noneMatch(f -> f.changes().equals(fix.changes()))) {
                        found.add(fix);
                    }
                }
            }
        }
    }

    private List<Held> chain(Move banned) {
        List<Held> held = new ArrayList<>();
        long now = start;
        while (held.size() < LONGEST_CHAIN && now > 0) {
            Held next = null;
            long nearest = now;
            int cost = Integer.MAX_VALUE;
            for (Tried t : tried) {
                boolean fits = t.move != banned && held.stream().allMatch(h -> apart(h.move, t.move));
                if (fits && helps(t) && trials.left()) {
                    List<Held> more = new ArrayList<>(held);
                    more.add(new Held(t.move, t.rung));
                    long distance = distance(more);
                    if (distance < nearest || distance == nearest && next != null && t.cost() < cost) {
                        nearest = distance;
                        cost = t.cost();
                        next = new Held(t.move, t.rung);
                    }
                }
            }
            if (next == null) {
                break;
            }
            held.add(next);
            now = nearest;
        }
        if (!trials.left()) {
            whole = false;
        }
        return held;
    }

    /** Where nothing works: what leaves least to be changed. */
    private List<Fix> nearest() {
        List<List<Held>> some = new ArrayList<>();
        List<Held> most = chain(null);
        if (!most.isEmpty()) {
            some.add(most);
        }
        tried.stream()
                .filter(this::helps)
                .sorted(Comparator.comparingLong(Tried::distance).thenComparingInt(Tried::cost))
                .limit(OFFERED)
                .map(t -> List.of(new Held(t.move, t.rung)))
                .filter(held -> !held.equals(most))
                .forEach(some::add);
        return some.stream()
                .filter(held -> distance(held) != Trials.IMPOSSIBLE)
                .map(this::fix)
                .toList();
    }
}
