package pourwright.units;

/** Numbers written as words: "half an", "a", "twenty-five", "a hundred and twenty". */
final class NumberWords {
    /** Longest first where one begins another, so that "half an" is not read as "half". */
    private static final String[] SHARES = {
        "three quarters of an",
        "three quarters of a",
        "three quarter",
        "a quarter of an",
        "a quarter of a",
        "quarter of an",
        "quarter of a",
        "a quarter",
        "quarter",
        "half an",
        "half a dozen",
        "half a",
        "a half",
        "half",
        "a dozen",
        "dozen"
    };

    private static final double[] SHARE_VALUES = {
        0.75, 0.75, 0.75, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.5, 6, 0.5, 0.5, 0.5, 12, 12
    };

    private static final String[] SMALL = {
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
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen"
    };

    private static final String[] TENS = {"twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"};

    private NumberWords() {}

    /** The number in words at the cursor, or NaN with the cursor unmoved. */
    static double scan(Cursor c) {
        for (int i = 0; i < SHARES.length; i++) {
            if (c.word(SHARES[i])) {
                return SHARE_VALUES[i];
            }
        }
        double n = scaled(c, "thousand", 1000, scaled(c, "hundred", 100, belowHundred(c)));
        if (!Double.isNaN(n)) {
            return n;
        }
        return c.word("an") || c.word("a") ? 1 : Double.NaN;
    }

    /** "Two hundred and fifty", "a thousand": the count that was read so far, times the power, and what follows. */
    private static double scaled(Cursor c, String word, double power, double count) {
        int from = c.at;
        boolean article = Double.isNaN(count) && c.word("a");
        if (!c.word(word)) {
            c.at = from;
            return count;
        }
        double many = (article || Double.isNaN(count) ? 1 : count) * power;
        int behind = c.at;
        c.word("and");
        double rest = power > 100 ? scaled(c, "hundred", 100, belowHundred(c)) : belowHundred(c);
        if (Double.isNaN(rest)) {
            c.at = behind;
            return many;
        }
        return many + rest;
    }

    private static double belowHundred(Cursor c) {
        double tens = one(c, TENS);
        if (Double.isNaN(tens)) {
            return 1 + one(c, SMALL);
        }
        int from = c.at;
        if (c.peek(0) == '-') {
            c.at++;
        }
        double unit = c.peek(0) == ' ' && c.at > from ? Double.NaN : one(c, SMALL);
        if (Double.isNaN(unit) || unit > 8) {
            c.at = from;
            return 20 + 10 * tens;
        }
        return 20 + 10 * tens + 1 + unit;
    }

    /** Which of the words stands here, from nought; or NaN. */
    private static double one(Cursor c, String[] words) {
        for (int i = 0; i < words.length; i++) {
            if (c.word(words[i])) {
                return i;
            }
        }
        return Double.NaN;
    }
}
