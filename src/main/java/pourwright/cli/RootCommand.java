package pourwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The console itself. */
@Command(
        name = "pourwright",
        description =
                "Plans a pour of silicone, polyurethane, epoxy, polyester or gypsum: degas or not, how deep, how long,"
                        + " how much, in what order.",
        customSynopsis = {
            "pourwright                             talk it through",
            "       pourwright plan material=tin-silicone batch-mass=\"1.2 kg\"",
            "       pourwright figure pump-down-time chamber-volume=20 pump-speed=\"3 cfm\" target-pressure=30",
            "       pourwright WORD --help"
        },
        footer = {
            "",
            "Exit codes: 0 advice, 1 advice to stop or a difference, 2 bad input, 3 fault,",
            "4 input ended with questions left, 130 interrupted."
        })
final class RootCommand implements Callable<Integer> {
    private final Program program;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    @Option(names = "--version", description = "Show program, rule book and knowledge.")
    private boolean version;

    RootCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        if (version) {
            Versions.show(program.out(), program.knowledge(shared));
            return ExitCode.ADVICE.code();
        }
        return Talk.console(program, shared).code();
    }
}
