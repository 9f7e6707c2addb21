package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import pourwright.sheet.Sheet;

/** A sheet as plain text, 80 columns wide, to be printed or pinned up. */
public final class SheetPage {
    private static final int WIDTH = 80;
    private static final int CLOCK = 10;
    private static final String TICK = "[ ] ";

    private final Sheet s;
    private final List<String> out = new ArrayList<>();

    private SheetPage(Sheet s) {
        this.s = s;
    }

    /** All its lines. */
    public static List<String> lines(Sheet sheet) {
        return new SheetPage(sheet).all();
    }

    private List<String> all() {
        wrap(s.title(), "", "");
        out.add("=".repeat(Math.min(WIDTH, out.get(0).length())));
        out.add("");
        wrap(s.verdict().word(), "", "");
        s.verdict().first().forEach(f -> wrap(f, "  " + TICK, "      "));
        head("The job");
        s.facts().forEach(f -> wrap(f.value(), "  " + f.label() + ": ", "    "));
        if (!s.gauge().isEmpty()) {
            wrap(s.gauge(), "  Gauge target: ", "    ");
        }
        head("On the scale");
        if (!s.scaleNote().isEmpty()) {
            wrap(s.scaleNote(), "  ", "  ");
        }
        s.weighings().forEach(w -> wrap(w, "  " + TICK, "      "));
        if (!s.vents().isEmpty()) {
            head("The mould");
            s.vents().forEach(v -> wrap(v, "  " + TICK, "      "));
        }
        timetable();
        if (!s.cautions().isEmpty()) {
            head("Cautions");
            s.cautions().forEach(c -> wrap(c.hazard() + ". " + c.say(), "  - ", "    "));
        }
        out.add("");
        out.add("Cast by ____________________  Day ______________  Checked by _________________");
        out.add("");
        wrap(s.closing(), "", "");
        wrap(s.version(), "", "");
        return List.copyOf(out);
    }

    private void timetable() {
        if (s.rows().isEmpty()) {
            return;
        }
        head("Step by step");
        out.add("  Mixing begins at ____:____  Times count from then; \"-\" means before it.");
        for (Sheet.Row r : s.rows()) {
            String at = r.at().replace(Wrap.JOIN, ' ');
            String watch = r.watch().isEmpty() ? "" : " Look for: " + r.watch() + ".";
            wrap(
                    "at ____:____ " + r.step() + watch,
                    " ".repeat(Math.max(0, CLOCK - at.length())) + at + "  ",
                    " ".repeat(CLOCK + 2));
        }
    }

    private void head(String title) {
        out.add("");
        out.add(title);
    }

    private void wrap(String text, String first, String rest) {
        out.addAll(Wrap.text(text, WIDTH, first, rest));
    }
}
