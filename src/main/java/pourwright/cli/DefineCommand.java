package pourwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import pourwright.console.TermPage;

/** One word of the trade. */
@Command(
        name = "define",
        header = {
            "  pourwright define gel time                    # what it means, and from where",
            "  pourwright define vents                       # forms of a word will do"
        },
        description = "Explain a word: what it means in the trade, and from which source.",
        footer = "In a conversation \"define gel time\" does the same at every prompt.")
final class DefineCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(paramLabel = "WORD", arity = "1..*", description = "The word, or several that belong together.")
    private List<String> words = List.of();

    @Mixin
    private SharedOptions shared = new SharedOptions();

    DefineCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        new TermPage(program.knowledge(shared), Talk.width(program))
                .lines(String.join(" ", words))
                .forEach(program.out()::println);
        return ExitCode.ADVICE.code();
    }
}
