package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.facts.Answers;
import pourwright.knowledge.Question;

/**
 * The observation expected to settle most: the expected drop in entropy, summed over the causes, each true or not true by
 * itself. For each cause the answers form a channel whose likelihood ratios are the weights of the rules, so the drop is
 * never below zero (Shannon, A Mathematical Theory of Communication, 1948). It is lessened by the chance that nobody can
 * answer.
 *
 * @param question what to ask
 * @param drop the expected drop in bits
 * @param parts the causes it would tell most about, most first
 */
public record NextObservation(Question question, double drop, List<String> parts) {
    private static final List<String> FIRST = List.of("material", "symptom");
    private static final int NAMED = 3;

    static Optional<NextObservation> after(Diagnoser d, State s) {
        for (String id : FIRST) {
            if (!s.answers().has(id)) {
                return Optional.of(
                        new NextObservation(d.knowledge().base().question(id).orElseThrow(), 0, List.of()));
            }
        }
        List<String> ranked = s.belief().ranked();
        if (settled(d, s, ranked)) {
            return Optional.empty();
        }
        Map<Question, List<Case>> open = open(d, s);
        if (open.values().stream().flatMap(List::stream).noneMatch(c -> reorders(c, s, ranked))) {
            return Optional.empty();
        }
        return open.entrySet().stream()
                .map(e -> measure(e.getKey(), e.getValue(), s, d))
                .filter(n -> n.drop() > 0)
                .max(Comparator.comparingDouble((NextObservation n) -> n.drop)
                        .thenComparing(n -> n.question().id(), Comparator.reverseOrder()));
    }

    /** What one answer would bring. */
    private record Case(Collection<Evidence> evidence, Collection<String> out) {}

    private static boolean settled(Diagnoser d, State s, List<String> ranked) {
        long asked = d.knowledge().observations().stream()
                .filter(q -> !FIRST.contains(q.id()) && s.answers().has(q.id()))
                .count();
        if (ranked.size() < 2 || asked >= d.scale().mostQuestions()) {
            return true;
        }
        Belief b = s.belief();
        return b.probability(ranked.get(0)) > d.scale().settled()
                && b.decibans(ranked.get(0)) - b.decibans(ranked.get(1))
                        >= d.scale().lead();
    }

    private static Map<Question, List<Case>> open(Diagnoser d, State s) {
        Map<Question, List<Case>> open = new LinkedHashMap<>();
        List<Question> all = new ArrayList<>(d.knowledge().observations());
        d.knowledge().base().questions().stream()
                .filter(q -> !q.tries().isEmpty())
                .forEach(all::add);
        for (Question q : all) {
            if (s.answers().has(q.id()) || FIRST.contains(q.id()) || !q.suits(s.material())) {
                continue;
            }
            List<Case> cases = q.kind().equals("quantity") ? tried(d, s, q) : chosen(s, q);
            if (cases.stream().anyMatch(c -> !c.evidence().isEmpty() || !c.out().isEmpty())) {
                open.put(q, cases);
            }
        }
        return open;
    }

    private static List<Case> chosen(State s, Question q) {
        return q.choices().stream()
                .map(c -> new Case(s.table().of(q.id(), c.id()), s.table().ruledOut(q.id(), c.id())))
                .toList();
    }

    private static List<Case> tried(Diagnoser d, State s, Question q) {
        return q.tries().stream()
                .map(t -> new Case(d.tried(s, q, t), List.of()))
                .toList();
    }

    private static boolean reorders(Case c, State s, List<String> ranked) {
        List<String> then = s.belief().with(c.evidence(), c.out()).ranked();
        return !then.subList(0, Math.min(2, then.size())).equals(ranked.subList(0, 2));
    }

    private static NextObservation measure(Question q, List<Case> cases, State s, Diagnoser d) {
        List<Belief> beliefs =
                cases.stream().map(c -> s.belief().with(c.evidence(), c.out())).toList();
        Map<String, Double> drops = new HashMap<>();
        double sum = 0;
        for (String cause : s.belief().causes()) {
            double drop = drop(cause, s.belief(), beliefs);
            drops.put(cause, drop);
            sum += drop;
        }
        List<String> parts = drops.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .sorted(Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue())
                        .thenComparing(Map.Entry::getKey))
                .limit(NAMED)
                .map(Map.Entry::getKey)
                .toList();
        return new NextObservation(q, sum * (1 - d.scale().unanswered(q.effort())), parts);
    }

    /** Expected drop in the entropy of one cause: the information between it and the answer. */
    private static double drop(String cause, Belief now, List<Belief> then) {
        double p = now.probability(cause);
        double l = now.decibans(cause);
        double[] ratio = new double[then.size()];
        double total = 0;
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = Math.pow(10, (then.get(i).decibans(cause) - l) / 10);
            total += ratio[i];
        }
        if (total == 0) {
            return 0;
        }
        double left = 0;
        for (double r : ratio) {
            double ifTrue = r / total;
            double ifNot = 1.0 / ratio.length;
            double chance = p * ifTrue + (1 - p) * ifNot;
            left += chance * entropy(p * ifTrue / chance);
        }
        return Math.max(0, entropy(p) - left);
    }

    private static double entropy(double p) {
        return p <= 0 || p >= 1 ? 0 : -(p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
    }

    /** The reasons for asking, as sentences. */
    public List<String> reasons(Diagnoser d, Answers answers) {
        if (question.id().equals("material")) {
            return List.of("The liquid decides which causes are possible at all.");
        }
        if (parts.isEmpty()) {
            return List.of("It decides which family of causes to look at.");
        }
        List<String> out = new ArrayList<>();
        EvidenceTable table = d.table(d.knowledge().base().materials().get(answers.choice("material")));
        for (String cause : parts) {
            out.add(d.knowledge().causes().get(cause).name() + ": " + says(table, cause));
        }
        return out;
    }

    private String says(EvidenceTable table, String cause) {
        List<String> words = new ArrayList<>();
        for (Question.Choice c : question.choices()) {
            table.of(question.id(), c.id()).stream()
                    .filter(e -> e.cause().equals(cause))
                    .findFirst()
                    .ifPresent(e -> words.add("\"" + c.text() + "\" speaks " + (e.decibans() > 0 ? "for" : "against")
                            + " it (" + e.conclusion().say() + ")"));
            if (table.ruledOut(question.id(), c.id()).contains(cause)) {
                words.add("\"" + c.text() + "\" rules it out");
            }
        }
        return words.isEmpty() ? "the value tells." : String.join("; ", words) + ".";
    }
}
