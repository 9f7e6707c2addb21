package pourwright.console;

import java.util.List;

/**
 * The only way to the person: one line in, one line out. Nothing is ever redrawn.
 */
public interface Door {
    /**
     * Asks for one line.
     *
     * @param prompt what stands before the answer
     * @param words what could be typed, for completion
     * @return the line, without its end
     * @throws Ended when there is no more input
     * @throws Interrupted when the person pressed Ctrl-C
     */
    String ask(String prompt, List<String> words);

    /** Shows one line. */
    void say(String line);

    /** Columns to wrap at. */
    int width();

    /** True when columns and rules of dashes should be left out: one {@code label: value} a line instead. */
    boolean plain();

    /** False when lines come from a pipe or a file, where nobody sits who could be asked. */
    default boolean person() {
        return true;
    }

    /** There is no more input. */
    final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** The person interrupted. */
    final class Interrupted extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
