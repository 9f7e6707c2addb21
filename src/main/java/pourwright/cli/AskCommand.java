package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.advice.Finding;
import pourwright.ask.Deciding;
import pourwright.ask.Sensitive;
import pourwright.ask.WantedWords;
import pourwright.ask.WhyNot;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.AskJson;
import pourwright.console.AskPage;
import pourwright.console.Clean;
import pourwright.console.DifferencePage;
import pourwright.console.Page;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** Questions to the advice for a job, without a talk. */
@Command(
        name = "ask",
        header = {
            "  pourwright ask --answers job.json --why-not pressure-cure",
            "  pourwright ask --case ear.case.json --sensitive --json",
            "  pourwright ask material=tin-silicone --what-if kit=both --why pot-life"
        },
        description = "Ask about a plan: why not something else, what to measure, what would differ.",
        footer = "Several may be asked at once.")
final class AskCommand extends JobCommand {
    private Knowledge knowledge;

    @Option(names = "--how", paramLabel = "ID", description = "Where a piece of advice comes from.")
    private List<String> how = new ArrayList<>();

    @Option(names = "--why", paramLabel = "ID", description = "What the answer to a question would settle.")
    private List<String> why = new ArrayList<>();

    @Option(names = "--why-not", paramLabel = "WHAT", description = "When a rule, method or verdict would be advised.")
    private List<String> whyNot = new ArrayList<>();

    @Option(names = "--what-if", paramLabel = "A=B", description = "What would differ; several go together.")
    private List<String> whatIf = new ArrayList<>();

    @Option(names = "--sensitive", description = "Which uncertain answer to measure next.")
    private boolean sensitive;

    AskCommand(Program program) {
        super(program);
    }

    @Override
    Knowledge knowledge(boolean talks) {
        knowledge = talks ? program.knowledgeOfWorkshop(shared) : program.knowledge(shared);
        return knowledge;
    }

    @Override
    String wordOfCase(Path file) {
        return "plan";
    }

    @Override
    ExitCode talk(Answers given) {
        return show(given);
    }

    @Override
    ExitCode show(Answers given) {
        if (!sensitive && List.of(how, why, whyNot, whatIf).stream().allMatch(List::isEmpty)) {
            throw new BadAnswer(
                    "ask",
                    "Nothing was asked. Give at least one of --why-not, --sensitive, --what-if, --why and --how.");
        }
        Consultation c = Advisor.consult(given, knowledge);
        if (asJson) {
            program.out().println(Json.write(json(c)));
        } else {
            print(text(c));
        }
        return ExitCode.ADVICE;
    }

    private com.fasterxml.jackson.databind.node.ObjectNode json(Consultation c) {
        AskJson json = new AskJson(c, knowledge);
        how.forEach(id -> json.how(finding(id, c)));
        why.forEach(id -> json.why(Deciding.of(question(id), c.answers(), knowledge)));
        whyNot.forEach(w -> json.whyNot(WhyNot.of(
                c,
                WantedWords.find(w, knowledge)
                        .orElseThrow(() -> new BadAnswer(
                                "why-not", "Nothing a plan can advise is called \"" + Clean.quoted(w) + "\"."))
                        .wanted(),
                knowledge)));
        if (!whatIf.isEmpty()) {
            json.whatIf(difference(c));
        }
        if (sensitive) {
            json.sensitive(Sensitive.of(c, knowledge));
        }
        return json.whole();
    }

    private List<String> text(Consultation c) {
        int width = Talk.width(program);
        AskPage page = new AskPage(knowledge, width);
        List<List<String>> parts = new ArrayList<>();
        how.forEach(id -> parts.add(new Page(c, knowledge, width, shared.plain).how(id)));
        why.forEach(id -> parts.add(page.why(id, c.answers())));
        whyNot.forEach(w -> parts.add(page.whyNot(w, c)));
        if (!whatIf.isEmpty()) {
            parts.add(new DifferencePage(difference(c), knowledge, width).lines());
        }
        if (sensitive) {
            parts.add(page.sensitive(c));
        }
        List<String> lines = new ArrayList<>();
        for (List<String> part : parts) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(part);
        }
        return lines;
    }

    private Difference difference(Consultation c) {
        Answers changed = c.answers();
        AnswersJson reader = new AnswersJson(knowledge);
        for (var e : Given.read(whatIf, reader).all().entrySet()) {
            changed =
                    changed.with(e.getKey(), e.getValue().answer(), e.getValue().raw());
        }
        return Difference.between(c, Advisor.consult(changed, knowledge));
    }

    private static Finding finding(String id, Consultation c) {
        Optional<Finding> numbered = id.matches("\\d{1,4}")
                ? c.findings().stream()
                        .skip(Math.max(0, Integer.parseInt(id) - 1L))
                        .findFirst()
                : c.finding(id);
        return numbered.orElseThrow(() -> new BadAnswer(
                "how",
                "There is no finding \"" + Clean.quoted(id) + "\". They are numbered 1 to "
                        + c.findings().size() + "."));
    }

    private Question question(String id) {
        return knowledge
                .question(id)
                .orElseThrow(() -> new BadAnswer("why", "No question is called \"" + Clean.quoted(id) + "\"."));
    }
}
