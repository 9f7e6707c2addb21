package pourwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pourwright.advice.BadAnswer;

/** Goes on with a conversation that was left or cut off. */
@Command(
        name = "resume",
        header = {"  pourwright resume                             # go on where it was left"},
        description = "Go on with the plan or diagnosis that was left. No answer is asked for again.")
final class ResumeCommand implements Callable<Integer> {
    private final Program program;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    ResumeCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Path shop = program.shop(shared.shop);
        Talk.Left left = Talk.left(program, shared, shop)
                .orElseThrow(() -> new BadAnswer(
                        "resume", "There is nothing to resume in " + shop + ". \"pourwright\" starts a new plan."));
        return Talk.job(program, shared, left.job(), left.answers()).code();
    }
}
