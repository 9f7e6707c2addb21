package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pourwright.console.Wrap;
import pourwright.knowledge.Json;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;

/** Every rule with its reason and sources. */
@Command(
        name = "rules",
        header = {
            "  pourwright rules                              # what each says, and why",
            "  pourwright rules --json                       # the same for a program"
        },
        description = "List every rule: what it says, why, and from where.")
final class RulesCommand implements Callable<Integer> {
    private final Program program;

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    @SuppressWarnings("UnusedVariable")
    private SharedOptions shared = new SharedOptions();

    RulesCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        List<RuleCard> cards = new ArrayList<>(RuleBook.method().cards());
        cards.addAll(RuleBook.judge().cards());
        cards.addAll(RuleBook.kit().cards());
        cards.sort(null);
        ArrayNode all = Json.array();
        for (RuleCard c : cards) {
            ObjectNode one = all.addObject();
            one.put("id", c.id())
                    .put("folder", c.folder())
                    .put("topic", c.topic())
                    .put("says", c.says())
                    .put("because", c.because());
            ArrayNode sources = one.putArray("sources");
            c.sources().forEach(sources::add);
            if (!asJson) {
                Wrap.text(c.says() + ". " + c.because(), Talk.width(program), c.folder() + "/" + c.id() + ": ", "    ")
                        .forEach(program.out()::println);
            }
        }
        if (asJson) {
            program.out().println(Json.write(Json.object().set("rules", all)));
        }
        return ExitCode.ADVICE.code();
    }
}
