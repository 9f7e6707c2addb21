package pourwright.pty;

import java.util.List;
import java.util.Map;

/** What the hands know: one job, and how to get through a conversation. */
final class Typist {
    static final Map<String, String> JOB = Map.ofEntries(
            Map.entry("material", "tin-silicone"),
            Map.entry("job", "rubber-around-master"),
            Map.entry("kit", "vacuum"),
            Map.entry("batch-mass", "about 1.2 kg"),
            Map.entry("amount-by", "mass"),
            Map.entry("cup-volume", "5 L"),
            Map.entry("pot-life", "40 min"),
            Map.entry("pot-life-meaning", "gel"),
            Map.entry("mix-ratio", "10:1 by weight"),
            Map.entry("room-temperature", "70 F"),
            Map.entry("chamber-volume", "20 L"),
            Map.entry("pump-speed", "3 cfm"));

    private static final int MOST_QUESTIONS = 120;

    private Typist() {}

    /** Answers from the map, and with "don't know" what is not in it, as far as the page of all answers. */
    static void untilReview(Rig rig, Map<String, String> job) {
        for (int i = 0; i < MOST_QUESTIONS; i++) {
            String id = rig.prompt();
            if (id.equals("review")) {
                return;
            }
            rig.reply(job.getOrDefault(id, "don't know"));
        }
        throw new AssertionError("there is no end of questions:\n" + rig.screen());
    }

    /** The same, and on to the result; the lines it is shown in. */
    static List<String> untilResult(Rig rig, Map<String, String> job) {
        untilReview(rig, job);
        return rig.reply("");
    }
}
