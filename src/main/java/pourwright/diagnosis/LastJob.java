package pourwright.diagnosis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import pourwright.facts.Answers;

/** Remembers what was computed for the job in hand, and forgets it when another job comes. */
final class LastJob {
    private Answers job = Answers.NONE;
    private final Map<String, List<Evidence>> known = new HashMap<>();

    synchronized List<Evidence> of(Answers wanted, String key, Supplier<List<Evidence>> compute) {
        if (!wanted.equals(job)) {
            job = wanted;
            known.clear();
        }
        List<Evidence> found = known.get(key);
        if (found == null) {
            found = compute.get();
            known.put(key, found);
        }
        return found;
    }
}
