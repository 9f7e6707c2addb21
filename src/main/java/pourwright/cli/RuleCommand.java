package pourwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AskJson;
import pourwright.console.RulePage;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.RuleText;

/** One rule as prose. */
@Command(
        name = "rule",
        header = {
            "  pourwright rule cup-too-small                 # when it speaks, why, and by whose numbers",
            "  pourwright rule cup-too-small --json"
        },
        description = "Read a rule as prose.",
        footer = "\"pourwright rules\" lists every id. In a conversation: rule ID.")
final class RuleCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(paramLabel = "ID", description = "The rule's id.")
    private String id;

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    RuleCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        RuleCard card = RuleBook.card(id.substring(id.lastIndexOf('/') + 1))
                .orElseThrow(() -> new BadAnswer("rule", RulePage.unknown(id)));
        Knowledge knowledge =
                KnowledgeReader.withObservations(program.knowledgeFolder(shared), program.knowledge(shared));
        if (asJson) {
            program.out().println(Json.write(AskJson.rule(RuleText.of(card), knowledge)));
        } else {
            new RulePage(knowledge, Talk.width(program)).lines(card.id(), null).forEach(program.out()::println);
        }
        return ExitCode.ADVICE.code();
    }
}
