package pourwright.units;

/**
 * The shape of what was typed, before it is held against the question.
 *
 * @param first the value, or the low end of a range
 * @param second the high end, the tolerance, or null
 * @param tolerancePercent whether {@code second} is a percentage of {@code first}
 * @param vacuum whether the word "vacuum" stood before a pressure
 */
record Typed(Form form, Amount first, Amount second, boolean tolerancePercent, boolean vacuum) {
    enum Form {
        VALUE,
        RANGE,
        TOLERANCE
    }

    boolean about() {
        return first.about() || (second != null && second.about());
    }
}
