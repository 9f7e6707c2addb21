package pourwright.figures;

import java.util.List;
import pourwright.units.Dimension;

/**
 * What a figure is, before any job: its meaning, formula in words, source, range of validity and the ways to compute it.
 *
 * @param id stable id
 * @param asks the question it answers, as a person puts it
 * @param dimension what it measures
 * @param words the formula in words
 * @param sources keys of the sources
 * @param valid where it holds
 * @param formulas ways to compute it, best first
 * @param holds whether the job's own values lie where it holds
 */
public record FigureDef(
        String id,
        String asks,
        Dimension dimension,
        String words,
        List<String> sources,
        String valid,
        List<Formula> formulas,
        Holds holds) {
    FigureDef(
            String id,
            String asks,
            Dimension dimension,
            String words,
            List<String> sources,
            String valid,
            List<Formula> formulas) {
        this(id, asks, dimension, words, sources, valid, formulas, Holds.ALWAYS);
    }

    /** The same figure with a check of where it holds. */
    FigureDef where(Holds check) {
        return new FigureDef(id, asks, dimension, words, sources, valid, formulas, check);
    }

    /** A figure that comes out of a whole plan and not out of a formula of its own. */
    public static FigureDef ofPlan(String id, String asks, Dimension dimension, String words, String valid) {
        return new FigureDef(id, asks, dimension, words, List.of("common-practice"), valid, List.of());
    }

    /** A figure that is fitted to readings and not computed from answers. */
    public static FigureDef ofTest(
            String id, String asks, Dimension dimension, String words, String sources, String valid) {
        return figure(id, asks, dimension, words, sources, valid);
    }

    static FigureDef figure(
            String id, String asks, Dimension dimension, String words, String sources, String valid, Formula... ways) {
        return new FigureDef(id, asks, dimension, words, List.of(sources.split(" ")), valid, List.of(ways));
    }
}
