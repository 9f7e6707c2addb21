package pourwright.units;

/**
 * Reads a quantity as people type it.
 *
 * <p>Reading never depends on the machine's language, never throws for any text, and takes time in proportion to its length. Text of
 * more than 200 characters is refused at once.
 */
public final class QuantityReader {
    private QuantityReader() {}

    /** What {@code typed} means as an answer to a question that takes {@code e}; null means "don't know". */
    public static Reading read(String typed, Expect e) {
        if (typed == null) {
            return new DontKnow();
        }
        if (typed.length() > TypedText.LONGEST) {
            return Sentences.tooLong(typed, e);
        }
        String clean = TypedText.clean(typed);
        if (clean.isEmpty()) {
            return Sentences.empty(e);
        }
        if (DontKnow.says(clean)) {
            return new DontKnow();
        }
        Reading word = WordGuess.read(typed, clean, e);
        if (word != null) {
            return word;
        }
        Reading reading = grammar(typed, clean, e);
        if (reading instanceof Bad) {
            Reading other = SlashedRange.read(typed, clean, e);
            other = other == null ? MainsFrequency.read(clean, e) : other;
            return other == null ? Hardness.refused(typed, clean, e, reading) : other;
        }
        Reading range = SlashedRange.read(typed, clean, e);
        return range == null ? reading : range;
    }

    /** Value, range or tolerance, held against what the question takes. */
    static Reading grammar(String typed, String clean, Expect e) {
        QuantityParser parser = new QuantityParser(typed, clean, e);
        Typed shape = parser.parse();
        if (shape == null) {
            return parser.failure;
        }
        if (shape.form() == Typed.Form.ENDS && shape.about()) {
            // What "about" stands for is rounded where it is shown, so its own echo is read as the word alone.
            Reading plain = new Resolver(typed, shape.withoutEnds(), e).resolve();
            if (plain instanceof Read r && TypedText.clean(r.echo()).equals(clean)) {
                return plain;
            }
        }
        return new Resolver(typed, shape, e).resolve();
    }
}
