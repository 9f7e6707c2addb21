package pourwright.interview;

import java.util.List;
import java.util.Optional;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Need;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** Decides which question comes next: the first, in the natural order, that some rule wants and nobody has answered. */
public final class Interviewer {
    private static final String FIRST = "material";

    private final Knowledge knowledge;

    public Interviewer(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * A question with the reasons for asking it.
     *
     * @param question what to ask
     * @param reasons why, one per rule that wants the answer
     */
    public record Next(Question question, List<String> reasons) {}

    /**
     * The next question, or none when everything that matters is answered.
     *
     * @throws BadAnswer when two answers cannot both be true
     */
    public Optional<Next> next(Answers answers) {
        if (answers.get(FIRST).isEmpty()) {
            return Optional.of(
                    new Next(
                            question(FIRST),
                            List.of(
                                    "The liquid decides nearly everything: how long you have, whether vacuum helps, what can hurt you.")));
        }
        for (Need need : Advisor.consult(answers, knowledge).needs()) {
            if (!answers.has(need.question())) {
                return Optional.of(new Next(
                        question(need.question()),
                        need.rules().stream().map(r -> r.because()).distinct().toList()));
            }
        }
        return Optional.empty();
    }

    private Question question(String id) {
        return knowledge
                .question(id)
                .orElseThrow(() -> new IllegalStateException("a rule asks for '" + id + "', which is no question"));
    }
}
