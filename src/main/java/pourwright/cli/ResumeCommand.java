package pourwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pourwright.advice.BadAnswer;
import pourwright.casebook.Journal;
import pourwright.casebook.ShopLock;
import pourwright.console.Job;

/** Goes on with a conversation that was left or cut off. */
@Command(
        name = "resume",
        header = {"  pourwright resume                             # go on where it was left"},
        description =
                "Go on where you left: with the plan or diagnosis that stands there. No answer is asked for again.")
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
        Talk.Left left = Talk.left(program, shared, shop).orElseThrow(() -> new BadAnswer("resume", nothing(shop)));
        if (shared.noInput) {
            return shown(left).code();
        }
        return Talk.job(program, shared, left.job(), left.answers()).code();
    }

    /** The result with what was answered so far; what was not counts as don't know. */
    private ExitCode shown(Talk.Left left) {
        left.job().tooEarly(left.answers()).ifPresent(why -> {
            throw new BadAnswer("resume", why);
        });
        Job.Result result = left.job().result(left.answers(), Talk.width(program), shared.plain);
        result.first().forEach(program.out()::println);
        program.out().println("");
        result.say("cautions", "").ifPresent(lines -> lines.forEach(program.out()::println));
        return result.stop() ? ExitCode.STOP : ExitCode.ADVICE;
    }

    private static String nothing(Path shop) {
        if (ShopLock.isHeld(shop)) {
            return "Another console is open in " + shop + ". Go on there, or close it and resume then.";
        }
        if (Journal.standsIn(shop) && Journal.standing(shop).unread() > 0) {
            return "The unfinished conversation in " + shop
                    + " cannot be read. \"pourwright\" starts anew and keeps the file beside.";
        }
        return "There is nothing to resume in " + shop + ". \"pourwright\" starts a new plan.";
    }
}
