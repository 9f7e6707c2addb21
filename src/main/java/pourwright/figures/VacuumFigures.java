package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.guide;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.physics.LeakRate;
import pourwright.physics.Lid;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.PumpDown;
import pourwright.physics.PumpLine;
import pourwright.physics.TubeConductance;
import pourwright.physics.VacuumLine;
import pourwright.physics.VapourPressure;
import pourwright.physics.Volatile;
import pourwright.units.Dimension;

/** Pump, hose and chamber: how deep, how fast, and where the liquid boils. */
final class VacuumFigures {
    private static final double NO_HOSE = 0;
    private static final double USUAL_HOSE_LENGTH_M = 1;

    /** Rough vacuum ends at 1 mbar (ISO 3529-1); below, what surfaces and liquid give off decides. */
    private static final double ROUGH_VACUUM_LEAST_PA = 100;

    /** Above this number flow in a tube turns turbulent; see {@link TubeConductance#reynolds}. */
    private static final double TURBULENT_REYNOLDS = 2300;

    /** From here on thin hoses are usually turbulent; common practice. */
    private static final double NEAR_ATMOSPHERE_PA = 50_000;

    /** A tube is long when it is more than ten bores long; see {@link TubeConductance}. */
    private static final double LONG_TUBE_BORES = 10;

    private static final Holds LONG_HOSE = (job, own) -> {
        double bore = typical(job, "raw:hose-bore", 0);
        double length = typical(job, "raw:hose-length", USUAL_HOSE_LENGTH_M);
        return length < LONG_TUBE_BORES * bore
                ? "the hose is shorter than ten bores: its ends matter too, and it lets through less than this"
                : "";
    };

    private static final String BELOW_ROUGH =
            "below 1 mbar the walls, the hose and the liquid give off gas that the formula leaves out";

    private static double typical(Scope job, String name, double otherwise) {
        return job.get(name).map(v -> v.si().typical()).orElse(otherwise);
    }

    private static Holds laminarHose(boolean ownIsShare) {
        return (job, own) -> {
            double bore = typical(job, "raw:hose-bore", NO_HOSE);
            if (bore == NO_HOSE) {
                return "";
            }
            double speed = own.typical() * (ownIsShare ? typical(job, "pump-speed", 0) : 1);
            double reynolds = TubeConductance.reynolds(speed * typical(job, "planned-pressure", 0), bore);
            return reynolds > TURBULENT_REYNOLDS
                    ? "the flow in the hose is turbulent (Reynolds number " + Math.round(reynolds)
                            + ", laminar below 2300): the hose lets through less than this"
                    : "";
        };
    }

    private static double arriving(double[] x) {
        if (x[0] <= x[2]) {
            throw new PhysicsException("The pump does not get below its own ultimate pressure: at this depth nothing is"
                    + " pumped. Aim less deep.");
        }
        return PumpLine.effectiveSpeedM3PerS(x[0], pump(x, 1), line(x, 1));
    }

    private VacuumFigures() {}

    /** Pump, hose and gas load in the order the formulas take them. */
    private static Input[] pumping(Input... before) {
        Input[] all = new Input[before.length + 5];
        System.arraycopy(before, 0, all, 0, before.length);
        all[before.length] = in("pump-speed").down();
        all[before.length + 1] = in("pump-ultimate").up().or(0.0);
        all[before.length + 2] = in("raw:hose-bore").down().or(NO_HOSE);
        all[before.length + 3] = in("raw:hose-length").up().or(USUAL_HOSE_LENGTH_M);
        all[before.length + 4] = in("leak-rate").up().or(0.0);
        return all;
    }

    static Pump pump(double[] x, int at) {
        return new Pump(x[at], x[at + 1]);
    }

    static VacuumLine line(double[] x, int at) {
        return x[at + 2] == NO_HOSE ? VacuumLine.NONE : new VacuumLine(x[at + 2], x[at + 3]);
    }

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "pump-speed",
                        "How fast is the pump?",
                        Dimension.FLOW,
                        "as on its plate; else the usual speed of its kind",
                        "common-practice",
                        "free-air speed",
                        Formula.of(x -> x[0], in("typed:pump-speed").up()),
                        Formula.of(x -> x[0], in("kind:pump-speed").up()),
                        Formula.of(x -> x[0], in("raw:pump-speed").up())),
                figure(
                        "pump-ultimate",
                        "How deep can the pump go?",
                        Dimension.PRESSURE,
                        "as typed; else what its kind reaches in shop use",
                        "common-practice",
                        "inlet closed, pump warm",
                        Formula.of(x -> x[0], in("typed:pump-ultimate").up()),
                        Formula.of(x -> x[0], in("kind:pump-ultimate").up()),
                        Formula.when(
                                Scope::assumes,
                                x -> x[0],
                                Input.guides("vane-ultimate-best", "vane-ultimate-usual", "vane-ultimate-worst")
                                        .up())),
                figure(
                        "leak-rate",
                        "How much air leaks in?",
                        Dimension.LEAK,
                        "chamber volume × pressure rise / time",
                        "common-practice",
                        "a straight rise in an empty, dry, isolated chamber",
                        Formula.of(x -> x[0], in("typed:leak-rate").up()),
                        Formula.of(
                                x -> LeakRate.paM3PerS(x[0], x[1], x[2]),
                                in("raw:chamber-volume").up(),
                                in("typed:pressure-rise").up(),
                                in("typed:rise-time").down()),
                        Formula.when(
                                Scope::assumes,
                                x -> x[0],
                                Input.guides("none", "leak-usual", "leak-poor").up())),
                figure(
                                "reachable-pressure",
                                "Where will the pressure stop?",
                                Dimension.PRESSURE,
                                "what your gauge showed; else where the pump's throughput equals the leak",
                                "jousten-vacuum-handbook",
                                "rough vacuum, air at room temperature",
                                Formula.of(x -> x[0], in("absolute-pressure").up()),
                                Formula.of(
                                        x -> PumpDown.reachablePressurePa(pump(x, 1), line(x, 1), x[5], x[0]),
                                        pumping(in("barometric-pressure").up())))
                        .where(Holds.itself(
                                "reachable-pressure",
                                Dimension.PRESSURE,
                                ROUGH_VACUUM_LEAST_PA,
                                Double.MAX_VALUE,
                                BELOW_ROUGH)),
                figure(
                        "vapour-pressure",
                        "At what pressure does it boil?",
                        Dimension.PRESSURE,
                        "water: saturation line of IAPWS-IF97; others: ln p = C1 + C2/T + C3 ln T + C4 T²",
                        "iapws-if97 perry-8-table-2-8",
                        "within the range of the constants; a mixture boils a little lower than the pure liquid",
                        Formula.byWhen(
                                s -> liquid(s) != null,
                                (s, x) -> VapourPressure.saturationPa(liquid(s), x[0]),
                                in("liquid-temperature").up())),
                figure(
                        "boil-off-pressure",
                        "How deep is too deep?",
                        Dimension.PRESSURE,
                        "vapour pressure × a margin, one for water and one for monomers and solvents",
                        "iapws-if97 perry-8-table-2-8 common-practice",
                        "meant to keep boil-off below about 0.3 % of the mass in two minutes",
                        Formula.when(
                                s -> liquid(s) == Volatile.WATER,
                                x -> x[0] * x[1],
                                in("vapour-pressure").up(),
                                guide("boil-off-margin-water").up()),
                        Formula.of(
                                x -> x[0] * x[1],
                                in("vapour-pressure").up(),
                                guide("boil-off-margin-monomer").up())),
                figure(
                        "planned-pressure",
                        "How deep should I pull?",
                        Dimension.PRESSURE,
                        "your own target, or what the class wants; never so deep that it boils or that the pump does not get there",
                        "common-practice",
                        "degassing in rough vacuum",
                        Formula.when(
                                s -> !s.assumes(),
                                x -> x[0],
                                in("typed:target-pressure").up()),
                        Formula.of(
                                x -> Math.max(x[0], Math.max(x[1], x[2] * x[3])),
                                in("typed:target-pressure").up(),
                                in("boil-off-pressure").up().or(0.0),
                                in("reachable-pressure").up().or(0.0),
                                guide("approach-to-ultimate").up()),
                        Formula.of(
                                x -> Math.max(x[0], Math.max(x[1], x[2] * x[3])),
                                in("vacuum-pressure").up(),
                                in("boil-off-pressure").up().or(0.0),
                                in("reachable-pressure").up().or(0.0),
                                guide("approach-to-ultimate").up())),
                figure(
                        "planned-reading",
                        "What should my dial show then?",
                        Dimension.PRESSURE,
                        "local air pressure minus the planned pressure",
                        "common-practice",
                        "a dial that counts from local air",
                        Formula.of(
                                x -> Math.max(0, x[0] - x[1]),
                                in("barometric-pressure").up(),
                                in("planned-pressure").down())),
                figure(
                                "line-conductance",
                                "How much does the hose let through?",
                                Dimension.CONDUCTANCE,
                                "135 d⁴ p / l + 12.1 (d³/l) (1 + 192 d p) / (1 + 237 d p), d and l in cm, p in mbar, L/s",
                                "jousten-vacuum-handbook",
                                "a long round tube, air at 20 °C, laminar to molecular; near atmosphere in thin hoses it is optimistic",
                                Formula.of(
                                        x -> TubeConductance.m3PerS(x[0], x[1], x[2]),
                                        in("raw:hose-bore").up(),
                                        in("raw:hose-length").down(),
                                        in("planned-pressure")))
                        .where(
                                LONG_HOSE.and(
                                        Holds.inside(
                                                "planned-pressure",
                                                Dimension.PRESSURE,
                                                0,
                                                NEAR_ATMOSPHERE_PA,
                                                "near atmosphere the flow in a thin hose is turbulent, and it lets through less than this"))),
                figure(
                                "effective-speed",
                                "How fast does the pump really pump the chamber?",
                                Dimension.FLOW,
                                "inlet pressure from S (pp - pu) = C((p + pp)/2) (p - pp); speed = S (pp - pu) / p",
                                "jousten-vacuum-handbook",
                                "air at 20 °C, laminar to molecular flow in the hose",
                                Formula.of(
                                        VacuumFigures::arriving,
                                        in("planned-pressure").up(),
                                        in("pump-speed").up(),
                                        in("pump-ultimate").down().or(0.0),
                                        in("raw:hose-bore").up().or(NO_HOSE),
                                        in("raw:hose-length").down().or(USUAL_HOSE_LENGTH_M)))
                        .where(LONG_HOSE.and(laminarHose(false))),
                figure(
                                "effective-share",
                                "What share of the pump's speed arrives?",
                                Dimension.FRACTION,
                                "effective speed / plate speed",
                                "jousten-vacuum-handbook",
                                "at the planned pressure",
                                Formula.of(
                                        x -> arriving(x) / x[1],
                                        in("planned-pressure").up(),
                                        in("pump-speed"),
                                        in("pump-ultimate").down().or(0.0),
                                        in("raw:hose-bore").up().or(NO_HOSE),
                                        in("raw:hose-length").down().or(USUAL_HOSE_LENGTH_M)))
                        .where(LONG_HOSE.and(laminarHose(true))),
                figure(
                        "free-volume",
                        "How much air is there to pump?",
                        Dimension.VOLUME,
                        "chamber volume less the liquid that stands in it",
                        "common-practice",
                        "the cup's own wall is left out",
                        Formula.of(
                                x -> {
                                    if (x[1] >= x[0]) {
                                        throw new PhysicsException(
                                                "The liquid is as large as the chamber: there is no room left for air.");
                                    }
                                    return x[0] - x[1];
                                },
                                in("raw:chamber-volume").up(),
                                in("cup-load").down().or(0.0))),
                figure(
                                "pump-down-time",
                                "How long does it take to pump down?",
                                Dimension.TIME,
                                "∫ V dp / (throughput(p) - gas load), from start to target",
                                "jousten-vacuum-handbook de-nevers-3",
                                "rough vacuum; real shops take up to 1.8 times as long with wet walls and filters",
                                Formula.of(
                                        x -> PumpDown.timeS(x[0], x[1], x[2], pump(x, 3), line(x, 3), x[7]),
                                        pumping(
                                                in("free-volume").up(),
                                                in("start-pressure").up(),
                                                in("planned-pressure").down())))
                        .where(Holds.inside(
                                "planned-pressure",
                                Dimension.PRESSURE,
                                ROUGH_VACUUM_LEAST_PA,
                                Double.MAX_VALUE,
                                BELOW_ROUGH)),
                figure(
                        "start-pressure",
                        "From what pressure does the pump start?",
                        Dimension.PRESSURE,
                        "as typed; else the local air pressure",
                        "common-practice",
                        "",
                        Formula.of(x -> x[0], in("typed:start-pressure").up()),
                        Formula.of(x -> x[0], in("barometric-pressure").up())),
                figure(
                        "leak-floor",
                        "What does the leak cost in depth?",
                        Dimension.PRESSURE,
                        "leak rate / effective speed",
                        "jousten-vacuum-handbook",
                        "at the planned pressure",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("leak-rate").up(),
                                in("effective-speed").down())),
                figure(
                        "leak-share",
                        "Is the leak small enough?",
                        Dimension.FRACTION,
                        "pressure that the leak costs / planned pressure",
                        "common-practice",
                        "under a tenth is good, under a third acceptable",
                        Formula.of(
                                x -> x[0] / x[1],
                                in("leak-floor").up(),
                                in("planned-pressure").down())),
                figure(
                        "lid-force",
                        "How hard does the air press on the lid?",
                        Dimension.FORCE,
                        "(local air pressure - chamber pressure) × π d² / 4",
                        "common-practice",
                        "any shape of lid over a round opening",
                        Formula.of(
                                x -> Lid.forceN(x[0], Math.max(0, x[1] - x[2])),
                                in("raw:lid-diameter").up(),
                                in("barometric-pressure").up(),
                                in("planned-pressure").down().or(0.0))));
    }

    /** The volatile part of the liquid: named, or by the material's nature; null when there is none. */
    private static Volatile liquid(Scope s) {
        String named = s.choice("volatile");
        if (!named.isEmpty()) {
            return Volatile.valueOf(named.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
        }
        if (s.hasTrait("styrene")) {
            return Volatile.STYRENE;
        }
        if (s.hasTrait("monomer")) {
            return Volatile.METHYL_METHACRYLATE;
        }
        return s.hasTrait("water-slurry") ? Volatile.WATER : null;
    }
}
