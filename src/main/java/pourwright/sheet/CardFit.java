package pourwright.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * How a card fits paper: in large type on one page; where it is longer in smaller type on one page; where it is longer still on
 * several pages, each with its number. Nothing is cut off.
 *
 * <p>A letter can be read when it is 5 minutes of arc high (the letters of a test of sight for which "1.0" or 20/20 is noted, from
 * memory). At two metres that is 2.9 mm. Capitals of Helvetica are 0.72 of the size of type, so 17 points give 4.3 mm, one and a half times
 * that, and 22 points give 5.6 mm, nearly twice.
 */
public final class CardFit {
    /** What the smaller of A4 and Letter leaves between margins, with some to spare since letters differ in width. */
    private static final double HEIGHT_MM = 246;

    private static final double WIDTH_MM = 184;
    private static final double POINT_MM = 25.4 / 72;
    private static final double LEADING = 1.2;
    /** Mean width of a letter over the size of type, bold and plain. */
    private static final double BOLD = 0.49;

    private static final double PLAIN = 0.46;

    /** A size of type, by the name that the page's style knows. */
    enum Size {
        LARGE("large", 22, 12),
        USUAL("usual", 17, 10.5);

        final String style;
        private final double sayPt;
        private final double smallPt;

        Size(String style, double sayPt, double smallPt) {
            this.style = style;
            this.sayPt = sayPt;
            this.smallPt = smallPt;
        }

        private double say(String text) {
            return height(text, sayPt, BOLD);
        }

        private double small(String text) {
            return text.isEmpty() ? 0 : height(text, smallPt, PLAIN);
        }

        private static double height(String text, double points, double wide) {
            double letters = WIDTH_MM / (points * POINT_MM * wide);
            return Math.ceil(text.length() / letters) * points * POINT_MM * LEADING;
        }

        double line(Card.Line l) {
            return say(l.say()) + small(l.because()) + 2.4;
        }

        double heading() {
            return smallPt * 1.4 * POINT_MM * LEADING + 3;
        }

        double foot(List<String> lines) {
            return lines.stream().mapToDouble(f -> height(f, 9, PLAIN)).sum();
        }

        /** Title, lead and the line of the foot that stands on every page. */
        double around(Card c) {
            return height(c.title() + " (10 of 10)", 30, BOLD) + small(c.lead()) + foot(first(c)) + 9;
        }

        double caution(String text) {
            return small(text) + 1.2;
        }

        double whole(Card c) {
            double cautions = c.cautions().isEmpty()
                    ? 0
                    : heading()
                            + c.cautions().stream().mapToDouble(this::caution).sum();
            return around(c)
                    + foot(rest(c))
                    + cautions
                    + c.groups().stream()
                            .mapToDouble(g -> heading()
                                    + g.lines().stream().mapToDouble(this::line).sum())
                            .sum();
        }
    }

    /**
     * A card as it goes on paper.
     *
     * @param size the size of type
     * @param pages one card a page, with its number in the title where there are several
     */
    record Fitted(Size size, List<Card> pages) {}

    private CardFit() {}

    private static List<String> first(Card c) {
        return c.foot().stream().limit(1).toList();
    }

    private static List<String> rest(Card c) {
        return c.foot().stream().skip(1).toList();
    }

    /** The pages of a card; one where it fits. */
    public static List<Card> pages(Card card) {
        return fit(card).pages();
    }

    static Fitted fit(Card card) {
        for (Size s : Size.values()) {
            if (s.whole(card) <= HEIGHT_MM) {
                return new Fitted(s, List.of(card));
            }
        }
        return new Fitted(Size.USUAL, new Splitter(card, Size.USUAL).pages());
    }

    /** Lays lines on pages until one is full. */
    private static final class Splitter {
        private final Card card;
        private final Size size;
        private final double room;
        private final List<Card> pages = new ArrayList<>();
        private List<Card.Group> groups = new ArrayList<>();
        private List<String> cautions = new ArrayList<>();
        private double used;

        Splitter(Card card, Size size) {
            this.card = card;
            this.size = size;
            this.room = HEIGHT_MM - size.around(card);
        }

        List<Card> pages() {
            for (Card.Group g : card.groups()) {
                List<Card.Line> lines = new ArrayList<>();
                String heading = g.heading();
                boolean begun = false;
                for (Card.Line l : g.lines()) {
                    double wants = size.line(l) + (lines.isEmpty() ? size.heading() : 0);
                    if (used + wants > room && used > 0) {
                        close(heading, lines);
                        lines = new ArrayList<>();
                        heading = begun ? g.heading() + ", continued" : g.heading();
                        wants = size.line(l) + size.heading();
                    }
                    lines.add(l);
                    begun = true;
                    used += wants;
                }
                groups.add(new Card.Group(heading, lines));
            }
            for (String c : card.cautions()) {
                double wants = size.caution(c) + (cautions.isEmpty() ? size.heading() : 0);
                if (used + wants > room && used > 0) {
                    turn();
                    wants = size.caution(c) + size.heading();
                }
                cautions.add(c);
                used += wants;
            }
            if (used + size.foot(rest(card)) > room) {
                turn();
                used = 1;
            }
            turn();
            List<Card> out = new ArrayList<>();
            for (Card p : pages) {
                boolean last = out.size() == pages.size() - 1;
                out.add(new Card(
                        p.title() + " (" + (out.size() + 1) + " of " + pages.size() + ")",
                        out.isEmpty() ? p.lead() : "",
                        p.groups(),
                        p.cautions(),
                        last ? p.foot() : first(p)));
            }
            return out;
        }

        private void close(String heading, List<Card.Line> lines) {
            if (!lines.isEmpty()) {
                groups.add(new Card.Group(heading, lines));
            }
            turn();
        }

        private void turn() {
            if (used > 0) {
                pages.add(new Card(card.title(), card.lead(), groups, cautions, card.foot()));
            }
            groups = new ArrayList<>();
            cautions = new ArrayList<>();
            used = 0;
        }
    }
}
