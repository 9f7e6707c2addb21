package pourwright.interview;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Several sizes typed at once, as people write the sides of a box. */
public final class Sizes {
    private static final int LONGEST = 200;
    private static final Pattern BETWEEN =
            Pattern.compile("\\s*[x×*]\\s*(?=[\\d.])|\\s+by\\s+(?=[\\d.])", Pattern.CASE_INSENSITIVE);
    private static final Pattern UNIT = Pattern.compile("[\\p{L}\"'\u2032\u2033]+\\.?$");

    private Sizes() {}

    /**
     * The sizes of "20 x 15 x 12 cm", each with its unit: one without takes that of the last. A text with one size alone comes
     * back as it is.
     */
    public static List<String> of(String typed) {
        String text = typed.strip();
        if (text.length() > LONGEST) {
            return List.of(text);
        }
        List<String> parts = List.of(BETWEEN.split(text));
        Matcher last = UNIT.matcher(parts.get(parts.size() - 1));
        String unit = last.find() ? last.group() : "";
        return parts.stream()
                .map(String::strip)
                .map(p -> unit.isEmpty() || UNIT.matcher(p).find() ? p : p + " " + unit)
                .toList();
    }
}
