package pourwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.casebook.NowJson;
import pourwright.console.NowPage;
import pourwright.emergency.EmergencyFinder;
import pourwright.knowledge.Emergency;
import pourwright.knowledge.Json;
import pourwright.knowledge.KnowledgeReader;

/** Help without a question when something goes wrong at the bench. It reads one file of knowledge and no rule. */
@Command(
        name = "now",
        header = {
            "  pourwright now foam at the rim                # five lines at most",
            "  pourwright now cup smokng                     # slips do not matter",
            "  pourwright now                                # lists what it knows",
            "  pourwright now iso in my eye --json"
        },
        description = "Help at once: what to do first when something goes wrong at the bench. Nothing is asked.",
        footer = {
            "In a conversation \"now foam at the rim\" does the same at every prompt.",
            "Where nothing fits, all situations are listed; the exit code is 0 all the same."
        })
final class NowCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(paramLabel = "TEXT", arity = "0..*", description = "What you see, in your own words.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    NowCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        List<Emergency> all = KnowledgeReader.emergencies(program.knowledgeFolder(shared));
        String typed = String.join(" ", words);
        if (asJson) {
            Optional<EmergencyFinder.Found> found = new EmergencyFinder(all).find(typed);
            program.out().println(Json.write(NowJson.of(all, found)));
        } else {
            NowPage.lines(all, typed, Talk.width(program)).forEach(program.out()::println);
        }
        return ExitCode.ADVICE.code();
    }
}
