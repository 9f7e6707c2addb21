package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.console.RealProgram;

/** The whole program at a workshop's folder that is taken, full, missing or spoilt. */
class WorkshopFolderTest {
    private static final String TROUBLE = "Answers cannot be kept in";

    @TempDir
    Path dir;

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static String upTo(Process p, String end) throws IOException {
        StringBuilder shown = new StringBuilder();
        for (int c = p.getInputStream().read(); c >= 0; c = p.getInputStream().read()) {
            shown.append((char) c);
            if (shown.toString().endsWith(end)) {
                return shown.toString();
            }
        }
        throw new AssertionError("it ended: " + shown);
    }

    private static void type(Process p, String text) throws IOException {
        p.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        p.getOutputStream().flush();
    }

    @Test
    void twoProcessesInOneFolderAndAKill() throws Exception {
        Path shop = dir.resolve("shop");
        Process first = RealProgram.start(List.of(), Map.of(), "plan", "--shop", shop.toString());
        try {
            upTo(first, "material > ");
            type(first, "tin silicone\n");
            upTo(first, "job > ");
            byte[] kept = Files.readAllBytes(shop.resolve("unfinished.jsonl"));

            Ran second = Ran.with("plaster\n1\nquit\n", Map.of(), "plan", "--shop", shop.toString());
            assertThat(flat(second.out())).contains("Another console is open in " + shop, "The answers were not kept.");
            assertThat(second.code()).isEqualTo(ExitCode.UNFINISHED.code());
            Ran resumed = Ran.with("", Map.of(), "resume", "--shop", shop.toString());
            assertThat(resumed.code()).isEqualTo(ExitCode.BAD_INPUT.code());
            assertThat(resumed.err().strip().lines()).hasSize(1);
            assertThat(resumed.err()).contains("Another console is open in " + shop);
            assertThat(Files.readAllBytes(shop.resolve("unfinished.jsonl"))).isEqualTo(kept);

            type(first, "1\n");
            upTo(first, " > ");
        } finally {
            first.destroyForcibly().waitFor(1, TimeUnit.MINUTES);
        }
        assertThat(shop.resolve("console.lock")).as("left by the kill").exists();
        Ran resumed = Ran.with("answers\nquit\n", Map.of(), "resume", "--shop", shop.toString());
        assertThat(resumed.out()).contains("1. material: ", "2. job: ", "Kept.");
    }

    /** Talks where no file may grow beyond so many blocks: a write is refused in the middle, as on a full disk. */
    private static String limited(int blocks, Path shop, UnaryOperator<String> typist)
            throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "a shell that can set a limit");
        List<String> limit = List.of("/bin/sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "sh");
        Process p = RealProgram.start(limit, Map.of("COLUMNS", "400"), "plan", "--shop", shop.toString());
        StringBuilder shown = new StringBuilder();
        try {
            String line = "";
            while (!line.equals("quit")) {
                shown.append(upTo(p, " > "));
                boolean enough = blocks > 0 && shown.indexOf(TROUBLE) >= 0;
                String prompt = shown.substring(shown.lastIndexOf("\n") + 1).replace(" > ", "");
                line = enough ? "quit" : typist.apply(prompt);
                type(p, line + "\n");
            }
            p.getOutputStream().close();
            shown.append(new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        } finally {
            p.destroyForcibly().waitFor(1, TimeUnit.MINUTES);
        }
        assertThat(flat(shown.toString()).split(TROUBLE, -1))
                .as(flat(shown.toString()))
                .hasSize(2);
        assertThat(shown).doesNotContain("fault of its own");
        return flat(shown.toString());
    }

    @Test
    void aFullDiskCostsOnlyTheSafetyNet() throws Exception {
        Path shop = dir.resolve("shop");
        String shown = limited(0, shop, prompt -> switch (prompt) {
            case "material" -> "tin silicone";
            case "plan" -> "quit";
            case "review" -> "";
            default -> "enough";
        });
        assertThat(shown).contains("Next: \"more\"").endsWith("Done. ");
        try (Stream<Path> files = Files.list(shop)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactly("console.lock");
        }
    }

    @Test
    void afterAFullDiskTheAnswersBeforeItAreThere() throws Exception {
        Path shop = dir.resolve("shop");
        // A block is 512 or 1024 bytes; answers with much room in them soon do not fit in one.
        String room = " ".repeat(190);
        Map<String, String> typed = Map.ofEntries(
                Map.entry("material", "tin silicone"),
                Map.entry("job", "1"),
                Map.entry("amount-by", "mass"),
                Map.entry("kit", "vacuum"),
                Map.entry("pot-life", "40" + room + "min"),
                Map.entry("batch-mass", "1.2" + room + "kg"),
                Map.entry("cup-volume", "5" + room + "L"),
                Map.entry("chamber-volume", "20" + room + "L"),
                Map.entry("pump-speed", "3" + room + "cfm"),
                Map.entry("altitude", "300" + room + "m"),
                Map.entry("room-temperature", "21" + room + "°C"),
                Map.entry("plan", "quit"));
        String shown = limited(1, shop, prompt -> typed.getOrDefault(prompt, "don't know"));
        assertThat(shown).endsWith("Left. The last answers were not kept. ");
        Ran resumed = Ran.with("answers\nquit\n", Map.of(), "resume", "--shop", shop.toString());
        assertThat(resumed.out())
                .contains("1. material: ", "2. job: ", "3. pot-life: 40 min")
                .doesNotContain("cannot be read", "unfinished plan");
        try (Stream<Path> files = Files.list(shop)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .as("nothing half-written is left beside")
                    .containsExactlyInAnyOrder("unfinished.jsonl", "console.lock");
        }
    }

    @Test
    void noHomeAtAllIsOneSentenceAndNothingIsMadeUp() throws Exception {
        // Neither the environment nor the system knows a home: Java then calls it "?".
        Map<String, String> none = Map.of("HOME", "", "XDG_CONFIG_HOME", "", "JDK_JAVA_OPTIONS", "-Duser.home=?");
        Process p = RealProgram.start(List.of(), none, "plan");
        type(p, "tin silicone\nquit\n");
        p.getOutputStream().close();
        String shown = flat(new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        assertThat(p.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(shown).contains("Answers cannot be kept in", "there is no folder", "--shop DIR");
        assertThat(Path.of("?")).doesNotExist();
    }

    @Test
    void aHomeThatIsNotThereIsNotMade() {
        Path home = dir.resolve("nobody");
        Ran ran = Ran.with("tin silicone\nquit\n", Map.of("HOME", home.toString()), "plan");
        assertThat(flat(ran.out()))
                .contains("there is no folder " + home, "= tin silicone", "Left. The answers were not kept.");
        assertThat(home).doesNotExist();
    }

    @Test
    void aHomeThatIsAFileIsLeftAsItIs() throws IOException {
        Path home = dir.resolve("nobody");
        Files.writeString(home, "not a home");
        Ran ran = Ran.with("tin silicone\nquit\n", Map.of("HOME", home.toString()), "plan");
        assertThat(flat(ran.out())).contains(home + " is a file, not a folder", "= tin silicone");
        assertThat(home).hasContent("not a home");
    }

    @Test
    void aJournalOfRubbishIsNotResumedAndNotLost() throws IOException {
        Path shop = Files.createDirectories(dir.resolve("shop"));
        Path journal = shop.resolve("unfinished.jsonl");
        byte[] rubbish = {0, 1, 2, '\n', (byte) 0xff, '\n'};
        Files.write(journal, rubbish);
        Ran resumed = Ran.with("", Map.of(), "resume", "--shop", shop.toString());
        assertThat(resumed.code()).isEqualTo(ExitCode.BAD_INPUT.code());
        assertThat(resumed.err().strip().lines()).hasSize(1);
        assertThat(resumed.err()).contains("cannot be read");
        assertThat(Files.readAllBytes(journal)).isEqualTo(rubbish);
        Ran begun = Ran.with("tin silicone\nquit\n", Map.of(), "plan", "--shop", shop.toString());
        assertThat(flat(begun.out())).contains("the file is kept as unfinished.jsonl.unreadable");
        assertThat(Files.readAllBytes(shop.resolve("unfinished.jsonl.unreadable")))
                .isEqualTo(rubbish);
    }

    @Test
    void aDiagnosisThatWasLeftGoesOnAsADiagnosis() {
        Path shop = dir.resolve("shop");
        Ran.with("\nclear polyurethane\n", Map.of(), "diagnose", "--shop", shop.toString());
        Ran resumed = Ran.with("answers\nquit\n", Map.of(), "resume", "--shop", shop.toString());
        assertThat(resumed.out()).contains("1. ").doesNotContain("What will you do with it?");
        assertThat(resumed.code()).isEqualTo(ExitCode.UNFINISHED.code());
    }
}
