package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real program, killed without warning at a random keystroke, goes on with every answer that was finished. More kills:
 * {@code mvn test -Dtest=KilledConversationTest -Dpourwright.kills=200}.
 */
class KilledConversationTest {
    private static final long SEED = 20260101;
    private static final int KILLS = Integer.getInteger("pourwright.kills", 6);
    private static final Map<String, String> SCRIPT = script();

    @TempDir
    private Path shop;

    /** Answers in the order the console asks for them; what else it asks is answered with "don't know". */
    private static Map<String, String> script() {
        Map<String, String> s = new LinkedHashMap<>();
        s.put("material", "tin silicone");
        s.put("job", "1");
        s.put("pot-life", "40 min");
        s.put("mix-ratio", "10:1");
        s.put("amount-by", "weight");
        s.put("batch-mass", "1.2 kg");
        s.put("cup-volume", "2 l");
        s.put("kit", "vacuum");
        return s;
    }

    @Test
    void everyFinishedAnswerSurvivesAKill() throws Exception {
        Random random = new Random(SEED);
        for (int kill = 0; kill < KILLS; kill++) {
            Path folder = shop.resolve("shop-" + kill);
            List<String> finished = talkUntilKilled(folder, 3 + random.nextInt(60));
            String again = resumed(folder);
            for (String answer : finished) {
                assertThat(again)
                        .as("kill %d, seed %d: answer to %s", kill, SEED, answer)
                        .contains(" " + answer + ": ");
            }
        }
    }

    /** Types the script key by key; returns the questions whose answers were read back before the kill. */
    private static List<String> talkUntilKilled(Path folder, int keys) throws IOException, InterruptedException {
        Process p = start(folder, "plan");
        List<String> finished = new ArrayList<>();
        int typed = 0;
        try (InputStream out = p.getInputStream();
                OutputStream in = p.getOutputStream()) {
            StringBuilder shown = new StringBuilder();
            while (typed < keys) {
                String question = prompt(out, shown);
                if (question == null) {
                    break;
                }
                if (!shown.isEmpty() && !finished.isEmpty()) {
                    shown.setLength(0);
                }
                String line = SCRIPT.getOrDefault(question, "don't know") + "\n";
                for (int i = 0; i < line.length() && typed < keys; i++, typed++) {
                    in.write(line.charAt(i));
                    in.flush();
                }
                if (typed < keys) {
                    // The next prompt shows that this answer was taken, so the journal holds it.
                    finished.add(question);
                }
            }
        } finally {
            p.destroyForcibly().waitFor(1, TimeUnit.MINUTES);
        }
        // The last line may have been typed whole and still not be read when the kill came.
        if (!finished.isEmpty()) {
            finished.remove(finished.size() - 1);
        }
        return finished;
    }

    /** Reads until a prompt "question > " stands at the end; null when the program ended. */
    private static String prompt(InputStream out, StringBuilder shown) throws IOException {
        for (int c = out.read(); c >= 0; c = out.read()) {
            shown.append((char) c);
            if (shown.length() > 3 && shown.substring(shown.length() - 3).equals(" > ")) {
                String line = shown.substring(shown.lastIndexOf("\n") + 1);
                return line.substring(0, line.length() - 3);
            }
        }
        return null;
    }

    private static String resumed(Path folder) throws IOException, InterruptedException {
        if (!Files.exists(folder.resolve("unfinished.jsonl"))) {
            return "";
        }
        Process p = start(folder, "resume");
        p.getOutputStream().write("answers\nquit\n".getBytes(StandardCharsets.UTF_8));
        p.getOutputStream().close();
        String text = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(p.waitFor(1, TimeUnit.MINUTES)).isTrue();
        return text;
    }

    private static Process start(Path folder, String word) throws IOException {
        ProcessBuilder b = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Dpourwright.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "pourwright.cli.Main",
                word,
                "--shop",
                folder.toString());
        b.redirectErrorStream(true);
        return b.start();
    }
}
