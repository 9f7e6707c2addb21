package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import pourwright.advice.Amounts;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.knowledge.Knowledge;
import pourwright.remedy.RegionChart;
import pourwright.remedy.WorkingRegion;

/** Where a job works, over batch and room, as lines of text. */
final class MapPage {
    /** Narrower than this the letters would not stand under each other. */
    private static final int WIDEST_CHART = 64;

    private MapPage() {}

    static List<String> lines(Consultation c, Knowledge knowledge, int width, boolean plain) {
        WorkingRegion region;
        try {
            region = WorkingRegion.around(c, knowledge);
        } catch (BadAnswer e) {
            return Wrap.text(e.getMessage(), width, "", "");
        }
        List<String> out = new ArrayList<>();
        String told = region.count(Verdict.GO) + " of " + cells(region) + " plans around this one work as they are.";
        out.addAll(Wrap.text("Where it works, by batch and room. " + told, width, "", ""));
        if (plain || width < WIDEST_CHART) {
            spoken(out, region, Amounts.of(c.answers()), width);
        } else {
            out.add("");
            out.addAll(RegionChart.lines(region));
            out.add("");
            out.addAll(Wrap.text(RegionChart.LEGEND, width, "", ""));
        }
        if (c.answers().get("liquid-temperature").isPresent()) {
            out.addAll(Wrap.text("Only the room changes here: the liquid stays as warm as you said.", width, "", ""));
        }
        return out;
    }

    /** For a screen reader or a narrow window: a line for each room. */
    private static void spoken(List<String> out, WorkingRegion r, Amounts shown, int width) {
        for (int row = 0; row < r.roomsK().size(); row++) {
            StringBuilder line = new StringBuilder();
            Verdict last = null;
            for (int column = 0; column < r.massesKg().size(); column++) {
                Verdict v = r.verdicts().get(row).get(column);
                if (column == 0 || v != last) {
                    line.append(column == 0 ? "" : ", ")
                            .append(v == null ? "not possible" : v.word())
                            .append(" from ")
                            .append(mass(r.massesKg().get(column), shown));
                    last = v;
                }
            }
            String own = row == r.row() ? " This job is in this room." : "";
            out.addAll(Wrap.text(line + "." + own, width, room(r.roomsK().get(row), shown) + ": ", "  "));
        }
    }

    private static long cells(WorkingRegion r) {
        return (long) r.roomsK().size() * r.massesKg().size();
    }

    private static String mass(double kg, Amounts shown) {
        return shown.one(kg, pourwright.units.Dimension.MASS);
    }

    private static String room(double k, Amounts shown) {
        return shown.one(k, pourwright.units.Dimension.TEMPERATURE);
    }
}
