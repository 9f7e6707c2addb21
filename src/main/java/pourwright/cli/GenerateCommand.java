package pourwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;

/** Writes what an installation lays out beside the program: completion for two shells and the manual page. */
@Command(
        name = "generate",
        hidden = true,
        header = {
            "  pourwright generate completion bash           # or zsh; on standard output",
            "  pourwright generate manual                    # the manual page, for man -l -",
            "  pourwright generate all --to share            # all of it, as the build does"
        },
        description = "Print shell completion or the manual page, from what --help prints.")
final class GenerateCommand implements Callable<Integer> {
    private final Program program;

    @Parameters(index = "0", paramLabel = "WHAT", description = "completion, manual or all.")
    private String what;

    @Parameters(index = "1", arity = "0..1", paramLabel = "SHELL", description = "bash (as usual) or zsh.")
    private String shell = "bash";

    @Option(names = "--to", paramLabel = "DIR", description = "Write the files under this folder.")
    private Path to;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    GenerateCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() throws IOException {
        CommandLine all = program.commandLine("");
        HelpPage.arrange(all);
        Map<String, String> files = new LinkedHashMap<>();
        files.put("man/man1/pourwright.1", Manual.of(all));
        Completion completion = new Completion(all, program.knowledgeForDiagnosis(shared, false));
        files.put("bash-completion/completions/pourwright", completion.bash());
        files.put("zsh/site-functions/_pourwright", completion.zsh());
        if (what.equals("all") && to != null) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = to.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue(), StandardCharsets.UTF_8);
            }
            return ExitCode.ADVICE.code();
        }
        String beginning = switch (what) {
            case "manual" -> "man/";
            case "completion" -> shell;
            default -> "none";
        };
        String text = files.entrySet().stream()
                .filter(f -> f.getKey().startsWith(beginning))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new BadAnswer(
                        "generate", "Say \"completion bash\", \"completion zsh\", \"manual\", or \"all --to DIR\"."));
        program.out().print(text);
        program.out().flush();
        return ExitCode.ADVICE.code();
    }
}
