package pourwright.course;

import java.util.Locale;
import java.util.Optional;
import pourwright.advice.Consultation;
import pourwright.degas.CureShape;
import pourwright.degas.Mix;
import pourwright.degas.Rating;
import pourwright.degas.Reaction;
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
import pourwright.physics.Volatile;

/** What cure and warmth need, taken from a plan at one end of its ranges. Nothing is asked and nothing is tuned. */
class CureInputs {
    private static final double SLAB = 2;
    private static final double BAR = 4;
    private static final double BALL = 6;

    final Consultation c;
    final End end;
    private final Knowledge k;
    private final MaterialClass material;
    private final Mix mix;

    CureInputs(Consultation c, Knowledge k, End end) {
        this.c = c;
        this.k = k;
        this.material = k.materials().get(c.answers().choice("material"));
        this.end = end;
        this.mix = fitted();
    }

    final Mix mix() {
        return mix;
    }

    final Optional<Estimate> figure(String id) {
        return c.figure(id).map(FigureValue::si);
    }

    final Estimate need(String id) {
        return figure(id)
                .filter(e -> Double.isFinite(e.typical()))
                .orElseThrow(() -> new PhysicsException("The plan has no figure " + id + "."));
    }

    final double guide(String name) {
        return k.guidelineSi(name);
    }

    final Estimate guides(String low, String usual, String high) {
        return new Estimate(guide(low), guide(usual), guide(high));
    }

    private Estimate ofClass(String name) {
        Value v = material.values().get(name);
        if (v == null) {
            throw new PhysicsException("The class of " + material.name() + " has no " + name + ".");
        }
        return v.si(ClassValues.dimension(name));
    }

    private Mix fitted() {
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
    final double batches() {
        boolean degassed = c.methods().contains("degas-mix") || c.methods().contains("degas-before-thickening");
        return degassed
                ? Math.max(1, figure("batch-count").map(Estimate::typical).orElse(1.0))
                : 1;
    }

    /** All of it in the mould, one batch in the cup. */
    final double massKg(boolean mould) {
        return need("mix-mass").typical() / (mould ? 1 : batches());
    }

    final double liquidM3(boolean mould) {
        return massKg(mould) / mix.density();
    }

    final double roomK() {
        return need("room-temperature").typical();
    }

    final double liquidK() {
        return need("liquid-temperature").typical();
    }

    private double depthM(boolean mould) {
        double depth = end.slower(need(mould ? "mould-liquid-depth" : "liquid-depth"));
        // A depth worked out for the whole mix is shared by its batches; one that was measured is that of the batch.
        return mould || c.answers().get("liquid-depth").isPresent() ? depth : depth / batches();
    }

    final double surfaceM2(boolean mould) {
        return liquidM3(mould) / depthM(mould);
    }

    final Vessel vessel(boolean mould) {
        return Vessel.cup(Math.sqrt(4 * surfaceM2(mould) / Math.PI), liquidM3(mould));
    }

    /** When the mix is in its mould by the plan, s from the start of mixing. */
    final double pouredS() {
        return figure("poured-at")
                .map(Estimate::typical)
                .filter(Double::isFinite)
                .orElseGet(
                        () -> need("mixing-time").typical() + need("pour-time").typical());
    }

    /** False for what is brushed on: a coat has no mould that keeps its warmth. */
    final boolean poursIntoMould() {
        return !c.answers().choice("job").equals("brush-on-mould");
    }

    /** Layers of the part; what is poured deeper than its class allows goes in several. */
    final int layers() {
        return (int) figure("layer-count")
                .map(Estimate::typical)
                .map(Math::round)
                .orElse(1L)
                .longValue();
    }

    /** One layer of the part, kg. */
    final double layerKg() {
        return massKg(true) / layers();
    }

    /**
     * What holds the part. The thickest lump decides: a slab has 2, a bar 4 and a ball 6 areas for each volume over
     * thickness (geometry). Where only the fill is known, it is a block of that height, else one as high as wide.
     */
    final Vessel mould() {
        double volumeM3 = layerKg() / mix.density();
        double loss = end.quicker(guides("course-mould-loss-low", "course-mould-loss", "course-mould-loss-high"));
        Optional<Estimate> lump = c.figure("part-depth").map(FigureValue::si);
        if (lump.isPresent()) {
            double areas = end.quicker(new Estimate(SLAB, BAR, BALL));
            return new Vessel(areas * volumeM3 * layers() / lump.get().typical(), loss, 0);
        }
        Optional<Estimate> fill = c.figure("fill-height").map(FigureValue::si);
        double acrossM = fill.map(h -> Math.sqrt(4 * volumeM3 / h.typical() / Math.PI))
                .orElseGet(() -> Math.cbrt(4 * volumeM3 / Math.PI));
        return new Vessel(Vessel.cup(acrossM, volumeM3).areaM2(), loss, 0);
    }
}
