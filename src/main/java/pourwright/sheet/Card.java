package pourwright.sheet;

import java.util.List;

/**
 * A card for the wall: the few lines that matter, to be read from two metres. It knows nothing of what it is about; whoever
 * makes one says that. {@link CardHtml} and the console's page show the same words.
 *
 * @param title what it is about, in a few words
 * @param lead one line that says what the card is for; may be empty
 * @param groups the lines, in the order in which they are read, safety first
 * @param cautions hazards, each named and in full
 * @param foot small print; where a card takes several pages the first line stands on each and the others on the last
 */
public record Card(String title, String lead, List<Group> groups, List<String> cautions, List<String> foot) {
    public Card {
        groups = groups.stream().filter(g -> !g.lines().isEmpty()).toList();
        cautions = List.copyOf(cautions);
        foot = foot.stream().filter(f -> !f.isBlank()).toList();
    }

    /**
     * Lines that belong together.
     *
     * @param heading a word or two
     * @param lines at least one; a group without lines is left away
     */
    public record Group(String heading, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }

        /** A group of plain lines. */
        public static Group of(String heading, List<String> lines) {
            return new Group(heading, lines.stream().map(Line::of).toList());
        }
    }

    /**
     * One line.
     *
     * @param say what to do, in large type
     * @param because the reason, in small type below it; may be empty
     */
    public record Line(String say, String because) {
        /** A line that needs no reason. */
        public static Line of(String say) {
            return new Line(say, "");
        }
    }
}
