package pourwright.figures;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.units.Dimension;

/**
 * A figure of one job.
 *
 * @param id the figure's or the quantity's id
 * @param dimension what it measures
 * @param si its range, SI
 * @param basis how well the input that matters most is known
 * @param answers ids of the questions it rests on
 * @param dependsOnMost name of the input that widens it most, or empty when nothing does
 * @param caveat why it must be read with care here, or null
 * @param definition what it is, or null for a plain quantity
 * @param inputs names of the figures, answers and guidelines it was computed from
 */
public record FigureValue(
        String id,
        Dimension dimension,
        Estimate si,
        Basis basis,
        SortedSet<String> answers,
        String dependsOnMost,
        String caveat,
        FigureDef definition,
        List<String> inputs) {
    /** The definition, where it is a computed figure. */
    public Optional<FigureDef> defined() {
        return Optional.ofNullable(definition);
    }
}
