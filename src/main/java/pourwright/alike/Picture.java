package pourwright.alike;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.Evidence;
import pourwright.diagnosis.RankedCause;
import pourwright.facts.Answers;
import pourwright.kit.KitAdvice;
import pourwright.knowledge.Knowledge;
import pourwright.vents.VentAdvice;

/**
 * What matters about a job or a part.
 *
 * @param answers what was said
 * @param deciding questions whose answers the advice rests on, with their weight
 * @param concluded what was concluded, with its weight
 * @param gist the advice in a line
 */
public record Picture(Answers answers, Map<String, Double> deciding, Map<String, Double> concluded, String gist) {
    private static final int CAUSES = 5;
    private static final String LIQUID = "material";

    /** The picture of a plan: its findings, and the answers on which they rest. */
    public static Picture of(Consultation c, Knowledge k) {
        return of(c.answers(), c.findings(), c.methods(), c.verdict().word(), k);
    }

    /** The picture of a tested kit. */
    public static Picture of(KitAdvice a, Knowledge k) {
        return of(a.answers(), a.findings(), Set.of(), a.verdict().word(), k);
    }

    /** The picture of a search for trapped air: the job's, and what was decided about each pocket. */
    public static Picture of(VentAdvice a, Knowledge k) {
        double method = k.guidelineSi("alike-method");
        Picture job = of(a.answers(), a.findings(), Set.of(), a.verdict().word(), k);
        Map<String, Double> deciding = new TreeMap<>(job.deciding());
        Map<String, Double> concluded = new TreeMap<>(job.concluded());
        a.answers().all().keySet().stream()
                .filter(id -> id.startsWith("undercut") || id.equals(LIQUID))
                .forEach(id -> deciding.merge(id, method, Double::sum));
        a.treatments().forEach(t -> concluded.merge(t.rule().id(), method, Double::sum));
        String gist = a.verdict().word() + ": "
                + String.join(
                        "; ",
                        a.treatments().stream()
                                .map(t -> t.rule().says())
                                .distinct()
                                .limit(2)
                                .toList());
        return new Picture(a.answers(), deciding, concluded, gist);
    }

    /** The picture of a part: its first causes, and the observations that moved them. */
    public static Picture of(Diagnosis d, Knowledge k) {
        Map<String, Double> deciding = new TreeMap<>();
        Map<String, Double> concluded = new TreeMap<>();
        d.ranked().stream().limit(CAUSES).forEach(r -> {
            concluded.put(r.cause().id(), r.probability());
            for (Evidence e : r.evidence()) {
                if (d.answers().has(e.question())) {
                    deciding.merge(e.question(), Math.abs(e.decibans()) * r.probability() / CAUSES, Double::sum);
                }
            }
        });
        for (String id : List.of(LIQUID, "symptom")) {
            if (d.answers().get(id).isPresent()) {
                deciding.merge(id, k.guidelineSi("alike-material"), Double::sum);
            }
        }
        String gist = d.ranked().isEmpty() ? "no cause" : first(d.ranked().get(0));
        return new Picture(d.answers(), deciding, concluded, gist);
    }

    private static String first(RankedCause r) {
        return r.cause().name() + ", about " + Math.round(r.probability() * 100) + " in 100";
    }

    private static Picture of(
            Answers answers, List<Finding> findings, Collection<String> methods, String verdict, Knowledge k) {
        Map<String, Double> deciding = new TreeMap<>();
        Map<String, Double> concluded = new TreeMap<>();
        for (Finding f : findings) {
            double weight = k.guidelineSi("alike-" + f.strength().word());
            concluded.merge(f.id(), weight, Double::sum);
            for (String id : f.answers()) {
                deciding.merge(id, weight / f.answers().size(), Double::sum);
            }
        }
        methods.forEach(m -> concluded.merge("method " + m, k.guidelineSi("alike-method"), Double::sum));
        if (answers.get(LIQUID).isPresent()) {
            deciding.merge(LIQUID, k.guidelineSi("alike-material"), Double::sum);
        }
        String first = findings.stream()
                .filter(f -> f.strength() != Strength.NOTE)
                .map(f -> ": " + f.say())
                .findFirst()
                .orElse("");
        return new Picture(answers, deciding, concluded, verdict + first);
    }
}
