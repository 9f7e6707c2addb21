package pourwright.cli;

import java.io.PrintStream;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleBook;

/** What exactly is running. */
final class Versions {
    private Versions() {}

    static void show(PrintStream out, Knowledge k) {
        String version = Main.class.getPackage().getImplementationVersion();
        out.println("pourwright " + (version == null ? "(built from source)" : version));
        out.println("rule book: "
                + (RuleBook.method().cards().size() + RuleBook.judge().cards().size()) + " rules");
        out.println("knowledge: " + k.materials().size() + " materials, "
                + k.guidelines().size() + " guidelines, " + k.questions().size() + " questions, "
                + k.sources().size() + " sources");
    }
}
