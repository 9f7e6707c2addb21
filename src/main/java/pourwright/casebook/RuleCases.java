package pourwright.casebook;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.knowledge.Json;
import pourwright.rulebook.RuleCard;

/**
 * The cases that lie beside a rule: answers with which it speaks, and answers with which it just does not.
 *
 * @param fires answers by question, as they were typed
 * @param misses the same for near misses
 */
public record RuleCases(List<Map<String, String>> fires, List<Miss> misses) {
    public RuleCases {
        fires = List.copyOf(fires);
        misses = List.copyOf(misses);
    }

    /**
     * A near miss.
     *
     * @param why what keeps the rule silent
     * @param answers answers by question
     */
    public record Miss(String why, Map<String, String> answers) {}

    /** The cases of a rule in the program's own folder; none where the folder was taken away. */
    public static RuleCases of(RuleCard card) {
        Path file =
                Path.of(System.getProperty("pourwright.home", "."), "rules", card.folder(), card.id() + ".cases.json");
        try {
            return read(Json.read(Files.readString(file, StandardCharsets.UTF_8)));
        } catch (IOException e) {
            return new RuleCases(List.of(), List.of());
        }
    }

    private static RuleCases read(JsonNode tree) {
        List<Map<String, String>> fires = new ArrayList<>();
        tree.path("fires").forEach(a -> fires.add(answers(a)));
        List<Miss> misses = new ArrayList<>();
        tree.path("near-misses").forEach(m -> misses.add(new Miss(m.path("why").asText(), answers(m.path("answers")))));
        return new RuleCases(fires, misses);
    }

    private static Map<String, String> answers(JsonNode object) {
        Map<String, String> answers = new LinkedHashMap<>();
        object.properties().forEach(e -> answers.put(e.getKey(), text(e.getValue())));
        return answers;
    }

    private static String text(JsonNode v) {
        if (v.isArray()) {
            List<String> all = new ArrayList<>();
            v.forEach(x -> all.add(x.asText()));
            return String.join(", ", all);
        }
        return v.isNull() ? "don't know" : v.asText();
    }
}
