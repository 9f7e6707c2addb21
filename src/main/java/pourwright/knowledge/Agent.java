package pourwright.knowledge;

import java.util.Map;

/**
 * Something a liquid can touch that may slow, poison or foam it.
 *
 * @param id stable id; the same word as the question's choice where there is one
 * @param text what it is
 * @param effects effect by material group
 * @param source a key of the sources
 */
public record Agent(String id, String text, Map<String, Effect> effects, String source) {
    /**
     * How badly a group suffers.
     *
     * @param effect {@code strong}, {@code possible} or {@code none}
     * @param note anything to know, or null
     */
    public record Effect(String effect, String note) {}
}
