package pourwright.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * What the build runs to learn which classes a start needs: a plan, a diagnosis, help and a figure without conversation.
 * {@link TerminalTraining} does the same for conversations. Nothing of it is for a person.
 */
final class Training {
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
                new String[] {"now", "foam at the rmi"},
                new String[] {"figure", "pump-down-time", "chamber-volume=20", "pump-speed=1", "target-pressure=30"})) {
            Main.run(words, new ByteArrayInputStream(new byte[0]), nowhere, nowhere, Map.of());
        }
        System.exit(0);
    }
}
