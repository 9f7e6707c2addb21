package pourwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;

/**
 * How long the packaged program takes from the shell and back, against a Java that does nothing, on the same Java with
 * the same switches. The runs take turns, so that a machine that slows down slows all of them. Only the ratio compares
 * between machines; the goal is 5.
 */
public final class StartBench {
    private static final int WARM_UP = 2;
    private static final int ROUNDS = 15;
    private static final double NS_PER_MS = 1e6;

    private static final Path LAUNCHER = Path.of("target", "pourwright", "bin", "pourwright");
    private static final Path JOB = Path.of("src", "main", "app", "training.json");

    private final String javaHome;
    private final Path shop;

    private StartBench(String javaHome, Path shop) {
        this.javaHome = javaHome;
        this.shop = shop;
    }

    /**
     * One command to time.
     *
     * @param name what it is
     * @param exits exit codes that mean it did its work
     * @param words the command
     */
    private record Run(String name, Set<Integer> exits, List<String> words) {}

    /** Runs and prints. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path shop = Files.createTempDirectory("pourwright-start");
        new StartBench(System.getProperty("java.home"), shop).all();
    }

    private void all() throws IOException, InterruptedException {
        String classes = System.getProperty("pourwright.bench.classes", "target/test-classes");
        List<Run> runs = List.of(
                new Run(
                        "empty Java",
                        Set.of(0),
                        List.of(
                                javaHome + "/bin/java",
                                "-Xshare:auto",
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-cp",
                                classes,
                                Empty.class.getName())),
                // 1 is advice too: the advice to stop.
                new Run(
                        "plan --answers --json",
                        Set.of(0, 1),
                        List.of(LAUNCHER.toString(), "plan", "--answers", JOB.toString(), "--json")),
                // No input: it shows the first question and ends with "questions left".
                new Run("first question shown", Set.of(4), List.of(LAUNCHER.toString(), "plan")),
                new Run("diagnosis: first asked", Set.of(4), List.of(LAUNCHER.toString(), "diagnose")),
                new Run("engine without a rule", Set.of(0), engine("none")),
                new Run("engine, method rules", Set.of(0), engine("pourwright.rules.method.")),
                new Run("engine, all rules", Set.of(0), engine("pourwright.rules.")));
        double[][] ms = new double[runs.size()][ROUNDS];
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            for (int r = 0; r < runs.size(); r++) {
                double took = time(runs.get(r));
                if (round >= 0) {
                    ms[r][round] = took;
                }
            }
        }
        print(runs, ms);
    }

    /** The engine with some of the rules, started as the launcher starts the program. */
    private List<String> engine(String rules) throws IOException {
        Path lib = Path.of("target", "pourwright", "lib");
        Path jar = shop.resolve("engine-floor.jar");
        // A jar, since an archive of classes is refused beside a folder of them.
        String name = EngineFloor.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
                InputStream in = EngineFloor.class.getClassLoader().getResourceAsStream(name)) {
            out.putNextEntry(new ZipEntry(name));
            in.transferTo(out);
            out.closeEntry();
        }
        return List.of(
                javaHome + "/bin/java",
                "-Xshare:auto",
                "-XX:SharedArchiveFile=" + lib.resolve("pourwright.jsa"),
                "-Xlog:disable",
                "-Xlog:all=off",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                lib.resolve("pourwright.jar") + java.io.File.pathSeparator + jar,
                EngineFloor.class.getName(),
                rules);
    }

    private double time(Run run) throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder(run.words()).redirectOutput(Redirect.DISCARD).redirectError(Redirect.DISCARD);
        builder.environment().put("JAVA_HOME", javaHome);
        builder.environment().put("XDG_CONFIG_HOME", shop.toString());
        long start = System.nanoTime();
        Process process = builder.start();
        process.getOutputStream().close();
        int exit = process.waitFor();
        long took = System.nanoTime() - start;
        if (!run.exits().contains(exit)) {
            throw new IllegalStateException(
                    "\"" + run.name() + "\" ended with exit code " + exit + ": nothing was measured");
        }
        return took / NS_PER_MS;
    }

    private void print(List<Run> runs, double[][] ms) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "start, median of %d runs each, Java %s:", ROUNDS, Runtime.version()));
        double empty = median(ms[0]);
        for (int r = 0; r < runs.size(); r++) {
            double median = median(ms[r]);
            double[] sorted = ms[r].clone();
            Arrays.sort(sorted);
            lines.add(String.format(
                    Locale.ROOT,
                    "  %-24s %6.0f ms  (%.0f to %.0f)   %.2f x empty",
                    runs.get(r).name(),
                    median,
                    sorted[0],
                    sorted[ROUNDS - 1],
                    median / empty));
        }
        lines.forEach(System.out::println);
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
