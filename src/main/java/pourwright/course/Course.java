package pourwright.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pourwright.advice.Consultation;
import pourwright.degas.Charge;
import pourwright.degas.Degas;
import pourwright.degas.DegasResult;
import pourwright.degas.Stage;
import pourwright.degas.VacuumKit;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.physics.PhysicsException;
import pourwright.units.Dimension;

/**
 * A plan's degas as a simulation.
 *
 * @param stages the pull in the cup, the pull in the mould, or both in that order; none where it is not offered
 * @param refused why it is not offered, one sentence; empty where it is
 * @param against the course beside the plan's own figures
 * @param heat cure and warmth, with or without a vacuum
 */
public record Course(List<StageCourse> stages, String refused, List<Against> against, Heat heat) {
    /** What it is, where it comes from, what it leaves out, and how far to trust it. */
    public static final String MODEL =
            "A simulation from the plan's own figures: bubbles of many sizes swell, rise and break in a mix that warms and"
                    + " thickens. Sources: film life of froth (Science 279:1704, 1998), hindered rise (Richardson and Zaki 1954),"
                    + " cure (Kamal and Sourour 1973), all from memory. The typical run lets no bubbles merge; the ranges also hold"
                    + " runs in which all merge that can. Left out: dissolved gas, uneven warmth. Trust times of the froth within a"
                    + " factor of 2, and air left as a rough size. In a slow chamber the typical crest is up to 36 % late.";

    public Course {
        stages = List.copyOf(stages);
        against = List.copyOf(against);
    }

    /** The course of a plan, or why there is none. */
    public static Course of(Consultation c, Knowledge knowledge) {
        Heat heat = Heat.of(c, knowledge);
        boolean cup = c.methods().contains("degas-mix") || c.methods().contains("degas-before-thickening");
        boolean mould = c.methods().contains("degas-in-mould");
        if (!cup && !mould) {
            return none(heat, "This plan pulls no vacuum on the mix, so there is no degas to follow.");
        }
        MaterialClass material = knowledge.materials().get(c.answers().choice("material"));
        if (!Heat.follows(material)) {
            return none(
                    heat,
                    "The course of " + material.name()
                            + " cannot be followed: it sets in another way than the model knows.");
        }
        try {
            return followed(c, knowledge, heat, cup, mould);
        } catch (PhysicsException e) {
            return none(heat, "The degas cannot be followed. " + e.getMessage());
        }
    }

    /** One end of the inputs' ranges, with or without bubbles that merge. */
    private record Run(End end, boolean merging) {
        static final Run TYPICAL = new Run(End.TYPICAL, false);

        DegasResult follow(Charge batch, VacuumKit kit, Stage stage) {
            return merging ? Degas.merging(batch, kit, stage) : Degas.of(batch, kit, stage);
        }
    }

    private static Course none(Heat heat, String why) {
        return new Course(List.of(), why, List.of(), heat);
    }

    private static Course followed(Consultation c, Knowledge knowledge, Heat heat, boolean cup, boolean mould) {
        Map<Run, CourseInputs> inputs = new LinkedHashMap<>();
        Map<Run, DegasResult> first = new LinkedHashMap<>();
        Map<Run, DegasResult> second = new LinkedHashMap<>();
        for (End end : End.values()) {
            CourseInputs in = new CourseInputs(c, knowledge, end);
            for (boolean merging : new boolean[] {false, true}) {
                Run run = new Run(end, merging);
                inputs.put(run, in);
                if (cup) {
                    first.put(run, run.follow(in.mixedBatch(), in.kit(false), in.stage(false)));
                }
                if (mould) {
                    // Several batches fill one mould: what one of them became says nothing about all.
                    Charge batch =
                            cup && in.batches() == 1 ? in.poured(first.get(run).after()) : in.pouredBatch();
                    second.put(run, run.follow(batch, in.kit(true), in.stage(true)));
                }
            }
        }
        List<StageCourse> stages = new ArrayList<>();
        if (cup) {
            stages.add(stage(false, inputs, first));
        }
        if (mould) {
            stages.add(stage(true, inputs, second));
        }
        return new Course(stages, "", cup ? against(c, stages.get(0)) : List.of(), heat);
    }

    private static StageCourse stage(boolean mould, Map<Run, CourseInputs> inputs, Map<Run, DegasResult> runs) {
        Map<String, StageCourse.Result> all = new LinkedHashMap<>();
        put(all, "first-rise", Dimension.TIME, runs, DegasResult::firstRiseS);
        put(all, "crest", Dimension.TIME, runs, DegasResult::crestS);
        put(all, "fall-begun", Dimension.TIME, runs, DegasResult::fallBegunS);
        put(all, "fallen", Dimension.TIME, runs, DegasResult::fallenS);
        put(all, "clear", Dimension.TIME, runs, DegasResult::clearS);
        put(all, "crest-factor", Dimension.NUMBER, runs, DegasResult::crestFactor);
        put(all, "crest-height", Dimension.LENGTH, runs, DegasResult::crestM);
        Map<Run, Double> volumes = new LinkedHashMap<>();
        runs.forEach((end, r) -> volumes.put(end, r.crestM() * inputs.get(end).surfaceM2(mould)));
        all.put("froth-volume", new StageCourse.Result(spread(volumes), Dimension.VOLUME));
        CourseInputs typical = inputs.get(Run.TYPICAL);
        Optional<Double> rim = mould ? Optional.empty() : typical.rimM();
        if (rim.isPresent()) {
            Map<Run, Double> rims = new LinkedHashMap<>();
            inputs.forEach((end, in) -> rims.put(end, in.rimM().orElseThrow()));
            all.put("rim-height", new StageCourse.Result(spread(rims), Dimension.LENGTH));
            put(all, "overflow", Dimension.TIME, runs, DegasResult::overflowS);
        }
        put(all, "lowest-pressure", Dimension.PRESSURE, runs, DegasResult::lowestPa);
        put(all, "air-left", Dimension.FRACTION, runs, DegasResult::airLeft);
        put(all, "largest-bubble-left", Dimension.LENGTH, runs, DegasResult::largestLeftM);
        put(all, "viscosity-at-pour", Dimension.VISCOSITY, runs, DegasResult::viscosityPaS);
        put(all, "temperature-peak", Dimension.TEMPERATURE, runs, DegasResult::peakK);
        put(all, "gel-time", Dimension.TIME, runs, DegasResult::gelS);
        put(all, "working-time-used", Dimension.FRACTION, runs, DegasResult::workingTimeUsed);
        return new StageCourse(mould, all, runs.get(Run.TYPICAL).course(), typical.pulledS(mould), rim);
    }

    private static void put(
            Map<String, StageCourse.Result> all,
            String name,
            Dimension d,
            Map<Run, DegasResult> runs,
            ToDoubleFunction<DegasResult> value) {
        Map<Run, Double> values = new LinkedHashMap<>();
        runs.forEach((end, r) -> values.put(end, value.applyAsDouble(r)));
        all.put(name, new StageCourse.Result(spread(values), d));
    }

    /** The typical run with the least and the most of all three: an end of the inputs need not be an end of a result. */
    private static Estimate spread(Map<Run, Double> runs) {
        double typical = runs.get(Run.TYPICAL);
        double low = runs.values().stream().mapToDouble(v -> v).min().orElse(typical);
        double high = runs.values().stream().mapToDouble(v -> v).max().orElse(typical);
        return new Estimate(low, typical, high);
    }

    private static List<Against> against(Consultation c, StageCourse s) {
        List<Against> all = new ArrayList<>();
        if (s.froths()) {
            beside(all, c, s, "crest", "froth-crest-time");
            beside(all, c, s, "fallen", "froth-fall-time");
        }
        beside(all, c, s, "froth-volume", "froth-volume");
        beside(all, c, s, "gel-time", "working-time");
        beside(all, c, s, "viscosity-at-pour", "viscosity-at-pour");
        return all;
    }

    private static void beside(List<Against> all, Consultation c, StageCourse s, String result, String figure) {
        c.figure(figure)
                .map(FigureValue::si)
                .ifPresent(
                        plan -> all.add(Against.of(result, figure, s.results().get(result), plan)));
    }
}
