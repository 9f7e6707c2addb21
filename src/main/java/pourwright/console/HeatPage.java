package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.advice.Amounts;
import pourwright.course.Heat;
import pourwright.course.HeatPlace;
import pourwright.course.StageCourse;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** How a mix thickens and warms in its cup and in its mould, as lines of text. */
final class HeatPage {
    private static final Map<String, String> SAID = Map.of(
            "doubled", "twice as thick at",
            "gel-time", "gel at",
            "temperature-peak", "warmest it gets",
            "peak-at", "warmest at");

    private final Heat heat;
    private final Amounts amounts;
    private final int width;

    HeatPage(Heat heat, Amounts amounts, int width) {
        this.amounts = amounts;
        this.heat = heat;
        this.width = width;
    }

    List<String> lines() {
        if (heat.places().isEmpty()) {
            return Wrap.text(heat.refused(), width, "", "");
        }
        List<String> out = new ArrayList<>(
                Wrap.text("Thickness and warmth. Times count from the start of mixing.", width, "", ""));
        heat.places().forEach(p -> place(out, p));
        out.addAll(CoursePage.beside(heat.against(), SAID, amounts, width));
        out.add("");
        out.addAll(Wrap.text(Heat.MODEL, width, "", ""));
        return out;
    }

    private void place(List<String> out, HeatPlace p) {
        String mass = amounts.one(p.results().get("mass").si().typical(), Dimension.MASS);
        out.addAll(Wrap.text(
                p.where().equals("cup")
                        ? mass + " left in the cup:"
                        : mass + " in the mould"
                                + (heat.inLayers() > 1 ? ", one of " + heat.inLayers() + " layers" : "")
                                + ", poured by " + Show.time(p.startS()) + ":",
                width,
                "  ",
                "    "));
        p.results().forEach((name, r) -> {
            if (SAID.containsKey(name)) {
                out.addAll(Wrap.text(
                        CoursePage.shown(r.si(), r.dimension(), amounts),
                        width,
                        "    " + SAID.get(name) + ": ",
                        "      "));
            }
        });
        if (heat.nearRunaway(p)) {
            out.addAll(Wrap.text(
                    "It stands near a runaway: a little more mass or warmth decides. Plan for the hot end.",
                    width,
                    "    ",
                    "      "));
        }
        StageCourse.Result biot = p.results().get("biot");
        if (biot.si().typical() > Heat.HOT_CORE) {
            out.addAll(Wrap.text(
                    "Its core gets warmer than that: so thick a lump lets heat out slowly.", width, "    ", "      "));
        }
    }
}
