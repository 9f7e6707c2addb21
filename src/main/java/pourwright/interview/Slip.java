package pourwright.interview;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.Scope;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** "I put 12 g instead of 10 g hardener": a weighing that went wrong, as people say it. */
public final class Slip {
    private static final Pattern SAID = Pattern.compile(
            "(?i)(?:i |we )?(?:have |'ve )?(?:put|poured|weighed|added)(?: in)? (.{1,30}?) instead of (\\d[\\d.,]{0,10} ?\\p{L}{1,10})(?: of)? (?:the )?([\\p{L}]{1,20}(?: [\\p{L}]{1,20})?)\\.?");
    private static final List<String> SECOND = List.of(
            "hardener",
            "catalyst",
            "curative",
            "peroxide",
            "isocyanate",
            "oxidiser",
            "oxidiser paste",
            "b",
            "part b",
            "second",
            "second part",
            "crosslinker",
            "water");
    private static final List<String> FIRST = List.of(
            "resin",
            "base",
            "rubber",
            "silicone",
            "polyol",
            "epoxy",
            "syrup",
            "a",
            "part a",
            "first",
            "first part",
            "powder",
            "plaster",
            "cement");

    /** Finer than any scale of a workshop. */
    private static final MathContext DIGITS = new MathContext(5);

    private Slip() {}

    /**
     * What is in the cup now, as answers: what was put in wrongly, and of the other part what belonged to what was meant.
     *
     * @param answers what was said before; its material and ratio say how much of the other part there is
     * @return empty when the line says no such thing, or the ratio is not known
     */
    public static Optional<Answers> of(String line, Answers answers, Knowledge knowledge) {
        Matcher m = SAID.matcher(line.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        Optional<Boolean> second = second(m.group(3), answers, knowledge);
        AnswerReader reader = new AnswerReader(knowledge);
        Question question = knowledge.question("put-second").orElseThrow();
        if (second.isEmpty()
                || !(reader.fromProgram(question, m.group(1)) instanceof AnswerReader.Understood put)
                || !(reader.fromProgram(question, m.group(2)) instanceof AnswerReader.Understood meant)
                || !(put.answer() instanceof Answer.Quantity in)
                || !(meant.answer() instanceof Answer.Quantity wanted)) {
            return Optional.empty();
        }
        return new Scope(answers.with("put-first", in, m.group(1)), knowledge, true)
                .get("mass-ratio")
                .map(ratio -> {
                    double share = ratio.si().typical();
                    double other = second.get()
                            ? wanted.si().typical() / share
                            : wanted.si().typical() * share;
                    double grams = new BigDecimal(UnitBook.fromSi(other, "g", Dimension.MASS))
                            .round(DIGITS)
                            .doubleValue();
                    double kept = UnitBook.toSi(grams, "g", Dimension.MASS);
                    // What is kept is what is reckoned with: resumed or saved, it gives the same again.
                    Answer rest =
                            new Answer.Quantity(Estimate.exactly(kept), "g", Show.quantity(kept, "g", Dimension.MASS));
                    return Answers.NONE
                            .with(second.get() ? "put-second" : "put-first", in, m.group(1))
                            .with(
                                    second.get() ? "put-first" : "put-second",
                                    rest,
                                    BigDecimal.valueOf(grams).toPlainString() + " g");
                });
    }

    private static Optional<Boolean> second(String name, Answers answers, Knowledge knowledge) {
        String word = name.toLowerCase(Locale.ROOT);
        MaterialClass material = knowledge.materials().get(answers.choice("material"));
        if (material != null && material.mix().names().size() == 2) {
            int at = material.mix().names().indexOf(word);
            if (at >= 0) {
                return Optional.of(at == 1);
            }
        }
        return SECOND.contains(word) ? Optional.of(true) : FIRST.contains(word) ? Optional.of(false) : Optional.empty();
    }
}
