package pourwright.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import pourwright.console.Conversation;
import pourwright.console.JLineDoor;
import pourwright.console.PlanJob;
import pourwright.facts.Answers;
import pourwright.knowledge.KnowledgeReader;

/**
 * What the build runs to learn which classes a start needs: a plan, a diagnosis and a figure without conversation, and a
 * few prompts through the line editor. Nothing of it is for a person.
 */
final class Training {
    /** The line editor on a real terminal, which a build has not, begins with these. */
    private static final List<String> REAL_TERMINAL = List.of(
            "org.jline.terminal.impl.PosixSysTerminal",
            "org.jline.terminal.impl.AbstractPosixTerminal",
            "org.jline.terminal.impl.jni.JniTerminalProvider",
            "org.jline.terminal.impl.jni.JniNativePty",
            "org.jline.terminal.impl.jni.linux.LinuxNativePty",
            "org.jline.terminal.impl.NativeSignalHandler",
            "org.jline.utils.Signals",
            "org.jline.utils.ShutdownHooks",
            "org.jline.utils.FastBufferedOutputStream",
            "org.jline.utils.NonBlocking",
            "org.jline.utils.NonBlockingPumpReader",
            "org.jline.utils.NonBlockingInputStreamImpl");

    private Training() {}

    /**
     * Runs it.
     *
     * @param args the file of answers to plan with, and the file of answers to diagnose with
     */
    public static void main(String[] args) throws IOException {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        for (String[] words : List.of(
                new String[] {"plan", "--answers", args[0]},
                new String[] {"plan", "--answers", args[0], "--json"},
                new String[] {"diagnose", "--answers", args[1], "--json"},
                new String[] {"figure", "pump-down-time", "chamber-volume=20", "pump-speed=1", "target-pressure=30"})) {
            Main.run(words, new ByteArrayInputStream(new byte[0]), nowhere, nowhere, Map.of());
        }
        converse();
        for (String name : REAL_TERMINAL) {
            try {
                Class.forName(name, false, Training.class.getClassLoader());
            } catch (ClassNotFoundException e) {
                nowhere.println("Another version of the library names it differently: it starts a little slower.");
            }
        }
        System.exit(0);
    }

    private static void converse() throws IOException {
        byte[] typed = "tin silicone\rwhy\rback\rtin\r1\renough\rhow 1\rquit\r".getBytes(StandardCharsets.UTF_8);
        Path knowledge = Path.of(System.getProperty("pourwright.home", "."), "knowledge");
        try (Terminal terminal = TerminalBuilder.builder()
                        .system(false)
                        .type("xterm")
                        .encoding(StandardCharsets.UTF_8)
                        .streams(new ByteArrayInputStream(typed), OutputStream.nullOutputStream())
                        .build();
                JLineDoor door = new JLineDoor(terminal)) {
            new Conversation(door, new PlanJob(KnowledgeReader.read(knowledge)), null, Answers.NONE).run();
        }
    }
}
