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
        header = {
            "  pourwright check                              # the shipped knowledge",
            "  pourwright check --shop my-workshop           # with a workshop's own",
            "  pourwright check knowledge                    # a folder of its own"
        },
        description = "Check the knowledge: every file against its schema, every source, unit and range.")
final class CheckCommand implements Callable<Integer> {
    private final Program program;

    @Option(
            names = "--seal",
            hidden = true,
            description = "Note that the folder was checked, so that a start need not check it.")
    private boolean seal;

    @Parameters(paramLabel = "DIR", arity = "0..1", description = "A knowledge folder.")
    private Path dir;

    @Mixin
    private SharedOptions shared = new SharedOptions();

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
            Versions.show(program.out(), k, dir == null ? program.knowledgeFolder(shared) : dir);
            program.out().println("No fault found.");
            return ExitCode.ADVICE.code();
        } catch (KnowledgeFault e) {
            program.out().println(e.getMessage());
            return ExitCode.STOP.code();
        }
    }
}
