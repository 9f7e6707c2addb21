package pourwright.course;

import java.util.Optional;
import pourwright.advice.Consultation;
import pourwright.degas.Charge;
import pourwright.degas.CureCourse;
import pourwright.degas.Stage;
import pourwright.degas.VacuumKit;
import pourwright.facts.Estimate;
import pourwright.knowledge.Knowledge;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.VacuumLine;

/** What the simulation of a pull needs besides: air, chamber, pump and cup. */
final class CourseInputs extends CureInputs {
    /** Shorter than this nobody pulls; keeps a plan without a hold in range. */
    private static final double SHORTEST_PULL_S = 10;

    CourseInputs(Consultation c, Knowledge k, End end) {
        super(c, k, end);
    }

    double airPa() {
        return need("barometric-pressure").typical();
    }

    private double bubbleM() {
        return end.quicker(guides("froth-bubble-small", "froth-bubble-usual", "froth-bubble-large"));
    }

    /** The batch when it goes into the chamber: stirred for the mixing time, and cured and warmed as far. */
    Charge mixedBatch() {
        return aged(need("mixing-time").typical(), false);
    }

    /** The same when nothing was degassed before the pour. */
    Charge pouredBatch() {
        return poured(aged(need("mixing-time").typical() + need("pour-time").typical(), true));
    }

    private Charge aged(double agedS, boolean mould) {
        Charge fresh = Charge.justMixed(
                mix(),
                massKg(mould),
                end.slower(need("air-fraction")),
                bubbleM(),
                guide("course-bubble-spread"),
                airPa(),
                liquidK());
        CureCourse cure = CureCourse.of(mix(), massKg(mould), vessel(false), roomK(), liquidK(), 0);
        return new Charge(
                mix(),
                massKg(mould),
                fresh.bubbles(),
                Math.min(1, cure.conversionAt(agedS)),
                cure.temperatureKAt(agedS),
                agedS);
    }

    /** A batch after the pour, with the air that the stream folded in. */
    Charge poured(Charge batch) {
        return batch.poured(batch.massKg(), guide("poured-in-air"), bubbleM(), guide("course-bubble-spread"), airPa());
    }

    /** Chamber and pump, with the room that the mix leaves free. */
    VacuumKit kit(boolean mould) {
        double chamber = end.slower(need("chamber-volume"));
        double others = liquidM3(true) - liquidM3(false);
        double free = mould ? chamber - liquidM3(true) : end.slower(need("free-volume")) + others;
        if (!(free > 0)) {
            throw new PhysicsException("The mix leaves no room in the chamber.");
        }
        VacuumLine line = figure("hose-bore")
                .map(bore -> new VacuumLine(
                        end.quicker(bore),
                        figure("hose-length").map(end::slower).orElse(1.0)))
                .orElse(VacuumLine.NONE);
        // Nobody throttles a pull on a liquid that does not boil, unless a target was named: as the plan's figures take
        // it.
        double boils = figure("boil-off-pressure").map(Estimate::typical).orElse(0.0);
        double target = c.answers().get("target-pressure").isPresent()
                ? need("planned-pressure").typical()
                : 0;
        double lowest = Math.min(airPa(), Math.max(boils, target));
        return new VacuumKit(
                free,
                new Pump(
                        end.quicker(need("pump-speed")),
                        figure("pump-ultimate").map(end::slower).orElse(0.0)),
                line,
                figure("leak-rate").map(end::slower).orElse(0.0),
                airPa(),
                lowest);
    }

    /** Height of the rim over the floor, where the cup is known. */
    Optional<Double> rimM() {
        return figure("cup-volume").map(v -> v.typical() / surfaceM2(false));
    }

    Stage stage(boolean mould) {
        double height = mould ? Double.MAX_VALUE : rimM().orElse(Double.MAX_VALUE);
        return new Stage(
                vessel(mould),
                surfaceM2(mould),
                height,
                roomK(),
                0,
                pulledS(mould),
                need("release-time").typical(),
                mould ? 0 : need("pour-time").typical(),
                guide("visible-bubble"));
    }

    /** How long the pump stays on by the plan; where that has no end, until the mix would gel. */
    double pulledS(boolean mould) {
        double all = figure(mould ? "second-degas-time" : "degas-time")
                .map(Estimate::typical)
                .orElse(Double.POSITIVE_INFINITY);
        double most = need("working-time").typical();
        return Math.max(
                SHORTEST_PULL_S, Math.min(all, most) - need("release-time").typical());
    }
}
