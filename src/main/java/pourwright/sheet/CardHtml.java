package pourwright.sheet;

/**
 * A card as one HTML file that needs no other: black on white, large type, one page of A4 or Letter, or numbered pages where it
 * is too long for one.
 */
public final class CardHtml {
    private static final String STYLE = """
            @page { margin: 10mm }
            html { color: #000; background: #fff; font-family: Helvetica, Arial, sans-serif; line-height: 1.2 }
            body { margin: 0 auto; max-width: 190mm }
            h1 { font-size: 30pt; margin: 0; border-bottom: 3pt solid #000; overflow-wrap: anywhere }
            h2 { margin: 2.4mm 0 .6mm; border-bottom: .8pt solid #000 }
            p, ul { margin: 0; padding: 0; overflow-wrap: anywhere } ul { list-style: none }
            li { break-inside: avoid; margin: 0 0 2mm } li strong { display: block } .cautions li { margin: 0 0 1mm }
            .large { font-size: 12pt } .large li strong { font-size: 22pt } .large h2 { font-size: 17pt }
            .usual { font-size: 10.5pt } .usual li strong { font-size: 17pt } .usual h2 { font-size: 14.5pt }
            .cautions { border: 2pt solid #000; padding: 0 2mm 1mm; margin: 3mm 0 0 } .cautions h2 { border: 0; margin-top: 1mm }
            footer { font-size: 9pt; margin-top: 3mm; border-top: .8pt solid #000 }
            .page + .page { break-before: page }
            @media screen { body { padding: 6mm 4mm } .page + .page { margin-top: 20mm } }
            """;

    private final StringBuilder out = new StringBuilder();

    private CardHtml() {}

    /** The text of the file. */
    public static String of(Card card) {
        return new CardHtml().file(card);
    }

    private String file(Card card) {
        CardFit.Fitted fitted = CardFit.fit(card);
        line("<!DOCTYPE html>");
        line("<html lang=\"en\">");
        line("<head>");
        line("<meta charset=\"utf-8\">");
        line("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">");
        line("<meta name=\"viewport\" content=\"width=device-width\">");
        line("<title>" + SheetHtml.text(card.title()) + "</title>");
        line("<style>");
        out.append(STYLE);
        line("</style>");
        line("</head>");
        line("<body class=\"" + fitted.size().style + "\">");
        line("<main>");
        fitted.pages().forEach(this::page);
        line("</main>");
        line("</body>");
        line("</html>");
        return out.toString();
    }

    private void page(Card c) {
        line("<section class=\"page\">");
        line("<h1>" + SheetHtml.text(c.title()) + "</h1>");
        if (!c.lead().isEmpty()) {
            line("<p>" + SheetHtml.text(c.lead()) + "</p>");
        }
        for (Card.Group g : c.groups()) {
            line("<h2>" + SheetHtml.text(g.heading()) + "</h2>");
            line("<ul>");
            g.lines()
                    .forEach(l -> line("<li><strong>" + SheetHtml.text(l.say()) + "</strong> "
                            + SheetHtml.text(l.because()) + "</li>"));
            line("</ul>");
        }
        if (!c.cautions().isEmpty()) {
            line("<section class=\"cautions\">");
            line("<h2>Cautions</h2>");
            line("<ul>");
            c.cautions().forEach(x -> line("<li>" + SheetHtml.text(x) + "</li>"));
            line("</ul>");
            line("</section>");
        }
        line("<footer>");
        c.foot().forEach(f -> line("<p>" + SheetHtml.text(f) + "</p>"));
        line("</footer>");
        line("</section>");
    }

    private void line(String html) {
        out.append(html).append('\n');
    }
}
