package pourwright.vents;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Verdict;
import pourwright.facts.Answers;

/**
 * What was found about trapped air.
 *
 * @param answers    what was said
 * @param job        the consultation about the job itself, with what was assumed
 * @param mesh       what the mesh showed; nothing when the place was only described
 * @param treatments one for each pocket, largest first, a part after its whole; or the one that was described
 * @param count      how many places a described one stands for
 * @param findings   advice that holds for the mould as a whole, strongest first
 * @param assumed    answers that were taken because nobody gave them
 * @param verdict    {@code go} when no vent is needed, else {@code change}
 */
public record VentAdvice(
        Answers answers,
        Consultation job,
        Optional<MeshFindings> mesh,
        List<Treatment> treatments,
        int count,
        List<Finding> findings,
        List<String> assumed,
        Verdict verdict) {
    public VentAdvice {
        treatments = List.copyOf(treatments);
        findings = List.copyOf(findings);
        assumed = List.copyOf(assumed);
    }

    /** Ids of all rules that spoke, sorted, each once. */
    public List<String> rulesFired() {
        return Stream.concat(job.rulesFired().stream(), treatments.stream().flatMap(t -> t.job().rulesFired().stream()))
                .distinct()
                .sorted()
                .toList();
    }

    /** Vents in all. */
    public int vents() {
        return mesh.map(m -> m.vents().vents().size())
                .orElse(treatments.stream().anyMatch(Treatment::vented) ? count : 0);
    }
}
