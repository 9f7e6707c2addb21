package pourwright.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a diagnosis knows beyond a plan. Read apart from the rest, so that a plan does not wait for it.
 *
 * @param base everything a plan knows; it also finds the observations by their ids
 * @param observations what a person can see, remember or test, in the order a person finds natural
 * @param causes what can have gone wrong, by id
 * @param rates how often
 */
public record DiagnosticKnowledge(
        Knowledge base, List<Question> observations, Map<String, Cause> causes, BaseRates rates) {
    /** Reads what has not been read yet, so that nobody waits for it later; how many things there are. */
    public int readAll() {
        return base.readAll() + causes.size();
    }

    /** The observation of that id; none for a question of the plan. */
    public Optional<Question> observation(String id) {
        return observations.stream().filter(q -> q.id().equals(id)).findFirst();
    }
}
