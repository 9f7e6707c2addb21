package pourwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeFault;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Seal;

/** Checks knowledge: the shipped folder, or one that is named. */
@Command(
        name = "check",
        description = "Check the knowledge: every file against its schema, every source, unit and range.",
        customSynopsis = {"pourwright check", "       pourwright check DIR"})
final class CheckCommand implements Callable<Integer> {
    private final Program program;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    @Option(
            names = "--seal",
            hidden = true,
            description = "Note that the folder was checked, so that a start need not check it.")
    private boolean seal;

    @Parameters(paramLabel = "DIR", arity = "0..1", description = "A knowledge folder.")
    private Path dir;

    CheckCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() throws IOException {
        if (dir != null && !Files.isDirectory(dir)) {
            throw new BadAnswer("check", "There is no folder " + dir + ".");
        }
        try {
            Knowledge k = dir == null ? program.knowledge(shared) : KnowledgeReader.readAndCheckAll(dir);
            if (seal && dir != null) {
                Seal.write(dir);
            }
            Versions.show(program.out(), k);
            program.out().println("No fault found.");
            return ExitCode.ADVICE.code();
        } catch (KnowledgeFault e) {
            program.out().println(e.getMessage());
            return ExitCode.STOP.code();
        }
    }
}
