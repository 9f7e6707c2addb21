package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.physics.PressureCure;
import pourwright.units.Dimension;

/** How hot it can get, and what a pressure pot does to a bubble. */
final class HeatAndPressureFigures {
    /** A pour of exactly the depth for one layer is one layer. */
    private static final double ROUNDING = 1e-9;

    private HeatAndPressureFigures() {}

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "depth-share",
                        "Is the pour too thick for its heat?",
                        Dimension.NUMBER,
                        "thickest lump / the class's depth for one pour",
                        "typical-data-sheet",
                        "classes that heat themselves",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("typed:part-depth").up(),
                                in("depth-limit").down())),
                figure(
                        "layer-count",
                        "In how many layers?",
                        Dimension.NUMBER,
                        "thickest lump / the class's depth for one pour, rounded up",
                        "typical-data-sheet",
                        "classes that heat themselves",
                        Formula.of(
                                x -> Math.ceil(x[0] / x[1] - ROUNDING),
                                in("typed:part-depth").up(),
                                in("depth-limit").down())),
                figure(
                        "exotherm-peak",
                        "How hot can it get at most?",
                        Dimension.TEMPERATURE,
                        "liquid temperature + adiabatic rise of the class",
                        "from-memory",
                        "an upper bound: a part that loses no heat",
                        Formula.of(
                                x -> x[0] + x[1],
                                in("liquid-temperature").up(),
                                in("adiabatic-rise").up())),
                figure(
                        "pressure-cure-ratio",
                        "What does the pot do to a bubble's volume?",
                        Dimension.NUMBER,
                        "local air pressure / (local air pressure + gauge pressure)",
                        "common-practice",
                        "dry gas; some of it also dissolves",
                        Formula.of(
                                x -> PressureCure.volumeRatio(x[0], x[1]),
                                in("typed:pressure-cure").down(),
                                in("barometric-pressure").up())),
                figure(
                        "pressure-cure-diameter-ratio",
                        "And to its diameter?",
                        Dimension.NUMBER,
                        "cube root of the volume ratio",
                        "common-practice",
                        "dry gas",
                        Formula.of(
                                x -> PressureCure.diameterRatio(x[0], x[1]),
                                in("typed:pressure-cure").down(),
                                in("barometric-pressure").up())),
                figure(
                        "pressure-share",
                        "What share of the pot's rating is that?",
                        Dimension.NUMBER,
                        "cure pressure / rating on the plate",
                        "common-practice",
                        "both as gauge pressure",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("typed:pressure-cure").up(),
                                in("typed:pressure-rating").down())));
    }
}
