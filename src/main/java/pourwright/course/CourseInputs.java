package pourwright.course;

import java.util.Locale;
import java.util.Optional;
import pourwright.advice.Consultation;
import pourwright.degas.Charge;
import pourwright.degas.CureCourse;
import pourwright.degas.CureShape;
import pourwright.degas.Mix;
import pourwright.degas.Rating;
import pourwright.degas.Reaction;
import pourwright.degas.Stage;
import pourwright.degas.VacuumKit;
import pourwright.degas.Vapour;
import pourwright.degas.Vessel;
import pourwright.degas.WorkingTime;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.ClassValues;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Value;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.VacuumLine;
import pourwright.physics.Volatile;

/** What the simulation needs, taken from a plan at one end of its ranges. Nothing is asked and nothing is tuned. */
final class CourseInputs {
    /** Shorter than this nobody pulls; keeps a plan without a hold in range. */
    private static final double SHORTEST_PULL_S = 10;

    private final Consultation c;
    private final Knowledge k;
    private final MaterialClass material;
    private final End end;
    private final Mix mix;

    CourseInputs(Consultation c, Knowledge k, End end) {
        this.c = c;
        this.k = k;
        this.material = k.materials().get(c.answers().choice("material"));
        this.end = end;
        this.mix = mix();
    }

    Mix mixed() {
        return mix;
    }

    private Optional<Estimate> figure(String id) {
        return c.figure(id).map(FigureValue::si);
    }

    private Estimate need(String id) {
        return figure(id)
                .filter(e -> Double.isFinite(e.typical()))
                .orElseThrow(() -> new PhysicsException("The plan has no figure " + id + "."));
    }

    private double guide(String name) {
        return k.guidelineSi(name);
    }

    private Estimate guides(String low, String usual, String high) {
        return new Estimate(guide(low), guide(usual), guide(high));
    }

    private Estimate ofClass(String name) {
        Value v = material.values().get(name);
        if (v == null) {
            throw new PhysicsException("The class of " + material.name() + " has no " + name + ".");
        }
        return v.si(ClassValues.dimension(name));
    }

    private Mix mix() {
        boolean silicone = material.family().equals("silicone");
        double ratedK = need("pot-life-temperature").typical();
        Reaction reaction = Reaction.of(
                material.family().equals("epoxy") ? CureShape.SELF_FEEDING : CureShape.SECOND_ORDER,
                1 / need("rated-working-time").typical(),
                ratedK,
                ofClass("activation-energy").typical(),
                guide("course-gel-conversion"),
                end.slower(ofClass("adiabatic-rise")));
        Mix unrated = new Mix(
                end.quicker(need("liquid-density")),
                end.slower(need("degas-viscosity")),
                need("liquid-temperature").typical(),
                guide(silicone ? "course-flow-energy-silicone" : "course-flow-energy-resin"),
                end.quicker(guides("doubling-share-low", "doubling-share", "doubling-share-high")),
                ofClass("surface-tension").typical(),
                end.quicker(guides("rise-rigid-skin", "rise-usual-skin", "rise-clean-skin")),
                guide("froth-cap"),
                guide("course-specific-heat"),
                guide("course-conductivity"),
                reaction,
                vapour());
        return WorkingTime.fitted(
                unrated,
                new Rating(
                        end.quicker(need("rated-working-time")),
                        need("pot-life-mass").typical(),
                        ratedK,
                        Rating.End.GEL));
    }

    private Optional<Vapour> vapour() {
        String named = c.answers().choice("volatile");
        if (!named.isEmpty()) {
            return Optional.of(
                    new Vapour(Volatile.valueOf(named.toUpperCase(Locale.ROOT).replace('-', '_')), 1));
        }
        if (material.traits().contains("styrene")) {
            return Optional.of(new Vapour(Volatile.STYRENE, 1));
        }
        return material.traits().contains("monomer")
                ? Optional.of(new Vapour(Volatile.METHYL_METHACRYLATE, 1))
                : Optional.empty();
    }

    /** How many times the cup is filled. */
    double batches() {
        boolean degassed = c.methods().contains("degas-mix") || c.methods().contains("degas-before-thickening");
        return degassed
                ? Math.max(1, figure("batch-count").map(Estimate::typical).orElse(1.0))
                : 1;
    }

    /** All of it in the mould, one batch in the cup. */
    double massKg(boolean mould) {
        return need("mix-mass").typical() / (mould ? 1 : batches());
    }

    double liquidM3(boolean mould) {
        return massKg(mould) / mix.density();
    }

    double airPa() {
        return need("barometric-pressure").typical();
    }

    private double roomK() {
        return need("room-temperature").typical();
    }

    private double startK() {
        return need("liquid-temperature").typical();
    }

    private double bubbleM() {
        return end.quicker(guides("froth-bubble-small", "froth-bubble-usual", "froth-bubble-large"));
    }

    /** The batch when it goes into the chamber: stirred for the mixing time, and cured and warmed as far. */
    Charge mixedBatch() {
        return aged(need("mixing-time").typical(), false);
    }

    /** The same when nothing was degassed before the pour. */
    Charge pouredBatch() {
        return poured(aged(need("mixing-time").typical() + need("pour-time").typical(), true));
    }

    private Charge aged(double agedS, boolean mould) {
        Charge fresh = Charge.justMixed(
                mix,
                massKg(mould),
                end.slower(need("air-fraction")),
                bubbleM(),
                guide("course-bubble-spread"),
                airPa(),
                startK());
        CureCourse cure = CureCourse.of(mix, massKg(mould), cupVessel(), roomK(), startK(), 0);
        return new Charge(
                mix,
                massKg(mould),
                fresh.bubbles(),
                Math.min(1, cure.conversionAt(agedS)),
                cure.temperatureKAt(agedS),
                agedS);
    }

    /** A batch after the pour, with the air that the stream folded in. */
    Charge poured(Charge batch) {
        return batch.poured(batch.massKg(), guide("poured-in-air"), bubbleM(), guide("course-bubble-spread"), airPa());
    }

    /** Chamber and pump, with the room that the mix leaves free. */
    VacuumKit kit(boolean mould) {
        double chamber = end.slower(need("chamber-volume"));
        double others = liquidM3(true) - liquidM3(false);
        double free = mould ? chamber - liquidM3(true) : end.slower(need("free-volume")) + others;
        if (!(free > 0)) {
            throw new PhysicsException("The mix leaves no room in the chamber.");
        }
        VacuumLine line = figure("hose-bore")
                .map(bore -> new VacuumLine(
                        end.quicker(bore),
                        figure("hose-length").map(end::slower).orElse(1.0)))
                .orElse(VacuumLine.NONE);
        // Nobody throttles a pull on a liquid that does not boil, unless a target was named: as the plan's figures take
        // it.
        double boils = figure("boil-off-pressure").map(Estimate::typical).orElse(0.0);
        double target = c.answers().get("target-pressure").isPresent()
                ? need("planned-pressure").typical()
                : 0;
        double lowest = Math.min(airPa(), Math.max(boils, target));
        return new VacuumKit(
                free,
                new Pump(
                        end.quicker(need("pump-speed")),
                        figure("pump-ultimate").map(end::slower).orElse(0.0)),
                line,
                figure("leak-rate").map(end::slower).orElse(0.0),
                airPa(),
                lowest);
    }

    private double depthM(boolean mould) {
        double depth = end.slower(need(mould ? "mould-liquid-depth" : "liquid-depth"));
        // A depth worked out for the whole mix is shared by its batches; one that was measured is that of the batch.
        return mould || c.answers().get("liquid-depth").isPresent() ? depth : depth / batches();
    }

    double surfaceM2(boolean mould) {
        return liquidM3(mould) / depthM(mould);
    }

    private Vessel cupVessel() {
        return vessel(false);
    }

    private Vessel vessel(boolean mould) {
        return Vessel.cup(Math.sqrt(4 * surfaceM2(mould) / Math.PI), liquidM3(mould));
    }

    /** Height of the rim over the floor, where the cup is known. */
    Optional<Double> rimM() {
        return figure("cup-volume").map(v -> v.typical() / surfaceM2(false));
    }

    Stage stage(boolean mould) {
        double height = mould ? Double.MAX_VALUE : rimM().orElse(Double.MAX_VALUE);
        return new Stage(
                vessel(mould),
                surfaceM2(mould),
                height,
                roomK(),
                0,
                pulledS(mould),
                need("release-time").typical(),
                mould ? 0 : need("pour-time").typical(),
                guide("visible-bubble"));
    }

    /** How long the pump stays on by the plan; where that has no end, until the mix would gel. */
    double pulledS(boolean mould) {
        double all = figure(mould ? "second-degas-time" : "degas-time")
                .map(Estimate::typical)
                .orElse(Double.POSITIVE_INFINITY);
        double most = need("working-time").typical();
        return Math.max(
                SHORTEST_PULL_S, Math.min(all, most) - need("release-time").typical());
    }
}
