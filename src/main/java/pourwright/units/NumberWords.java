package pourwright.units;

/** Numbers written as words: "half an", "a", "twenty". */
final class NumberWords {
    /** Longest first where one begins another, so that "half an" is not read as "half". */
    private static final String[] WORDS = {
        "three quarters of an",
        "three quarters of a",
        "a quarter of an",
        "a quarter of a",
        "quarter of an",
        "quarter of a",
        "a quarter",
        "quarter",
        "half an",
        "half a",
        "a half",
        "half",
        "an",
        "a",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "fifteen",
        "twenty",
        "thirty",
        "forty",
        "fifty",
        "sixty",
        "ninety"
    };

    private static final double[] VALUES = {
        0.75, 0.75, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.5, 0.5, 0.5, 0.5, 1, 1, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12,
        15, 20, 30, 40, 50, 60, 90
    };

    private NumberWords() {}

    /** The number in words at the cursor, or NaN with the cursor unmoved. */
    static double scan(Cursor c) {
        for (int i = 0; i < WORDS.length; i++) {
            if (c.word(WORDS[i])) {
                return VALUES[i];
            }
        }
        return Double.NaN;
    }
}
