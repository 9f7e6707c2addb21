package pourwright.console;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.alike.Picture;
import pourwright.casebook.CaseFile;
import pourwright.diagnosis.Contradiction;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.WordPicker;
import pourwright.facts.Answers;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.rulebook.RuleBook;

/** The diagnosis of a bad part. One object serves one conversation: it remembers which contradictions it raised. */
public final class DiagnoseJob implements Job {
    private final Diagnoser diagnoser;
    private final Set<Set<String>> raised = new HashSet<>();

    private String heardFamily = "";
    private String family;

    public DiagnoseJob(Diagnoser diagnoser) {
        this(diagnoser, "");
    }

    /** @param family the family the liquid is of, where a word named it and none named the class; else empty */
    public DiagnoseJob(Diagnoser diagnoser, String family) {
        this.diagnoser = diagnoser;
        this.family = family;
    }

    @Override
    public String word() {
        return "diagnose";
    }

    @Override
    public Knowledge knowledge() {
        return diagnoser.knowledge().base();
    }

    @Override
    public boolean usesKit() {
        return false;
    }

    @Override
    public void prepare() {
        RuleBook.prepareDiagnosisSoon(diagnoser.knowledge()::readAll);
    }

    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        return diagnoser
                .next(answers)
                .map(n -> new Interviewer.Next(ofFamily(n.question()), n.reasons(diagnoser, answers)));
    }

    /** Where the family is known, the question for the liquid offers its classes; any other may be typed all the same. */
    private Question ofFamily(Question q) {
        return q.kind().equals("material") && !family.isEmpty()
                ? q.withChoices(knowledge().materials().values().stream()
                        .filter(m -> m.family().equals(family))
                        .map(m -> new Question.Choice(m.id(), m.name(), m.says()))
                        .toList())
                : q;
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        return answers.all().isEmpty()
                ? Optional.of("Say at least what is wrong with the part: nothing can be ranked without it.")
                : Optional.empty();
    }

    /** Each pair is raised once: a person who stands by both answers is not asked for ever. */
    @Override
    public Optional<Doubt> doubt(Answers answers) {
        for (Contradiction c : diagnoser.contradictions(answers)) {
            if (raised.add(Set.of(c.first(), c.second()))) {
                return Optional.of(new Doubt(c.say(), List.of(c.first(), c.second())));
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<String> invitation(Answers answers) {
        return answers.has("symptom")
                ? Optional.empty()
                : Optional.of(
                        "What is wrong with the part? Say it in a line in your own words, or press Enter to be asked.");
    }

    @Override
    public Heard hear(String text) {
        WordPicker.Picked picked = new WordPicker(diagnoser.knowledge()).pick(text);
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, Answers.Given> e : picked.answers().all().entrySet()) {
            lines.add(e.getKey() + " = "
                    + Page.said(e.getKey(), e.getValue().answer(), knowledge()) + "  (from \""
                    + picked.words().get(e.getKey()) + "\")");
        }
        picked.unclear().forEach(id -> lines.add(id + ": the line says two things, so it will be asked if it matters"));
        if (!picked.family().isEmpty()) {
            lines.add("material: some " + picked.familyWord() + ", so only those are offered");
        }
        heardFamily = picked.family();
        return new Heard(picked.answers(), lines, picked.leftOut());
    }

    @Override
    public void agreed() {
        family = heardFamily;
    }

    @Override
    public Optional<Picture> picture(Answers answers) {
        return Optional.of(
                Picture.of(diagnoser.diagnose(answers), diagnoser.knowledge().base()));
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        return new Diagnosed(diagnoser.diagnose(answers), width, plain);
    }

    /** A diagnosis with its page. */
    private final class Diagnosed implements Result {
        private final Diagnosis d;
        private final DiagnosisPage page;

        Diagnosed(Diagnosis d, int width, boolean plain) {
            this.d = d;
            this.page = new DiagnosisPage(d, diagnoser, width, plain);
        }

        @Override
        public List<String> first() {
            return page.first();
        }

        @Override
        public String next() {
            return "Next: \"how 1\", \"causes\", \"prevent 1\", \"otherwise\", \"cautions\", \"change 1\", \"save NAME\", \"quit\".";
        }

        @Override
        public List<String> words() {
            return List.of(
                    "how NUMBER",
                    "causes",
                    "prevent NUMBER",
                    "otherwise",
                    "why-not CAUSE",
                    "cautions",
                    "figures",
                    "rules",
                    "sources");
        }

        @Override
        public Optional<List<String>> say(String verb, String rest) {
            return switch (verb) {
                case "how" -> Optional.of(page.how(rest));
                case "causes", "more" -> Optional.of(page.causes());
                case "prevent" -> Optional.of(page.prevent(rest));
                case "why-not" -> Optional.of(page.whyNot(rest));
                case "otherwise" -> Optional.of(page.otherwise());
                case "cautions" -> Optional.of(page.cautions());
                case "figures" -> Optional.of(page.figures());
                case "rules" -> Optional.of(page.rules());
                case "sources" -> Optional.of(page.sources());
                default -> Optional.empty();
            };
        }

        @Override
        public boolean stop() {
            return false;
        }

        @Override
        public String caseText(String name) {
            return CaseFile.of(d, "workshop", name).text();
        }
    }
}
