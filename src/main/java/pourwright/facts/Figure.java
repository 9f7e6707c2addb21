package pourwright.facts;

import java.util.List;
import java.util.function.Supplier;

/**
 * One number of the job as the rules see it: typed, taken from the class, assumed, or computed. Rules compare it with
 * guidelines by name or with another figure, and say how sure the comparison must be.
 */
public final class Figure {
    private final String id;
    private final Estimate estimate;
    private final Supplier<Basis> basis;
    private final List<String> answers;
    private final Limits limits;

    /**
     * @param id the figure's or the question's id
     * @param estimate its range, SI
     * @param basis how well the input that matters most is known; asked only by rules that need it
     * @param answers ids of the questions it rests on
     * @param limits the guidelines in force
     */
    public Figure(String id, Estimate estimate, Supplier<Basis> basis, List<String> answers, Limits limits) {
        this.id = id;
        this.estimate = estimate;
        this.basis = basis;
        this.answers = List.copyOf(answers);
        this.limits = limits;
    }

    public String getId() {
        return id;
    }

    public Estimate getEstimate() {
        return estimate;
    }

    public Basis getBasis() {
        return basis.get();
    }

    public List<String> getAnswers() {
        return answers;
    }

    /** True when the input it depends on most was typed or read from a data sheet. */
    public boolean isKnown() {
        return basis.get().known();
    }

    /** True when the input it depends on most is a stated default. */
    public boolean isAssumed() {
        return basis.get() == Basis.ASSUMED;
    }

    /** The typical value is above the guideline. */
    public boolean likelyAbove(String guideline) {
        return estimate.typical() > limits.of(guideline);
    }

    /** Even the high end alone is above the guideline. */
    public boolean possiblyAbove(String guideline) {
        return estimate.high() > limits.of(guideline);
    }

    /** The whole range is above the guideline. */
    public boolean surelyAbove(String guideline) {
        return estimate.low() > limits.of(guideline);
    }

    /** Surely above, or likely above with a known basis: what a stop needs. */
    public boolean firmlyAbove(String guideline) {
        return surelyAbove(guideline) || isKnown() && likelyAbove(guideline);
    }

    /** The typical value is below the guideline. */
    public boolean likelyBelow(String guideline) {
        return estimate.typical() < limits.of(guideline);
    }

    /** Even the low end alone is below the guideline. */
    public boolean possiblyBelow(String guideline) {
        return estimate.low() < limits.of(guideline);
    }

    /** The whole range is below the guideline. */
    public boolean surelyBelow(String guideline) {
        return estimate.high() < limits.of(guideline);
    }

    /** Surely below, or likely below with a known basis. */
    public boolean firmlyBelow(String guideline) {
        return surelyBelow(guideline) || isKnown() && likelyBelow(guideline);
    }

    /** The typical value is above the other's. */
    public boolean likelyAbove(Figure other) {
        return estimate.typical() > other.estimate.typical();
    }

    /** The two ranges can lie in that order. */
    public boolean possiblyAbove(Figure other) {
        return estimate.high() > other.estimate.low();
    }

    /** The two ranges can only lie in that order. */
    public boolean surelyAbove(Figure other) {
        return estimate.low() > other.estimate.high();
    }

    /** Surely above, or likely above when both are known. */
    public boolean firmlyAbove(Figure other) {
        return surelyAbove(other) || isKnown() && other.isKnown() && likelyAbove(other);
    }

    /** The typical value is below the other's. */
    public boolean likelyBelow(Figure other) {
        return other.likelyAbove(this);
    }

    /** The two ranges can lie in that order. */
    public boolean possiblyBelow(Figure other) {
        return other.possiblyAbove(this);
    }

    /** The two ranges can only lie in that order. */
    public boolean surelyBelow(Figure other) {
        return other.surelyAbove(this);
    }

    /** Surely below, or likely below when both are known. */
    public boolean firmlyBelow(Figure other) {
        return other.firmlyAbove(this);
    }

    @Override
    public String toString() {
        return id + " " + estimate;
    }
}
