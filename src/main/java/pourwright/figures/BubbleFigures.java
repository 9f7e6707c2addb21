package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.guide;
import static pourwright.figures.Input.guides;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.facts.Estimate;
import pourwright.physics.Bubble;
import pourwright.physics.BubbleClearing;
import pourwright.physics.PhysicsException;
import pourwright.units.Dimension;

/** How fast bubbles rise, standing and under vacuum, against a mix that thickens. */
final class BubbleFigures {
    private static final double AIR_DENSITY_KG_M3 = 1.2;
    private static final String SOURCES = "clift-grace-weber-1978 haberman-morton-1953";

    private BubbleFigures() {}

    private static final String BOYLE = "hucknall-morris-vacuum-calculations";
    private static final double DIMENSIONS = 3;

    /** Boyle's law: what a bubble gains while the pressure over it falls, to a power. */
    private static FigureDef growth(String id, String asks, String words, double power) {
        return figure(
                id,
                asks,
                Dimension.NUMBER,
                words,
                BOYLE,
                "dry air near the surface of a liquid that does not boil; bubbles above 0.1 mm, where the skin hardly presses",
                Formula.of(
                        x -> Math.pow(x[0] / x[1], power),
                        in("barometric-pressure").up(),
                        in("typed:target-pressure").down()));
    }

    private static String thinLiquid(Scope job, Estimate own) {
        return job.get("raw:viscosity")
                .filter(v -> v.si().typical() >= job.guideline("froth-decides-viscosity"))
                .map(v -> "in so thick a liquid the froth decides, not single bubbles: see froth-fall-time")
                .orElse("");
    }

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "liquid-depth",
                        "How deep does the mix stand in the cup?",
                        Dimension.LENGTH,
                        "as typed; else that of a cup as deep as it is wide: (4 V / π)^(1/3)",
                        "common-practice",
                        "a straight cup",
                        Formula.of(x -> x[0], in("typed:liquid-depth").up()),
                        Formula.of(
                                x -> Math.cbrt(4 * x[0] / Math.PI),
                                in("cup-load").up())),
                figure(
                        "mould-liquid-depth",
                        "How deep does the liquid stand in the mould?",
                        Dimension.LENGTH,
                        "fill height, or the thickest lump, or the depth in the cup",
                        "common-practice",
                        "",
                        Formula.of(x -> x[0], in("typed:fill-height").up()),
                        Formula.of(x -> x[0], in("typed:part-depth").up()),
                        Formula.of(x -> x[0], in("liquid-depth").up())),
                figure(
                        "bubble-rise-speed",
                        "How fast does a bubble rise?",
                        Dimension.SPEED,
                        "d² g (ρ - ρ air) / (18 μ), for a rigid skin; a clean bubble up to 1.5 times that",
                        SOURCES,
                        "Reynolds number below 0.3",
                        Formula.of(
                                x -> {
                                    double v = Bubble.stokesRiseMPerS(x[0], x[1], AIR_DENSITY_KG_M3, x[2]) * x[3];
                                    double re = Bubble.reynolds(v, x[0], x[1], x[2]);
                                    if (re > Bubble.STOKES_LIMIT_REYNOLDS) {
                                        throw new PhysicsException(
                                                "This bubble is too large or the liquid too thin for the law of slow rise"
                                                        + " (Reynolds number " + Math.round(re * 100) / 100.0
                                                        + ", the law holds below 0.3).");
                                    }
                                    return v;
                                },
                                in("typed:bubble-diameter").up(),
                                in("raw:liquid-density").up(),
                                in("raw:viscosity").down(),
                                guides("rise-rigid-skin", "rise-usual-skin", "rise-clean-skin")
                                        .up())),
                growth(
                        "bubble-growth",
                        "How many times its volume does a bubble take up under vacuum?",
                        "local air pressure / chamber pressure",
                        1),
                growth(
                        "bubble-growth-diameter",
                        "And how many times its diameter?",
                        "cube root of the growth in volume",
                        1 / DIMENSIONS),
                clear(
                                "bubble-clear-time",
                                "How long until a small bubble has risen out, under vacuum?",
                                "planned-pressure")
                        .where(SlowRise.underVacuum().and(BubbleFigures::thinLiquid)),
                clear(
                                "bubble-clear-time-air",
                                "How long until a small bubble has risen out, standing in air?",
                                "barometric-pressure")
                        .where(SlowRise.inAir()),
                figure(
                                "stand-share",
                                "What share of the working time would clearing by standing take?",
                                Dimension.FRACTION,
                                "clearing time in air / working time",
                                SOURCES,
                                "thin liquids",
                                Formula.of(
                                        x -> x[0] / x[1],
                                        in("bubble-clear-time-air").up(),
                                        in("working-time").down()))
                        .where(SlowRise.inAir()),
                figure(
                                "smallest-cleared-bubble",
                                "What is the smallest bubble that gets out?",
                                Dimension.LENGTH,
                                "the bubble, sized at air pressure, that just rises through the depth while under vacuum",
                                SOURCES,
                                "decides for thin liquids; in thick ones the froth carries bubbles out",
                                Formula.of(
                                        x -> {
                                            if (Double.isInfinite(x[0])) {
                                                throw new PhysicsException(
                                                        "The time under vacuum has no end here: the pump does"
                                                                + " not get to the planned pressure, or the froth does not fall.");
                                            }
                                            return BubbleClearing.smallestClearedM(
                                                    x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7], x[8], x[9]);
                                        },
                                        in("degas-time").down(),
                                        in("liquid-depth").up(),
                                        in("planned-pressure").up(),
                                        in("barometric-pressure").down(),
                                        in("raw:liquid-density").down(),
                                        in("raw:viscosity").up(),
                                        in("working-time").down().or(Double.POSITIVE_INFINITY),
                                        guide("doubling-share"),
                                        in("surface-tension").or(USUAL_SURFACE_TENSION),
                                        guides("rise-rigid-skin", "rise-usual-skin", "rise-clean-skin")
                                                .down()))
                        .where(SlowRise.ofItself().and(BubbleFigures::thinLiquid)));
    }

    /** Newton per metre; between silicone (0.021) and epoxy (0.045), for a liquid whose class is not named. */
    static final double USUAL_SURFACE_TENSION = 0.035;

    private static FigureDef clear(String id, String asks, String pressure) {
        return figure(
                id,
                asks,
                Dimension.TIME,
                "rise of the bubble at its size under that pressure (Boyle, with skin and head) through the depth, while the mix thickens to gel",
                SOURCES,
                "slow rise, Reynolds number below 0.3; above about 5 Pa·s the froth decides instead",
                clearing(pressure, in("typed:bubble-diameter").down()),
                clearing(pressure, guide("bubble-worth-clearing").down()));
    }

    private static Formula clearing(String pressure, Input bubble) {
        return Formula.of(
                x -> BubbleClearing.timeS(x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7], x[8], x[9]),
                bubble,
                in("liquid-depth").up(),
                in(pressure).up(),
                in("barometric-pressure").down(),
                in("raw:liquid-density").down(),
                in("raw:viscosity").up(),
                in("working-time").down().or(Double.POSITIVE_INFINITY),
                guide("doubling-share"),
                in("surface-tension").or(USUAL_SURFACE_TENSION),
                guides("rise-rigid-skin", "rise-usual-skin", "rise-clean-skin").down());
    }
}
