package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The launcher for Windows says what the one for a POSIX shell says. It cannot be run here, so its text is compared. */
class LaunchersTest {
    private static final Path BIN = Tree.ROOT.resolve("src/main/app/bin");

    /** What stands in quotes, or up to the next blank. */
    private static final Pattern WORD = Pattern.compile("\"[^\"]*\"|\\S+");

    private static String posix() throws IOException {
        return Files.readString(BIN.resolve("pourwright"), StandardCharsets.US_ASCII);
    }

    private static String windows() throws IOException {
        return Files.readString(BIN.resolve("pourwright.cmd"), StandardCharsets.US_ASCII);
    }

    /** The words of the one command that calls Java, from its first switch to the class. */
    private static List<String> call(String launcher, String lineGoesOn) {
        String whole = launcher.replace("\r\n", "\n").replace(lineGoesOn + "\n", " ");
        String line =
                whole.lines().filter(l -> l.contains(" pourwright.cli.Main ")).collect(Collectors.joining("\n"));
        List<String> words = new ArrayList<>();
        for (Matcher m = WORD.matcher(line); m.find(); ) {
            words.add(m.group());
        }
        return words.subList(words.indexOf("-Xshare:auto"), words.indexOf("pourwright.cli.Main") + 1);
    }

    @Test
    void bothGiveJavaTheSameSwitches() throws IOException {
        List<String> posix = call(posix(), "\\").stream()
                // Only the POSIX launcher knows whether a class-data archive fits.
                .filter(word -> !word.contains("shared"))
                .map(word -> word.replace("$here", "HERE"))
                .toList();
        List<String> windows = call(windows(), "^").stream()
                .map(word -> word.replace("%here%", "HERE").replace('\\', '/'))
                .toList();
        assertThat(windows).isEqualTo(posix).contains("-XX:+UseSerialGC", "\"-Dpourwright.home=HERE\"");
    }

    @Test
    void linesEndAsTheSystemWants() throws IOException {
        assertThat(windows().replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(windows()).endsWith("\r\n");
        assertThat(posix()).startsWith("#!/bin/sh\n").doesNotContain("\r");
        assertThat(Files.readString(BIN.resolve("quicken")))
                .startsWith("#!/bin/sh\n")
                .doesNotContain("\r");
    }

    @Test
    void bothHandOnTheWordsAndTheExitCodeAndSayWhenThereIsNoJava() throws IOException {
        String said = "Pourwright needs Java 17 or newer: none was found. Set JAVA_HOME or install one.";
        assertThat(posix()).contains("exec \"$java\"", "pourwright.cli.Main \"$@\"", said + "\" >&2; exit 3;");
        assertThat(windows()).contains("pourwright.cli.Main %*\r\nexit /b %ERRORLEVEL%", said + " 1>&2\r\n  exit /b 3");
    }
}
