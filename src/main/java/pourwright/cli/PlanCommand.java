package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.ResultJson;
import pourwright.console.Page;
import pourwright.facts.Answers;
import pourwright.geometry.MeshFault;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.vents.MeshAnswers;
import pourwright.vents.MeshRequest;

/** Plans one pour, or many from a file. */
@Command(
        name = "plan",
        header = {
            "  pourwright plan                               # talk it through",
            "  pourwright plan material=tin-silicone batch-mass=\"1.2 kg\" cup-volume=\"2 l\"",
            "  pourwright plan --answers job.json --json",
            "  pourwright plan --answers - --json < jobs.jsonl  # one job a line",
            "  pourwright plan --mesh ear.stl --unit mm      # amounts and walls from a mesh"
        },
        description = "Plan a pour. What is not given as id=value, --answers or --case is asked.",
        footer = "\"pourwright questions\" lists every id. null or an absent id means don't know.")
final class PlanCommand extends JobCommand {
    private Knowledge knowledge;

    @Mixin
    private MeshOptions mesh = new MeshOptions();

    PlanCommand(Program program) {
        super(program);
    }

    @Override
    Knowledge knowledge(boolean talks) {
        knowledge = talks ? program.knowledgeOfWorkshop(shared) : program.knowledge(shared);
        return knowledge;
    }

    @Override
    Answers withOptions(Answers given, AnswersJson reader) {
        return mesh.over(given, reader);
    }

    @Override
    String wordOfCase(Path file) {
        return "plan";
    }

    @Override
    ExitCode show(Answers given) {
        Consultation c = Advisor.consult(measured(given), knowledge);
        if (asJson) {
            program.out().println(Json.write(new ResultJson(knowledge).of(c)));
        } else {
            Page page = new Page(c, knowledge, Talk.width(program), shared.plain);
            List<String> lines = new ArrayList<>(page.first(false));
            lines.add("");
            lines.addAll(page.more());
            lines.add("");
            lines.addAll(page.cautions());
            print(lines);
        }
        return c.verdict() == Verdict.STOP ? ExitCode.STOP : ExitCode.ADVICE;
    }

    /** With what a mesh tells: it is read here, so that the advice itself stays a function of answers. */
    private Answers measured(Answers given) {
        Optional<MeshRequest> request = MeshRequest.of(given);
        if (request.isEmpty()) {
            return given;
        }
        try {
            MeshRequest r = request.get();
            return MeshAnswers.ofPlan(
                    given, knowledge, r, MeshFiles.besideCase(caseFile).mesh(r.file(), r.metresPerUnit()));
        } catch (MeshFault e) {
            throw new BadAnswer("mesh-file", e.getMessage());
        }
    }

    @Override
    ExitCode talk(Answers given) {
        return Talk.plan(program, shared, () -> knowledge, measured(given));
    }
}
