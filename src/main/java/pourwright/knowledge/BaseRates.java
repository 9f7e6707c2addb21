package pourwright.knowledge;

import java.util.Map;

/**
 * How often each group of causes is behind a symptom, before anything else is known.
 *
 * @param source where the shares come from
 * @param note how far to trust them, or null
 * @param symptoms symptom, then material id, family or {@code any}, then group to its share in percent
 */
public record BaseRates(String source, String note, Map<String, Map<String, Map<String, Double>>> symptoms) {
    /** The shares of the groups for one symptom: of the class, else of its family, else of any. */
    public Map<String, Double> shares(String symptom, MaterialClass material) {
        Map<String, Map<String, Double>> rows = symptoms.getOrDefault(symptom, Map.of());
        Map<String, Double> any = rows.getOrDefault("any", Map.of());
        if (material == null) {
            return any;
        }
        return rows.getOrDefault(material.id(), rows.getOrDefault(material.family(), any));
    }
}
