package pourwright.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.kie.api.definition.rule.Rule;

/**
 * What a rule says about itself.
 *
 * @param id stable id
 * @param says the judgement, as a sentence: the rule's name
 * @param folder the folder it stands in
 * @param topic what it is about
 * @param because the reason, for a new member of staff
 * @param sources keys of the sources
 * @param fact what a rule of evidence is about where it reads figures; else empty
 */
public record RuleCard(
        String id, String says, String folder, String topic, String because, List<String> sources, String fact)
        implements Comparable<RuleCard> {
    static RuleCard of(Rule rule) {
        Map<String, Object> meta = rule.getMetaData();
        String pack = rule.getPackageName();
        return new RuleCard(
                text(meta, "id"),
                rule.getName(),
                pack.substring(pack.lastIndexOf('.') + 1),
                text(meta, "topic"),
                text(meta, "because"),
                Arrays.stream(text(meta, "source").split("[,;\\s]+"))
                        .filter(s -> !s.isEmpty())
                        .toList(),
                text(meta, "fact"));
    }

    private static String text(Map<String, Object> meta, String key) {
        Object value = meta.get(key);
        return value == null ? "" : value.toString().strip();
    }

    @Override
    public int compareTo(RuleCard other) {
        return id.compareTo(other.id);
    }
}
