package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.guide;
import static pourwright.figures.Input.guides;
import static pourwright.figures.Input.in;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pourwright.physics.Froth;
import pourwright.physics.FrothCourse;
import pourwright.physics.PumpDown;
import pourwright.physics.PumpDownCourse;
import pourwright.units.Dimension;

/** How high the mix froths, and when it rises and falls. */
final class FrothFigures {
    private static final String SOURCES = "debregeas-1998 common-practice";

    /** Nobody throttles a pull on a liquid that does not boil: it goes on to what the pump reaches. */
    private static final double NO_FLOOR_PA = 1;

    private FrothFigures() {}

    /** Vapour of the liquid itself joins the air in the froth, and no formula here knows how much. */
    private static String boils(Scope job) {
        Optional<FigureValue> vapour = job.get("vapour-pressure");
        Optional<FigureValue> planned = job.get("planned-pressure");
        return vapour.isPresent()
                        && planned.isPresent()
                        && planned.get().si().typical() < vapour.get().si().typical()
                ? "at this pressure the liquid boils: it froths higher than this, without limit"
                : "";
    }

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "degas-viscosity",
                        "How thick is what goes under vacuum?",
                        Dimension.VISCOSITY,
                        "viscosity of the fresh mix; of a brushable rubber that before the thickener",
                        "common-practice",
                        "fresh mix at room temperature",
                        Formula.of(x -> x[0], in("unthickened-viscosity").up()),
                        Formula.of(x -> x[0], in("raw:viscosity").up())),
                figure(
                        "air-fraction",
                        "How much air did stirring put in?",
                        Dimension.FRACTION,
                        "share of air in the fresh mix, by how it was stirred",
                        "common-practice",
                        "3 to 12 %",
                        stirred("slow"),
                        stirred("brisk"),
                        stirred("drill"),
                        stirred("vacuum-mixer"),
                        Formula.of(
                                x -> x[0],
                                guides("stirred-in-air-slow", "stirred-in-air-brisk", "stirred-in-air-drill")
                                        .up())),
                figure(
                                "froth-factor",
                                "How many times its volume does it froth to?",
                                Dimension.NUMBER,
                                "1 + air fraction × (local pressure / chamber pressure - 1), at most the cap at which packed bubbles break",
                                "common-practice",
                                "dry air in a liquid that does not boil",
                                Formula.of(
                                        x -> Froth.factor(x[0], x[1], Math.min(x[2], x[1]), x[3]),
                                        in("air-fraction").up(),
                                        in("barometric-pressure").up(),
                                        in("planned-pressure").down(),
                                        guide("froth-cap").up()))
                        .where((job, own) -> boils(job)),
                figure(
                                "cup-factor",
                                "How many times the mix must the cup hold?",
                                Dimension.NUMBER,
                                "the larger of froth factor and the class's practice factor; no more than the bump factor when you work the valve",
                                "common-practice",
                                "degassing in the cup",
                                Formula.when(
                                        s -> s.choice("bump-cycles").equals("yes"),
                                        x -> Math.min(Math.max(x[0], x[1]), x[2]),
                                        in("froth-factor").up(),
                                        in("cup-rise-factor").up().or(1.0),
                                        guide("bump-cycle-factor").up()),
                                Formula.of(
                                        x -> Math.max(x[0], x[1]),
                                        in("froth-factor").up(),
                                        in("cup-rise-factor").up().or(1.0)))
                        .where((job, own) -> boils(job)),
                figure(
                                "froth-volume",
                                "How much room does the froth want?",
                                Dimension.VOLUME,
                                "liquid in the cup × the cup factor",
                                "common-practice",
                                "degassing in the cup",
                                Formula.of(
                                        x -> x[0] * x[1],
                                        in("cup-load").up(),
                                        in("cup-factor").up()))
                        .where((job, own) -> boils(job)),
                course("froth-crest-time", "When does the froth crest?", 0),
                course("froth-fall-time", "When has the froth fallen?", 1));
    }

    private static Formula stirred(String how) {
        return Formula.when(
                s -> s.choice("stirring").equals(how),
                x -> x[0],
                guide("stirred-in-air-" + how).up());
    }

    /** Inputs of the froth column, in the order {@link #crestAndFall} takes them. */
    static List<Input> inputs(Input depth, Input air) {
        return List.of(
                depth.up(),
                in("degas-viscosity").up(),
                in("raw:liquid-density").typical(),
                air,
                guides("froth-bubble-small", "froth-bubble-usual", "froth-bubble-large")
                        .down(),
                in("barometric-pressure").typical(),
                in("boil-off-pressure").typical().or(NO_FLOOR_PA),
                guide("froth-cap"),
                guides("rise-rigid-skin", "rise-usual-skin", "rise-clean-skin").down(),
                in("free-volume").up(),
                in("pump-speed").down(),
                in("pump-ultimate").typical().or(0.0),
                in("raw:hose-bore").typical().or(0.0),
                in("raw:hose-length").typical().or(1.0),
                in("leak-rate").typical().or(0.0));
    }

    private static FigureDef course(String id, String asks, int which) {
        List<Input> inputs = inputs(in("liquid-depth"), in("air-fraction").up());
        return new FigureDef(
                id,
                asks,
                Dimension.TIME,
                "a column of froth: gas swells with falling pressure, breaks beyond the packing limit, and leaves layer by layer at the rise speed of its swollen bubbles",
                Arrays.asList(SOURCES.split(" ")),
                "a lumped model, trust it within a factor of two; counted from opening the pump valve",
                List.of(new Formula(s -> true, inputs, (s, x) -> crestAndFall(s, x)[which])));
    }

    /** Crest and fall, seconds from opening the valve; computed once for equal inputs. */
    static double[] crestAndFall(Scope s, double[] x) {
        List<Object> key = new ArrayList<>();
        key.add("froth-course");
        for (double v : x) {
            key.add(v);
        }
        return s.once(key, () -> {
            PumpDownCourse pumping = s.once(
                    List.of("pumping", x[9], x[5], x[10], x[11], x[12], x[13], x[14]),
                    () -> PumpDown.course(x[9], x[5], VacuumFigures.pump(x, 10), VacuumFigures.line(x, 10), x[14]));
            FrothCourse.Course c = FrothCourse.of(
                    new FrothCourse.Case(x[0], x[1], x[2], x[3], x[4], x[5], Math.min(x[6], x[5]), x[7], x[8]),
                    pumping::pressurePaAt);
            return new double[] {c.crestS(), c.fallenS()};
        });
    }
}
