package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.guide;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.facts.Estimate;
import pourwright.physics.Constants;
import pourwright.physics.Displacement;
import pourwright.physics.Flow;
import pourwright.physics.Pocket;
import pourwright.physics.SideWall;
import pourwright.physics.Vent;
import pourwright.units.Dimension;

/** Pockets, vents, thin gaps and the walls of the box. */
final class MouldFigures {
    /** Flow between flat plates is laminar below about this, on twice the gap (from memory). */
    private static final double LAMINAR_REYNOLDS = 2000;

    private MouldFigures() {}

    private static String laminarGap(Scope job, Estimate own) {
        double speedMPerS = si(job, "typed:wall-reach") / own.typical();
        double reynolds = 2
                * si(job, "typed:thinnest-wall")
                * speedMPerS
                * si(job, "raw:liquid-density")
                / si(job, "raw:viscosity");
        return reynolds > LAMINAR_REYNOLDS
                ? "the flow in the gap is turbulent (Reynolds number " + Math.round(reynolds)
                        + ", laminar below 2000): it takes longer than this"
                : "";
    }

    private static double si(Scope job, String name) {
        return job.get(name).orElseThrow().si().typical();
    }

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "undercut-ratio",
                        "How deep is the undercut for its width?",
                        Dimension.NUMBER,
                        "depth / width of the mouth",
                        "common-practice",
                        "",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("typed:undercut-depth").up(),
                                in("typed:undercut-width").down())),
                figure(
                        "pocket-volume",
                        "How much air can the undercut hold?",
                        Dimension.VOLUME,
                        "as given, or as found in the mesh; else π width² depth / 4",
                        "common-practice",
                        "a round blind hole; a cone holds a third of it",
                        Formula.of(x -> x[0], in("typed:pocket-volume").up()),
                        Formula.of(
                                x -> Displacement.cylinderM3(x[0], x[1]),
                                in("typed:undercut-width").up(),
                                in("typed:undercut-depth").up())),
                figure(
                        "pocket-bubble",
                        "How big a bubble is the air of the undercut, poured over as it is?",
                        Dimension.LENGTH,
                        "diameter of a ball of the pocket's volume",
                        "common-practice",
                        "all of the air stays in one bubble",
                        Formula.of(
                                x -> Pocket.equivalentDiameterM(x[0]),
                                in("pocket-volume").up())),
                figure(
                        "seen-bubble",
                        "How small a bubble is seen in this part?",
                        Dimension.LENGTH,
                        "on an opaque face at arm's length; in a clear part against the light, what the eye can part",
                        "common-practice",
                        "good eyes and good light",
                        Formula.when(
                                s -> s.choice("clear-part").equals("yes")
                                        || s.choice("job").equals("embed")
                                                && !s.choice("clear-part").equals("no"),
                                x -> x[0],
                                guide("visible-bubble-clear").up()),
                        Formula.of(x -> x[0], guide("visible-bubble").up())),
                figure(
                        "pocket-residue",
                        "What does the undercut keep after degassing in the mould?",
                        Dimension.VOLUME,
                        "V (p chamber + ρ g h + 2σ / r mouth) / (p local + ρ g h + 2σ / r left)",
                        "common-practice",
                        "liquid covers the mouth and still flows when the air comes back",
                        residue(false)),
                figure(
                        "residue-diameter",
                        "How big is the bubble that stays?",
                        Dimension.LENGTH,
                        "diameter of a ball of the residue's volume",
                        "common-practice",
                        "as the residue",
                        residue(true)),
                figure(
                        "vent-diameter",
                        "How wide must a vent be?",
                        Dimension.LENGTH,
                        "the smallest hole that passes its share of the air at the fill rate under a small head, and no less than can be made and cleared for this thickness of liquid; only the latter when the amount is not known",
                        "common-practice",
                        "the vents share the air evenly; one takes all of it when their number is not known",
                        Formula.by(
                                (s, x) -> Math.max(
                                        Vent.smallestBoreM(x[0] / x[1] / x[6], x[2], x[3] * Constants.G * x[4]),
                                        least(s, x[5])),
                                in("mix-volume").up(),
                                in("pour-time").down(),
                                in("vent-length").up(),
                                in("raw:liquid-density").down(),
                                guide("vent-air-head").down(),
                                in("raw:viscosity").up().or(0.0),
                                in("typed:undercut-count").down().or(1.0)),
                        Formula.by((s, x) -> least(s, x[0]), in("raw:viscosity").up())),
                figure(
                        "vent-length",
                        "How long is a vent?",
                        Dimension.LENGTH,
                        "as typed; else the usual length",
                        "common-practice",
                        "",
                        Formula.of(x -> x[0], in("typed:vent-length").up()),
                        Formula.of(x -> x[0], guide("vent-usual-length").up())),
                figure(
                                "gap-fill-time",
                                "How long does it take to fill the thin wall?",
                                Dimension.TIME,
                                "6 μ L² / (h² ρ g H): viscous flow in a slot under its head",
                                "geankoplis-transport",
                                "laminar flow, a flat gap, fresh viscosity",
                                Formula.of(
                                        x -> Flow.slotFillTimeS(x[0], x[1], x[2], x[3] * Constants.G * x[4]),
                                        in("typed:wall-reach").up(),
                                        in("typed:thinnest-wall").down(),
                                        in("raw:viscosity").up(),
                                        in("raw:liquid-density").down(),
                                        in("head").down()))
                        .where(MouldFigures::laminarGap),
                figure(
                        "gap-share",
                        "What share of the working time does the thin wall take?",
                        Dimension.FRACTION,
                        "gap fill time / working time",
                        "common-practice",
                        "",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("gap-fill-time").up(),
                                in("working-time").down())),
                figure(
                        "head",
                        "How high does liquid stand above the detail?",
                        Dimension.LENGTH,
                        "as typed; else the usual head",
                        "common-practice",
                        "",
                        Formula.of(x -> x[0], in("typed:head-height").up()),
                        Formula.of(x -> x[0], guide("usual-head").up())),
                figure(
                        "wall-pressure",
                        "How hard does the liquid press on the box?",
                        Dimension.PRESSURE,
                        "density × g × depth",
                        "common-practice",
                        "at the foot of the wall",
                        Formula.of(
                                x -> SideWall.pressurePa(x[0], x[1]),
                                in("raw:liquid-density").up(),
                                in("typed:fill-height").up())));
    }

    private static Formula residue(boolean asDiameter) {
        return Formula.of(
                x -> {
                    double left = Pocket.residueM3(x[0], Math.min(x[1], x[2]), x[2], x[3], x[4], x[5], x[6]);
                    return asDiameter ? Pocket.equivalentDiameterM(left) : left;
                },
                in("pocket-volume").up(),
                in("planned-pressure").up(),
                in("barometric-pressure").down(),
                in("raw:liquid-density"),
                in("head"),
                in("surface-tension").or(0.035),
                in("typed:undercut-width").down());
    }

    private static double least(Scope s, double viscosity) {
        if (viscosity < s.guideline("thin-liquid-below")) {
            return s.guideline("vent-least-thin");
        }
        return viscosity < s.guideline("thick-liquid-above")
                ? s.guideline("vent-least-medium")
                : s.guideline("vent-least-thick");
    }
}
