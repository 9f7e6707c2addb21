package pourwright.pty;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;

/**
 * The real program at a pseudo-terminal, and hands that type. Every wait has a guard against hanging; none measures how
 * fast the program is.
 */
final class Rig implements AutoCloseable {
    private static final long GUARD_S = 90;
    private static final int ROWS = 24;
    private static final Pattern PROMPT = Pattern.compile("(?:^|\n)([a-z][a-z0-9-]*) > \\z");
    private static final Pattern CONTROL = Pattern.compile(
            "\u001b(?:\\[[0-?]*[ -/]*[@-~]|\\][^\u0007\u001b]*(?:\u0007|\u001b\\\\)|[()].|[ -Z\\\\^-~])");

    private final PtyProcess process;
    private final ByteArrayOutputStream raw = new ByteArrayOutputStream();
    private final boolean slow;
    private boolean ended;
    private int mark;

    private Rig(PtyProcess process, boolean slow) {
        this.process = process;
        this.slow = slow;
        Thread reader = new Thread(this::read, "what the terminal shows");
        reader.setDaemon(true);
        reader.start();
    }

    /** How to start: a folder for everything that is kept, and what the terminal is like. */
    static final class Start {
        private final Map<String, String> environment = new HashMap<>();
        private int columns = 80;
        private boolean slow;

        private Start(Path home) {
            for (String name : List.of("PATH", "JAVA_HOME", "LD_LIBRARY_PATH")) {
                if (System.getenv(name) != null) {
                    environment.put(name, System.getenv(name));
                }
            }
            environment.putAll(Map.of(
                    "HOME", home.toString(),
                    "XDG_CONFIG_HOME", home.toString(),
                    "TERM", "xterm-256color",
                    "COLORTERM", "truecolor",
                    "LANG", "C.UTF-8"));
        }

        Start columns(int n) {
            columns = n;
            return this;
        }

        Start with(String name, String value) {
            environment.put(name, value);
            return this;
        }

        /** One key at a time, as a slow hand or a braille keyboard types. */
        Start keyByKey() {
            slow = true;
            return this;
        }

        /** Starts the program with these words. */
        Rig run(String... words) {
            return start(command(words));
        }

        /** Starts a shell script in which {@code "$@"} is the program with these words. */
        Rig shell(String script, String... words) {
            List<String> all = new ArrayList<>(List.of("/bin/sh", "-c", script, "sh"));
            all.addAll(List.of(command(words)));
            return start(all.toArray(String[]::new));
        }

        private Rig start(String[] command) {
            assumeTerminal();
            try {
                return new Rig(
                        new PtyProcessBuilder(command)
                                .setEnvironment(environment)
                                .setDirectory(Path.of("").toAbsolutePath().toString())
                                .setInitialColumns(columns)
                                .setInitialRows(ROWS)
                                .start(),
                        slow);
            } catch (IOException e) {
                throw new AssertionError("the program could not be started", e);
            }
        }
    }

    static Start in(Path home) {
        return new Start(home);
    }

    /** The program as the launcher starts it, from the class path of the tests: the app folder comes later in the build. */
    static String[] command(String... words) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dpourwright.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "pourwright.cli.Main"));
        command.addAll(Arrays.asList(words));
        return command.toArray(String[]::new);
    }

    /** Skips the test, and says so, where no pseudo-terminal can be had. */
    private static void assumeTerminal() {
        String trouble = Trouble.FOUND;
        Assumptions.assumeTrue(trouble.isEmpty(), () -> "no pseudo-terminal can be opened here: " + trouble);
    }

    /** Looked for once. */
    private static final class Trouble {
        static final String FOUND = find();

        private static String find() {
            if (System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("windows")) {
                return "these tests need a POSIX shell and stty";
            }
            try {
                Process p = new PtyProcessBuilder(new String[] {"/bin/sh", "-c", "stty -a"})
                        .setEnvironment(Map.of("PATH", System.getenv().getOrDefault("PATH", "/usr/bin:/bin")))
                        .start();
                try (InputStream out = p.getInputStream()) {
                    out.readAllBytes();
                } catch (IOException e) {
                    // A pseudo-terminal whose program has ended reads as an error on some systems.
                }
                return p.waitFor() == 0 ? "" : "stty ended with " + p.exitValue();
            } catch (IOException | RuntimeException | LinkageError e) {
                return e.toString();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return e.toString();
            }
        }
    }

    private void read() {
        byte[] some = new byte[8192];
        try {
            InputStream out = process.getInputStream();
            for (int n = out.read(some); n >= 0; n = out.read(some)) {
                synchronized (raw) {
                    raw.write(some, 0, n);
                    raw.notifyAll();
                }
            }
        } catch (IOException e) {
            // The program ended and took the terminal with it.
        }
        synchronized (raw) {
            ended = true;
            raw.notifyAll();
        }
    }

    /** Every byte that reached the terminal. */
    String raw() {
        synchronized (raw) {
            return raw.toString(StandardCharsets.UTF_8);
        }
    }

    /** All that was shown, without control sequences, lines ended with a line feed. */
    String screen() {
        return shown(raw());
    }

    private static String shown(String bytes) {
        return CONTROL.matcher(bytes).replaceAll("").replace("\r", "");
    }

    /** Waits until this text is shown, after whatever was waited for before. */
    void waitFor(String text) {
        until(() -> screen().indexOf(text, mark) >= 0, "\"" + text + "\"");
        mark = screen().indexOf(text, mark) + text.length();
    }

    /** Whether this text appears within so many milliseconds. */
    boolean appears(String text, long guardMs) {
        return within(() -> screen().indexOf(text, mark) >= 0, guardMs);
    }

    /** Waits for a prompt and says which. */
    String prompt() {
        until(() -> waiting() || ended, "a prompt");
        Matcher m = PROMPT.matcher(screen());
        return m.find() ? m.group(1) : "";
    }

    private boolean waiting() {
        String screen = screen();
        return screen.length() > mark && PROMPT.matcher(screen).find();
    }

    /** Types a line at a prompt and waits for the next one, or for the end; the lines shown between. */
    List<String> reply(String line) {
        prompt();
        return send(line);
    }

    /** Enter, after keys that were typed one way or another. */
    List<String> enter() {
        return send("");
    }

    private List<String> send(String line) {
        mark = screen().length();
        type(line + "\r");
        prompt();
        String[] lines = screen().substring(mark).split("\n", -1);
        // The first line is the echo of what was typed, the last the next prompt, or nothing at the end.
        return List.of(lines).subList(Math.min(1, lines.length), Math.max(1, lines.length - 1));
    }

    /** The same, spaces collapsed, so that it does not matter where lines were broken. */
    String said(String line) {
        return collapsed(reply(line));
    }

    static String collapsed(List<String> lines) {
        return String.join(" ", lines).replaceAll("\\s+", " ").strip();
    }

    /** What was shown before the first prompt, spaces collapsed. */
    String opening() {
        prompt();
        String screen = screen();
        return screen.substring(0, screen.lastIndexOf('\n') + 1)
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** Types keys as they are. */
    void type(String keys) {
        byte[] bytes = keys.getBytes(StandardCharsets.UTF_8);
        try {
            if (!slow) {
                process.getOutputStream().write(bytes);
                process.getOutputStream().flush();
                return;
            }
            for (byte b : bytes) {
                process.getOutputStream().write(b);
                process.getOutputStream().flush();
            }
        } catch (IOException e) {
            throw new AssertionError("the terminal takes no keys; it shows:\n" + screen(), e);
        }
    }

    void ctrlC() {
        mark = screen().length();
        type("\u0003");
    }

    void resize(int columns) {
        process.setWinSize(new WinSize(columns, ROWS));
    }

    /** Kills without warning, as a power cut would. */
    void kill() {
        process.destroyForcibly();
        exit();
    }

    /** Waits for the end; the exit code. */
    int exit() {
        try {
            if (!process.waitFor(GUARD_S, TimeUnit.SECONDS)) {
                throw new AssertionError("the program did not end; the terminal shows:\n" + screen());
            }
            until(() -> ended, "the end of the output");
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        if (process.isAlive()) {
            process.destroyForcibly();
        }
    }

    /** Something to wait for. */
    @FunctionalInterface
    private interface Condition {
        boolean holds();
    }

    private void until(Condition c, String what) {
        if (!within(c, GUARD_S * 1000)) {
            throw new AssertionError("waited in vain for " + what + "; the terminal shows:\n" + screen());
        }
    }

    private boolean within(Condition c, long guardMs) {
        long end = System.nanoTime() + guardMs * 1_000_000;
        synchronized (raw) {
            while (!c.holds()) {
                long left = (end - System.nanoTime()) / 1_000_000;
                if (left <= 0 || ended && !c.holds()) {
                    return c.holds();
                }
                try {
                    raw.wait(Math.min(left, 1000));
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    return false;
                }
            }
            return true;
        }
    }
}
