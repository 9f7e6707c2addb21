package pourwright.figures;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Supplier;
import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.units.Dimension;

/** A figure of one job. What it depends on most takes many evaluations, so it is worked out only when somebody asks. */
public final class FigureValue {
    private final String id;
    private final Dimension dimension;
    private final Estimate si;
    private final SortedSet<String> answers;
    private final String caveat;
    private final FigureDef definition;
    private final List<String> inputs;
    private final Supplier<Sensitivity> ask;
    private final Supplier<String> holds;
    private final Supplier<String> lever;
    private final int ownRuns;
    private final double ownFactor;
    private Sensitivity sensitivity;
    private String broken;

    /**
     * What widens a figure most.
     *
     * @param basis how well that input is known
     * @param input its name, or empty when nothing widens the figure
     */
    public record Sensitivity(Basis basis, String input) {}

    /**
     * @param id the figure's or the quantity's id
     * @param dimension what it measures
     * @param si its range, SI
     * @param answers ids of the questions it rests on
     * @param caveat why it must be read with care here, or null
     * @param definition what it is, or null for a plain quantity
     * @param inputs names of what it was computed from
     * @param ask works out what it depends on most
     */
    public FigureValue(
            String id,
            Dimension dimension,
            Estimate si,
            SortedSet<String> answers,
            String caveat,
            FigureDef definition,
            List<String> inputs,
            Supplier<Sensitivity> ask) {
        this(id, dimension, si, answers, caveat, definition, inputs, ask, () -> "", () -> "", 0, 1);
    }

    /**
     * The same with what only somebody who reads it closely wants to know.
     *
     * @param holds says why the formula does not hold here, or is empty
     * @param lever names the input that moves it most
     * @param ownRuns how many runs of the workshop's own corrected it
     * @param ownFactor by what factor they did
     */
    FigureValue(
            String id,
            Dimension dimension,
            Estimate si,
            SortedSet<String> answers,
            String caveat,
            FigureDef definition,
            List<String> inputs,
            Supplier<Sensitivity> ask,
            Supplier<String> holds,
            Supplier<String> lever,
            int ownRuns,
            double ownFactor) {
        this.id = id;
        this.dimension = dimension;
        this.si = si;
        this.answers = answers;
        this.caveat = caveat;
        this.definition = definition;
        this.inputs = inputs;
        this.ask = ask;
        this.holds = holds;
        this.lever = lever;
        this.ownRuns = ownRuns;
        this.ownFactor = ownFactor;
    }

    /** A quantity that was typed, looked up or assumed, not computed. */
    public static FigureValue plain(
            String id, Dimension dimension, Estimate si, Basis basis, SortedSet<String> answers) {
        Sensitivity s = new Sensitivity(basis, "");
        return new FigureValue(id, dimension, si, answers, null, null, List.of(), () -> s);
    }

    /** The figure's or the quantity's id. */
    public String id() {
        return id;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Its range, SI. */
    public Estimate si() {
        return si;
    }

    /** Ids of the questions it rests on. */
    public SortedSet<String> answers() {
        return answers;
    }

    /** Why it must be read with care here, or null. */
    public String caveat() {
        if (broken == null) {
            broken = holds.get();
        }
        return broken.isEmpty() ? caveat : broken;
    }

    /** How many runs of the workshop's own corrected it; none usually. */
    public int ownRuns() {
        return ownRuns;
    }

    /** By what factor the workshop's own runs changed it; 1 where there are none. */
    public double ownFactor() {
        return ownFactor;
    }

    /** Names of the figures, answers and guidelines it was computed from. */
    public List<String> inputs() {
        return inputs;
    }

    /** The definition, where it is a computed figure. */
    public Optional<FigureDef> defined() {
        return Optional.ofNullable(definition);
    }

    /** How well the input that matters most is known. */
    public Basis basis() {
        return sensitivity().basis();
    }

    /** Name of the input that widens it most, or empty when nothing does. */
    public String dependsOnMost() {
        return sensitivity().input();
    }

    /** What widens it most; where nothing does, the input that moves it most for the same change in each. */
    public String strongest() {
        return dependsOnMost().isEmpty() ? lever.get() : dependsOnMost();
    }

    private Sensitivity sensitivity() {
        if (sensitivity == null) {
            sensitivity = ask.get();
        }
        return sensitivity;
    }
}
