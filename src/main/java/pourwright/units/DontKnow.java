package pourwright.units;

import java.util.Set;

/** The person does not know, or skips the question. Always allowed. */
public record DontKnow() implements Reading, RatioReading {
    private static final Set<String> WORDS = Set.of(
            "dk",
            "dunno",
            "don't know",
            "dont know",
            "do not know",
            "i don't know",
            "i dont know",
            "i do not know",
            "?",
            "??",
            "???",
            "idk",
            "unknown",
            "not sure",
            "i'm not sure",
            "im not sure",
            "unsure",
            "no idea",
            "no clue",
            "haven't a clue",
            "can't say",
            "who knows",
            "dunno really",
            "n/a",
            "na",
            "skip",
            "pass",
            "not known",
            "null");

    /** Whether what was typed says so. */
    public static boolean typed(String typed) {
        return typed.length() <= TypedText.LONGEST && says(TypedText.clean(typed));
    }

    /** Whether the cleaned text says so. */
    static boolean says(String clean) {
        String text = clean;
        while (text.length() > 1 && (text.endsWith(".") || text.endsWith("!"))) {
            text = text.substring(0, text.length() - 1).strip();
        }
        return WORDS.contains(text);
    }
}
