package pourwright.vents;

import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** Adds to answers what nobody typed but geometry found. */
final class Typed {
    private Typed() {}

    /** A quantity in SI, in a unit people use for it. */
    static Answers quantity(Answers answers, String question, double si, String unit, Dimension dimension) {
        return range(answers, question, Estimate.exactly(si), unit, dimension);
    }

    static Answers range(Answers answers, String question, Estimate si, String unit, Dimension dimension) {
        String shown = si.exact()
                ? Show.quantity(si.typical(), unit, dimension)
                : Show.range(si.low(), si.typical(), si.high(), unit, dimension);
        // What is written into a case must read back: plain spaces between number and unit.
        String plain = shown.replace('\u00a0', ' ');
        return answers.with(question, new Answer.Quantity(si, unit, plain), plain);
    }

    static Answers choice(Answers answers, String question, String choice) {
        return answers.with(question, new Answer.Choice(choice), choice);
    }
}
