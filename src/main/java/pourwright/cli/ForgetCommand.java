package pourwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.Forgetting;
import pourwright.casebook.Learners;
import pourwright.casebook.ShopLock;
import pourwright.casebook.Trouble;
import pourwright.console.Clean;
import pourwright.console.Conversation;
import pourwright.console.Wrap;

/** Deletes what the workshop's folder keeps, once it was confirmed in words. */
@Command(
        name = "forget",
        header = {
            "  pourwright forget horse-ear                   # one saved case",
            "  pourwright forget history                     # conversations, runs and kit tests",
            "  pourwright forget learner Ida                 # what one learner has done",
            "  pourwright forget all                         # everything in the folder that is yours"
        },
        description = "Delete what is kept. It asks first, and only the words typed in full delete.",
        footer = "Nothing ever leaves this machine: what is deleted here is gone.")
final class ForgetCommand implements Callable<Integer> {
    private static final int SHOWN = 12;

    private final Program program;

    @Parameters(paramLabel = "CASE|history|learner NAME|all", arity = "0..*", description = "What to delete.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private SharedOptions shared = new SharedOptions();

    ForgetCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Path shop = program.shop(shared.shop);
        String what = String.join(" ", words).strip();
        if (what.isEmpty()) {
            throw new BadAnswer(
                    "forget", "Say what to forget: the name of a case, \"history\", \"learner NAME\" or \"all\".");
        }
        try {
            List<Path> files = Forgetting.files(shop, what);
            if (files.isEmpty()) {
                throw new BadAnswer("forget", nothing(shop, what));
            }
            if (shared.noInput) {
                throw new BadAnswer("no-input", "With --no-input nothing can be confirmed, so nothing was deleted.");
            }
            return confirmed(shop, what, files);
        } catch (IOException e) {
            throw new BadAnswer("forget", "The folder " + shop + " cannot be read: " + Trouble.why(shop, e) + ".");
        }
    }

    private static String nothing(Path shop, String what) throws IOException {
        if (what.equals("history") || what.equals("all")) {
            return "There is nothing to forget in " + shop + ".";
        }
        if (what.startsWith("learner ")) {
            List<String> names = new Learners(shop).names();
            return "Nobody called \"" + Clean.quoted(what.substring("learner ".length())) + "\" has learnt in " + shop
                    + ". " + (names.isEmpty() ? "Nobody has." : "Known are: " + String.join(", ", names) + ".");
        }
        List<String> cases = Forgetting.cases(shop);
        return "No case \"" + Clean.quoted(what) + "\" is kept in " + shop + ". "
                + (cases.isEmpty() ? "No case is." : "Kept are: " + String.join(", ", cases) + ".");
    }

    private int confirmed(Path shop, String what, List<Path> files) throws IOException {
        Optional<ShopLock> free = Files.isWritable(shop) ? ShopLock.take(shop) : Optional.empty();
        if (free.isEmpty()) {
            throw new BadAnswer(
                    "forget",
                    Files.isWritable(shop)
                            ? "Another console is open in " + shop + ". Close that one first."
                            : "Nothing in " + shop + " can be deleted: it may not be written to.");
        }
        ShopLock held = free.get();
        try {
            return Talk.with(program, shared, door -> {
                        say(door.width(), "This deletes for good, in " + shop + ":", door::say);
                        files.stream().limit(SHOWN).forEach(f -> door.say("  " + shop.relativize(f)));
                        if (files.size() > SHOWN) {
                            door.say("  and " + (files.size() - SHOWN) + " more");
                        }
                        String words = "forget " + what;
                        say(
                                door.width(),
                                "Type \"" + words + "\" to do it. Anything else leaves all as it is.",
                                door::say);
                        String typed = door.ask("sure > ", List.of()).strip();
                        if (!typed.equalsIgnoreCase(words)) {
                            say(door.width(), "Nothing was deleted.", door::say);
                            return Conversation.End.UNFINISHED;
                        }
                        List<Path> left = Forgetting.delete(files);
                        say(
                                door.width(),
                                left.isEmpty()
                                        ? "Deleted: " + files.size() + (files.size() == 1 ? " file." : " files.")
                                        : "These could not be deleted: "
                                                + String.join(
                                                        ", ",
                                                        left.stream()
                                                                .map(f -> shop.relativize(f)
                                                                        .toString())
                                                                .toList())
                                                + ".",
                                door::say);
                        return left.isEmpty() ? Conversation.End.ADVICE : Conversation.End.UNFINISHED;
                    })
                    .code();
        } finally {
            held.close();
        }
    }

    private static void say(int width, String text, java.util.function.Consumer<String> out) {
        Wrap.text(text, width, "", "  ").forEach(out);
    }
}
