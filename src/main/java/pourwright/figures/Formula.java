package pourwright.figures;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * One way to compute a figure; the first whose inputs are all there is used.
 *
 * @param when whether this way fits the job
 * @param inputs its inputs, in the order the function takes them
 * @param of the function of the job and the inputs' SI values
 */
record Formula(Predicate<Scope> when, List<Input> inputs, Of of) {
    /** A function of a job's choices and the inputs' SI values. */
    @FunctionalInterface
    interface Of {
        double apply(Scope job, double[] x);
    }

    static Formula of(ToDoubleFunction<double[]> f, Input... inputs) {
        return new Formula(s -> true, List.of(inputs), (s, x) -> f.applyAsDouble(x));
    }

    static Formula when(Predicate<Scope> when, ToDoubleFunction<double[]> f, Input... inputs) {
        return new Formula(when, List.of(inputs), (s, x) -> f.applyAsDouble(x));
    }

    static Formula by(Of f, Input... inputs) {
        return new Formula(s -> true, List.of(inputs), f);
    }

    static Formula byWhen(Predicate<Scope> when, Of f, Input... inputs) {
        return new Formula(when, List.of(inputs), f);
    }
}
