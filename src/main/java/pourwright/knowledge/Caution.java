package pourwright.knowledge;

/**
 * The usual caution for one hazard. It always defers to the safety data sheet.
 *
 * @param hazard what can hurt
 * @param say the caution in plain sentences
 * @param topic always {@code safety}
 * @param source a key of the sources
 * @param safety always true: a workshop cannot remove it
 */
public record Caution(String hazard, String say, String topic, String source, Boolean safety) {}
