package pourwright.knowledge;

import java.util.List;

/**
 * Something that goes wrong in front of a person, and the first steps. It always defers to the safety data sheet or to
 * local rules.
 *
 * @param id names it for programs
 * @param title what it is called
 * @param inShort the word or two that are enough to type for it
 * @param danger what is in danger first
 * @param says what people type for it
 * @param steps what to do, in order, the caution first
 * @param line the emergency line, the same for all
 * @param defers which sections or rules have the last word
 * @param source a key of the sources
 */
public record Emergency(
        String id,
        String title,
        String inShort,
        Danger danger,
        List<String> says,
        List<String> steps,
        String line,
        String defers,
        String source) {
    /** What is in danger first; the worst stands first. */
    public enum Danger {
        /** Somebody can be hurt. */
        PEOPLE,
        /** The part or the kit can be lost. */
        PART,
        /** Nothing gets worse by waiting. */
        NONE
    }

    /** The sentences every answer ends with. */
    public String closing() {
        return line + " " + defers;
    }
}
