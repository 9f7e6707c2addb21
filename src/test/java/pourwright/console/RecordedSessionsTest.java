package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole sessions of the real program as a person sees them, kept in {@code transcripts-of-cases/sessions}. After a change
 * that is meant, {@code mvn test -Dtest=RecordedSessionsTest -Dpourwright.record=true} writes them anew; read the
 * difference before committing it.
 */
class RecordedSessionsTest {
    private static final Path SESSIONS = Path.of("transcripts-of-cases/sessions");
    private static final boolean RECORD = Boolean.getBoolean("pourwright.record");
    private static final String KILL = "(kill -9)";

    @TempDir
    private Path dir;

    @Test
    void aDiagnosisIsKilledAndResumed() throws Exception {
        StringBuilder told = new StringBuilder("$ pourwright diagnose\n");
        Path shop = dir.resolve("shop");
        told.append(session(
                shop, "diagnose", List.of("it rose like bread and is full of bubbles, fast polyurethane", "", KILL)));
        told.append("(killed here with kill -9)\n$ pourwright resume\n");
        told.append(session(shop, "resume", List.of("answers", "enough", "how 1", "quit")));
        same("diagnosis-killed-and-resumed.txt", told.toString());
    }

    @Test
    void aFigureIsAskedForOnItsOwn() throws Exception {
        StringBuilder told = new StringBuilder();
        for (String[] words : new String[][] {
            {"figure", "pump-down-time", "chamber-volume=20 L", "pump-speed=3 cfm", "target-pressure=30 mbar"},
            {"figure", "absolute-pressure", "gauge-reading=27 inHg", "gauge-kind=below-local-air", "altitude=1600 m"}
        }) {
            told.append("$ pourwright ");
            for (String w : words) {
                told.append(w.contains(" ") ? w.replace("=", "=\"") + "\" " : w + " ");
            }
            told.append('\n');
            Process p = start(words);
            p.getOutputStream().close();
            told.append(new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            assertThat(p.waitFor(1, TimeUnit.MINUTES)).isTrue();
        }
        same("figures-on-their-own.txt", told.toString());
    }

    /** The first half hour of somebody new: from the course to a diagnosis without help that is right. */
    @Test
    void aNewMemberOfStaffLearns() throws Exception {
        Path shop = dir.resolve("shop");
        List<String> lines = List.of(
                // The first lesson; Ida foretells wrongly once.
                "1",
                "more",
                "0.25 mm",
                "",
                "more",
                "",
                "",
                // Its exercises: a wrong judgement, a right part, and a part that shows what she believes.
                "vents and risers",
                "1",
                "material",
                "air stirred in while mixing",
                "first-seen",
                "air pocket with no vent",
                "rule grew-while-it-set",
                "humidity",
                // What a defect says.
                "10",
                "define witness cup",
                "after-pour",
                "",
                "",
                "crystals",
                "can-look",
                "air caught under an overhang",
                "tilted-twin",
                "gas from damp",
                "first-seen",
                // On her own.
                "unaided",
                "a crater in the mould",
                "pit-in-rubber",
                "progress",
                "quit");
        String told = "$ pourwright learn --as Ida --seed 7\n"
                + session(List.of("learn", "--as", "Ida", "--seed", "7", "--shop", shop.toString()), lines)
                + "$ pourwright learn --trainer\n"
                + session(List.of("learn", "--trainer", "--shop", shop.toString()), List.of());
        same("first-half-hour-of-a-new-hand.txt", told.replaceAll("\\d{4}-\\d\\d-\\d\\d", "2026-03-01"));
    }

    private static String session(Path shop, String word, List<String> lines) throws Exception {
        return session(List.of(word, "--shop", shop.toString()), lines);
    }

    /** Types the lines one by one at each prompt; the output without what a terminal would add. */
    private static String session(List<String> words, List<String> lines) throws Exception {
        Process p = start(words.toArray(String[]::new));
        StringBuilder shown = new StringBuilder();
        try (InputStream out = p.getInputStream();
                OutputStream in = p.getOutputStream()) {
            for (String line : lines) {
                untilPrompt(out, shown);
                if (line.equals(KILL)) {
                    p.destroyForcibly().waitFor(1, TimeUnit.MINUTES);
                    return shown.append('\n').toString();
                }
                in.write((line + "\n").getBytes(StandardCharsets.UTF_8));
                in.flush();
            }
            shown.append(new String(out.readAllBytes(), StandardCharsets.UTF_8));
        } finally {
            p.destroyForcibly();
        }
        return shown.toString();
    }

    private static void untilPrompt(InputStream out, StringBuilder shown) throws IOException {
        List<Integer> bytes = new ArrayList<>();
        for (int c = out.read(); c >= 0; c = out.read()) {
            bytes.add(c);
            int n = bytes.size();
            if (n > 3 && c == ' ' && bytes.get(n - 2) == '>' && bytes.get(n - 3) == ' ') {
                break;
            }
        }
        byte[] all = new byte[bytes.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = bytes.get(i).byteValue();
        }
        shown.append(new String(all, StandardCharsets.UTF_8));
    }

    private static Process start(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Dpourwright.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "pourwright.cli.Main"));
        command.addAll(List.of(words));
        ProcessBuilder b = new ProcessBuilder(command);
        b.environment().put("COLUMNS", "80");
        b.redirectErrorStream(true);
        return b.start();
    }

    private static void same(String name, String told) throws IOException {
        Path file = SESSIONS.resolve(name);
        if (RECORD) {
            Files.createDirectories(SESSIONS);
            Files.writeString(file, told);
        }
        assertThat(told).isEqualTo(Files.readString(file));
    }
}
