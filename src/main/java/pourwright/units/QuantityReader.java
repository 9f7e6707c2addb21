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
        QuantityParser parser = new QuantityParser(typed, clean, e);
        Typed shape = parser.parse();
        return shape == null ? parser.failure : new Resolver(typed, shape, e).resolve();
    }
}
