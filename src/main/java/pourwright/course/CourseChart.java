package pourwright.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pourwright.advice.Amounts;
import pourwright.degas.DegasSample;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** Pressure and height of the froth over time, as 60 by 12 characters. */
public final class CourseChart {
    static final int COLUMNS = 60;
    static final int ROWS = 12;

    private static final char HEIGHT = 'o';
    private static final char PRESSURE = 'p';
    private static final char BOTH = '*';
    private static final char RIM = '-';

    private CourseChart() {}

    /** The chart, its time axis last. */
    public static List<String> lines(StageCourse s) {
        double top = topM(s);
        double most =
                s.samples().stream().mapToDouble(DegasSample::pressurePa).max().orElseThrow();
        double least =
                s.samples().stream().mapToDouble(DegasSample::pressurePa).min().orElseThrow();
        char[][] cells = new char[ROWS][COLUMNS];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        s.rimM().filter(rim -> rim <= top).ifPresent(rim -> Arrays.fill(cells[row(rim / top)], RIM));
        for (int x = 0; x < COLUMNS; x++) {
            DegasSample at = s.at(s.endS() * x / (COLUMNS - 1));
            mark(cells, x, row(at.heightM() / top), HEIGHT);
            // Pressure runs over powers of ten: most of a pull happens below a tenth of an atmosphere.
            double share = most > least ? Math.log(at.pressurePa() / least) / Math.log(most / least) : 1;
            mark(cells, x, row(share), PRESSURE);
        }
        List<String> out = new ArrayList<>();
        for (char[] row : cells) {
            out.add(("|" + new String(row)).stripTrailing());
        }
        out.add("+" + "-".repeat(COLUMNS));
        String end = Show.time(s.endS()).replace('\u00a0', ' ');
        out.add(" 0:00" + " ".repeat(Math.max(1, COLUMNS - 4 - end.length())) + end);
        return out;
    }

    /** What the marks mean, with both scales. */
    public static String legend(StageCourse s, Amounts amounts) {
        double most =
                s.samples().stream().mapToDouble(DegasSample::pressurePa).max().orElseThrow();
        double least =
                s.samples().stream().mapToDouble(DegasSample::pressurePa).min().orElseThrow();
        return "o is the height of the mix with its froth, 0 to " + shown(topM(s), "mm", Dimension.LENGTH)
                + "; p is the pressure, " + amounts.fromZero(least) + " to "
                + amounts.fromZero(most) + " in even powers; * is both"
                + (s.rimM().filter(rim -> rim <= topM(s)).isPresent() ? "; the line of - is the rim." : ".");
    }

    private static String shown(double si, String unit, Dimension d) {
        return Show.quantity(Math.round(si * 1e4) / 1e4, unit, d);
    }

    /** The rim belongs into the picture unless it is far above everything that happens. */
    private static double topM(StageCourse s) {
        double crest =
                s.samples().stream().mapToDouble(DegasSample::heightM).max().orElseThrow();
        double rim = s.rimM().orElse(0.0);
        return rim <= 2 * crest ? Math.max(crest, rim) : crest;
    }

    private static int row(double share) {
        return ROWS - 1 - (int) Math.round(Math.max(0, Math.min(1, share)) * (ROWS - 1));
    }

    private static void mark(char[][] cells, int x, int row, char mark) {
        char was = cells[row][x];
        cells[row][x] = was == HEIGHT && mark == PRESSURE ? BOTH : mark;
    }
}
