package pourwright.testing;

import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A small seeded source of test values for property tests.
 * The same seed always gives the same values, so a failing try can be repeated.
 */
public final class Generated {

    /** Spreads neighbouring try numbers over the whole range of seeds (the golden ratio times 2^64). */
    private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

    private final Random random;
    private final String name;

    private Generated(long seed, int tryNumber) {
        this.random = new Random(seed + SEED_STEP * (tryNumber + 1L));
        this.name = "try " + tryNumber + " of seed " + seed;
    }

    /**
     * A stream of independent value sources, one for each try.
     *
     * @param seed  the seed that fixes every value
     * @param count how many tries
     * @return the sources, in order of their try number
     */
    public static Stream<Generated> tries(long seed, int count) {
        return IntStream.range(0, count).mapToObj(number -> new Generated(seed, number));
    }

    /**
     * A value spread evenly between two limits.
     *
     * @param low  lowest value
     * @param high limit above, not reached
     * @return the value
     */
    public double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /**
     * A positive value whose logarithm is spread evenly between two limits.
     * It suits quantities that span decades, such as pressures.
     *
     * @param low  lowest value, above zero
     * @param high highest value
     * @return the value, never outside the limits
     */
    public double logUniform(double low, double high) {
        if (!(low > 0 && high >= low)) {
            throw new IllegalArgumentException("logUniform needs 0 < low <= high, got " + low + " and " + high);
        }
        double value = low * Math.exp(Math.log(high / low) * random.nextDouble());
        return Math.min(high, Math.max(low, value));
    }

    /**
     * A whole number between two limits, both possible.
     *
     * @param low  lowest value
     * @param high highest value
     * @return the number
     */
    public int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    /**
     * One of the given choices.
     *
     * @param choices what to choose from
     * @param <T>     the kind of choice
     * @return one of them
     */
    @SafeVarargs
    public final <T> T pick(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    /** Names the try and its seed, so that a failed assertion can be repeated. */
    @Override
    public String toString() {
        return name;
    }
}
