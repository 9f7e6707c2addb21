package pourwright.figures;

import static pourwright.figures.FigureDef.figure;
import static pourwright.figures.Input.giveOrTake;
import static pourwright.figures.Input.guides;
import static pourwright.figures.Input.in;

import java.util.List;
import pourwright.facts.Estimate;
import pourwright.physics.Atmosphere;
import pourwright.physics.DewPoint;
import pourwright.physics.Gauge;
import pourwright.physics.GaugeKind;
import pourwright.units.Dimension;

/** The air of the workshop: its pressure, what a gauge means in it, its damp, and the temperatures it sets. */
final class AirFigures {

    /** What a plain dial may be off by, at worst. */
    private static final String DIAL_ERROR = "dial-error";

    private AirFigures() {}

    static List<FigureDef> all() {
        return List.of(
                figure(
                        "barometric-pressure",
                        "What is the air pressure where I work?",
                        Dimension.PRESSURE,
                        "as typed, or the standard atmosphere at your altitude: 101,325 Pa (1 - 0.0065 H / 288.15)^5.255876",
                        "iso-2533",
                        "-1,000 to 11,000 m; weather moves it by about 3 %",
                        Formula.of(x -> x[0], in("typed:barometer").up()),
                        Formula.of(
                                x -> Atmosphere.barometricPressurePa(x[0]),
                                in("raw:altitude").down().or(0.0))),
                figure(
                                "absolute-pressure",
                                "What does my gauge reading mean here?",
                                Dimension.PRESSURE,
                                "local air pressure minus a reading below local air, give or take the error of a dial; an absolute gauge as read",
                                "common-practice",
                                "as good as the gauge: a dial is off by up to 30 mbar either way, which is in the range",
                                Formula.byWhen(
                                        s -> kind(s) == GaugeKind.BELOW_LOCAL_AIR,
                                        (s, x) -> behindDial(x[0], x[1], x[2]),
                                        in("typed:gauge-reading"),
                                        in("barometric-pressure").up(),
                                        giveOrTake(DIAL_ERROR).up()),
                                Formula.byWhen(
                                        s -> kind(s) != null,
                                        (s, x) -> Gauge.absolutePa(x[0], kind(s), x[1]),
                                        in("typed:gauge-reading"),
                                        in("barometric-pressure").up()))
                        .where(AirFigures::dialError),
                figure(
                        "deepest-reading",
                        "What is the most my dial can show here?",
                        Dimension.PRESSURE,
                        "the local air pressure: a dial below local air cannot pass it",
                        "common-practice",
                        "a gauge that counts from local air",
                        Formula.when(
                                s -> kind(s) == GaugeKind.BELOW_LOCAL_AIR,
                                x -> Gauge.deepestBelowLocalAirPa(x[0]),
                                in("barometric-pressure").up())),
                figure(
                        "liquid-temperature",
                        "How warm is the liquid?",
                        Dimension.TEMPERATURE,
                        "as typed; else the room, and up to a guideline warmer where nobody measured",
                        "common-practice",
                        "liquid that stood in the room",
                        Formula.of(x -> x[0], in("typed:liquid-temperature").up()),
                        Formula.when(
                                Scope::assumes,
                                x -> x[0] + x[1],
                                in("raw:room-temperature").up(),
                                guides("none", "none", "unmeasured-liquid-warmth")
                                        .up()),
                        Formula.of(x -> x[0], in("raw:room-temperature").up())),
                figure(
                        "mould-temperature",
                        "How warm is the mould?",
                        Dimension.TEMPERATURE,
                        "as typed; else the room",
                        "common-practice",
                        "a mould that stood in the room",
                        Formula.of(x -> x[0], in("typed:mould-temperature").up()),
                        Formula.of(x -> x[0], in("raw:room-temperature").up())),
                figure(
                        "dew-point",
                        "Below what temperature does dew form?",
                        Dimension.TEMPERATURE,
                        "temperature at which the water in the air saturates it",
                        "iapws-if97",
                        "0 to 60 °C",
                        Formula.of(
                                x -> DewPoint.kelvin(x[0], x[1]),
                                in("raw:room-temperature").up(),
                                in("raw:humidity").up())),
                figure(
                        "dew-margin",
                        "How far above the dew point is the coldest thing?",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        "the colder of mould and liquid, minus the dew point",
                        "common-practice",
                        "0 to 60 °C",
                        Formula.of(
                                x -> Math.min(x[0], x[1]) - DewPoint.kelvin(x[2], x[3]),
                                in("mould-temperature").up(),
                                in("liquid-temperature").up(),
                                in("raw:room-temperature").down(),
                                in("raw:humidity").down())));
    }

    /** The pressure behind a dial that is off by so much; no vacuum is deeper than none at all. */
    private static double behindDial(double readingPa, double barometerPa, double errorPa) {
        double asReadPa = Gauge.absolutePa(Math.abs(readingPa), GaugeKind.BELOW_LOCAL_AIR, barometerPa);
        return Math.max(0, asReadPa + errorPa);
    }

    /** Near the bottom of a dial its own error is as large as what is left. */
    private static String dialError(Scope job, Estimate own) {
        return kind(job) == GaugeKind.BELOW_LOCAL_AIR && own.typical() < job.guideline(DIAL_ERROR)
                ? "a dial is off by 10 to 30 mbar, which is more than is left here: only an absolute gauge can tell"
                : "";
    }

    private static GaugeKind kind(Scope s) {
        return switch (s.choice("gauge-kind")) {
            case "absolute" -> GaugeKind.ABSOLUTE;
            case "below-local-air" -> GaugeKind.BELOW_LOCAL_AIR;
            case "above-local-air" -> GaugeKind.ABOVE_LOCAL_AIR;
            default -> null;
        };
    }
}
