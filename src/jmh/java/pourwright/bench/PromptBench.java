package pourwright.bench;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How long a person waits for the first prompt: the packaged program in a real pseudo-terminal, against a Java that does
 * nothing, on the same Java with the same switches. The runs take turns. Only the ratio compares between machines; the
 * goal is 5.
 */
public final class PromptBench {
    private static final int WARM_UP = 2;
    private static final int ROUNDS = 21;
    private static final double NS_PER_MS = 1e6;
    private static final String PROMPT = " > ";
    private static final Path LAUNCHER =
            Path.of("target", "pourwright", "bin", "pourwright").toAbsolutePath();

    private PromptBench() {}

    /** Runs and prints. */
    public static void main(String[] args) throws IOException, InterruptedException {
        String java = System.getProperty("java.home") + "/bin/java";
        String classes = System.getProperty("pourwright.bench.classes", "target/test-classes");
        String[][] commands = {
            {java, "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", classes, Empty.class.getName()
            },
            {LAUNCHER.toString()},
            {LAUNCHER.toString(), "plan"},
            {LAUNCHER.toString(), "diagnose"},
            {LAUNCHER.toString(), "vents"}
        };
        List<String> names = List.of("empty Java", "pourwright", "plan", "diagnose", "vents");
        double[][] ms = new double[commands.length][ROUNDS];
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            for (int c = 0; c < commands.length; c++) {
                double took = time(commands[c], c > 0);
                if (round >= 0) {
                    ms[c][round] = took;
                }
            }
        }
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "first prompt in a pseudo-terminal, median of %d runs each, Java %s:%n",
                ROUNDS,
                Runtime.version()));
        for (double[] some : ms) {
            Arrays.sort(some);
        }
        for (int c = 0; c < commands.length; c++) {
            out.append(String.format(
                    Locale.ROOT,
                    "  %-12s %5.0f ms  (%.0f to %.0f)  %5.2f x empty%n",
                    names.get(c),
                    ms[c][ROUNDS / 2],
                    ms[c][0],
                    ms[c][ROUNDS - 1],
                    ms[c][ROUNDS / 2] / ms[0][ROUNDS / 2]));
        }
        System.out.print(out);
    }

    /** Until the process ends, or until its first prompt stands there. */
    private static double time(String[] command, boolean toPrompt) throws IOException, InterruptedException {
        Path home = Files.createTempDirectory("pourwright-prompt");
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.putAll(
                Map.of("HOME", home.toString(), "XDG_CONFIG_HOME", home.toString(), "TERM", "xterm-256color"));
        long start = System.nanoTime();
        PtyProcess process = new PtyProcessBuilder(command)
                .setEnvironment(environment)
                .setInitialColumns(80)
                .setInitialRows(24)
                .start();
        process.setWinSize(new WinSize(80, 24));
        StringBuilder shown = new StringBuilder();
        byte[] some = new byte[4096];
        try (InputStream in = process.getInputStream()) {
            int read = in.read(some);
            while (read >= 0) {
                shown.append(new String(some, 0, read, StandardCharsets.UTF_8));
                if (toPrompt && shown.indexOf(PROMPT) >= 0) {
                    break;
                }
                read = in.read(some);
            }
        }
        long took = System.nanoTime() - start;
        if (toPrompt && shown.indexOf(PROMPT) < 0) {
            throw new IllegalStateException("no prompt was shown: " + shown);
        }
        process.destroyForcibly();
        process.waitFor();
        return took / NS_PER_MS;
    }
}
