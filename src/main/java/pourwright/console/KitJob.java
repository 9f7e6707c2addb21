package pourwright.console;

import java.util.List;
import java.util.Optional;
import pourwright.advice.Verdict;
import pourwright.alike.Picture;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.interview.Interviewer;
import pourwright.kit.KitAdvice;
import pourwright.kit.KitAdvisor;
import pourwright.kit.KitQuestions;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleBook;

/** The test of a vacuum kit: readings of its gauge, what a person sees of it, and what it is meant for. */
public final class KitJob implements Job {
    private final Knowledge knowledge;
    private final KitLog log;

    /**
     * @param knowledge with the questions of a diagnosis
     * @param log       the history of the workshop's kit
     */
    public KitJob(Knowledge knowledge, KitLog log) {
        this.knowledge = knowledge;
        this.log = log;
    }

    @Override
    public String word() {
        return "kit";
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
        RuleBook.prepareKitSoon();
    }

    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        return KitQuestions.next(answers, knowledge)
                .map(id ->
                        new Interviewer.Next(knowledge.question(id).orElseThrow(), List.of(KitQuestions.reason(id))));
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        return KitQuestions.tellSomething(answers)
                ? Optional.empty()
                : Optional.of("A reading, a symptom or a material is needed first: without one nothing can be said.");
    }

    @Override
    public Optional<Picture> picture(Answers answers) {
        return Optional.of(Picture.of(KitAdvisor.advise(answers, knowledge), knowledge));
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        KitAdvice advice = KitAdvisor.advise(answers, knowledge);
        return new Tested(advice, new KitPage(advice, log.keep(advice), knowledge, width, plain));
    }

    /** A test with its page. */
    private record Tested(KitAdvice advice, KitPage page) implements Result {
        @Override
        public List<String> first() {
            return page.first();
        }

        @Override
        public String next() {
            return "Next: \"how 1\", \"readings\", \"figures\", \"rules\", \"sources\", \"change 1\", \"save NAME\","
                    + " \"quit\".";
        }

        @Override
        public List<String> words() {
            return List.of("how NUMBER", "readings", "figures", "rules", "sources");
        }

        @Override
        public Optional<List<String>> say(String verb, String rest) {
            return switch (verb) {
                case "how" -> Optional.of(page.how(rest));
                case "readings" -> Optional.of(page.readings());
                case "figures" -> Optional.of(page.figures());
                case "rules" -> Optional.of(page.rules());
                case "sources" -> Optional.of(page.sources());
                default -> Optional.empty();
            };
        }

        @Override
        public boolean stop() {
            return advice.verdict() == Verdict.STOP;
        }

        @Override
        public String caseText(String name) {
            return CaseFile.of(advice, "workshop", name).text();
        }
    }
}
