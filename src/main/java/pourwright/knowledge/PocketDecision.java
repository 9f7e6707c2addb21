package pourwright.knowledge;

/**
 * Something that can be done about a pocket of air.
 *
 * @param name what to do, in a few words
 * @param does what becomes of the air
 * @param source a key of the sources
 */
public record PocketDecision(String name, String does, String source) {}
