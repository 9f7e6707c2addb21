package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import pourwright.sheet.Card;
import pourwright.sheet.CardFit;

/** A card as plain text, 80 columns wide, with the same pages and words as its HTML. */
public final class CardPage {
    private static final int WIDTH = 80;

    private final List<String> out = new ArrayList<>();

    private CardPage() {}

    /** All its lines; a line of equals signs stands under each title. */
    public static List<String> lines(Card card) {
        CardPage page = new CardPage();
        CardFit.pages(card).forEach(page::page);
        return List.copyOf(page.out);
    }

    private void page(Card c) {
        if (!out.isEmpty()) {
            out.add("");
            out.add("");
        }
        int title = out.size();
        wrap(c.title(), "", "");
        out.add("=".repeat(Math.min(WIDTH, out.get(title).length())));
        if (!c.lead().isEmpty()) {
            wrap(c.lead(), "", "");
        }
        for (Card.Group g : c.groups()) {
            head(g.heading());
            for (Card.Line l : g.lines()) {
                wrap(l.say(), "  * ", "    ");
                if (!l.because().isEmpty()) {
                    wrap(l.because(), "      ", "      ");
                }
            }
        }
        if (!c.cautions().isEmpty()) {
            head("Cautions");
            c.cautions().forEach(x -> wrap(x, "  ! ", "    "));
        }
        out.add("");
        c.foot().forEach(f -> wrap(f, "", "  "));
    }

    private void head(String heading) {
        out.add("");
        wrap(heading, "", "");
        out.add("-".repeat(heading.length()));
    }

    private void wrap(String text, String first, String rest) {
        out.addAll(Wrap.text(text, WIDTH, first, rest));
    }
}
