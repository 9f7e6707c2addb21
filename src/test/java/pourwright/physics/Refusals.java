package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.DoubleUnaryOperator;

/** Asserts that a function refuses what cannot be, one input at a time, in a plain sentence. */
final class Refusals {

    /** What no quantity can be, where a finite positive number is needed. */
    static final double[] NOT_POSITIVE = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 0};

    /** What no quantity can be, where zero is allowed too. */
    static final double[] NEGATIVE = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1e-9};

    /** What no share can be. */
    static final double[] NO_SHARE = {Double.NaN, Double.POSITIVE_INFINITY, -0.01, 1.01};

    private Refusals() {}

    static void refused(DoubleUnaryOperator function, double... inputs) {
        for (double input : inputs) {
            assertThatThrownBy(() -> function.applyAsDouble(input))
                    .as("input %s", input)
                    .isInstanceOf(PhysicsException.class)
                    .hasMessageMatching("The .*\\.");
        }
    }
}
