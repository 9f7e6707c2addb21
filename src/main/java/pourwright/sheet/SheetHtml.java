package pourwright.sheet;

import java.util.List;

/**
 * A sheet as one HTML file that needs no other: it prints on one page of A4 or Letter, says nothing by colour alone, and reads
 * from top to bottom with a screen reader. The boxes can be ticked and the times typed on a screen as well as by pen.
 */
public final class SheetHtml {
    /** Letters on the page up to which each size of type fits; found by printing every recorded plan. */
    private static final int ROOMY = 2300;

    private static final int USUAL = 3350;
    private static final int TIGHT = 4800;
    /** Room that a picture takes, in letters. */
    private static final int PICTURE = 1500;

    private static final String STYLE = """
            @page { margin: 9mm }
            html { color: #000; background: #fff; font-family: Helvetica, Arial, sans-serif; line-height: 1.22 }
            body { margin: 0 auto; max-width: 186mm }
            body.roomy { font-size: 10.5pt } body.usual { font-size: 9.5pt }
            body.tight { font-size: 8.5pt } body.full { font-size: 7.2pt }
            h1 { font-size: 1.6em; margin: 0 0 .2em; border-bottom: 2pt solid #000; overflow-wrap: anywhere }
            h2 { font-size: 1.1em; margin: .6em 0 .15em }
            p, ul, ol, dl { margin: .15em 0 }
            ul, ol { padding-left: 1.4em }
            ul.ticks { list-style: none; padding-left: 0 }
            ul.ticks label { display: flex; align-items: baseline } ul.ticks input { flex: none }
            .verdict { border: 1.5pt solid #000; padding: .25em .5em; margin: .3em 0 }
            .verdict strong { font-size: 1.15em }
            .two { display: flex; gap: 5mm } .two > section { flex: 1; min-width: 0 }
            dl { display: grid; grid-template-columns: max-content 1fr; column-gap: .8em }
            dt { font-weight: bold } dd { margin: 0; overflow-wrap: anywhere }
            table { border-collapse: collapse; width: 100% }
            th, td { border: .6pt solid #444; padding: .12em .4em; text-align: left; vertical-align: top }
            td.at { text-align: right; white-space: nowrap } td.clock { width: 4.2em }
            input[type=checkbox] { width: 1.1em; height: 1.1em; margin: 0 .4em 0 0; vertical-align: -.15em }
            input.t { width: 4em; border: 0; border-bottom: .8pt solid #000; font: inherit; background: #fff }
            @media screen { body { padding: 6mm 4mm } }
            svg { display: block; max-width: 100%; max-height: 62mm; margin: .2em auto; height: auto }
            .tight svg { max-height: 44mm } .full svg { max-height: 30mm }
            .cautions { font-size: .93em }
            .sign { display: flex; gap: 4mm; margin-top: .7em } .sign label { flex: 1; white-space: nowrap }
            .sign input { width: 60%; border: 0; border-bottom: .8pt solid #000; font: inherit }
            footer { font-size: .85em; margin-top: .4em; border-top: .6pt solid #444 }
            """;

    private final Sheet s;
    private final StringBuilder out = new StringBuilder();

    private SheetHtml(Sheet s) {
        this.s = s;
    }

    /** The text of the file. */
    public static String of(Sheet sheet) {
        return new SheetHtml(sheet).page();
    }

    private String page() {
        line("<!DOCTYPE html>");
        line("<html lang=\"en\">");
        line("<head>");
        line("<meta charset=\"utf-8\">");
        line("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">");
        line("<meta name=\"viewport\" content=\"width=device-width\">");
        line("<title>" + text(s.title()) + "</title>");
        line("<style>");
        out.append(STYLE);
        line("</style>");
        line("</head>");
        line("<body class=\"" + size() + "\">");
        line("<main>");
        line("<h1>" + text(s.title()) + "</h1>");
        verdict();
        line("<div class=\"two\">");
        facts();
        scale();
        line("</div>");
        mould();
        timetable();
        cautions();
        line("</main>");
        line("<div class=\"sign\">");
        line("<label>Cast by <input></label> <label>Day <input></label> <label>Checked by <input></label>");
        line("</div>");
        line("<footer><p>" + text(s.closing()) + "</p><p>" + text(s.version()) + "</p></footer>");
        line("</body>");
        line("</html>");
        return out.toString();
    }

    /** Much text is set in smaller type, so that a page stays a page. */
    private String size() {
        int letters = s.closing().length() + s.picture().map(p -> PICTURE).orElse(0);
        letters += s.rows().stream()
                .mapToInt(r -> r.step().length() + r.watch().length() + 40)
                .sum();
        letters += s.cautions().stream()
                .mapToInt(c -> c.hazard().length() + c.say().length())
                .sum();
        letters += s.verdict().first().stream().mapToInt(String::length).sum();
        letters += s.vents().stream().mapToInt(v -> v.length() + 20).sum();
        letters += (s.weighings().size() + s.facts().size()) * 25;
        return letters <= ROOMY ? "roomy" : letters <= USUAL ? "usual" : letters <= TIGHT ? "tight" : "full";
    }

    private void verdict() {
        line("<section class=\"verdict\" aria-label=\"Verdict\">");
        line("<p><strong>" + text(s.verdict().word()) + "</strong></p>");
        ticks(s.verdict().first());
        line("</section>");
    }

    private void ticks(List<String> things) {
        if (things.isEmpty()) {
            return;
        }
        line("<ul class=\"ticks\">");
        things.forEach(t -> line("<li><label><input type=\"checkbox\">" + text(t) + "</label></li>"));
        line("</ul>");
    }

    private void facts() {
        line("<section>");
        line("<h2>The job</h2>");
        line("<dl>");
        s.facts().forEach(f -> line("<dt>" + text(f.label()) + "</dt><dd>" + text(f.value()) + "</dd>"));
        if (!s.gauge().isEmpty()) {
            line("<dt>Gauge target</dt><dd>" + text(s.gauge()) + "</dd>");
        }
        line("</dl>");
        line("</section>");
    }

    private void scale() {
        line("<section>");
        line("<h2>On the scale</h2>");
        if (!s.scaleNote().isEmpty()) {
            line("<p>" + text(s.scaleNote()) + "</p>");
        }
        ticks(s.weighings());
        line("</section>");
    }

    private void mould() {
        if (s.vents().isEmpty() && s.picture().isEmpty()) {
            return;
        }
        line("<section>");
        line("<h2>The mould</h2>");
        ticks(s.vents());
        s.picture().ifPresent(out::append);
        line("</section>");
    }

    private void timetable() {
        if (s.rows().isEmpty()) {
            return;
        }
        line("<section>");
        line("<h2>Step by step</h2>");
        line(
                "<p><label>Mixing begins at <input class=\"t\"></label>. Times count from then; \"-\" means before it.</p>");
        line("<table>");
        line("<thead><tr><th scope=\"col\">Plan</th><th scope=\"col\">Clock</th><th scope=\"col\">Do</th>"
                + "<th scope=\"col\">Look for</th></tr></thead>");
        line("<tbody>");
        int n = 0;
        for (Sheet.Row r : s.rows()) {
            n++;
            line("<tr><td class=\"at\">" + text(r.at())
                    + "</td><td class=\"clock\"><input class=\"t\" aria-label=\"clock at step " + n + "\"></td><td>"
                    + text(r.step()) + "</td><td>" + text(r.watch()) + "</td></tr>");
        }
        line("</tbody>");
        line("</table>");
        line("</section>");
    }

    private void cautions() {
        if (s.cautions().isEmpty()) {
            return;
        }
        line("<section class=\"cautions\">");
        line("<h2>Cautions</h2>");
        line("<ul>");
        s.cautions().forEach(c -> line("<li><strong>" + text(c.hazard()) + ".</strong> " + text(c.say()) + "</li>"));
        line("</ul>");
        line("</section>");
    }

    private void line(String html) {
        out.append(html).append('\n');
    }

    /** Text that cannot be taken for marks. A no-break space stays one: number and unit belong together. */
    static String text(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("\u00a0", "&nbsp;");
    }
}
