package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.guide;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.physics.Displacement;
import pourwright.physics.Mixing;
import pourwright.physics.PhysicsException;
import pourwright.units.Dimension;

/** How much to mix, of what, in how many cups. */
final class MixFigures {
    private MixFigures() {}

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "master-volume",
                        "How big is the master?",
                        Dimension.VOLUME,
                        "as measured; else its mass / its density; else the rise of water × the vessel's area",
                        "common-practice",
                        "a straight-walled vessel, a master that soaks up no water",
                        Formula.of(x -> x[0], in("typed:master-volume").up()),
                        Formula.of(
                                x -> Displacement.volumeFromMassM3(x[0], x[1]),
                                in("typed:master-mass").up(),
                                in("typed:master-density").down()),
                        Formula.of(
                                x -> Displacement.cylinderM3(x[0], x[1]),
                                in("typed:vessel-diameter").up(),
                                in("typed:water-rise").up())),
                figure(
                        "fill-volume",
                        "What volume must be filled?",
                        Dimension.VOLUME,
                        "as typed; else box length × width × fill height, less the master",
                        "common-practice",
                        "a box with straight walls",
                        Formula.when(
                                s -> !s.choice("amount-by").equals("box"),
                                x -> x[0],
                                in("typed:part-volume").up()),
                        Formula.when(
                                s -> !s.choice("amount-by").equals("mass"),
                                x -> {
                                    double box = Displacement.boxM3(x[0], x[1], x[2]);
                                    if (x[3] >= box) {
                                        throw new PhysicsException(
                                                "The master is as large as the box up to the fill height. Check both.");
                                    }
                                    return box - x[3];
                                },
                                in("typed:box-length").up(),
                                in("typed:box-width").up(),
                                in("typed:fill-height").up(),
                                in("master-volume").down().or(0.0))),
                figure(
                        "mix-volume",
                        "What volume do I mix?",
                        Dimension.VOLUME,
                        "the volume to fill × (1 + what stays on cup and sticks); or the mass / the density",
                        "common-practice",
                        "the waste share is a habit; small batches lose more",
                        Formula.when(
                                s -> s.answers().get("batch-mass").isEmpty()
                                        || List.of("box", "volume", "water").contains(s.choice("amount-by")),
                                x -> x[0] * (1 + x[1]),
                                in("fill-volume").up(),
                                guide("waste-share").up()),
                        Formula.of(
                                x -> x[0] / x[1],
                                in("typed:batch-mass").up(),
                                in("raw:liquid-density").down())),
                figure(
                        "mix-mass",
                        "What mass do I mix?",
                        Dimension.MASS,
                        "as typed; else the volume to mix × the density of the mix",
                        "common-practice",
                        "",
                        Formula.of(
                                x -> x[0] * x[1],
                                in("mix-volume-measured").up(),
                                in("raw:liquid-density").up()),
                        Formula.of(x -> x[0], in("typed:batch-mass").up())),
                figure(
                        "mix-volume-measured",
                        "What volume do I mix, when it was measured?",
                        Dimension.VOLUME,
                        "the volume to mix, where it does not come from a typed mass",
                        "common-practice",
                        "used inside other figures",
                        Formula.when(
                                s -> s.answers().get("batch-mass").isEmpty()
                                        || List.of("box", "volume", "water").contains(s.choice("amount-by")),
                                x -> x[0] * (1 + x[1]),
                                in("fill-volume").up(),
                                guide("waste-share").up())),
                part("part-mass-a", "first", 0),
                part("part-mass-b", "second", 1),
                figure(
                        "cup-load",
                        "How much liquid goes into the cup?",
                        Dimension.VOLUME,
                        "the whole mix, as the job was described",
                        "common-practice",
                        "one batch",
                        Formula.of(x -> x[0], in("mix-volume").up())),
                figure(
                        "cup-fill-limit",
                        "How much may I put in this cup?",
                        Dimension.VOLUME,
                        "cup volume / the larger of the froth factor and the class's practice factor; with bump cycles / the bump factor",
                        "common-practice",
                        "liquid that is degassed in the cup",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("typed:cup-volume").up(),
                                in("cup-factor").down())),
                figure(
                        "batch-count",
                        "In how many batches?",
                        Dimension.NUMBER,
                        "volume to mix / what the cup may take, rounded up",
                        "common-practice",
                        "batches that each froth in the cup",
                        Formula.of(
                                x -> Math.ceil(x[0] / x[1] - ROUNDING),
                                in("mix-volume").up(),
                                in("cup-fill-limit").down())),
                share("batch-mass-a", "first", "part-mass-a"),
                share("batch-mass-b", "second", "part-mass-b"),
                figure(
                        "batch-mass-max",
                        "What is the most I can mix at once in this cup?",
                        Dimension.MASS,
                        "what the cup may take × the density of the mix",
                        "common-practice",
                        "liquid that is degassed in the cup",
                        Formula.of(
                                x -> x[0] * x[1],
                                in("cup-fill-limit").up(),
                                in("raw:liquid-density").up())));
    }

    /** A batch that fills the cup to the last drop is one batch, not two. */
    private static final double ROUNDING = 1e-9;

    private static FigureDef share(String id, String which, String whole) {
        return figure(
                id,
                "How much of the " + which + " can goes into each batch?",
                Dimension.MASS,
                "the mass of that part in all / the number of batches",
                "common-practice",
                "batches of one size",
                Formula.of(x -> x[0] / x[1], in(whole).up(), in("batch-count").down()));
    }

    private static FigureDef part(String id, String which, int index) {
        return figure(
                id,
                "How much of the " + which + " can?",
                Dimension.MASS,
                "mix mass × its share; parts by volume are first multiplied by their densities",
                "common-practice",
                "two parts; gypsum: powder first, water second",
                Formula.when(
                        s -> s.ratioBy().equals("volume"),
                        x -> Mixing.partMassesKg(x[0], x[1] * x[3], x[2] * x[4])[index],
                        in("mix-mass").up(),
                        in("ratio:first"),
                        in("ratio:second"),
                        in("raw:density-a"),
                        in("raw:density-b")),
                Formula.when(
                        s -> s.ratioBy().equals("weight"),
                        x -> Mixing.partMassesKg(x[0], x[1], x[2])[index],
                        in("mix-mass").up(),
                        in("ratio:first"),
                        in("ratio:second")));
    }
}
