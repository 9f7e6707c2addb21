package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.casebook.OwnRuns;
import pourwright.facts.Answers;
import pourwright.follow.FollowLog;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Overlay;
import pourwright.knowledge.OwnRun;

/** Plans followed at the bench, with a clock that a test turns. */
class BenchTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Path SCHEMAS = Path.of("knowledge/schemas");
    private static final Instant NINE = Instant.parse("2026-03-01T09:00:00Z");

    /** A thick mix that froths, with a kit and a cup. */
    private static final Map<String, Object> FROTHS = Map.of(
            "material", "tin-silicone",
            "job", "rubber-around-master",
            "batch-mass", "500 g",
            "mix-ratio", "10:1 by weight",
            "kit", "vacuum",
            "cup-volume", "2.5 L",
            "chamber-volume", "20 L",
            "pump-speed", "3 cfm",
            "gauge-kind", "absolute",
            "pot-life", "60 min");

    @TempDir
    Path shop;

    private Instant now = NINE;
    private final List<OwnRun> runs = new ArrayList<>();

    private static Answers answers(Map<String, Object> said) {
        Answers all = Answers.NONE;
        for (Map.Entry<String, Object> e : said.entrySet()) {
            all = new AnswersJson(KNOWLEDGE).with(all, e.getKey(), e.getValue());
        }
        return all;
    }

    /** Follows a plan up to the mixing, which begins at nine, and goes on as told. */
    private ScriptedDoor mixing(Knowledge knowledge, Path folder, Answers start, String... script) {
        return follow(
                knowledge,
                folder,
                start,
                Stream.concat(Stream.of("0", "0", "0", "0"), Stream.of(script)).toArray(String[]::new));
    }

    /** Follows a plan: each entry is the moment, s after nine, and what is typed then at the bench; "300" is Enter alone. */
    private ScriptedDoor follow(Knowledge knowledge, Path folder, Answers start, String... momentsAndLines) {
        Iterator<String> script = List.of(momentsAndLines).iterator();
        Iterator<String> plan = List.of("follow", "log", "quit").iterator();
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    if (id.equals("bench")) {
                        if (!script.hasNext()) {
                            return null;
                        }
                        String[] then = script.next().split(" ", 2);
                        now = NINE.plusSeconds(Integer.parseInt(then[0]));
                        return then.length > 1 ? then[1] : "";
                    }
                    return id.equals("plan") ? plan.next() : id.equals("review") ? "" : "don't know";
                },
                80,
                false);
        new Conversation(
                        door,
                        new PlanJob(knowledge, () -> now, run -> {
                            runs.add(run);
                            return "Kept.";
                        }),
                        folder,
                        start)
                .run();
        return door;
    }

    @Test
    void aFollowedPlanMeasuresItsEstimates() {
        Answers said = answers(FROTHS);
        Consultation c = Advisor.consult(said, KNOWLEDGE);
        double crestS = c.figure("froth-crest-time").orElseThrow().si().typical();
        double fallS = c.figure("froth-fall-time").orElseThrow().si().typical();
        double gelS = c.figure("working-time").orElseThrow().si().typical();
        int crest = (int) Math.round(300 + 1.5 * crestS);
        int fall = (int) Math.round(300 + 1.5 * fallS);
        int gel = (int) Math.round(0.9 * gelS);
        ScriptedDoor door = mixing(
                KNOWLEDGE,
                null,
                said,
                "290",
                "300",
                "320 gauge 900 mbar",
                crest + " crest",
                fall + "",
                fall + 120 + "",
                fall + 300 + "",
                gel + " gel");
        assertThat(door.all()).contains("the froth is at its highest (by the plan at", "All steps are done.", "Kept.");
        assertThat(runs).hasSize(1);
        OwnRun run = runs.get(0);
        assertThat(run.material()).isEqualTo("tin-silicone");
        assertThat(run.kit()).contains("chamber-volume=", "pump-speed=");
        // Seconds are whole in the log.
        assertThat(run.ratios().get("froth-time")).isCloseTo(1.5, within(0.02));
        assertThat(run.ratios().get("working-time")).isCloseTo(0.9, within(0.002));
        assertThat(run.ratios()).doesNotContainKeys("pump-down-time", "cup-room");
    }

    @Test
    void theFirstReadingThatIsDeepEnoughIsThePumpDown() {
        Answers said = answers(FROTHS);
        Consultation c = Advisor.consult(said, KNOWLEDGE);
        double downS = c.figure("pump-down-time").orElseThrow().si().typical();
        int deep = (int) Math.round(300 + 2 * downS);
        mixing(
                KNOWLEDGE,
                null,
                said,
                "290",
                "300",
                "301 gauge 800 mbar",
                deep + " gauge 5 mbar",
                deep + 100 + " gauge 4 mbar",
                deep + 101 + " quit");
        assertThat(runs.get(0).ratios().get("pump-down-time")).isCloseTo(2, within(0.1));
    }

    @Test
    void aReadingIsTakenFromTheGaugeThatTheWorkshopHas() {
        Answers dial = answers(FROTHS).without("gauge-kind");
        dial = new AnswersJson(KNOWLEDGE).with(dial, "gauge-kind", "below-local-air");
        dial = new AnswersJson(KNOWLEDGE).with(dial, "barometer", "1013.25 mbar");
        ScriptedDoor door = mixing(KNOWLEDGE, null, dial, "10 gauge 28 inHg", "11 gauge a lot", "12 quit");
        // 1013.25 mbar - 28 × 33.8639 mbar (NIST SP 811, B.8: conventional inch of mercury) is 65 mbar.
        assertThat(door.all().replace('\u00a0', ' '))
                .contains("= 65.1 mbar absolute at 0:10.", "\"a lot\" is no reading of a gauge here.");
    }

    @Test
    void overTheRimMeansMoreRoomNextTime() {
        Answers said = answers(FROTHS);
        mixing(KNOWLEDGE, null, said, "290", "300", "340 overflow", "341 quit");
        Consultation before = Advisor.consult(said, KNOWLEDGE);
        Consultation after = Advisor.consult(said, with(runs.get(0)));
        assertThat(after.figure("cup-factor").orElseThrow().si().typical())
                .isGreaterThan(before.figure("cup-factor").orElseThrow().si().typical());
        assertThat(after.figure("batch-mass-max").orElseThrow().si().typical())
                .isLessThan(before.figure("batch-mass-max").orElseThrow().si().typical());
    }

    private Knowledge with(OwnRun run) {
        try {
            OwnRuns.keep(shop, run);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return Overlay.of(KNOWLEDGE, shop, SCHEMAS);
    }

    @Test
    void theNextEstimateIsCorrectedAndSaysSo() {
        Answers said = answers(FROTHS);
        Consultation before = Advisor.consult(said, KNOWLEDGE);
        String kit = pourwright.figures.KitName.of(said);
        Knowledge own = with(new OwnRun("2026-03-01T09:00:00Z", "tin-silicone", kit, Map.of("froth-time", 1.6)));
        Consultation after = Advisor.consult(said, own);
        double was = before.figure("froth-crest-time").orElseThrow().si().typical();
        var is = after.figure("froth-crest-time").orElseThrow();
        assertThat(is.ownRuns()).isEqualTo(1);
        assertThat(is.si().typical() / was)
                .isCloseTo(is.ownFactor(), within(1e-9))
                .isBetween(1.2, 1.6);
        assertThat(String.join(" ", new Page(after, own, 200, false).first()))
                .contains("Corrected by your own runs: froth crest time ×", "(1 run)");
        assertThat(String.join(" ", new Page(after, own, 200, false).figures()))
                .contains("as 1 run of your own showed");
        // The same run measured again against the corrected plan says the same ratio, not the ratio of a ratio.
        double measuredS = 1.6 * was;
        assertThat(measuredS / (is.si().typical() / is.ownFactor())).isCloseTo(1.6, within(1e-9));
    }

    @Test
    void anotherMaterialAndAnotherKitAreLeftAlone() {
        Answers said = answers(FROTHS);
        String kit = pourwright.figures.KitName.of(said);
        Knowledge own = with(new OwnRun(
                "2026-03-01T09:00:00Z", "tin-silicone", kit, Map.of("froth-time", 1.6, "working-time", 1.3)));
        Answers other = new AnswersJson(KNOWLEDGE).with(said, "material", "platinum-silicone");
        assertThat(Advisor.consult(other, own)
                        .figure("froth-crest-time")
                        .orElseThrow()
                        .ownRuns())
                .isZero();
        Answers pump = new AnswersJson(KNOWLEDGE).with(said, "pump-speed", "6 cfm");
        Consultation c = Advisor.consult(pump, own);
        assertThat(c.figure("froth-crest-time").orElseThrow().ownRuns()).isZero();
        // How long a mix flows is no matter of the pump.
        assertThat(c.figure("working-time").orElseThrow().ownRuns()).isEqualTo(1);
    }

    @Test
    void killedInTheMiddleTheLogIsGoneOnWith() throws IOException {
        Answers said = answers(FROTHS);
        // The input ends after the valve was opened.
        ScriptedDoor cut = mixing(KNOWLEDGE, shop, said, "290", "300");
        assertThat(cut.all()).contains("The input ended.", "\"pourwright resume\" goes on from here.");
        Answers left =
                new Journal(shop, "plan").unfinished(new AnswersJson(KNOWLEDGE)).orElseThrow();
        assertThat(left.text("bench-log")).isEqualTo("began 2026-03-01T09:00:00Z; 4:50 mix; 5:00 degas-open");
        ScriptedDoor resumed = follow(KNOWLEDGE, shop, left, "360 yes", "400 crest", "401 quit");
        assertThat(resumed.all()).contains("Mixing of this plan began 5:00 ago.", "Step 7 of");
        assertThat(runs).hasSize(1);
    }

    @Test
    void aLogOfAnotherDayIsNotGoneOnWith() {
        Answers said =
                new AnswersJson(KNOWLEDGE).with(answers(FROTHS), "bench-log", "began 2026-02-01T09:00:00Z; 4:50 mix");
        assertThat(follow(KNOWLEDGE, null, said, "0 quit").all())
                .contains("A log of an earlier day stands with this plan.", "Step 1 of");
    }

    @Test
    void delaysMoveTheStepsAndThePotDoesNotWait() {
        Answers said = answers(FROTHS);
        ScriptedDoor late = mixing(KNOWLEDGE, null, said, "900", "901 time", "1600 time", "6000 time", "6001 quit");
        assertThat(late.all().replace('\u00a0', ' '))
                .contains(
                        ", at this pace at",
                        "15:01 since mixing began.",
                        "which may be too late.",
                        "The working time is over: do not pour what no longer flows.");
    }

    @Test
    void aClockThatIsSetBackDoesNotTurnTheLogRound() {
        ScriptedDoor door =
                mixing(KNOWLEDGE, null, answers(FROTHS), "290", "100 note dog at the door", "310", "311 quit");
        assertThat(door.all()).contains("= 4:50 dog at the door");
    }

    @Test
    void slipsAreTakenBackAndWordsNotKnownAreNamed() {
        ScriptedDoor door = follow(
                KNOWLEDGE,
                null,
                answers(FROTHS),
                "0 crest",
                "0",
                "0",
                "0",
                "0",
                "290",
                "300 undo",
                "301 undo",
                "302 xyzzy",
                "303 note",
                "304 skip",
                "305 steps",
                "306 quit");
        assertThat(door.all())
                .contains(
                        "The clock has not started",
                        "Nothing is logged yet.",
                        "\"xyzzy\" is not a word here.",
                        "Type the note behind the word",
                        "done: Stir, fold");
        assertThat(runs).isEmpty();
    }

    @Test
    void anythingTypedIsSurvived() {
        java.util.SplittableRandom random = new java.util.SplittableRandom(3);
        String[] words = {
            "",
            "crest",
            "fall",
            "gel",
            "gauge 30 mbar",
            "gauge",
            "overflow",
            "note a;b",
            "skip",
            "undo",
            "time",
            "steps",
            "don't know",
            "help",
            "why",
            "back",
            "q",
            "g",
            "\u0000\u001b[2J",
            "12",
            "quit"
        };
        for (int n = 0; n < 300; n++) {
            now = NINE;
            int clock = 0;
            List<String> script = new ArrayList<>();
            for (int i = random.nextInt(1, 40); i > 0; i--) {
                clock += random.nextInt(-5, 400);
                script.add(Math.max(0, clock) + " " + words[random.nextInt(words.length)]);
            }
            ScriptedDoor door = follow(KNOWLEDGE, null, answers(FROTHS), script.toArray(String[]::new));
            door.lines.stream()
                    .filter(l -> !l.contains(" > "))
                    .forEach(l -> assertThat(l).doesNotContain("\u001b"));
        }
        runs.forEach(r -> r.ratios().values().forEach(v -> assertThat(v).isBetween(0.1, 10.0)));
    }

    @Test
    void aLineThatCannotBeReadCountsForNothing() throws IOException {
        Files.writeString(shop.resolve("runs.jsonl"), "{\"began\": \"x\"}\n{\"cut sho\n");
        with(new OwnRun("2026-03-01T09:00:00Z", "tin-silicone", "", Map.of("working-time", 1.2)));
        with(new OwnRun("2026-03-01T09:00:00Z", "tin-silicone", "", Map.of("working-time", 1.4)));
        Knowledge own = with(new OwnRun("2026-03-02T09:00:00Z", "tin-silicone", "", Map.of("working-time", 1.1)));
        assertThat(own.ownRuns()).hasSize(2);
        assertThat(Files.readAllLines(shop.resolve("runs.jsonl"))).hasSize(4);
    }

    @Test
    void theLogIsAnAnswerThatCasesKeep() {
        String log = "began 2026-03-01T09:00:00Z; 3:05 mix; 3:20 degas-open; 4:10 gauge 40 mbar";
        Answers said = new AnswersJson(KNOWLEDGE).with(answers(FROTHS), "bench-log", log);
        assertThat(FollowLog.parse(said.text("bench-log")).orElseThrow().entries())
                .hasSize(3);
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> new AnswersJson(KNOWLEDGE).with(said, "bench-log", "3:05 mix; later degas"))
                .hasMessageContaining("\"later degas\" is not an entry of the log.");
    }
}
