package pourwright.console;

import java.util.List;
import java.util.Optional;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleBook;

/** The planning of one pour. */
public final class PlanJob implements Job {
    private final Knowledge knowledge;
    private final Interviewer interviewer;

    public PlanJob(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.interviewer = new Interviewer(knowledge);
    }

    @Override
    public String word() {
        return "plan";
    }

    @Override
    public Knowledge knowledge() {
        return knowledge;
    }

    @Override
    public boolean usesKit() {
        return true;
    }

    @Override
    public void prepare() {
        RuleBook.prepareSoon();
    }

    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        return interviewer.next(answers);
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        return answers.get("material").isEmpty()
                ? Optional.of("The liquid is needed first: nothing can be planned without it.")
                : Optional.empty();
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        return new Planned(Advisor.consult(answers, knowledge), knowledge, width, plain);
    }

    /** A plan with its page. */
    private static final class Planned implements Result {
        private final Consultation c;
        private final Page page;

        Planned(Consultation c, Knowledge knowledge, int width, boolean plain) {
            this.c = c;
            this.page = new Page(c, knowledge, width, plain);
        }

        @Override
        public List<String> first() {
            return page.first();
        }

        @Override
        public String next() {
            return "Next: \"more\", \"cautions\", \"how 1\", \"figures\", \"rules\", \"sources\", \"change 1\", \"save NAME\","
                    + " \"quit\".";
        }

        @Override
        public List<String> words() {
            return List.of("more", "cautions", "how NUMBER", "figures", "rules", "sources");
        }

        @Override
        public Optional<List<String>> say(String verb, String rest) {
            return switch (verb) {
                case "more" -> Optional.of(page.more());
                case "cautions" -> Optional.of(page.cautions());
                case "how" -> Optional.of(page.how(rest));
                case "figures" -> Optional.of(page.figures());
                case "rules" -> Optional.of(page.rules());
                case "sources" -> Optional.of(page.sources());
                default -> Optional.empty();
            };
        }

        @Override
        public boolean stop() {
            return c.verdict() == Verdict.STOP;
        }

        @Override
        public String caseText(String name) {
            return CaseFile.of(c, "workshop", name).text();
        }
    }
}
