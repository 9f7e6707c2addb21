package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.Outcome;
import pourwright.casebook.SavedCases;
import pourwright.console.Wrap;

/** How a saved case came out, in one line. */
@Command(
        name = "outcome",
        header = {"  pourwright outcome horse ear good", "  pourwright outcome horse ear bad pinholes at the tips"},
        description = "Tell how a case came out. What stood there stays before it.",
        footer = "In a conversation, after \"save\": outcome good.")
final class OutcomeCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(paramLabel = "CASE good|bad WHAT", arity = "1..*", description = "The case, how, and what was seen.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private SharedOptions shared = new SharedOptions();

    OutcomeCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Outcome o = Outcome.read(String.join(" ", words))
                .filter(x -> !x.name().isEmpty())
                .orElseThrow(() -> new BadAnswer(
                        "outcome", "Say the case and good or bad: \"pourwright outcome horse ear bad pinholes\"."));
        Path file = new SavedCases(program.shop(shared.shop), null).named(o.name());
        String now = o.write(file, program.today());
        Wrap.text(
                        "Kept: " + now + "."
                                + (o.good()
                                        ? ""
                                        : " \"pourwright diagnose --say '"
                                                + (o.what().isEmpty()
                                                        ? "..."
                                                        : o.what().replace("'", ""))
                                                + "'\" looks for the cause."),
                        Talk.width(program),
                        "",
                        "  ")
                .forEach(program.out()::println);
        return ExitCode.ADVICE.code();
    }
}
