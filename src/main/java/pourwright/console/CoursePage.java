package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.advice.Amounts;
import pourwright.course.Against;
import pourwright.course.Course;
import pourwright.course.CourseChart;
import pourwright.course.StageCourse;
import pourwright.degas.DegasSample;
import pourwright.facts.Estimate;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** A degas from minute to minute, as lines of text. */
public final class CoursePage {
    private static final int CHART = 62;
    private static final int SPOKEN = 10;

    private static final Map<String, String> SAID = Map.ofEntries(
            Map.entry("first-rise", "froth begins to rise at"),
            Map.entry("crest", "froth crests at"),
            Map.entry("fall-begun", "it begins to fall at"),
            Map.entry("fallen", "it has fallen at"),
            Map.entry("clear", "the last visible bubble leaves at"),
            Map.entry("crest-factor", "times its height at the crest"),
            Map.entry("crest-height", "height of the crest"),
            Map.entry("froth-volume", "room that the froth takes"),
            Map.entry("rim-height", "height of the rim"),
            Map.entry("overflow", "froth passes the rim at"),
            Map.entry("lowest-pressure", "lowest pressure"),
            Map.entry("air-left", "air left when poured"),
            Map.entry("largest-bubble-left", "largest bubble left"),
            Map.entry("viscosity-at-pour", "thickness when poured"),
            Map.entry("temperature-peak", "warmest it gets"),
            Map.entry("gel-time", "gel, from the start of mixing"),
            Map.entry("working-time-used", "working time used by then"));

    private final Course course;
    private final int width;
    private final boolean plain;
    private final Amounts amounts;

    public CoursePage(Course course, Amounts amounts, int width, boolean plain) {
        this.course = course;
        this.amounts = amounts;
        this.width = width;
        this.plain = plain;
    }

    /** All of it. */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        if (course.stages().isEmpty()) {
            out.addAll(wrap(course.refused(), "", ""));
        } else {
            pulls(out);
        }
        out.add("");
        out.addAll(new HeatPage(course.heat(), amounts, width).lines());
        return out;
    }

    private void pulls(List<String> out) {
        for (StageCourse s : course.stages()) {
            if (!out.isEmpty()) {
                out.add("");
            }
            stage(out, s);
        }
        out.add("");
        out.addAll(beside(course.against(), SAID, amounts, width));
        out.add("");
        out.addAll(wrap(Course.MODEL, "", ""));
    }

    /** The results that differ from the plan's own figures, or that none does. */
    static List<String> beside(List<Against> all, Map<String, String> said, Amounts amounts, int width) {
        List<Against> apart = all.stream().filter(a -> !a.agree()).toList();
        if (apart.isEmpty()) {
            return all.isEmpty()
                    ? List.of()
                    : Wrap.text("It agrees with the plan's own figures within their ranges.", width, "", "");
        }
        List<String> out = new ArrayList<>(Wrap.text(
                "It differs from the plan's own figures here. The plan takes simpler formulas. Go by the less kind of the two.",
                width,
                "",
                ""));
        apart.forEach(a -> out.addAll(Wrap.text(
                shown(a.here(), a.dimension(), amounts) + " here, " + shown(a.plan(), a.dimension(), amounts)
                        + " in the plan (" + a.figure() + ")",
                width,
                "  " + said.get(a.result()) + ": ",
                "    ")));
        return out;
    }

    private void stage(List<String> out, StageCourse s) {
        String where = s.mould() ? "In the mould" : "In the cup";
        out.addAll(wrap(
                where + ", pulled for " + Show.time(s.pulledS())
                        + " as planned. Times count from opening the pump valve.",
                "",
                ""));
        s.results()
                .forEach((name, r) ->
                        out.addAll(wrap(shown(r.si(), r.dimension(), amounts), "  " + SAID.get(name) + ": ", "    ")));
        if (!s.froths()) {
            out.addAll(wrap("The bubbles leave so fast that hardly any froth stands.", "  ", "    "));
        }
        out.add("");
        if (plain || width < CHART) {
            spoken(out, s);
        } else {
            out.addAll(CourseChart.lines(s));
            out.addAll(wrap(CourseChart.legend(s, amounts), "", ""));
        }
    }

    /** For a screen reader or a narrow window: the typical run, one moment a line. */
    private void spoken(List<String> out, StageCourse s) {
        for (int i = 0; i <= SPOKEN; i++) {
            DegasSample at = s.at(s.endS() * i / SPOKEN);
            out.addAll(wrap(
                    amounts.fromZero(at.pressurePa()) + ", mix and froth " + amounts.one(at.heightM(), Dimension.LENGTH)
                            + " high",
                    "  at " + Show.time(s.endS() * i / SPOKEN) + ": ",
                    "    "));
        }
    }

    /** With the range, where it has one. */
    public static String shown(Estimate e, Dimension d, Amounts amounts) {
        String typical = one(e.typical(), d, amounts);
        String low = one(e.low(), d, amounts);
        String high = one(e.high(), d, amounts);
        return low.equals(high) ? typical : typical + " (" + low + " to " + high + ")";
    }

    private static String one(double si, Dimension d, Amounts amounts) {
        if (Double.isInfinite(si)) {
            return d == Dimension.TIME ? "never" : "gelled";
        }
        if (d == Dimension.PRESSURE) {
            return amounts.fromZero(si);
        }
        return d == Dimension.TIME ? Show.time(si) : d == Dimension.LENGTH && si == 0 ? "none" : amounts.one(si, d);
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
