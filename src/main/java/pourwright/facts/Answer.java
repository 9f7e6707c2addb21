package pourwright.facts;

import java.util.List;

/** What a person answered to one question, already read. */
public sealed interface Answer {
    /**
     * A quantity.
     *
     * @param si its range in SI
     * @param unit the unit it was typed in
     * @param echo what was read, in the person's own unit
     */
    record Quantity(Estimate si, String unit, String echo) implements Answer {}

    /**
     * A choice.
     *
     * @param id the choice's id
     */
    record Choice(String id) implements Answer {}

    /**
     * Several choices that hold at once.
     *
     * @param ids the choices' ids, in the order of the question
     */
    record Several(List<String> ids) implements Answer {
        public Several {
            ids = List.copyOf(ids);
        }
    }

    /**
     * A mix ratio.
     *
     * @param first parts of the first can
     * @param second parts of the second can
     * @param by {@code weight}, {@code volume} or empty when it was not said
     * @param echo what was read
     */
    record Ratio(double first, double second, String by, String echo) implements Answer {}

    /**
     * Words taken as they are: the name of a file, or coordinates that only their reader understands.
     *
     * @param text what was typed
     */
    record Text(String text) implements Answer {}

    /** "Don't know": always an answer, never a "no". */
    record DontKnow() implements Answer {}
}
