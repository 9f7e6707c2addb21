package pourwright.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.advice.Facts;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.Verb;

/**
 * Looks for the smallest sets of other answers under which a plan would advise something. Single answers come first, then
 * pairs, then, where a pair is not enough, more together. The rule's own conditions say what to try first; whether it
 * works is always left to the advisor. Deterministic, and bounded.
 */
public final class WhyNot {
    /** Plans tried at most: at a millisecond each the answer comes within a few seconds. */
    public static final int MOST_TRIED = 3000;

    /** Kept back for making what was found as small as it can be. */
    private static final int FOR_LEAST = 400;

    /** Kept back for more than two answers together. */
    private static final int FOR_TOGETHER = 300;

    /** Nobody changes more at once to come by one piece of advice. */
    private static final int MOST_TOGETHER = 5;

    /** Values tried in one direction before the nearest that works is looked for. */
    private static final int SAMPLES = 4;

    /** Pairs, or larger sets, of questions that are enough. */
    private static final int ENOUGH = 4;

    /** Answers tried for each condition where more than two answers are put together. */
    private static final int MOST_CANDIDATES = 6;

    private final Consultation before;
    private final Answers answers;
    private final Knowledge knowledge;
    private final Wanted wanted;
    private final Reach reach;
    private final List<Alternative> alternatives;
    private final Plans plans;
    private final Map<Setting, List<Setting>> direction = new HashMap<>();
    private final List<Candidate> candidates = new ArrayList<>();
    private final List<List<Setting>> found = new ArrayList<>();
    private boolean allSingles = true;
    private boolean allPairs;

    /** An answer that is not enough alone, with what is lacking under it. */
    private record Candidate(Setting setting, long[] lacking) {}

    private WhyNot(Consultation before, Wanted wanted, Knowledge knowledge) {
        this.before = before;
        this.answers = before.answers();
        this.wanted = wanted;
        this.knowledge = knowledge;
        this.reach = Reach.of(wanted);
        this.alternatives = reach.alternatives();
        this.plans = new Plans(before, wanted, alternatives, knowledge, MOST_TRIED);
    }

    /**
     * When this plan would advise something.
     *
     * @param before the plan
     * @param wanted what is asked about
     * @param knowledge what is known; the one the plan was made with
     */
    public static WhyNotAnswer of(Consultation before, Wanted wanted, Knowledge knowledge) {
        return new WhyNot(before, wanted, knowledge).run();
    }

    private WhyNotAnswer run() {
        if (wanted.holds(before)) {
            return new WhyNotAnswer(before, wanted, true, null, List.of(), List.of(), List.of(), 0, false, true);
        }
        for (Question q : knowledge.questions()) {
            // What no interview asks about is an answer here only where the rule itself asks.
            boolean usual = !reach.closed() && (q.asked() || answers.has(q.id()));
            if (usual || reach.questions().contains(q.id()) || reach.figures().contains(q.id())) {
                single(q);
            }
        }
        if (found.stream().noneMatch(s -> s.get(0).grade() == Setting.Grade.OWN)) {
            pairs(found.isEmpty());
        }
        if (found.isEmpty()) {
            together();
        }
        List<Way> ways = new ArrayList<>();
        for (List<Setting> set : found) {
            ways.add(new Way(set, Difference.between(before, plans.consultation(in(set)))));
        }
        List<String> order = knowledge.questions().stream().map(Question::id).toList();
        ways.sort(Comparator.comparing(Way::grade)
                .thenComparing(w -> w.changes().size())
                .thenComparing(w -> w.after().verdict())
                .thenComparing(w -> order.indexOf(w.changes().get(0).question())));
        Alternative nearest = nearest();
        return new WhyNotAnswer(
                before,
                wanted,
                false,
                nearest == null ? null : nearest.rule(),
                nearest == null ? List.of() : nearest.missing(Facts.of(before, knowledge)),
                against(),
                ways,
                plans.count(),
                ways.isEmpty() && reach.closed() && allSingles && allPairs,
                allSingles && plans.left());
    }

    private Answers in(List<Setting> set) {
        Answers with = answers;
        for (Setting s : set) {
            with = s.in(with);
        }
        return with;
    }

    private boolean holds(List<Setting> set) {
        return plans.holds(in(set));
    }

    /** All other answers to one question. */
    private void single(Question q) {
        Settings settings = Settings.of(q, before, knowledge);
        // That a plan whose size nobody knows has no fault is no answer to anybody.
        settings.choices().stream()
                .filter(s -> wanted.kind() != Wanted.Kind.VERDICT || s.grade() != Setting.Grade.UNKNOWN)
                .forEach(this::alone);
        List<Setting> nearest = new ArrayList<>();
        for (List<Setting> steps : settings.directions()) {
            steps.forEach(s -> direction.put(s, steps));
            for (int i = 1; i <= SAMPLES; i++) {
                int at = (int) Math.ceil((double) steps.size() * i / SAMPLES) - 1;
                if (at < 0 || i > 1 && at == (int) Math.ceil((double) steps.size() * (i - 1) / SAMPLES) - 1) {
                    continue;
                }
                Setting s = steps.get(at);
                if (holds(List.of(s))) {
                    nearest.add(nearer(s, List.of()));
                    break;
                }
                candidate(s);
            }
        }
        nearest.stream().min(Comparator.comparingInt(Setting::far)).ifPresent(s -> found.add(List.of(s)));
    }

    private void alone(Setting s) {
        if (holds(List.of(s))) {
            found.add(List.of(s));
        } else {
            candidate(s);
        }
    }

    private void candidate(Setting s) {
        allSingles &= plans.left();
        Plans.Tried t = plans.of(in(List.of(s)));
        if (t.possible()) {
            candidates.add(new Candidate(s, t.lacking()));
        }
    }

    /** The nearest value of the same answer that works together with the others. */
    private Setting nearer(Setting s, List<Setting> others) {
        for (Setting near : direction.getOrDefault(s, List.of())) {
            if (near.far() >= s.far()) {
                return s;
            }
            List<Setting> set = new ArrayList<>(others);
            set.add(near);
            if (holds(set)) {
                return near;
            }
        }
        return s;
    }

    /** How many conditions neither of the two meets, for the way to come by it that lacks least. */
    private static int lacking(Candidate a, Candidate b) {
        int least = Long.SIZE;
        for (int i = 0; i < a.lacking.length; i++) {
            least = Math.min(least, Long.bitCount(a.lacking[i] & b.lacking[i]));
        }
        return least;
    }

    /**
     * Two answers together.
     *
     * @param all true for all kinds of answers; false for those that a person can change
     */
    private void pairs(boolean all) {
        List<Candidate> some = candidates.stream()
                .filter(c -> all || c.setting.grade() == Setting.Grade.OWN)
                .toList();
        List<List<int[]>> byLacking = new ArrayList<>();
        for (int i = 0; i <= 2; i++) {
            byLacking.add(new ArrayList<>());
        }
        for (int i = 0; i < some.size(); i++) {
            for (int j = i + 1; j < some.size(); j++) {
                if (!some.get(i).setting.question().equals(some.get(j).setting.question())) {
                    int lacking = lacking(some.get(i), some.get(j));
                    if (lacking < 2 || reach.closed()) {
                        byLacking.get(Math.min(2, lacking)).add(new int[] {i, j});
                    }
                }
            }
        }
        Set<Set<String>> enough = new HashSet<>();
        for (List<int[]> pairs : byLacking) {
            for (int[] p : pairs) {
                if (enough.size() >= ENOUGH) {
                    return;
                }
                if (plans.count() >= MOST_TRIED - FOR_LEAST - FOR_TOGETHER) {
                    return;
                }
                List<Setting> pair = List.of(some.get(p[0]).setting, some.get(p[1]).setting);
                if (!enough.contains(questions(pair)) && holds(pair)) {
                    keep(pair, enough);
                }
            }
        }
        allPairs = true;
    }

    private static Set<String> questions(List<Setting> set) {
        Set<String> ids = new TreeSet<>();
        set.forEach(s -> ids.add(s.question()));
        return ids;
    }

    /** Keeps a set that works, with no answer in it that is not needed and every value as near as the others allow. */
    private void keep(List<Setting> works, Set<Set<String>> enough) {
        List<Setting> set = new ArrayList<>(works);
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < set.size(); i++) {
                List<Setting> others = new ArrayList<>(set);
                Setting s = others.remove(i);
                Setting near = nearer(s, others);
                moved |= !near.equals(s);
                set.set(i, near);
            }
        }
        List<Setting> least = needed(set);
        if (least.size() < set.size()) {
            keep(least, enough);
        } else if (enough.add(questions(least)) && !found.contains(least)) {
            found.add(least);
        }
    }

    /** The smallest part of a set that works by itself; the set when none does. */
    private List<Setting> needed(List<Setting> set) {
        for (int size = 1; size < set.size(); size++) {
            for (int bits = 1; bits < 1 << set.size(); bits++) {
                if (Integer.bitCount(bits) == size) {
                    List<Setting> part = new ArrayList<>();
                    for (int i = 0; i < set.size(); i++) {
                        if ((bits & 1 << i) != 0) {
                            part.add(set.get(i));
                        }
                    }
                    if (holds(part)) {
                        return part;
                    }
                }
            }
        }
        return set;
    }

    /** Answers that between them meet every condition of one way to come by it. */
    private void together() {
        Set<Set<String>> enough = new HashSet<>();
        long[] now = plans.lacking(before);
        int start = plans.count();
        List<Integer> ways = new ArrayList<>();
        for (int way = 0; way < now.length; way++) {
            ways.add(way);
        }
        ways.sort(Comparator.comparingInt(way -> Long.bitCount(now[way])));
        for (int way : ways) {
            if (Long.bitCount(now[way]) <= MOST_TOGETHER && enough.size() < ENOUGH) {
                cover(way, now[way], List.of(), start, enough);
            }
        }
    }

    private void cover(int way, long open, List<Setting> set, int start, Set<Set<String>> enough) {
        if (enough.size() >= ENOUGH || plans.count() - start >= FOR_TOGETHER) {
            return;
        }
        if (open == 0) {
            if (holds(set)) {
                keep(set, enough);
            }
            return;
        }
        long bit = Long.lowestOneBit(open);
        Set<String> taken = questions(set);
        List<Candidate> some = candidates.stream()
                .filter(c -> (c.lacking[way] & bit) == 0 && !taken.contains(c.setting.question()))
                .sorted(Comparator.comparing((Candidate c) -> c.setting.grade())
                        .thenComparingInt(c -> Long.bitCount(open & c.lacking[way]))
                        .thenComparingInt(c -> c.setting.far()))
                .limit(MOST_CANDIDATES)
                .toList();
        for (Candidate c : some) {
            List<Setting> more = new ArrayList<>(set);
            more.add(c.setting);
            cover(way, open & c.lacking[way], more, start, enough);
        }
    }

    /** The rule that lacks least. */
    private Alternative nearest() {
        if (wanted.kind() == Wanted.Kind.VERDICT) {
            return null;
        }
        List<Object> facts = Facts.of(before, knowledge);
        return alternatives.stream()
                .min(Comparator.comparingInt(a -> Long.bitCount(a.lacking(facts))))
                .orElse(null);
    }

    /** What rules it out: refusals of the way of working, or what stands against the verdict. */
    private List<Conclusion> against() {
        if (wanted.kind() == Wanted.Kind.VERDICT) {
            Set<String> ids = new HashSet<>();
            before.findings().stream()
                    .filter(f -> f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)
                    .map(Finding::id)
                    .forEach(ids::add);
            return wanted.id().equals("go")
                    ? before.conclusions().stream()
                            .filter(c -> ids.contains(c.rule().id()))
                            .toList()
                    : List.of();
        }
        Set<String> methods = new HashSet<>(Set.of(wanted.id()));
        before.conclusions().stream()
                .filter(c -> c.rule().id().equals(wanted.id()) && c.verb() == Verb.CHOOSE)
                .forEach(c -> methods.add(c.target()));
        return before.conclusions().stream()
                .filter(c -> c.verb() == Verb.REFUSE && methods.contains(c.target()))
                .toList();
    }
}
