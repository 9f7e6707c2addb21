package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.casebook.ResultJson;
import pourwright.console.Page;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

/** Plans one pour, or many from a file. */
@Command(
        name = "plan",
        header = {
            "  pourwright plan                               # talk it through",
            "  pourwright plan material=tin-silicone batch-mass=\"1.2 kg\" cup-volume=\"2 l\"",
            "  pourwright plan --answers job.json --json",
            "  pourwright plan --answers - --json < jobs.jsonl  # one job a line",
            "  pourwright plan --case ear.case.json          # a saved case"
        },
        description = "Plan a pour. What is not given as id=value, --answers or --case is asked.",
        footer = "\"pourwright questions\" lists every id. null or an absent id means don't know.")
final class PlanCommand implements Callable<Integer> {
    private final Program program;

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "Read JSON: one object, or one a line; - is standard input.")
    private Path answersFile;

    @Option(names = "--case", paramLabel = "FILE", description = "Read the answers of a saved case.")
    private Path caseFile;

    @Option(names = "--json", description = "Print one JSON object per job.")
    private boolean asJson;

    @Parameters(paramLabel = "id=value", description = "Answers already known.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private SharedOptions shared = new SharedOptions();

    PlanCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        boolean talks = answersFile == null && caseFile == null && !asJson && !shared.noInput;
        Knowledge knowledge = talks ? program.knowledgeOfWorkshop(shared) : program.knowledge(shared);
        AnswersJson reader = new AnswersJson(knowledge);
        try {
            Answers given = Given.read(words, reader);
            if (answersFile != null && caseFile != null) {
                throw new BadAnswer("answers", "Give either --answers or --case, not both.");
            }
            if (answersFile != null) {
                return new Batch(program, knowledge, asJson, job -> advise(knowledge, job))
                        .run(answersFile, given)
                        .code();
            }
            if (caseFile != null) {
                Answers all = Given.over(
                        given, CaseFile.read(caseFile, "plan", reader).answers());
                return advise(knowledge, all).code();
            }
            if (asJson || shared.noInput) {
                return advise(knowledge, given).code();
            }
            return Talk.plan(program, shared, () -> knowledge, given).code();
        } catch (BadAnswer e) {
            if (asJson) {
                program.out().println(Json.write(ResultJson.error(e)));
            }
            return program.failed(e).code();
        }
    }

    /** Prints the advice for one job. */
    private ExitCode advise(Knowledge knowledge, Answers answers) {
        Consultation c = Advisor.consult(answers, knowledge);
        if (asJson) {
            program.out().println(Json.write(new ResultJson(knowledge).of(c)));
        } else {
            Page page = new Page(c, knowledge, Talk.width(program), shared.plain);
            List<String> lines = new ArrayList<>(page.first(false));
            lines.add("");
            lines.addAll(page.more());
            lines.add("");
            lines.addAll(page.cautions());
            lines.forEach(program.out()::println);
        }
        return c.verdict() == Verdict.STOP ? ExitCode.STOP : ExitCode.ADVICE;
    }
}
