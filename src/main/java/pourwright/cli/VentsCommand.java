package pourwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.VentsJson;
import pourwright.casebook.WholeFile;
import pourwright.console.VentsJob;
import pourwright.console.VentsPage;
import pourwright.facts.Answers;
import pourwright.geometry.Picture;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.vents.VentAdvice;

/** Decides whether a mould needs vents, where, and which way up it fills best. */
@Command(
        name = "vents",
        header = {
            "  pourwright vents --mesh ear.stl --unit mm --svg ear.svg",
            "  pourwright vents --mesh ear.stl --unit mm --around   # rubber around a master",
            "  pourwright vents undercut-width=8mm undercut-depth=20mm undercut-blind=yes"
        },
        description = "Decide whether a mould needs vents: from a mesh or a place you describe.",
        footer = "Places are in units of the mesh. \"pourwright questions\" lists every id.")
final class VentsCommand extends JobCommand {
    private Knowledge knowledge;
    private VentsJob job;

    @Mixin
    private StandOptions mesh = new StandOptions();

    @Option(names = "--svg", paramLabel = "FILE", description = "Write a picture, from two sides.")
    private Path svg;

    VentsCommand(Program program) {
        super(program);
    }

    @Override
    Knowledge knowledge(boolean talks) {
        knowledge = talks ? program.knowledgeOfWorkshop(shared) : program.knowledge(shared);
        job = new VentsJob(knowledge, MeshFiles.besideCase(caseFile), this::draw);
        return knowledge;
    }

    @Override
    Answers withOptions(Answers given, AnswersJson reader) {
        return mesh.over(given, reader);
    }

    @Override
    String wordOfCase(Path file) {
        return "vents";
    }

    @Override
    ExitCode show(Answers answers) {
        VentAdvice advice = job.advise(answers);
        draw(advice);
        if (asJson) {
            program.out().println(Json.write(new VentsJson(knowledge).of(advice)));
        } else {
            VentsPage page = job.page(advice, answers, Talk.width(program), shared.plain);
            List<String> lines = new ArrayList<>(page.first());
            lines.add("");
            lines.addAll(page.more());
            lines.add("");
            lines.addAll(page.cautions());
            print(lines);
        }
        return ExitCode.ADVICE;
    }

    private void draw(VentAdvice advice) {
        if (svg == null) {
            return;
        }
        String text = advice.mesh()
                .map(m -> Picture.svg(m.mesh(), m.vented(), m.trapped()))
                .orElseThrow(() -> new BadAnswer("svg", "A picture needs a mesh. Give one with --mesh."));
        try {
            WholeFile.write(svg, text);
        } catch (IOException e) {
            throw new BadAnswer("svg", "The picture " + svg + " cannot be written: is there such a folder, and room?");
        }
    }

    @Override
    ExitCode talk(Answers given) {
        return Talk.vents(program, shared, () -> job, given);
    }
}
