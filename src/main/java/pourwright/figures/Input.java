package pourwright.figures;

/**
 * One input of a formula: a figure, an answer, a class value or a guideline, by name.
 *
 * @param name its name; {@code guide:} before it means a guideline, {@code guides:} three that make a range,
 *     {@code error:} one that an instrument may be off by either way,
 *     {@code typed:} an answer that was really typed, {@code kind:} the pump kind's usual value, {@code raw:} an answer,
 *     class value or default of that name even where a figure has the same name
 * @param direction how the result moves when the input grows
 * @param neutral SI value that stands in when nobody gave one, or null when the formula cannot do without
 */
record Input(String name, Direction direction, Double neutral) {
    enum Direction {
        /** The result never falls when the input grows. */
        UP,
        /** The result never rises when the input grows. */
        DOWN,
        /** It depends: both ends are tried. */
        FREE,
        /** Its own range matters little beside the others and is left out, which the figure says. */
        TYPICAL
    }

    /** An input the formula cannot do without. */
    static Input in(String name) {
        return new Input(name, Direction.FREE, null);
    }

    /** A guideline, by name. */
    static Input guide(String name) {
        return new Input("guide:" + name, Direction.FREE, null);
    }

    /** Three guidelines that together make a range; {@code none} stands for zero. */
    static Input guides(String low, String typical, String high) {
        return new Input("guides:" + low + "," + typical + "," + high, Direction.FREE, null);
    }

    /** What an instrument may be off by, either way; what it showed was typed, and stays known. */
    static Input giveOrTake(String guideline) {
        return new Input("error:" + guideline, Direction.FREE, null);
    }

    Input up() {
        return new Input(name, Direction.UP, neutral);
    }

    Input down() {
        return new Input(name, Direction.DOWN, neutral);
    }

    /** This input at its typical value, whatever its range. */
    Input typical() {
        return new Input(name, Direction.TYPICAL, neutral);
    }

    /** This input with a stand-in for when nobody gave one. */
    Input or(double value) {
        return new Input(name, direction, value);
    }
}
