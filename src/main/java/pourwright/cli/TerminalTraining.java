package pourwright.cli;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jline.nativ.OSInfo;
import org.jline.terminal.Size;
import org.jline.terminal.impl.jni.JniNativePty;
import org.jline.terminal.impl.jni.JniTerminalProvider;

/**
 * What the build runs to learn which classes a conversation at a terminal needs: the program itself at a pseudo-terminal,
 * with a few lines typed. It also lays the native part of the line editor where the launcher tells the library to look,
 * which would else unpack it at every start. Where there is no pseudo-terminal it does nothing, and a start is slower.
 */
final class TerminalTraining {
    private static final long GUARD_S = 120;
    private static final int COLUMNS = 80;
    private static final int ROWS = 24;
    private static final String LIBRARY = "jlinenative";

    /** How the program is called, and what is typed into it. */
    private static final Map<String, String> TALKS = Map.of(
            "", "plan\rtin silicone\rquit\r",
            "plan", "what\rtin silicone\rwhy\rback\rtin\r1\renough\rhow 1\rquit\r",
            "diagnose", "bubbles under the ear\rno\rbubbles\rquit\r");

    private TerminalTraining() {}

    /**
     * Runs it.
     *
     * @param args the program's folder, the list of classes to add to, and the file that tells the launcher for which
     *     folder and which Java the archive made from that list will be
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path app = Path.of(args[0]);
        Path list = Path.of(args[1]);
        Files.writeString(
                Path.of(args[2]),
                app.toRealPath() + "\n" + Path.of(System.getProperty("java.home"), "bin", "java") + "\n");
        if (!layOut(app.resolve("lib").resolve("native"))) {
            return;
        }
        for (Map.Entry<String, String> talk : TALKS.entrySet()) {
            Path own = Files.createTempFile(list.toAbsolutePath().getParent(), "classes", ".lst");
            try {
                talk(app, talk.getKey(), talk.getValue(), own);
                Files.write(list, Files.readAllBytes(own), StandardOpenOption.APPEND);
            } finally {
                Files.deleteIfExists(own);
            }
        }
    }

    /** Copies the native part for this system; false when there is none. */
    private static boolean layOut(Path folder) throws IOException {
        String name = System.mapLibraryName(LIBRARY);
        String place = OSInfo.getNativeLibFolderPathForCurrentOS();
        try (InputStream in = OSInfo.class.getResourceAsStream("/org/jline/nativ/" + place + "/" + name)) {
            if (in == null) {
                return false;
            }
            Files.createDirectories(folder.resolve(place));
            Files.copy(in, folder.resolve(place).resolve(name), StandardCopyOption.REPLACE_EXISTING);
            return !place.startsWith("Windows");
        }
    }

    private static void talk(Path app, String word, String typed, Path list) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:off",
                "-XX:DumpLoadedClassList=" + list,
                "-Dpourwright.home=" + app,
                "-Dlibrary.jline.path=" + app.resolve("lib").resolve("native"),
                "-jar",
                app.resolve("lib").resolve("pourwright.jar").toString()));
        if (!word.isEmpty()) {
            command.add(word);
        }
        Path shop = Files.createTempDirectory("pourwright-training");
        try (JniNativePty pty = (JniNativePty) new JniTerminalProvider().open(null, Size.of(COLUMNS, ROWS))) {
            File terminal = new File(pty.getName());
            ProcessBuilder builder = new ProcessBuilder(command)
                    .redirectInput(terminal)
                    .redirectOutput(terminal)
                    .redirectError(terminal);
            builder.environment()
                    .putAll(Map.of("TERM", "xterm-256color", "LANG", "C.UTF-8", "XDG_CONFIG_HOME", shop.toString()));
            // What is shown must be taken away, or the program waits for room.
            Thread reader = new Thread(() -> drain(pty), "what the terminal shows");
            reader.setDaemon(true);
            reader.start();
            Process process = builder.start();
            pty.getMasterOutput().write(typed.getBytes(StandardCharsets.UTF_8));
            if (!process.waitFor(GUARD_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (UnsupportedOperationException | LinkageError e) {
            // No pseudo-terminal: the program works without.
            return;
        } finally {
            remove(shop);
        }
    }

    private static void drain(JniNativePty pty) {
        try {
            pty.getMasterInput().transferTo(OutputStream.nullOutputStream());
        } catch (IOException e) {
            // The terminal was closed.
            return;
        }
    }

    private static void remove(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
