package pourwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pourwright.casebook.Journal;
import pourwright.casebook.ShopLock;
import pourwright.casebook.Trouble;
import pourwright.console.Door;
import pourwright.console.Job;
import pourwright.console.Pick;
import pourwright.console.Wrap;

/** A conversation that was left in the workshop's folder, and the question what to do with it before another begins. */
final class Unfinished {
    private static final String GO_ON = "yes";
    private static final String DROP = "drop";

    private final Path shop;
    private final Journal.Standing standing;

    private Unfinished(Path shop, Journal.Standing standing) {
        this.shop = shop;
        this.standing = standing;
    }

    /** What the person wants. */
    enum Then {
        /** To go on with it. */
        GO_ON,
        /** To begin anew. */
        ANEW,
        /** To leave. */
        LEAVE
    }

    /** The one that stands in this folder; none when another console has it open now, which was not left. */
    static Optional<Unfinished> in(Path shop) {
        if (!Journal.standsIn(shop) || ShopLock.isHeld(shop)) {
            return Optional.empty();
        }
        Journal.Standing standing = Journal.standing(shop);
        return standing.ids().isEmpty() ? Optional.empty() : Optional.of(new Unfinished(shop, standing));
    }

    /** Asks. Whatever is answered, or if nothing is, only "drop" destroys anything. */
    Then ask(Door door) {
        String name = Job.called(standing.word());
        int kept = standing.ids().size();
        say(
                door,
                "There is an unfinished " + name + " with " + kept + (kept == 1 ? " answer" : " answers")
                        + ". Go on with it? (Enter = yes; \"no\" sets it aside, \"drop\" lets it go)");
        Optional<String> said;
        try {
            said = new Pick(
                            door,
                            "resume > ",
                            List.of(GO_ON, "no", DROP),
                            "Answers of an earlier conversation are kept. \"no\" begins anew and keeps them in a file of another"
                                    + " name. \"drop\" begins anew without them.")
                    .ask();
        } catch (Door.Ended e) {
            say(door, "The input ended. " + stands(name));
            throw e;
        } catch (Door.Interrupted e) {
            say(door, "Stopped. " + stands(name));
            throw e;
        }
        if (said.isEmpty()) {
            say(door, "Left. " + stands(name));
            return Then.LEAVE;
        }
        if (said.get().equals(DROP)) {
            drop(door);
        }
        return said.get().equals(GO_ON) ? Then.GO_ON : Then.ANEW;
    }

    private static String stands(String name) {
        return "The unfinished " + name + " still stands: \"pourwright resume\" goes on with it.";
    }

    private void drop(Door door) {
        try {
            new Journal(shop, standing.word()).end();
            say(door, "  = let go");
        } catch (IOException e) {
            say(door, "It cannot be cleared from " + shop + ": " + Trouble.why(shop, e) + ". It stays as it is.");
        }
    }

    private static void say(Door door, String text) {
        String indent = text.startsWith("  ") ? "  " : "";
        Wrap.text(text.strip(), door.width(), indent, indent).forEach(door::say);
    }
}
