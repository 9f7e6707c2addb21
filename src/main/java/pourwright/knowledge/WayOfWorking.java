package pourwright.knowledge;

/**
 * A way of working, in words.
 *
 * @param name what the trade calls it
 * @param does what it does to a bubble
 * @param rightWhen when it is right
 * @param wrongWhen when it is not
 * @param source a key of the sources
 */
public record WayOfWorking(String name, String does, String rightWhen, String wrongWhen, String source) {}
