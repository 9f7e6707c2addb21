package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.units.Dimension;

/** Small doses on a real scale, and weighings that went wrong. */
final class DoseFigures {
    private DoseFigures() {}

    /** In a plan worked out only where something was put in: else the class's ratio would count as taken for granted. */
    private static boolean put(Scope s) {
        return !s.assumes() || s.answers().has("put-first");
    }

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "small-part",
                        "How heavy is the smaller of the two parts?",
                        Dimension.MASS,
                        "the smaller of the two masses to weigh",
                        "common-practice",
                        "two parts",
                        Formula.of(
                                x -> Math.min(x[0], x[1]),
                                in("part-mass-a").up(),
                                in("part-mass-b").up())),
                figure(
                        "ratio-error",
                        "How far off can the ratio be on this scale?",
                        Dimension.FRACTION,
                        "one step of the scale / first part + one step / second part",
                        "common-practice",
                        "both parts off by one step, in opposite ways; a sound scale on a firm bench",
                        Formula.of(
                                x -> x[0] / x[1] + x[0] / x[2],
                                in("typed:scale-step").up(),
                                in("part-mass-a").down(),
                                in("part-mass-b").down())),
                figure(
                        "least-batch",
                        "How small a batch may I weigh on this scale?",
                        Dimension.MASS,
                        "the mass to mix × how far off the ratio can be / how far off it may be",
                        "common-practice",
                        "the same ratio and scale",
                        Formula.of(
                                x -> x[0] * x[1] / x[2],
                                in("mix-mass").typical(),
                                in("ratio-error").typical(),
                                in("raw:ratio-tolerance").typical())),
                figure(
                        "finest-step",
                        "How fine a scale does this batch want?",
                        Dimension.MASS,
                        "the scale's step × how far off the ratio may be / how far off it can be",
                        "common-practice",
                        "the same ratio and batch",
                        Formula.of(
                                x -> x[0] * x[1] / x[2],
                                in("typed:scale-step").typical(),
                                in("raw:ratio-tolerance").typical(),
                                in("ratio-error").typical())),
                figure(
                        "small-part-volume",
                        "How much of the smaller part is that in a syringe?",
                        Dimension.VOLUME,
                        "its mass / its density",
                        "common-practice",
                        "a liquid without bubbles",
                        Formula.of(
                                x -> x[0] <= x[1] ? x[0] / x[2] : x[1] / x[3],
                                in("part-mass-a").typical(),
                                in("part-mass-b").typical(),
                                in("raw:density-a").typical(),
                                in("raw:density-b").typical())),
                figure(
                        "mass-ratio",
                        "How much of the second part goes to one of the first, by mass?",
                        Dimension.NUMBER,
                        "second part / first part; parts by volume are first multiplied by their densities",
                        "common-practice",
                        "two parts",
                        Formula.when(
                                s -> put(s) && s.ratioBy().equals("volume"),
                                x -> x[1] * x[3] / (x[0] * x[2]),
                                in("ratio:first"),
                                in("ratio:second"),
                                in("raw:density-a"),
                                in("raw:density-b")),
                        Formula.when(
                                s -> put(s) && s.ratioBy().equals("weight"),
                                x -> x[1] / x[0],
                                in("ratio:first"),
                                in("ratio:second"))),
                figure(
                        "ratio-off",
                        "How far off is what I put in?",
                        Dimension.FRACTION,
                        "the larger of what was put in and what belongs there, over the smaller, less one",
                        "common-practice",
                        "the label's ratio",
                        Formula.of(
                                x -> {
                                    double off = x[1] / x[0] / x[2];
                                    return Math.max(off, 1 / off) - 1;
                                },
                                in("typed:put-first").typical(),
                                in("typed:put-second").typical(),
                                in("mass-ratio").typical())),
                figure(
                        "add-first",
                        "How much of the first part puts the ratio right again?",
                        Dimension.MASS,
                        "second part in the cup / the ratio by mass - first part in the cup",
                        "common-practice",
                        "what is in the cup stays there",
                        Formula.of(
                                x -> Math.max(0, x[1] / x[2] - x[0]),
                                in("typed:put-first").typical(),
                                in("typed:put-second").typical(),
                                in("mass-ratio").typical())),
                figure(
                        "add-second",
                        "How much of the second part puts the ratio right again?",
                        Dimension.MASS,
                        "first part in the cup × the ratio by mass - second part in the cup",
                        "common-practice",
                        "what is in the cup stays there",
                        Formula.of(
                                x -> Math.max(0, x[0] * x[2] - x[1]),
                                in("typed:put-first").typical(),
                                in("typed:put-second").typical(),
                                in("mass-ratio").typical())),
                figure(
                        "mass-put-right",
                        "How much is in the cup once the ratio is right again?",
                        Dimension.MASS,
                        "all that is in the cup and what is added",
                        "common-practice",
                        "",
                        Formula.of(
                                x -> x[0] + x[1] + x[2] + x[3],
                                in("typed:put-first").typical(),
                                in("typed:put-second").typical(),
                                in("add-first").typical(),
                                in("add-second").typical())));
    }
}
