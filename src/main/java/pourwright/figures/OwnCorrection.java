package pourwright.figures;

import java.util.Map;
import java.util.OptionalDouble;
import pourwright.facts.Estimate;

/**
 * A computed figure corrected by a workshop's own runs of the same material with the same kit.
 *
 * <p>The logarithm of measured over computed is taken as normal. The figure's own band is the prior, each run an observation; the
 * result is the usual update with a known spread (Gelman and others, Bayesian Data Analysis, 3rd edition, 2.5, from memory). The
 * band of the result is that of the next run, and never wider than before.
 *
 * @param si the corrected range
 * @param factor corrected over computed, typical
 * @param runs how many runs it rests on
 */
public record OwnCorrection(Estimate si, double factor, int runs) {
    /** How fast the froth comes and goes: material and kit. */
    public static final String FROTH = "froth-time";
    /** How fast the chamber empties: kit. */
    public static final String PUMP_DOWN = "pump-down-time";
    /** How long the mix flows: material. */
    public static final String WORKING = "working-time";
    /** How much room the froth wants: material. */
    public static final String ROOM = "cup-room";

    /** A measurement further off than this is a slip of the clock, not of the model. */
    private static final double MOST = 10;

    /** Ends of a band are taken as one in ten below and one in ten above (standard normal, 0.9). */
    private static final double TENTH = 1.2816;

    private static final Map<String, Owned> OWNED = Map.of(
            "froth-crest-time", new Owned(FROTH, true, true),
            "froth-fall-time", new Owned(FROTH, true, true),
            "pump-down-time", new Owned(PUMP_DOWN, false, true),
            "working-time", new Owned(WORKING, true, false),
            "cup-factor", new Owned(ROOM, true, false));

    /** Which measurement corrects a figure, and what must be the same for it to count. */
    private record Owned(String quantity, boolean material, boolean kit) {}

    /** The ratio if it can be one. */
    public static OptionalDouble usable(double ratio) {
        return ratio >= 1 / MOST && ratio <= MOST ? OptionalDouble.of(ratio) : OptionalDouble.empty();
    }

    /** The figure as this workshop has found it; unchanged, with no runs, where it has found nothing. */
    static OwnCorrection of(String figure, Estimate computed, Scope scope) {
        Owned owned = scope.knowledge().ownRuns().isEmpty() ? null : OWNED.get(figure);
        if (owned == null || !(computed.low() > 0) || Double.isInfinite(computed.high())) {
            return none(computed);
        }
        String material = scope.answers().choice("material");
        String kit = KitName.of(scope.answers());
        double[] logs = scope.knowledge().ownRuns().stream()
                .filter(r -> !owned.material() || r.material().equals(material))
                .filter(r -> !owned.kit() || r.kit().equals(kit))
                .filter(r -> r.ratios().containsKey(owned.quantity()))
                .mapToDouble(r -> Math.log(r.ratios().get(owned.quantity())))
                .toArray();
        return logs.length == 0
                ? none(computed)
                : updated(computed, logs, scope.guideline("own-run-scatter"), scope.guideline("own-model-doubt"));
    }

    private static OwnCorrection none(Estimate computed) {
        return new OwnCorrection(computed, 1, 0);
    }

    /**
     * @param computed the figure's band, all above 0
     * @param logs natural logarithms of measured over computed, one a run
     * @param scatter how far one run lies from the next, as a share
     * @param doubt the least that a model is doubted, as a share
     */
    static OwnCorrection updated(Estimate computed, double[] logs, double scatter, double doubt) {
        double down = Math.log(computed.typical() / computed.low());
        double up = Math.log(computed.high() / computed.typical());
        double least = Math.log(1 + doubt);
        double prior = square(Math.max((down + up) / 2 / TENTH, least));
        double each = square(Math.log(1 + scatter));
        double sum = 0;
        for (double x : logs) {
            sum += x;
        }
        double posterior = 1 / (1 / prior + logs.length / each);
        double mean = posterior * sum / each;
        double typical = computed.typical() * Math.exp(mean);
        double next = TENTH * Math.sqrt(posterior + each);
        return new OwnCorrection(
                new Estimate(
                        typical * Math.exp(-Math.min(next, Math.max(down, 0))),
                        typical,
                        typical * Math.exp(Math.min(next, Math.max(up, 0)))),
                Math.exp(mean),
                logs.length);
    }

    private static double square(double x) {
        return x * x;
    }
}
