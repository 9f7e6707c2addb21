package pourwright.units;

/**
 * The shape of what was typed, before it is held against the question.
 *
 * @param first the value, or the low end of a range
 * @param second the high end of a range, the tolerance, the low end that stands in brackets, or null
 * @param third the high end that stands in brackets, or null
 * @param tolerancePercent whether {@code second} is a percentage of {@code first}
 * @param vacuum whether the word "vacuum" stood before a pressure
 * @param confirmed whether the same value in another unit stood behind it in brackets, so that nothing is left to ask
 */
record Typed(
        Form form,
        Amount first,
        Amount second,
        Amount third,
        boolean tolerancePercent,
        boolean vacuum,
        boolean confirmed) {
    enum Form {
        VALUE,
        RANGE,
        TOLERANCE,
        /** A value with its ends in brackets, as it is shown back: "about 5 min (4.25 to 5.75)". */
        ENDS
    }

    static Typed value(Amount value, boolean vacuum) {
        return new Typed(Form.VALUE, value, null, null, false, vacuum, false);
    }

    static Typed range(Amount low, Amount high, boolean vacuum) {
        return new Typed(Form.RANGE, low, high, null, false, vacuum, false);
    }

    static Typed tolerance(Amount value, Amount by, boolean percent, boolean vacuum) {
        return new Typed(Form.TOLERANCE, value, by, null, percent, vacuum, false);
    }

    Typed withEnds(Amount low, Amount high) {
        return new Typed(Form.ENDS, first, low, high, false, vacuum, confirmed);
    }

    Typed withoutEnds() {
        return new Typed(Form.VALUE, first, null, null, false, vacuum, confirmed);
    }

    Typed sure() {
        return new Typed(form, first, second, third, tolerancePercent, vacuum, true);
    }

    boolean about() {
        return first.about() || (second != null && second.about());
    }

    boolean finite() {
        return Double.isFinite(first.value())
                && (second == null || Double.isFinite(second.value()))
                && (third == null || Double.isFinite(third.value()));
    }
}
