package pourwright.console;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The program in a process of its own, which can be killed. */
public final class RealProgram {
    private RealProgram() {}

    /**
     * Starts it with both outputs joined.
     *
     * @param before what stands before the call of Java, such as a limit
     * @param environment variables to set; an empty one is taken away
     */
    public static Process start(List<String> before, Map<String, String> environment, String... args)
            throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                // Its own statistics file would be the first to meet a limit.
                "-XX:-UsePerfData",
                "-Dpourwright.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "pourwright.cli.Main"));
        command.addAll(List.of(args));
        ProcessBuilder b = new ProcessBuilder(command);
        environment.forEach((name, value) -> {
            if (value.isEmpty()) {
                b.environment().remove(name);
            } else {
                b.environment().put(name, value);
            }
        });
        b.redirectErrorStream(true);
        return b.start();
    }
}
