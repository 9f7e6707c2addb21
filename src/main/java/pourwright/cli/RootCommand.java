package pourwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pourwright.advice.BadAnswer;

/** The console itself. */
@Command(
        name = "pourwright",
        header = {
            "  pourwright                                    # talk it through",
            "  pourwright WORD --help                        # examples and options of a word"
        },
        description = "Plan a pour, look for vents, test a vacuum kit, and find what went wrong.")
final class RootCommand implements Callable<Integer> {
    private final Program program;

    @Option(names = "--version", description = "Show program, rule book and knowledge.")
    private boolean version;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    RootCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        if (version) {
            Versions.show(program.out(), program.knowledge(shared), program.knowledgeFolder(shared));
            return ExitCode.ADVICE.code();
        }
        if (shared.noInput) {
            throw new BadAnswer(
                    "no-input",
                    "With --no-input nothing can be asked, and there is no answer to work with. Give some, for example"
                            + " \"pourwright plan material=tin-silicone --no-input\".");
        }
        return Talk.console(program, shared).code();
    }
}
