package pourwright.bench;

import java.util.Locale;
import pourwright.advice.Advisor;

/**
 * Whether the hundred-thousandth consultation costs what the first ones did: mean time of the first and the last ten
 * thousand after a warm-up, and the heap still held before and after. Growth would mean that something is kept.
 */
public final class GrowthBench {
    private static final int WARM_UP = 10_000;
    private static final int ALL = 100_000;
    private static final int PART = 10_000;
    private static final double NS_PER_MS = 1e6;
    private static final double BYTES_PER_MIB = 1024.0 * 1024.0;

    private GrowthBench() {}

    /** Runs and prints. */
    public static void main(String[] args) {
        Jobs jobs = Jobs.shipped();
        consult(jobs, WARM_UP);
        double heapBefore = heapHeldMiB();
        double firstMs = consult(jobs, PART);
        consult(jobs, ALL - 2 * PART);
        double lastMs = consult(jobs, PART);
        double heapAfter = heapHeldMiB();
        System.out.printf(
                Locale.ROOT,
                "growth over %,d consultations, after %,d to warm up:%n"
                        + "  mean of the first %,d: %.3f ms%n"
                        + "  mean of the last  %,d: %.3f ms   (last / first %.2f)%n"
                        + "  heap held before: %.1f MiB, after: %.1f MiB%n",
                ALL,
                WARM_UP,
                PART,
                firstMs,
                PART,
                lastMs,
                lastMs / firstMs,
                heapBefore,
                heapAfter);
    }

    /** Mean time of one, in milliseconds. */
    private static double consult(Jobs jobs, int times) {
        int findings = 0;
        long start = System.nanoTime();
        for (int i = 0; i < times; i++) {
            findings +=
                    Advisor.consult(jobs.job(i), jobs.knowledge()).findings().size();
        }
        long took = System.nanoTime() - start;
        if (findings == 0) {
            throw new IllegalStateException("no consultation found anything: the rule book did not run");
        }
        return took / NS_PER_MS / times;
    }

    private static double heapHeldMiB() {
        // Twice: the first run may only queue what has to be finalised.
        System.gc();
        System.gc();
        Runtime r = Runtime.getRuntime();
        return (r.totalMemory() - r.freeMemory()) / BYTES_PER_MIB;
    }
}
