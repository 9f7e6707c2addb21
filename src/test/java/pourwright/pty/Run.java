package pourwright.pty;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import pourwright.cli.Main;

/**
 * A run without a terminal.
 *
 * @param code the exit code
 * @param out standard output
 * @param err standard error
 */
record Run(int code, String out, String err) {
    private static final long GUARD_S = 90;

    /** In this process: for what needs no stream of its own. */
    static Run inside(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                words,
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Map.of());
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** A program with pipes for its streams. */
    static final class Piped {
        private final Process process;
        private final Path out;
        private final Path err;

        private Piped(Process process, Path out, Path err) {
            this.process = process;
            this.out = out;
            this.err = err;
        }

        /** Starts it; its input stays open and silent until something is typed. */
        static Piped start(Path home, String... words) throws IOException {
            Path out = Files.createTempFile(home, "out", "");
            Path err = Files.createTempFile(home, "err", "");
            ProcessBuilder b = new ProcessBuilder(Rig.command(words));
            b.environment().putAll(Map.of("HOME", home.toString(), "XDG_CONFIG_HOME", home.toString()));
            b.redirectOutput(out.toFile()).redirectError(err.toFile());
            return new Piped(b.start(), out, err);
        }

        /** Types all of it and ends the input. */
        Run type(String text) throws IOException, InterruptedException {
            process.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
            process.getOutputStream().close();
            return end();
        }

        /** Waits for the end with the input still open. */
        Run end() throws IOException, InterruptedException {
            boolean in = process.waitFor(GUARD_S, TimeUnit.SECONDS);
            process.destroyForcibly();
            if (!in) {
                throw new AssertionError("it waits for ever; it printed:\n" + Files.readString(out));
            }
            return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
        }
    }
}
