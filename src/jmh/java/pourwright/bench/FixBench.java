package pourwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.remedy.FixSearch;
import pourwright.remedy.Fixes;
import pourwright.remedy.Goal;

/**
 * How long the search for the smallest change takes, over every shipped case that wants one: percentiles in milliseconds,
 * and how many jobs were tried for it.
 */
public final class FixBench {
    private static final int WARM_ROUNDS = 5;
    private static final int ROUNDS = 5;
    private static final double NS_PER_MS = 1e6;

    private FixBench() {}

    /** Runs and prints; with a word, what is found for each case as well. */
    public static void main(String[] args) {
        Jobs jobs = Jobs.shipped();
        List<Consultation> plans = new ArrayList<>();
        jobs.answers().forEach(a -> {
            Consultation c = Advisor.consult(a, jobs.knowledge());
            if (Goal.of(c) != Goal.NOTHING) {
                plans.add(c);
            }
        });
        long start = System.nanoTime();
        FixSearch.of(plans.get(0), Set.of(), jobs.knowledge());
        System.out.printf(Locale.ROOT, "the first search, cold: %.0f ms%n", (System.nanoTime() - start) / NS_PER_MS);
        for (int i = 0; i < WARM_ROUNDS; i++) {
            plans.forEach(p -> FixSearch.of(p, Set.of(), jobs.knowledge()));
        }
        double[] tookMs = new double[ROUNDS * plans.size()];
        int at = 0;
        int most = 0;
        int worked = 0;
        for (int i = 0; i < ROUNDS; i++) {
            for (Consultation p : plans) {
                long from = System.nanoTime();
                Fixes fixes = FixSearch.of(p, Set.of(), jobs.knowledge());
                tookMs[at++] = (System.nanoTime() - from) / NS_PER_MS;
                most = Math.max(most, fixes.tried());
                worked += fixes.works() ? 1 : 0;
                if (i == 0 && args.length > 0) {
                    print(p, fixes);
                }
            }
        }
        Arrays.sort(tookMs);
        System.out.printf(
                Locale.ROOT,
                "smallest change, %d plans that want one, %d of them can be mended: median %.0f ms, 90 %% %.0f ms, most %.0f ms;"
                        + " at most %d jobs tried%n",
                plans.size(),
                worked / ROUNDS,
                tookMs[tookMs.length / 2],
                tookMs[tookMs.length * 9 / 10],
                tookMs[tookMs.length - 1],
                most);
    }

    private static void print(Consultation p, Fixes fixes) {
        System.out.println(p.verdict().word() + " " + p.answers().choice("material") + ", tried " + fixes.tried()
                + (fixes.whole() ? "" : ", not all"));
        p.findings().stream()
                .filter(f -> Set.of("stop", "change").contains(f.strength().word()))
                .forEach(f -> System.out.println("    " + f.id()));
        fixes.fixes().forEach(f -> {
            System.out.println("  " + (f.works() ? "works" : "helps") + ", cost " + f.cost() + ": ");
            f.changes()
                    .forEach(c -> System.out.println(
                            "      " + c.say() + "  [" + c.remedy().id() + "]"));
        });
    }
}
