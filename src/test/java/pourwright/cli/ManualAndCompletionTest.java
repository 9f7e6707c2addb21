package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.CommandSpec;
import pourwright.figures.FigureBook;
import pourwright.figures.FigureDef;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** The manual page and the completions leave out no word, no option, no figure and no answer. */
class ManualAndCompletionTest {
    @TempDir
    Path dir;

    private static String generated(String... what) {
        String[] words =
                Stream.concat(Stream.of("generate"), Arrays.stream(what)).toArray(String[]::new);
        Ran ran = Ran.of(words);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    private static List<String> words() {
        return HelpTest.words()
                .filter(w -> !w.isEmpty() && !w.equals("generate"))
                .toList();
    }

    private static List<String> options(String word) {
        CommandSpec spec = HelpTest.command(word).getCommandSpec();
        return spec.options().stream()
                .filter(o -> !o.hidden())
                .flatMap(o -> Arrays.stream(o.names()))
                .toList();
    }

    /** What stands between a beginning and an end, once. */
    private static String between(String text, String begin, String end) {
        int from = text.indexOf(begin);
        assertThat(from).as(begin).isNotNegative();
        int to = text.indexOf(end, from + begin.length());
        return text.substring(from, to < 0 ? text.length() : to);
    }

    @Test
    void theManualNamesEveryWordAndOption() {
        String page = generated("manual");
        String everywhere = between(page, ".SH OPTIONS", ".SH ");
        for (String option : options("")) {
            assertThat(everywhere).contains("\\fB" + option.replace("-", "\\-") + "\\fR");
        }
        for (String word : words()) {
            String about = between(page, ".SS " + word + "\n", ".S");
            for (String option : options(word)) {
                assertThat(about + everywhere).as(word).contains("\\fB" + option.replace("-", "\\-") + "\\fR");
            }
            assertThat(about).contains("pourwright " + word);
        }
        for (ExitCode code : ExitCode.values()) {
            assertThat(between(page, ".SH EXIT STATUS", ".SH ")).contains("\\fB" + code.code() + "\\fR");
        }
        assertThat(page).doesNotContain("generate", "--knowledge");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh"})
    void theCompletionNamesEveryWordOptionFigureAndAnswer(String shell) {
        String script = generated("completion", shell);
        for (String word : words()) {
            String branch = shell.equals("bash")
                    ? between(script, "            " + word + ")\n", "                ;;")
                    : between(script, "        " + word + ")\n", "            ;;");
            assertThat(branch.split("[\\s']+")).as(word).contains(options(word).toArray(String[]::new));
        }
        String[] tokens = script.split("[\\s';]+");
        assertThat(tokens).contains(options("").toArray(String[]::new));
        FigureBook.all().stream()
                .filter(d -> !d.valid().startsWith("used inside"))
                .map(FigureDef::id)
                .forEach(id -> assertThat(tokens).contains(id));
        for (Question q : KnowledgeReader.read(Path.of("knowledge")).questions()) {
            assertThat(tokens).contains(q.id() + "=");
            q.choices().forEach(c -> assertThat(tokens).as(q.id()).contains(c.id()));
        }
        assertThat(script).doesNotContain("generate\n", "--knowledge", "--seal");
    }

    private record Out(int code, String text) {}

    /** Runs a program of the machine; its output and complaints together. */
    private Out run(String... command) throws IOException, InterruptedException {
        Path out = Files.createTempFile(dir, "out", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        return new Out(process.waitFor(), Files.readString(out, StandardCharsets.UTF_8));
    }

    private static boolean there(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
                .anyMatch(p -> Files.isExecutable(Path.of(p).resolve(program)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fig | figure",
                "figure lid | lid-force",
                "figure lid-force lid-d | lid-diameter=",
                "figure lid-force --in inH | inHg",
                "plan volat | volatile=",
                "plan material = tin | tin-silicone",
                "diagnose symp | symptom=",
                "replay --sc | --score"
            })
    void bashCompletes(String typed, String expected) throws IOException, InterruptedException {
        assumeTrue(there("bash"), "no bash here");
        Path script = dir.resolve("completion.bash");
        Files.writeString(
                script,
                generated("completion", "bash") + "COMP_WORDS=(pourwright " + typed
                        + ")\nCOMP_CWORD=$((${#COMP_WORDS[@]}-1))\n_pourwright\necho \"${COMPREPLY[@]}\"\n");
        Out out = run("bash", script.toString());
        assertThat(out.code()).isZero();
        assertThat(out.text().strip()).isEqualTo(expected);
    }

    @Test
    void zshTakesTheCompletion() throws IOException, InterruptedException {
        assumeTrue(there("zsh"), "no zsh here");
        Path script = dir.resolve("_pourwright");
        Files.writeString(script, generated("completion", "zsh"));
        assertThat(run("zsh", "-n", script.toString())).isEqualTo(new Out(0, ""));
    }

    @Test
    void theManualIsRoffWithoutFault() throws IOException, InterruptedException {
        assumeTrue(there("groff"), "no groff here");
        Path page = dir.resolve("pourwright.1");
        Files.writeString(page, generated("manual"));
        assertThat(run("groff", "-man", "-ww", "-z", "-K", "utf8", page.toString()))
                .isEqualTo(new Out(0, ""));
    }

    @Test
    void theBuildGetsAllOfIt() throws IOException {
        assertThat(Ran.of("generate", "all", "--to", dir.toString()).code()).isZero();
        assertThat(dir.resolve("man/man1/pourwright.1")).hasContent(generated("manual"));
        assertThat(dir.resolve("bash-completion/completions/pourwright")).hasContent(generated("completion"));
        assertThat(dir.resolve("zsh/site-functions/_pourwright")).hasContent(generated("completion", "zsh"));
    }
}
