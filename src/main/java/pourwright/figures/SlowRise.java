package pourwright.figures;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pourwright.facts.Estimate;
import pourwright.physics.Bubble;
import pourwright.physics.BubbleClearing;
import pourwright.physics.PhysicsException;

/** Whether a bubble rises slowly enough for the law of slow rise, where it is fastest: just below the surface. */
final class SlowRise implements Holds {
    private final String pressure;
    private final boolean itself;

    private SlowRise(String pressure, boolean itself) {
        this.pressure = pressure;
        this.itself = itself;
    }

    static Holds underVacuum() {
        return new SlowRise("planned-pressure", false);
    }

    static Holds inAir() {
        return new SlowRise("barometric-pressure", false);
    }

    /** The figure is the bubble's own diameter. */
    static Holds ofItself() {
        return new SlowRise("planned-pressure", true);
    }

    @Override
    public String broken(Scope job, Estimate own) {
        double usual = reynolds(job, own, Estimate::typical, Estimate::typical);
        if (usual > Bubble.STOKES_LIMIT_REYNOLDS) {
            return "the bubble rises too fast for the law of slow rise (Reynolds number " + rounded(usual)
                    + ", the law holds below 0.3): it takes longer than this";
        }
        double most = reynolds(job, own, Estimate::high, Estimate::low);
        return most > Bubble.STOKES_LIMIT_REYNOLDS
                ? "part of the range lies outside the law of slow rise (Reynolds number up to " + rounded(most)
                        + ", the law holds below 0.3): it takes longer there"
                : "";
    }

    private double reynolds(
            Scope job, Estimate own, ToDoubleFunction<Estimate> large, ToDoubleFunction<Estimate> small) {
        double diameterM = large.applyAsDouble(itself ? own : bubble(job));
        if (!(diameterM > 0) || Double.isInfinite(diameterM)) {
            return 0;
        }
        try {
            return BubbleClearing.reynoldsAtSurface(
                    diameterM,
                    si(job, "liquid-depth", large),
                    si(job, pressure, small),
                    si(job, "barometric-pressure", large),
                    si(job, "raw:liquid-density", large),
                    si(job, "raw:viscosity", small),
                    job.get("surface-tension").map(v -> v.si().typical()).orElse(BubbleFigures.USUAL_SURFACE_TENSION),
                    si(job, "guides:rise-rigid-skin,rise-usual-skin,rise-clean-skin", large));
        } catch (PhysicsException e) {
            return 0;
        }
    }

    private static Estimate bubble(Scope job) {
        Optional<FigureValue> typed = job.get("typed:bubble-diameter");
        return typed.orElseGet(() -> job.get("guide:bubble-worth-clearing").orElseThrow())
                .si();
    }

    private static double si(Scope job, String name, ToDoubleFunction<Estimate> end) {
        return end.applyAsDouble(job.get(name).orElseThrow().si());
    }

    private static String rounded(double x) {
        return x < 10 ? Double.toString(Math.round(x * 100) / 100.0) : Long.toString(Math.round(x));
    }
}
