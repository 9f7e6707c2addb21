package pourwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;

/** Goes on with a conversation that was left or cut off. */
@Command(
        name = "resume",
        description = "Go on with the plan that was left: nothing that was answered is asked again.",
        customSynopsis = "pourwright resume")
final class ResumeCommand implements Callable<Integer> {
    private final Program program;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    ResumeCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Knowledge knowledge = program.knowledgeOfWorkshop(shared);
        Path shop = program.shop(shared.shop);
        Optional<Answers> left = new Journal(shop).unfinished(new AnswersJson(knowledge));
        if (left.isEmpty()) {
            throw new BadAnswer(
                    "resume", "There is nothing to resume in " + shop + ". \"pourwright\" starts a new plan.");
        }
        return Talk.plan(program, shared, knowledge, left.get()).code();
    }
}
