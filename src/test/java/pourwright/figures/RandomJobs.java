package pourwright.figures;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;
import pourwright.testing.Generated;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/** Jobs made up at random: any material, any choices, ranges for about half of the quantities. */
final class RandomJobs {
    static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final double ANSWERED = 0.5;

    private RandomJobs() {}

    static Answers job(Generated any) {
        String material = any.pick(KNOWLEDGE.materials().keySet().toArray(String[]::new));
        Answers answers = Answers.NONE.with("material", new Answer.Choice(material), material);
        for (Question q : KNOWLEDGE.questions()) {
            if (any.uniform(0, 1) > ANSWERED) {
                continue;
            }
            switch (q.kind()) {
                case "choice" -> {
                    String choice = any.pick(
                            q.choices().stream().map(Question.Choice::id).toArray(String[]::new));
                    answers = answers.with(q.id(), new Answer.Choice(choice), choice);
                }
                case "quantity" -> answers = answers.with(q.id(), range(q, any), "");
                case "ratio" ->
                    answers =
                            answers.with(q.id(), new Answer.Ratio(any.uniform(1, 100), any.uniform(1, 10), "", ""), "");
                default -> {}
            }
        }
        return answers;
    }

    /** A range somewhere in the middle of what the question takes, up to a factor of 1.6 wide. */
    private static Answer.Quantity range(Question q, Generated any) {
        Dimension d = Dimension.named(q.quantity());
        double low;
        double high;
        if (q.min() > 0) {
            double margin = Math.pow(q.max() / q.min(), 0.25);
            low = any.logUniform(q.min() * margin, q.max() / margin);
            high = Math.min(q.max(), low * any.uniform(1, 1.6));
        } else {
            low = any.uniform(q.min(), q.max());
            high = any.uniform(low, Math.min(q.max(), low + (q.max() - q.min()) / 10));
        }
        double typical = any.uniform(low, high);
        Estimate si = new Estimate(
                UnitBook.toSi(low, q.unit(), d), UnitBook.toSi(typical, q.unit(), d), UnitBook.toSi(high, q.unit(), d));
        return new Answer.Quantity(si, q.unit(), "");
    }

    /** The same job with every quantity known exactly, somewhere inside its range or at an end of it. */
    static Answers inside(Answers ranges, Generated any) {
        Answers exact = ranges;
        for (Map.Entry<String, Answers.Given> e : ranges.all().entrySet()) {
            if (e.getValue().answer() instanceof Answer.Quantity q) {
                double x = any.pick(q.si().low(), q.si().high(), any.uniform(q.si().low(), q.si().high()));
                exact = exact.with(e.getKey(), new Answer.Quantity(Estimate.exactly(x), q.unit(), ""), "");
            }
        }
        return exact;
    }

    /** The answers as SI values, to repeat a failed try by hand. */
    static Map<String, Object> shown(Answers answers) {
        Map<String, Object> shown = new TreeMap<>();
        answers.all().forEach((id, g) -> shown.put(id, g.answer() instanceof Answer.Quantity q ? q.si() : g.answer()));
        return shown;
    }
}
