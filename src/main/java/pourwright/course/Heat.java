package pourwright.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pourwright.advice.Consultation;
import pourwright.degas.CureCourse;
import pourwright.degas.Vessel;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.physics.PhysicsException;
import pourwright.units.Dimension;

/**
 * Cure and warmth of a plan's mix with the heat that its cup or its mould takes away: how long it can be worked, and how
 * warm it gets. It needs no vacuum. Source of the parts: {@link CureCourse} and {@link Vessel}.
 *
 * @param places the cup that stands, and the part in its mould
 * @param refused why it is not offered, one sentence; empty where it is
 * @param against its gel time beside the plan's own working time
 * @param inLayers how many layers the part is poured in; what is said of it holds for one of them
 * @param runawayK a range of peaks wider than this means that little decides whether the mix runs away, K
 */
public record Heat(List<HeatPlace> places, String refused, List<Against> against, int inLayers, double runawayK) {
    /** What it is, where it comes from, what it leaves out, and how far to trust it. */
    public static final String MODEL =
            "Cure and warmth from the plan's own figures: one mean temperature, and loss through wall and surface. The heat of"
                    + " cure (Kamal and Sourour 1973, from memory) is set to the label's pot life. Left out: a core hotter than the"
                    + " mean, the sun, a heated mould. Trust times within a third, and of a wide range of peaks the hot end.";

    /** Above this the core is noticeably hotter than the mean. Biot number, any textbook of heat transfer. */
    public static final double HOT_CORE = 1;

    private static final Set<String> CURING =
            Set.of("silicone", "polyurethane", "epoxy", "styrene-resin", "acrylic", "polysulfide", "filled");

    public Heat {
        places = List.copyOf(places);
        against = List.copyOf(against);
    }

    /** The heat of a plan, or why it is not offered. */
    public static Heat of(Consultation c, Knowledge knowledge) {
        MaterialClass material = knowledge.materials().get(c.answers().choice("material"));
        if (!follows(material)) {
            return none("The warmth of " + material.name()
                    + " cannot be followed: it sets in another way than the model knows.");
        }
        try {
            return followed(c, knowledge);
        } catch (PhysicsException e) {
            return none("The warmth cannot be followed. " + e.getMessage());
        }
    }

    /** True where little decides whether the mix stays cool or runs away. */
    public boolean nearRunaway(HeatPlace p) {
        Estimate peak = p.results().get("temperature-peak").si();
        return peak.high() - peak.low() > runawayK;
    }

    /** True for a liquid that sets by a reaction the model knows. */
    public static boolean follows(MaterialClass material) {
        return CURING.contains(material.family());
    }

    private static Heat none(String why) {
        return new Heat(List.of(), why, List.of(), 1, Double.POSITIVE_INFINITY);
    }

    private static Heat followed(Consultation c, Knowledge knowledge) {
        Map<End, CureInputs> inputs = new EnumMap<>(End.class);
        Map<End, Run> cup = new EnumMap<>(End.class);
        Map<End, Run> mould = new EnumMap<>(End.class);
        for (End end : End.values()) {
            CureInputs in = new CureInputs(c, knowledge, end);
            inputs.put(end, in);
            CureCourse standing =
                    CureCourse.of(in.mix(), in.massKg(false), in.vessel(false), in.roomK(), in.liquidK(), 0);
            cup.put(end, new Run(in, standing, in.vessel(false), in.massKg(false), 0));
            double pouredS = Math.min(in.pouredS(), standing.gelS());
            CureCourse part = CureCourse.of(
                    in.mix(),
                    in.layerKg(),
                    in.mould(),
                    in.roomK(),
                    standing.temperatureKAt(pouredS),
                    standing.conversionAt(pouredS));
            mould.put(end, new Run(in, part, in.mould(), in.layerKg(), pouredS));
        }
        CureInputs typical = inputs.get(End.TYPICAL);
        HeatPlace standing = place("cup", cup);
        List<HeatPlace> places = new ArrayList<>(List.of(standing));
        if (typical.poursIntoMould()) {
            places.add(place("mould", mould));
        }
        return new Heat(
                places, "", against(c, standing), typical.layers(), knowledge.guidelineSi("course-runaway-span"));
    }

    /**
     * One run.
     *
     * @param in what went in
     * @param cure the course
     * @param vessel what holds the mix
     * @param massKg its mass, kg
     * @param startS when the course begins, s from the start of mixing
     */
    private record Run(CureInputs in, CureCourse cure, Vessel vessel, double massKg, double startS) {
        double biot() {
            return vessel.biot(massKg / in.mix().density(), in.mix().conductivityWPerMK());
        }
    }

    private static HeatPlace place(String where, Map<End, Run> runs) {
        Map<String, StageCourse.Result> all = new LinkedHashMap<>();
        put(all, "mass", Dimension.MASS, runs, Run::massKg);
        put(all, "doubled", Dimension.TIME, runs, r -> r.startS() + r.cure().doubledS());
        put(all, "gel-time", Dimension.TIME, runs, r -> r.startS() + r.cure().gelS());
        put(all, "temperature-peak", Dimension.TEMPERATURE, runs, r -> r.cure().peakK());
        put(all, "peak-at", Dimension.TIME, runs, r -> r.startS() + r.cure().peakS());
        put(all, "biot", Dimension.NUMBER, runs, Run::biot);
        Run typical = runs.get(End.TYPICAL);
        return new HeatPlace(where, all, typical.startS(), typical.cure().samples(HeatPlace.MOST_SAMPLES));
    }

    private static void put(
            Map<String, StageCourse.Result> all,
            String name,
            Dimension d,
            Map<End, Run> runs,
            ToDoubleFunction<Run> value) {
        double typical = value.applyAsDouble(runs.get(End.TYPICAL));
        double low = runs.values().stream().mapToDouble(value).min().orElse(typical);
        double high = runs.values().stream().mapToDouble(value).max().orElse(typical);
        all.put(name, new StageCourse.Result(new Estimate(low, typical, high), d));
    }

    private static List<Against> against(Consultation c, HeatPlace cup) {
        return c.figure("working-time").map(FigureValue::si).stream()
                .map(plan ->
                        Against.of("gel-time", "working-time", cup.results().get("gel-time"), plan))
                .toList();
    }
}
