package pourwright.knowledge;

/**
 * The words of one step of a timetable.
 *
 * @param say what to do, with figures in braces
 * @param watch what to look for, or null
 * @param source a key of the sources
 * @param done what a person at the bench sees when it is done
 * @param doneAtStart true when that is at its planned beginning, as with a valve that opens; else at its end
 */
public record StepWords(String say, String watch, String source, String done, boolean doneAtStart) {}
