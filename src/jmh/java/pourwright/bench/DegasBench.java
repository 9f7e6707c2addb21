package pourwright.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.degas.Charge;
import pourwright.degas.CureShape;
import pourwright.degas.Degas;
import pourwright.degas.DegasResult;
import pourwright.degas.Mix;
import pourwright.degas.Rating;
import pourwright.degas.Reaction;
import pourwright.degas.Stage;
import pourwright.degas.VacuumKit;
import pourwright.degas.Vessel;
import pourwright.degas.WorkingTime;
import pourwright.physics.Pump;
import pourwright.physics.VacuumLine;

/**
 * How long one whole job takes to simulate, warm: the rating fitted, a pull in the cup, the pour, a pull in the mould. Over
 * thin and thick mixes, fast and slow pumps, with and without a hose; percentiles in milliseconds.
 */
public final class DegasBench {
    private static final int WARM_ROUNDS = 150;
    private static final int ROUNDS = 100;
    private static final double NS_PER_MS = 1e6;
    private static final double AIR_PA = 101_325;
    private static final double ROOM_K = 296.15;
    private static final List<Double> VISCOSITIES_PA_S = List.of(0.8, 5.0, 20.0, 40.0);
    private static final List<Double> SPEEDS_M3_PER_S = List.of(0.5e-3, 2e-3);
    private static final List<VacuumLine> LINES = List.of(VacuumLine.NONE, new VacuumLine(0.008, 1.5));

    private DegasBench() {}

    /** Runs and prints. */
    public static void main(String[] args) {
        double left = 0;
        for (int i = 0; i < WARM_ROUNDS; i++) {
            left += round(null, 0);
        }
        int jobs = VISCOSITIES_PA_S.size() * SPEEDS_M3_PER_S.size() * LINES.size();
        double[] tookMs = new double[ROUNDS * jobs];
        for (int i = 0; i < ROUNDS; i++) {
            left += round(tookMs, i * jobs);
        }
        if (!(left > 0)) {
            throw new IllegalStateException("no air was left in any job: the simulation did not run");
        }
        Arrays.sort(tookMs);
        System.out.printf(
                Locale.ROOT,
                "a whole job simulated, %,d jobs after a warm-up: median %.2f ms, 90 %% %.2f ms, 99 %% %.2f ms, most %.2f ms%n",
                tookMs.length,
                tookMs[tookMs.length / 2],
                tookMs[tookMs.length * 9 / 10],
                tookMs[tookMs.length * 99 / 100],
                tookMs[tookMs.length - 1]);
    }

    private static double round(double[] tookMs, int from) {
        double left = 0;
        int at = from;
        for (double viscosityPaS : VISCOSITIES_PA_S) {
            for (double speedM3PerS : SPEEDS_M3_PER_S) {
                for (VacuumLine line : LINES) {
                    long start = System.nanoTime();
                    left += job(viscosityPaS, new Pump(speedM3PerS, 100), line);
                    if (tookMs != null) {
                        tookMs[at++] = (System.nanoTime() - start) / NS_PER_MS;
                    }
                }
            }
        }
        return left;
    }

    private static double job(double viscosityPaS, Pump pump, VacuumLine line) {
        Reaction reaction = Reaction.of(CureShape.SECOND_ORDER, 1e-4, ROOM_K, 50e3, 0.6, 20);
        Mix unrated =
                new Mix(1150, viscosityPaS, ROOM_K, 15e3, 0.5, 0.021, 1.25, 5, 1460, 0.2, reaction, Optional.empty());
        Mix mix = WorkingTime.fitted(unrated, new Rating(40 * 60, 0.1, ROOM_K, Rating.End.GEL));
        Charge batch = Charge.justMixed(mix, 0.6, 0.07, 2e-3, 1.8, AIR_PA, ROOM_K);
        VacuumKit cupKit = new VacuumKit(0.012, pump, line, 0.02, AIR_PA, 0);
        Stage cup = new Stage(Vessel.cup(0.1, 6e-4), 7.85e-3, 0.3, ROOM_K, 60, 480, 20, 60, 2e-4);
        DegasResult first = Degas.of(batch, cupKit, cup);
        VacuumKit mouldKit = new VacuumKit(0.03, pump, line, 0.02, AIR_PA, 0);
        Stage mould = new Stage(new Vessel(0.06, 10, 0), 0.01, 0.12, ROOM_K, 60, 300, 20, 0, 2e-4);
        DegasResult second = Degas.of(first.after().poured(0.5, 0.01, 1e-3, 1.8, AIR_PA), mouldKit, mould);
        return second.airLeft();
    }
}
