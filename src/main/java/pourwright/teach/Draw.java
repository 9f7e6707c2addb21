package pourwright.teach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Numbers that look like chance and are the same for the same seed: the 64-bit mixer known as SplitMix (Steele, Lea, Flood 2014). */
final class Draw {
    private static final long STEP = 0x9E3779B97F4A7C15L;
    private static final long FIRST = 0xBF58476D1CE4E5B9L;
    private static final long SECOND = 0x94D049BB133111EBL;
    private static final int A = 30;
    private static final int B = 27;
    private static final int C = 31;

    private long state;

    Draw(long seed) {
        this.state = seed;
    }

    private long next() {
        state += STEP;
        long z = state;
        z = (z ^ (z >>> A)) * FIRST;
        z = (z ^ (z >>> B)) * SECOND;
        return z ^ (z >>> C);
    }

    /** A number from 0 to n - 1. */
    int below(int n) {
        return (int) Long.remainderUnsigned(next(), n);
    }

    /** True in one of two draws. */
    boolean coin() {
        return below(2) == 0;
    }

    /** One of these. */
    <T> T of(List<T> some) {
        return some.get(below(some.size()));
    }

    /** The same in another order. */
    <T> List<T> shuffled(List<T> some) {
        List<T> out = new ArrayList<>(some);
        for (int i = out.size() - 1; i > 0; i--) {
            Collections.swap(out, i, below(i + 1));
        }
        return out;
    }
}
