package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import pourwright.emergency.EmergencyFinder;
import pourwright.knowledge.Emergency;

/** What to do now as one JSON object. Its shape is fixed: other programs depend on it. */
public final class NowJson {
    private NowJson() {}

    /**
     * The situation that was found. Where none was, {@code now} is null, and the emergency line and all situations stand
     * beside it.
     *
     * @param all the situations
     */
    public static ObjectNode of(List<Emergency> all, Optional<EmergencyFinder.Found> found) {
        ObjectNode out = ResultJson.result();
        if (found.isEmpty()) {
            out.putNull("now");
            out.put("closing", all.get(0).line());
            ArrayNode situations = out.putArray("situations");
            all.forEach(e -> situations.addObject().put("id", e.id()).put("title", e.title()));
            return out;
        }
        Emergency taken = found.get().taken();
        ObjectNode now = out.putObject("now");
        now.put("id", taken.id()).put("title", taken.title());
        ResultJson.texts(now, "steps", taken.steps());
        now.put("source", taken.source()).put("closing", taken.closing());
        ResultJson.texts(
                now, "others", found.get().others().stream().map(Emergency::id).toList());
        return out;
    }
}
