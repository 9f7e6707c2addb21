package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import pourwright.course.Against;
import pourwright.course.Course;
import pourwright.course.Heat;
import pourwright.course.HeatPlace;
import pourwright.course.StageCourse;
import pourwright.degas.CureSample;
import pourwright.degas.DegasSample;
import pourwright.facts.Estimate;
import pourwright.knowledge.Json;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** A degas from minute to minute as part of the JSON object of a plan. */
public final class CourseJson {
    /** More would not show in a picture. */
    private static final int MOST_SAMPLES = 120;

    private CourseJson() {}

    /** Adds the course to the object of its plan: of the first pull, with a second one in it. */
    public static void into(ObjectNode plan, Course course) {
        ObjectNode out = plan.putObject("course");
        pulls(out, course);
        heat(out.putObject("heat"), course.heat());
    }

    private static void pulls(ObjectNode out, Course course) {
        if (course.stages().isEmpty()) {
            out.put("refused", course.refused());
            return;
        }
        stage(out, course.stages().get(0));
        if (course.stages().size() > 1) {
            stage(out.putObject("in-mould"), course.stages().get(1));
        }
        against(out, course.against());
        out.put("model", Course.MODEL);
    }

    private static void against(ObjectNode out, List<Against> all) {
        ArrayNode against = out.putArray("against");
        all.forEach(a -> against.addObject()
                .put("result", a.result())
                .put("figure", a.figure())
                .put("agree", a.agree()));
    }

    /** Cure and warmth of what stands in the cup and of what lies in the mould. */
    private static void heat(ObjectNode out, Heat heat) {
        if (heat.places().isEmpty()) {
            out.put("refused", heat.refused());
            return;
        }
        out.put("layers", heat.inLayers());
        for (HeatPlace p : heat.places()) {
            ObjectNode place = out.putObject(p.where());
            p.results().forEach((name, r) -> place.set(name, ResultJson.quantity(r.si(), r.dimension(), shown(r))));
            place.put("near-runaway", heat.nearRunaway(p));
            ArrayNode samples = place.putArray("samples");
            for (CureSample at : p.samples()) {
                ObjectNode one = Json.object();
                one.put("time-s", p.startS() + at.timeS());
                one.put("temperature-k", at.temperatureK());
                one.put("conversion", at.conversion());
                ResultJson.number(one, "viscosity-pa-s", at.viscosityPaS());
                samples.add(one);
            }
        }
        against(out, heat.against());
        out.put("model", Heat.MODEL);
    }

    private static void stage(ObjectNode out, StageCourse s) {
        out.put("where", s.mould() ? "mould" : "cup");
        s.results().forEach((name, r) -> out.set(name, ResultJson.quantity(r.si(), r.dimension(), shown(r))));
        ArrayNode samples = out.putArray("samples");
        for (DegasSample at : s.thinned(MOST_SAMPLES)) {
            ObjectNode one = Json.object();
            one.put("time-s", at.timeS());
            one.put("pressure-pa", at.pressurePa());
            one.put("height-m", at.heightM());
            one.put("temperature-k", at.temperatureK());
            ResultJson.number(one, "viscosity-pa-s", at.viscosityPaS());
            one.put("gas-left", at.gasLeft());
            samples.add(one);
        }
    }

    private static String shown(StageCourse.Result r) {
        Estimate e = r.si();
        double v = e.typical();
        if (Double.isInfinite(v)) {
            return r.dimension() == Dimension.TIME ? "never" : "gelled";
        }
        return r.dimension() == Dimension.TIME
                ? Show.time(v)
                : Show.quantity(v, Show.bestUnit(v, r.dimension()), r.dimension());
    }
}
