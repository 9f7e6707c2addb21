package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.advice.Consultation;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.sheet.Sheet;
import pourwright.sheet.SheetHtml;
import pourwright.sheet.SheetMaker;
import pourwright.testing.PrintedPages;

/**
 * Three benches of the Lantern Yard with gloves on and the clock running, told as a person sees them, and the sheet of each. The
 * clock is turned by the script. {@code mvn test -Dtest=RecordedBenchesTest -Dpourwright.record=true} writes them anew, and
 * {@code src/test/sh/sheets.sh} the pictures of the sheets.
 */
class RecordedBenchesTest {
    private static final Path BENCHES = Path.of("transcripts-of-cases/benches");
    private static final boolean RECORD = Boolean.getBoolean("pourwright.record");
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Instant NINE = Instant.parse("2026-03-02T09:00:00Z");

    /** What a person types, where, and how long it takes. */
    private static final class Script {
        private final Map<String, Deque<String>> lines = new HashMap<>();
        private Instant now = NINE;

        Script at(String prompt, String... typed) {
            lines.computeIfAbsent(prompt, p -> new ArrayDeque<>()).addAll(List.of(typed));
            return this;
        }

        /** At the bench each line begins with the seconds after nine at which it is typed. */
        String type(String prompt) {
            Deque<String> left = lines.getOrDefault(prompt, new ArrayDeque<>());
            if (left.isEmpty()) {
                now = now.plusSeconds(5);
                return prompt.equals("review") ? "" : "don't know";
            }
            String line = left.remove();
            if (prompt.equals("bench")) {
                String[] then = line.split(" ", 2);
                now = NINE.plusSeconds(Integer.parseInt(then[0]));
                return then.length > 1 ? then[1] : "";
            }
            now = now.plusSeconds(5);
            return line;
        }
    }

    private static String told(Script script, String name, String title) throws IOException {
        Consultation[] last = new Consultation[1];
        ScriptedDoor door = new ScriptedDoor(script::type, 80, false);
        PlanJob job = new PlanJob(
                KNOWLEDGE, () -> script.now, run -> "Kept as a run of your own.", m -> Map.of(), (c, rest) -> {
                    last[0] = c;
                    return "The sheet is in " + rest.split(" ")[0] + ". Print it, or open it in a browser.";
                });
        new Conversation(new NowDoor(door, KNOWLEDGE::emergencies), job, null, Answers.NONE).run();
        Sheet sheet = SheetMaker.of(last[0], KNOWLEDGE, title, Optional.empty(), "Made by Pourwright.");
        same(name + ".sheet.txt", String.join("\n", SheetPage.lines(sheet)) + "\n");
        same(name + ".sheet.html", SheetHtml.of(sheet));
        return String.join("\n", door.lines).replace('\u00a0', ' ') + "\n";
    }

    private static void same(String name, String told) throws IOException {
        Path file = BENCHES.resolve(name);
        if (RECORD) {
            Files.createDirectories(BENCHES);
            Files.writeString(file, told);
        }
        String was = Files.readString(file);
        // Of a page in HTML the words count, not how they are marked up.
        assertThat(name.endsWith(".html") ? words(told) : told).isEqualTo(name.endsWith(".html") ? words(was) : was);
    }

    private static String words(String html) {
        return html.replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    private static Script bench() {
        return new Script()
                .at("chamber-volume", "20 L")
                .at("pump-kind", "oil-vane-one-stage")
                .at("pump-speed", "3 cfm")
                .at("gauge-kind", "dial")
                .at("gauge-reading", "29 inHg")
                .at("altitude", "60 m")
                .at("chamber-body", "thick-clear")
                .at("lid-state", "sound")
                .at("units", "metric")
                .at("room-temperature", "21 C");
    }

    @Test
    void aSiliconeFrothsOverAndIsSaved() throws IOException {
        Script script = bench().at("material", "tin silicone")
                .at("job", "rubber-around-master")
                .at("pot-life", "60 min")
                .at("mix-ratio", "100:10")
                .at("amount-by", "mass")
                .at("batch-mass", "1 kg")
                .at("kit", "vacuum")
                .at("cup-volume", "4.5 L")
                .at("master-material", "metal")
                .at("undercuts", "none")
                .at("plan", "follow", "log", "sheet owl.html Owl newel, front half", "quit")
                .at(
                        "bench",
                        "-1500",
                        "-900 gauge 28.8 inHg",
                        "-880",
                        "-300",
                        "0",
                        "235",
                        "245",
                        "400 now foam at the rim",
                        "405 overflow",
                        "440 note let air in, froth fell, hose clean",
                        "520 crest",
                        "610",
                        "700",
                        "735",
                        "4100 gel");
        String told = told(script, "silicone-froths-over", "Owl newel, front half");
        same("silicone-froths-over.txt", told);
        assertThat(told).contains("foam at the rim", "Let air in", "overflow");
    }

    @Test
    void aFastPolyurethaneWasMixedTwoMinutesAgo() throws IOException {
        Script script = bench().at("material", "I mixed it 2 minutes ago", "fast polyurethane")
                .at("job", "open-mould")
                .at("pot-life", "7 min")
                .at("mix-ratio", "enough")
                .at("plan", "more", "sheet hoof.html Hoof, second pour", "quit");
        String told = told(script, "fast-polyurethane-mixed-two-minutes-ago", "Hoof, second pour");
        same("fast-polyurethane-mixed-two-minutes-ago.txt", told);
        assertThat(told).contains("Mixed 2 min ago");
        List<String> lines = told.lines().toList();
        int blank = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith("mix-ratio > enough")) {
                blank = i;
            }
        }
        String first = lines.subList(blank + 1, lines.size()).stream()
                .filter(l -> !l.isBlank())
                .findFirst()
                .orElseThrow();
        assertThat(first.split(" ").length).as(first).isLessThanOrEqualTo(10);
    }

    @Test
    void thirtyGramsWereWeighedWrongly() throws IOException {
        Script script = bench().at("material", "coating epoxy")
                .at("job", "open-mould")
                .at("pot-life", "30 min")
                .at("mix-ratio", "2:1")
                .at("ratio-by", "weight")
                .at("amount-by", "mass")
                .at("batch-mass", "30 g")
                .at("scale-step", "1 g")
                .at("kit", "neither")
                .at("mould-material", "tin-silicone")
                .at("undercuts", "none")
                .at(
                        "plan",
                        "I put 12 g instead of 10 g hardener",
                        "more",
                        "sheet eye.html Glass eye, top coat",
                        "quit");
        String told = told(script, "thirty-grams-weighed-wrongly", "Glass eye, top coat");
        same("thirty-grams-weighed-wrongly.txt", told);
        assertThat(told).contains("12 g");
    }

    @TempDir
    private Path dir;

    /** Needs a browser, and is left out without one: one page on A4 and on Letter, as whoever prints it will find out. */
    @ParameterizedTest
    @ValueSource(
            strings = {"silicone-froths-over", "fast-polyurethane-mixed-two-minutes-ago", "thirty-grams-weighed-wrongly"
            })
    void aSheetPrintsOnOnePage(String name) throws Exception {
        String html = Files.readString(BENCHES.resolve(name + ".sheet.html"));
        for (String paper : List.of("A4", "letter")) {
            assertThat(PrintedPages.of(html, paper, dir)).as(paper).isEqualTo(1);
        }
    }
}
