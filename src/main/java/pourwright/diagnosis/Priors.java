package pourwright.diagnosis;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.facts.Answers;
import pourwright.knowledge.Cause;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;

/**
 * How likely each cause is before any observation: the base rate of its group under the symptom, shared among the causes
 * of the group that are possible here. Groups with no possible cause leave their share to the others.
 */
final class Priors {
    private static final double MOST = 0.9;
    private static final String SYMPTOM = "symptom";

    private final DiagnosticKnowledge k;
    private final Scale scale;

    Priors(DiagnosticKnowledge k, Scale scale) {
        this.k = k;
        this.scale = scale;
    }

    /**
     * Prior chance of each possible cause, by id.
     *
     * @param possible the causes that neither class nor process rules out
     */
    Map<String, Double> of(Answers answers, MaterialClass material, Collection<Cause> possible) {
        List<String> symptoms = answers.choices(SYMPTOM);
        List<String> all = symptoms.isEmpty()
                ? k.observation(SYMPTOM).orElseThrow().choices().stream()
                        .map(Question.Choice::id)
                        .toList()
                : symptoms;
        Map<String, Double> priors = new HashMap<>();
        possible.forEach(c -> priors.put(c.id(), 0.0));
        for (String symptom : all) {
            Map<String, Double> here = under(symptom, material, possible);
            // Of several symptoms seen, each stands on its own; of an unknown one, each is as likely as the next.
            here.forEach((id, p) -> priors.merge(
                    id, symptoms.isEmpty() ? p / all.size() : p, symptoms.isEmpty() ? Double::sum : Math::max));
        }
        priors.replaceAll((id, p) -> Math.min(MOST, Math.max(scale.least(), p)));
        return priors;
    }

    private Map<String, Double> under(String symptom, MaterialClass material, Collection<Cause> possible) {
        Map<String, Double> shares = k.rates().shares(symptom, material);
        Map<String, Integer> members = new HashMap<>();
        for (Cause c : possible) {
            String group = c.arises().get(symptom);
            if (group != null && shares.getOrDefault(group, 0.0) > 0) {
                members.merge(group, 1, Integer::sum);
            }
        }
        double total =
                members.keySet().stream().sorted().mapToDouble(shares::get).sum();
        Map<String, Double> chances = new HashMap<>();
        for (Cause c : possible) {
            String group = c.arises().get(symptom);
            if (group != null && members.containsKey(group)) {
                chances.put(c.id(), shares.get(group) / total / members.get(group));
            }
        }
        return chances;
    }
}
