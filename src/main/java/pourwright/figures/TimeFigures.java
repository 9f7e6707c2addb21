package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.guide;
import static pourwright.figures.Input.guides;
import static pourwright.figures.Input.in;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import pourwright.physics.Cure;
import pourwright.units.Dimension;

/** The clock: how long the mix stays workable here, and what each step takes of it. */
public final class TimeFigures {
    private static final double HALVING_KELVIN = 10;

    /** Only mixes that heat themselves are taken by their mass. */
    private static final Holds KNOWN_MASS = (job, own) -> job.material() == null || job.hasTrait("self-heating")
            ? Holds.inside(
                            "mix-mass",
                            Dimension.MASS,
                            0.010,
                            10,
                            "how the time goes with the mass is known from 10 g to 10 kg")
                    .broken(job, own)
            : "";

    private static final Holds KNOWN_WARMTH = Holds.inside(
            "liquid-temperature",
            Dimension.TEMPERATURE,
            283.15,
            313.15,
            "how the time goes with the temperature is known from 10 to 40 °C");

    private TimeFigures() {}

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "rated-working-time",
                        "How long to gel, at the label's mass and temperature?",
                        Dimension.TIME,
                        "a pot life until gel as it is; one until twice as thick / 0.4 to 0.6; of unknown meaning from once to twice",
                        "common-practice",
                        "definitions of pot life differ between makers",
                        Formula.when(
                                s -> meaning(s, "gel"),
                                x -> x[0],
                                in("typed:pot-life").up()),
                        Formula.when(
                                s -> meaning(s, "doubling"),
                                x -> x[0] / x[1],
                                in("typed:pot-life").up(),
                                guides("doubling-share-low", "doubling-share", "doubling-share-high")
                                        .down()),
                        Formula.of(
                                x -> x[0] * x[1],
                                in("typed:pot-life").up(),
                                guides("unstated-pot-life-least", "unstated-pot-life-least", "unstated-pot-life-most")
                                        .up()),
                        Formula.of(x -> x[0], in("raw:pot-life").up())),
                figure(
                                "working-time",
                                "How long until it gels, for this batch in this room?",
                                Dimension.TIME,
                                "rated time × Arrhenius factor of the temperature × (rated mass / mass)^n; without an activation energy half for every 10 K",
                                "common-practice from-memory",
                                "10 g to 10 kg, 10 to 40 °C; the exponent n stands in for a heat model",
                                Formula.when(
                                        s -> s.hasTrait("water-slurry"),
                                        x -> x[0],
                                        in("rated-working-time").up()),
                                Formula.when(
                                        s -> s.material() == null || s.hasTrait("self-heating"),
                                        x -> Cure.workingTimeS(x[0], x[1], x[2], x[3], x[4], x[5], x[6]),
                                        in("rated-working-time").up(),
                                        in("raw:pot-life-temperature").up(),
                                        in("liquid-temperature").down(),
                                        in("activation-energy"),
                                        in("raw:pot-life-mass").up(),
                                        in("mix-mass").down(),
                                        guides("mass-exponent-low", "mass-exponent", "mass-exponent-high")),
                                Formula.of(
                                        x -> x[0] / Cure.rateFactor(x[1], x[2], x[3]),
                                        in("rated-working-time").up(),
                                        in("raw:pot-life-temperature").up(),
                                        in("liquid-temperature").down(),
                                        in("activation-energy")),
                                Formula.of(
                                        x -> x[0] * Math.pow(2, (x[1] - x[2]) / HALVING_KELVIN),
                                        in("rated-working-time").up(),
                                        in("raw:pot-life-temperature").up(),
                                        in("liquid-temperature").down()))
                        .where(KNOWN_MASS.and(KNOWN_WARMTH)),
                figure(
                        "pour-by",
                        "By when should the pour be done?",
                        Dimension.TIME,
                        "working time × the share of it after which a mix is thick",
                        "common-practice",
                        "from the start of mixing; viscosity climbs all the way, so the limit is soft",
                        Formula.of(
                                x -> x[0] * x[1],
                                in("working-time").up(),
                                guide("pour-share-late").up())),
                figure(
                        "mixing-time",
                        "How long does mixing take?",
                        Dimension.TIME,
                        "what has passed since the parts met; else the class's usual time",
                        "common-practice",
                        "scraping sides and bottom",
                        Formula.of(x -> x[0], in("typed:mixed-ago").up()),
                        Formula.of(x -> x[0], in("raw:mixing-time").up())),
                figure(
                        "hold-time",
                        "How long to hold after the froth has fallen?",
                        Dimension.TIME,
                        "the class's usual time",
                        "common-practice",
                        "thin liquids: at depth",
                        Formula.of(x -> x[0], in("vacuum-hold").up())),
                figure(
                        "pour-time",
                        "How long does the pour take?",
                        Dimension.TIME,
                        "a handling time + volume to mix / the usual pour rate of such a liquid",
                        "common-practice",
                        "one pour into one mould",
                        pour(s -> s.hasTrait("body-safe-type"), "pour-rate-bucket"),
                        pour(s -> s.hasTrait("water-slurry"), "pour-rate-slurry"),
                        Formula.of(
                                x -> x[0] + x[1] / (x[2] >= x[3] ? x[4] : x[5]),
                                guide("pour-handling-time").up(),
                                in("mix-volume").up().or(0.0),
                                in("raw:viscosity").or(0.0),
                                guide("thick-liquid-above"),
                                guide("pour-rate-thick").down(),
                                guide("pour-rate-thin").down())),
                figure(
                        "release-time",
                        "How long to let the air back in?",
                        Dimension.TIME,
                        "slowly for what splashes: longer for thick liquids",
                        "common-practice",
                        "",
                        Formula.of(
                                x -> x[0] >= x[1] ? x[2] : x[3],
                                in("degas-viscosity").or(0.0),
                                guide("froth-decides-viscosity"),
                                guide("release-time-thick").up(),
                                guide("release-time-thin").up())),
                figure(
                        "degas-time",
                        "How long is it under vacuum?",
                        Dimension.TIME,
                        "thick liquids: until the froth has fallen, then the hold; thin ones: pump-down, then the hold; and letting the air back in",
                        "common-practice",
                        "from opening the pump valve to full release",
                        Formula.when(
                                TimeFigures::frothDecides,
                                x -> Math.max(x[0], x[3]) + x[1] + x[2],
                                in("froth-fall-time").up(),
                                in("hold-time").up(),
                                in("release-time").up(),
                                in("pump-down-time").up()),
                        Formula.of(
                                x -> x[0] + x[1] + x[2],
                                in("pump-down-time").up(),
                                in("hold-time").up(),
                                in("release-time").up())),
                secondDegas(),
                figure(
                        "pull-now",
                        "How long may I still pull on what is mixed?",
                        Dimension.TIME,
                        "the shorter of the whole pull and what is left until the mix is thick, less the pour",
                        "common-practice",
                        "one number to act on, from the typical times",
                        Formula.of(
                                x -> Math.max(0, Math.min(x[0], x[1] - x[2] - x[3])),
                                in("degas-time").typical(),
                                in("pour-by").typical(),
                                in("typed:mixed-ago").typical(),
                                in("pour-time").typical())),
                figure(
                        "degas-share",
                        "What share of the working time would degassing the mix take?",
                        Dimension.FRACTION,
                        "(mixing + vacuum + pour) / working time",
                        "common-practice",
                        "one batch, degassed in the cup",
                        Formula.of(
                                x -> (x[0] + x[1] + x[2]) / x[3],
                                in("mixing-time").up(),
                                in("degas-time").up(),
                                in("pour-time").up(),
                                in("working-time").down())),
                figure(
                        "bench-share",
                        "What share of the working time do mixing and pouring take?",
                        Dimension.FRACTION,
                        "(mixing + pour) / working time",
                        "common-practice",
                        "without vacuum",
                        Formula.of(
                                x -> (x[0] + x[1]) / x[2],
                                in("mixing-time").up(),
                                in("pour-time").up(),
                                in("working-time").down())),
                figure(
                        "pump-down-share",
                        "What share of the working time does pumping down take?",
                        Dimension.FRACTION,
                        "pump-down time / working time",
                        "common-practice",
                        "",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("pump-down-time").up(),
                                in("working-time").down())));
    }

    private static Formula pour(Predicate<Scope> when, String rate) {
        return Formula.when(
                when,
                x -> x[0] + x[1] / x[2],
                guide("pour-handling-time").up(),
                in("mix-volume").up().or(0.0),
                guide(rate).down());
    }

    private static boolean meaning(Scope s, String choice) {
        return s.choice("pot-life-meaning").equals(choice);
    }

    /** Above a guideline viscosity the froth's course decides how long to hold, below it the rise of single bubbles. */
    public static boolean frothDecides(Scope s) {
        return s.get("degas-viscosity")
                .map(v -> v.si().typical() >= s.guideline("froth-decides-viscosity"))
                .orElse(false);
    }

    private static FigureDef secondDegas() {
        List<Input> inputs = new ArrayList<>(FrothFigures.inputs(
                in("mould-liquid-depth"), guide("poured-in-air").up()));
        inputs.add(in("hold-time").up());
        inputs.add(in("release-time").up());
        int hold = inputs.size() - 2;
        return new FigureDef(
                "second-degas-time",
                "How long does a second degas in the mould take?",
                Dimension.TIME,
                "until the froth of the air that the pour put in has fallen, then the hold, then the release",
                List.of("common-practice"),
                "liquid that still flows; a lumped model, within a factor of two",
                List.of(new Formula(
                        s -> true, inputs, (s, x) -> FrothFigures.crestAndFall(s, x)[1] + x[hold] + x[hold + 1])));
    }
}
