package pourwright.knowledge;

/**
 * The words of one step of a timetable.
 *
 * @param say what to do, with figures in braces
 * @param watch what to look for, or null
 * @param source a key of the sources
 */
public record StepWords(String say, String watch, String source) {}
