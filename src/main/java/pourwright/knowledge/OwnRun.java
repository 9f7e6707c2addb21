package pourwright.knowledge;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one followed plan of a workshop measured.
 *
 * @param began when its mixing began; also its name
 * @param material id of the material
 * @param kit the kit in one line
 * @param ratios measured over computed, by quantity; each above 0
 */
public record OwnRun(String began, String material, String kit, Map<String, Double> ratios) {
    public OwnRun {
        ratios = Map.copyOf(ratios);
    }

    /** The run that a line of the workshop's file holds; empty when the line is none. */
    static Optional<OwnRun> of(String line) {
        JsonNode node;
        try {
            node = Json.read(line);
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
        Map<String, Double> ratios = new TreeMap<>();
        node.path("ratios").properties().forEach(e -> {
            double ratio = e.getValue().asDouble();
            if (ratio > 0 && Double.isFinite(ratio)) {
                ratios.put(e.getKey(), ratio);
            }
        });
        boolean whole = node.path("began").isTextual()
                && node.path("material").isTextual()
                && node.path("kit").isTextual();
        return whole && !ratios.isEmpty()
                ? Optional.of(new OwnRun(
                        node.get("began").textValue(),
                        node.get("material").textValue(),
                        node.get("kit").textValue(),
                        ratios))
                : Optional.empty();
    }

    /** The line that {@link #of} reads. */
    public String line() {
        ObjectNode out = Json.object();
        out.put("began", began);
        out.put("material", material);
        out.put("kit", kit);
        ObjectNode all = out.putObject("ratios");
        new TreeMap<>(ratios).forEach(all::put);
        return Json.write(out);
    }
}
