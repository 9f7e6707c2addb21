package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Breaks text at spaces to a width. A no-break space keeps number and unit together and is shown as a space; where a text
 * has a plain space between them, it counts as one.
 */
public final class Wrap {
    static final char JOIN = '\u00a0';
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:[µμmckMhd]?(?:m[²³]?|g|L|l|bar|Pa|s|W)|[m]?Pa·s"
                    + "|[mcd]?m³/[smh]|L/(?:s|min)|kg/m³|g/(?:cm³|m[lL])|h|d|min|days?|hours?|minutes?|seconds?|weeks?|months?|years?|litres?|grams?|kelvin|inch(?:es)?|inHg|torr|psi|cfm|cP"
                    + "|°C|°F|K|J|N|%|Hz|lb|oz)(?![\\w/²³·]))");
    private static final int LEAST_WIDTH = 20;

    private Wrap() {}

    /**
     * Lines of at most {@code width} columns; only a word longer than that stands out.
     *
     * @param text the text
     * @param width columns
     * @param first what stands before the first line
     * @param rest what stands before the others
     */
    public static List<String> text(String text, int width, String first, String rest) {
        int room = Math.max(LEAST_WIDTH, width);
        if (first.length() > room / 2 && !first.isBlank()) {
            // A label that takes half the line is wrapped with the text.
            return text(first.strip() + " " + text, width, "", rest.length() > room / 2 ? "" : rest);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : joined(text).split(" +")) {
            if (!empty && line.length() + 1 + word.length() > room) {
                lines.add(shown(line));
                line = new StringBuilder(rest);
                empty = true;
            }
            if (!empty) {
                line.append(' ');
            }
            line.append(word);
            empty = false;
        }
        lines.add(shown(line));
        return lines;
    }

    /** The text with a no-break space between every number and the unit after it. */
    static String joined(String text) {
        return NUMBER_AND_UNIT.matcher(text).replaceAll(String.valueOf(JOIN));
    }

    private static String shown(StringBuilder line) {
        return line.toString().replace(JOIN, ' ').stripTrailing();
    }
}
