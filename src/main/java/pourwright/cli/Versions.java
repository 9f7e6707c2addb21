package pourwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;

/** What exactly is running. */
final class Versions {
    private Versions() {}

    /** The same in one line, for a sheet: whoever holds it can see whether two were made by the same book. */
    static String line(Knowledge k, Path dir) {
        String version = Main.class.getPackage().getImplementationVersion();
        return "Made by Pourwright" + (version == null ? "" : " " + version) + ", rule book "
                + Fingerprint.ofRules(cards()) + ", knowledge " + Fingerprint.ofFolder(dir) + ".";
    }

    private static List<RuleCard> cards() {
        List<RuleCard> cards = new ArrayList<>(RuleBook.method().cards());
        cards.addAll(RuleBook.judge().cards());
        cards.addAll(RuleBook.diagnosis().cards());
        cards.addAll(RuleBook.kit().cards());
        return cards;
    }

    /** Shows program, rule book and knowledge, each with its number or the fingerprint of its texts. */
    static void show(PrintStream out, Knowledge k, Path dir) {
        String version = Main.class.getPackage().getImplementationVersion();
        List<RuleCard> cards = cards();
        out.println("pourwright " + (version == null ? "(built from source)" : version));
        out.println("rule book " + Fingerprint.ofRules(cards) + ": " + cards.size() + " rules");
        out.println("knowledge " + Fingerprint.ofFolder(dir) + ": "
                + k.materials().size() + " materials, "
                + k.guidelines().size() + " guidelines, " + k.questions().size() + " questions, "
                + k.sources().size() + " sources");
    }
}
