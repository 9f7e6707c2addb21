package pourwright.console;

import java.util.ArrayList;
import java.util.List;

/** Breaks text at spaces to a width. A no-break space keeps number and unit together and is shown as a space. */
public final class Wrap {
    private static final char JOIN = '\u00a0';
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
        for (String word : text.split(" +")) {
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

    private static String shown(StringBuilder line) {
        return line.toString().replace(JOIN, ' ').stripTrailing();
    }
}
