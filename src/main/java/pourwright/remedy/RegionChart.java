package pourwright.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.advice.Verdict;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/** A working region as letters, and as a drawing that is read without colour. */
public final class RegionChart {
    /** What the letters mean. */
    public static final String LEGEND =
            "G is go, C is change something first, S is stop. [ ] is this job; - stands where the answers cannot be true together.";

    /** From here on grams would take more than a column. */
    private static final double MOST_GRAMS_KG = 10;

    private static final int CELL = 52;
    private static final int LEFT = 90;
    private static final int TOP = 50;

    private RegionChart() {}

    /** The letter of a verdict. */
    public static String letter(Verdict v) {
        return v == null ? "-" : v.word().substring(0, 1).toUpperCase(Locale.ROOT);
    }

    /** Rooms as rows, the warmest on top; batches as columns. At most 64 columns wide. */
    public static List<String> lines(WorkingRegion r) {
        List<String> out = new ArrayList<>();
        for (int row = 0; row < r.roomsK().size(); row++) {
            StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%9s ", room(r, row)));
            for (int column = 0; column < r.massesKg().size(); column++) {
                String letter = letter(r.verdicts().get(row).get(column));
                boolean own = row == r.row() && column == r.column();
                line.append(own ? "  [" + letter + "] " : "   " + letter + "  ");
            }
            out.add(line.toString().stripTrailing());
        }
        StringBuilder foot = new StringBuilder(String.format(Locale.ROOT, "%9s ", unit(r)));
        r.massesKg().forEach(kg -> foot.append(String.format(Locale.ROOT, "%5s ", mass(kg, unit(r)))));
        out.add(foot.toString().stripTrailing());
        return out;
    }

    private static String room(WorkingRegion r, int row) {
        return r.amounts().one(r.roomsK().get(row), Dimension.TEMPERATURE).replace('\u00a0', ' ');
    }

    /** One unit for all columns, so that they compare. */
    private static String unit(WorkingRegion r) {
        double most = r.massesKg().get(r.massesKg().size() - 1);
        String unit = r.amounts().unit(most, Dimension.MASS);
        return unit.equals("g") && most >= MOST_GRAMS_KG ? "kg" : unit;
    }

    private static String mass(double kg, String unit) {
        double v = UnitBook.fromSi(kg, unit, Dimension.MASS);
        return v >= 10 ? String.valueOf(Math.round(v)) : String.format(Locale.ROOT, "%.1f", v);
    }

    /** The same as a drawing: one file, no colour needed. */
    public static String svg(WorkingRegion r, String title) {
        int columns = r.massesKg().size();
        int rows = r.roomsK().size();
        int width = LEFT + columns * CELL + 30;
        int height = TOP + rows * CELL + 110;
        StringBuilder s = new StringBuilder();
        s.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\""
                        + " aria-labelledby=\"title desc\" font-family=\"sans-serif\" font-size=\"13\">\n",
                width,
                height,
                width,
                height));
        s.append("<title id=\"title\">").append(escaped(title)).append("</title>\n<desc id=\"desc\">");
        lines(r).forEach(l -> s.append(escaped(l)).append('\n'));
        s.append(escaped(LEGEND)).append("</desc>\n");
        s.append("<defs><pattern id=\"change\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><rect width=\"8\" height=\"8\" fill=\"#fff\"/>"
                + "<path d=\"M0 0V8\" stroke=\"#999\" stroke-width=\"2\"/></pattern></defs>\n");
        s.append("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
        text(s, LEFT, 24, title, "start", " font-weight=\"bold\"");
        for (int row = 0; row < rows; row++) {
            double y = TOP + row * CELL;
            text(s, LEFT - 8, y + CELL / 2.0 + 5, room(r, row), "end", "");
            for (int column = 0; column < columns; column++) {
                cell(s, r, row, column);
            }
        }
        for (int column = 0; column < columns; column++) {
            double x = LEFT + column * CELL + CELL / 2.0;
            text(s, x, TOP + rows * CELL + 18, mass(r.massesKg().get(column), unit(r)), "middle", "");
        }
        double y = TOP + rows * CELL + 40;
        text(s, LEFT, y, "batch, " + unit(r) + " across; room temperature up", "start", "");
        text(s, LEFT, y + 20, "G white: go. C hatched: change something first. S black: stop.", "start", "");
        text(s, LEFT, y + 40, "The thick frame is this job.", "start", "");
        return s.append("</svg>\n").toString();
    }

    private static void cell(StringBuilder s, WorkingRegion r, int row, int column) {
        Verdict v = r.verdicts().get(row).get(column);
        boolean own = row == r.row() && column == r.column();
        int x = LEFT + column * CELL;
        int y = TOP + row * CELL;
        String fill = v == Verdict.STOP ? "#222" : v == Verdict.CHANGE ? "url(#change)" : "#fff";
        s.append(String.format(
                Locale.ROOT,
                "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"#444\" stroke-width=\"1\"/>\n",
                x,
                y,
                CELL,
                CELL,
                fill));
        if (own) {
            s.append(String.format(
                    Locale.ROOT,
                    "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"%s\" stroke-width=\"4\"/>\n",
                    x + 4,
                    y + 4,
                    CELL - 8,
                    CELL - 8,
                    v == Verdict.STOP ? "#fff" : "#000"));
        }
        String ink = v == Verdict.STOP ? " fill=\"#fff\"" : "";
        text(
                s,
                x + CELL / 2.0,
                y + CELL / 2.0 + 6,
                letter(v),
                "middle",
                ink + " font-size=\"17\" font-weight=\"bold\"");
    }

    private static void text(StringBuilder s, double x, double y, String words, String anchor, String style) {
        s.append(String.format(Locale.ROOT, "<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"%s\"%s>", x, y, anchor, style))
                .append(escaped(words))
                .append("</text>\n");
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
