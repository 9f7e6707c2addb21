package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real program, killed without warning at a random keystroke, goes on with every answer that was read back, and asks
 * for none of them again. A conversation is killed and resumed, killed and resumed, until it reaches its result. Many more
 * kills: {@code mvn test -Dtest=KilledConversationTest -Dpourwright.kills=200}.
 */
class KilledConversationTest {
    private static final long SEED = 20260101;
    private static final int KILLS = Integer.getInteger("pourwright.kills", 20);
    private static final int AT_ONCE = 2;
    private static final int MOST_KEYS = 120;
    private static final int LONGEST_PAUSE_MS = 12;
    private static final double BACK = 0.07;
    private static final double NONSENSE = 0.14;
    private static final Pattern PROMPT = Pattern.compile("([a-z-]+) > \\z", Pattern.MULTILINE);
    private static final Pattern LISTED = Pattern.compile("^\\d+\\. ([a-z-]+): (.*)$", Pattern.MULTILINE);
    private static final Pattern UNDERSTOOD = Pattern.compile("^  ([a-z-]+) = ", Pattern.MULTILINE);
    private static final Pattern TAKEN = Pattern.compile("^  = ", Pattern.MULTILINE);

    /** What is typed for each word; what else is asked is answered with "don't know". */
    private static final Map<String, Map<String, String>> SCRIPTS = Map.of(
            "plan",
            Map.of(
                    "material", "tin silicone",
                    "job", "1",
                    "pot-life", "½ h",
                    "mix-ratio", "10:1",
                    "amount-by", "weight",
                    "batch-mass", "1,2 kg",
                    "cup-volume", "2 l",
                    "kit", "vacuum",
                    "chamber-volume", "20 L",
                    "room-temperature", "about 21 °C"),
            "diagnose",
            Map.of(
                    "material", "clear polyurethane",
                    "thing", "1",
                    "degassed", "1",
                    "room-temperature", "18 °C"));

    @TempDir
    private Path shops;

    @Test
    void everyFinishedAnswerSurvivesAKill() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
        List<Future<Chain>> chains = new ArrayList<>();
        for (int n = 0; n < AT_ONCE; n++) {
            Chain chain = new Chain(n, n % 2 == 0 ? "plan" : "diagnose");
            chains.add(pool.submit(chain::run));
        }
        int kills = 0;
        int found = 0;
        for (Future<Chain> c : chains) {
            Chain chain = c.get();
            kills += chain.kills;
            found += chain.found;
        }
        pool.shutdown();
        assertThat(kills).isEqualTo(KILLS / AT_ONCE * AT_ONCE);
        assertThat(found).as("answers that were there after a kill").isGreaterThan(kills);
    }

    /** One person at one folder after another, with a bad power supply. */
    private final class Chain {
        private final int number;
        private final Random random;

        /** Read back and not taken back since: the id, and how the list of answers shows it once it was seen there. */
        private final Map<String, String> finished = new LinkedHashMap<>();

        private String word;
        private Path folder;
        private int folders;
        private int kills;
        private int found;
        private Process program;
        private final StringBuilder shown = new StringBuilder();

        Chain(int number, String word) {
            this.number = number;
            this.word = word;
            this.random = new Random(SEED + number);
            newFolder();
        }

        private void newFolder() {
            folder = shops.resolve("chain-" + number + "-" + folders++);
            finished.clear();
        }

        private String where() {
            return "seed " + SEED + ", chain " + number + ", kill " + kills + ", " + word + "\n" + shown;
        }

        Chain run() throws IOException, InterruptedException {
            while (kills < KILLS / AT_ONCE) {
                program = start(folder, finished.isEmpty() ? word : "resume");
                shown.setLength(0);
                try {
                    boolean done = talk(random.nextInt(MOST_KEYS));
                    if (done) {
                        word = word.equals("plan") ? "diagnose" : "plan";
                        newFolder();
                        continue;
                    }
                    Thread.sleep(random.nextInt(LONGEST_PAUSE_MS));
                } finally {
                    // By its handle: that leaves open what it has shown and nobody has read.
                    program.toHandle().destroyForcibly();
                    program.waitFor(1, TimeUnit.MINUTES);
                }
                kills++;
                // What was shown before the kill counts, also when nobody had read it yet.
                int from = shown.length();
                shown.append(new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
                took(asked, shown.substring(from));
            }
            return this;
        }

        /** The question whose answer is being typed; empty when there is none. */
        private String asked = "";

        /** Types until so many keys are typed; true when the conversation came to its end. */
        private boolean talk(int keys) throws IOException {
            asked = "";
            String prompt = prompt();
            if (!finished.isEmpty()) {
                prompt = check(prompt);
            }
            for (int typed = 0; ; ) {
                if (prompt.isEmpty()) {
                    throw new AssertionError("the program ended by itself: " + where());
                }
                boolean result = prompt.equals(word) && !invites();
                if (result) {
                    type("quit\n", Integer.MAX_VALUE);
                    assertThat(rest()).as(where()).contains("Done.");
                    return true;
                }
                assertThat(finished.keySet()).as("asked again: " + where()).doesNotContain(prompt);
                String line = line(prompt);
                asked = prompt;
                type(line, keys - typed);
                typed += line.length();
                if (typed >= keys) {
                    return false;
                }
                int from = shown.length();
                prompt = prompt();
                took(asked, shown.substring(from));
                asked = "";
            }
        }

        /** A diagnosis begins with a line in one's own words, at the same prompt as its result. */
        private boolean invites() {
            int last = shown.lastIndexOf("What is wrong with the part? Say it");
            return last >= 0 && shown.indexOf(" > ", last) >= shown.length() - 3;
        }

        private String line(String prompt) {
            double what = random.nextDouble();
            switch (prompt) {
                case "diagnose" -> {
                    return "tiny bubbles all through the part\n";
                }
                case "right", "review", "resume", "kit-as-last-time" -> {
                    return "\n";
                }
                default -> {
                    if (what < BACK) {
                        List<String> ids = List.copyOf(finished.keySet());
                        if (!ids.isEmpty()) {
                            // Whether a kill comes before or after it is taken back, nothing is claimed about it.
                            finished.remove(ids.get(ids.size() - 1));
                        }
                        return "back\n";
                    }
                    return (what < NONSENSE ? "cheese" : SCRIPTS.get(word).getOrDefault(prompt, "don't know")) + "\n";
                }
            }
        }

        /** Notes what a piece of output says was taken. */
        private void took(String question, String output) {
            if (question.equals("right") && PROMPT.matcher(output).find()) {
                Matcher m = UNDERSTOOD.matcher(shown);
                while (m.find()) {
                    finished.put(m.group(1), "");
                }
            } else if (!question.isEmpty() && TAKEN.matcher(output).find()) {
                finished.put(question, "");
            }
        }

        /** After a resume: every finished answer stands, as it stood before. */
        private String check(String prompt) throws IOException {
            assertThat(prompt).as("the program ended by itself: " + where()).isNotEmpty();
            if (prompt.equals("diagnose") && invites()) {
                // There the line would be taken as one's own words; it is not yet a question.
                asked = "";
                return prompt;
            }
            int from = shown.length();
            type("answers\n", Integer.MAX_VALUE);
            String next = prompt();
            Map<String, String> listed = new LinkedHashMap<>();
            Matcher m = LISTED.matcher(shown.substring(from));
            while (m.find()) {
                listed.put(m.group(1), m.group(2));
            }
            assertThat(listed.keySet()).as("lost: " + where()).containsAll(finished.keySet());
            finished.forEach((id, before) -> {
                if (!before.isEmpty()) {
                    assertThat(listed.get(id)).as(id + ": " + where()).isEqualTo(before);
                }
            });
            found += finished.size();
            // Also what was on disk before its echo could be read; the order is that of the journal.
            finished.clear();
            finished.putAll(listed);
            return next;
        }

        private void type(String line, int keys) throws IOException {
            byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < bytes.length && i < keys; i++) {
                program.getOutputStream().write(bytes[i]);
                program.getOutputStream().flush();
            }
        }

        /** Reads until a prompt stands at the end of what is shown; empty when the program ended. */
        private String prompt() throws IOException {
            InputStream out = program.getInputStream();
            for (int c = out.read(); c >= 0; c = out.read()) {
                shown.append((char) c);
                if (c == ' '
                        && shown.length() > 3
                        && shown.substring(shown.length() - 3).equals(" > ")) {
                    Matcher m = PROMPT.matcher(shown.substring(shown.lastIndexOf("\n") + 1));
                    if (m.matches()) {
                        return m.group(1);
                    }
                }
            }
            return "";
        }

        private String rest() throws IOException {
            return new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Process start(Path folder, String word) throws IOException {
        return RealProgram.start(List.of(), Map.of("COLUMNS", "200"), word, "--shop", folder.toString());
    }
}
