package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The help of every word: one screen, examples first, every option, every exit code. */
class HelpTest {
    private static final int LINES = 24;
    private static final int COLUMNS = 80;
    private static final Pattern ARGUMENT = Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+");

    static CommandLine all() {
        return new Program(System.in, System.out, System.out, Map.of()).commandLine("");
    }

    /** The empty word is the program itself. */
    static Stream<String> words() {
        return Stream.concat(Stream.of(""), all().getSubcommands().keySet().stream());
    }

    static CommandLine command(String word) {
        return word.isEmpty() ? all() : all().getSubcommands().get(word);
    }

    private static List<String> help(String word) {
        Ran ran = word.isEmpty() ? Ran.of("--help") : Ran.of(word, "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        return ran.out().lines().toList();
    }

    @ParameterizedTest
    @MethodSource("words")
    void fitsOneScreen(String word) {
        List<String> help = help(word);
        assertThat(help).hasSizeLessThanOrEqualTo(LINES);
        assertThat(help).allMatch(l -> l.length() <= COLUMNS);
    }

    @ParameterizedTest
    @MethodSource("words")
    void examplesStandFirst(String word) {
        List<String> help = help(word);
        assertThat(help.get(0)).isEqualTo("Examples:");
        assertThat(help.get(1)).startsWith("  pourwright" + (word.isEmpty() ? "" : " " + word));
        assertThat(help.stream().filter(l -> l.startsWith("Usage: "))).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("words")
    void everyOptionAndExitCodeIsShown(String word) {
        String help = String.join("\n", help(word));
        command(word).getCommandSpec().options().stream()
                .filter(o -> !o.hidden())
                .flatMap(o -> Arrays.stream(o.names()))
                .forEach(name -> assertThat(help).contains(name));
        String codes = help.substring(help.indexOf("Exit codes: "));
        for (ExitCode code : ExitCode.values()) {
            assertThat(codes).contains(code.code() + " " + code.inShort());
        }
    }

    @ParameterizedTest
    @MethodSource("words")
    void everyExampleIsUnderstood(String word) {
        for (List<String> arguments : examples(command(word))) {
            assertThat(arguments.get(0)).isEqualTo("pourwright");
            String[] rest = arguments.subList(1, arguments.size()).toArray(String[]::new);
            assertThatCode(() -> all().parseArgs(rest)).as(arguments.toString()).doesNotThrowAnyException();
        }
    }

    /** The examples as a shell would hand them over: comments, continued lines and redirections taken away. */
    private static List<List<String>> examples(CommandLine command) {
        String text = String.join("\n", command.getCommandSpec().usageMessage().header())
                .replaceAll("\\\\\n", " ")
                .replaceAll("(?m)# .*$", "")
                .replaceAll("(?m)< .*$", "")
                .replace("WORD", "plan");
        List<List<String>> out = new ArrayList<>();
        for (String line : text.split("\n")) {
            List<String> arguments = new ArrayList<>();
            Matcher m = ARGUMENT.matcher(line);
            while (m.find()) {
                arguments.add(m.group().replace("\"", ""));
            }
            out.add(arguments);
        }
        return out;
    }
}
