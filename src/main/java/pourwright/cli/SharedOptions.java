package pourwright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Options every command takes. */
final class SharedOptions {
    @Option(
            names = "--knowledge",
            paramLabel = "DIR",
            description = "Read the knowledge from this folder.",
            hidden = true)
    Path knowledge;

    @Option(names = "--shop", paramLabel = "DIR", description = "The workshop's own folder.")
    Path shop;

    @Option(names = "--plain", description = "One fact a line: no columns, no line editing.")
    boolean plain;

    @Option(names = "--no-input", description = "Never ask; what is missing counts as don't know.")
    boolean noInput;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;
}
