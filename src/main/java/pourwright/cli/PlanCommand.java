package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pourwright.advice.Advisor;
import pourwright.advice.Amounts;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CourseJson;
import pourwright.casebook.FixesJson;
import pourwright.casebook.ResultJson;
import pourwright.casebook.WholeFile;
import pourwright.console.CoursePage;
import pourwright.console.FixPage;
import pourwright.console.Page;
import pourwright.course.Course;
import pourwright.facts.Answers;
import pourwright.geometry.MeshFault;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.remedy.FixSearch;
import pourwright.remedy.RegionChart;
import pourwright.remedy.WorkingRegion;
import pourwright.sheet.PlanCard;
import pourwright.vents.MeshAnswers;
import pourwright.vents.MeshRequest;

/** Plans one pour, or many from a file. */
@Command(
        name = "plan",
        header = {
            "  pourwright plan                               # talk it through",
            "  pourwright plan material=tin-silicone batch-mass=\"1.2 kg\" cup-volume=\"2 l\"",
            "  pourwright plan --answers - --json --fix < jobs.jsonl  # one job a line",
            "  pourwright plan --mesh ear.stl --unit mm      # amounts and walls from a mesh"
        },
        description = "Plan a pour. What is not given as id=value, --answers or --case is asked.",
        footer = "\"pourwright questions\" lists every id. null or an absent id means don't know.")
final class PlanCommand extends JobCommand {
    private Knowledge knowledge;

    @Option(names = "--fix", description = "Add the smallest changes that make it work.")
    private boolean fix;

    @Option(names = "--course", description = "Add degas, cure and warmth by the minute.")
    private boolean course;

    @Option(names = "--map", paramLabel = "FILE", description = "Draw where it works, by batch and room, as SVG.")
    private Path map;

    @Option(names = "--sheet", paramLabel = "FILE", description = "Write one page for the wall: .html or .txt.")
    private String sheet;

    @Option(names = "--card", paramLabel = "FILE", description = "Write the few lines that matter, in large type.")
    private String card;

    @Option(names = "--title", description = "What sheet and card call the job.", defaultValue = "")
    private String title;

    private boolean drawn;

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
            ObjectNode out = new ResultJson(knowledge).of(c);
            if (fix) {
                FixesJson.into(out, FixSearch.of(c, Set.of(), knowledge), knowledge);
            }
            if (course) {
                CourseJson.into(out, Course.of(c, knowledge));
            }
            program.out().println(Json.write(out));
        } else {
            Page page = new Page(c, knowledge, Talk.width(program), shared.plain);
            List<String> lines = new ArrayList<>(page.first(false));
            lines.add("");
            lines.addAll(page.more());
            lines.add("");
            lines.addAll(page.cautions());
            if (fix) {
                lines.add("");
                lines.addAll(new FixPage(FixSearch.of(c, Set.of(), knowledge), knowledge, Talk.width(program)).lines());
            }
            if (course) {
                lines.add("");
                lines.addAll(new CoursePage(
                                Course.of(c, knowledge), Amounts.of(c.answers()), Talk.width(program), shared.plain)
                        .lines());
            }
            print(lines);
        }
        if (map != null || sheet != null || card != null) {
            files(c);
        }
        return c.verdict() == Verdict.STOP ? ExitCode.STOP : ExitCode.ADVICE;
    }

    private void files(Consultation c) {
        if (drawn) {
            throw new BadAnswer(
                    sheet != null ? "sheet" : card != null ? "card" : "map",
                    "One file holds one job: give --sheet, --card and --map a single job.");
        }
        drawn = true;
        if (map != null) {
            draw(c);
        }
        if (card != null) {
            CardFile.write(
                    PlanCard.of(
                            c,
                            knowledge,
                            CardFile.title(title),
                            Versions.line(knowledge, program.knowledgeFolder(shared))),
                    CardFile.file(card));
        }
        if (sheet != null) {
            program.sheets(shared, knowledge, MeshFiles.besideCase(caseFile)).write(c, SheetFile.file(sheet), title);
        }
    }

    private void draw(Consultation c) {
        String title = "Where it works: "
                + knowledge.materials().get(c.answers().choice("material")).name();
        String text = RegionChart.svg(WorkingRegion.around(c, knowledge), title);
        try {
            WholeFile.write(map, text);
        } catch (IOException e) {
            throw new BadAnswer("map", "The map " + map + " cannot be written: is there such a folder, and room?");
        }
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
        if (fix || course || map != null || sheet != null || card != null) {
            // Whoever asks for these wants them at once, and no conversation.
            return show(given);
        }
        return Talk.plan(program, shared, () -> knowledge, measured(given));
    }
}
