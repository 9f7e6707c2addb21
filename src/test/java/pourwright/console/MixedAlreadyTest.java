package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Step;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** A plan for what stands in the cup already. */
class MixedAlreadyTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final int MOST_WORDS = 10;

    private static final Map<String, String> SILICONE = Map.of(
            "material", "tin-silicone",
            "pot-life", "60 min",
            "pot-life-meaning", "gel",
            "batch-mass", "600 g",
            "kit", "vacuum",
            "chamber-volume", "12 L",
            "pump-speed", "3 cfm",
            "viscosity", "20 Pa·s");

    private static Consultation plan(Map<String, String> job, String ago) {
        Map<String, String> all = new LinkedHashMap<>(job);
        all.put("mixed-ago", ago);
        Answers answers = Answers.NONE;
        for (Map.Entry<String, String> e : all.entrySet()) {
            answers = new AnswersJson(KNOWLEDGE).with(answers, e.getKey(), e.getValue());
        }
        return Advisor.consult(answers, KNOWLEDGE);
    }

    private static String first(Consultation c) {
        return new Page(c, KNOWLEDGE, 80, false).first().get(0).replace('\u00a0', ' ');
    }

    /** The later it is, the less is left to do: degas, then pour only, then nothing. */
    @ParameterizedTest
    @CsvSource({
        "4 min, Degas at most",
        "20 min, Degas at most",
        "50 min, Do not degas. Pour now.",
        "70 min, Do not pour."
    })
    void theFirstLineSaysWhatToDo(String ago, String begins) {
        assertThat(first(plan(SILICONE, ago))).startsWith(begins);
    }

    @Test
    void theFirstLineIsShortForEveryLiquidAndEveryMinute() {
        for (String material : KNOWLEDGE.materials().keySet()) {
            for (String kit : List.of("vacuum", "pressure", "both", "neither")) {
                for (String ago : List.of("0 min", "1 min", "6 min", "30 min", "10 h")) {
                    Consultation c = plan(
                            Map.of("material", material, "kit", kit, "batch-mass", "300 g", "pump-speed", "3 cfm"),
                            ago);
                    if (c.figure("time-margin").isEmpty()) {
                        // What melts or dries has no working time.
                        continue;
                    }
                    String line = first(c);
                    assertThat(c.findings().stream().filter(f -> f.topic().equals("now")))
                            .as(material + " " + kit + " " + ago)
                            .hasSize(1);
                    assertThat(Arrays.stream(line.split("\\s+")).filter(w -> w.matches(".*\\p{L}.*")))
                            .as(line)
                            .hasSizeLessThanOrEqualTo(MOST_WORDS);
                }
            }
        }
    }

    @Test
    void theClockGoesOnFromWhereItStands() {
        Consultation c = plan(SILICONE, "4 min");
        assertThat(c.timetable()).allSatisfy(s -> assertThat(s.atS().typical()).isGreaterThanOrEqualTo(240));
        assertThat(c.timetable().stream().map(Step::id)).doesNotContain("mix", "weigh", "pump-start", "weigh-mass");
        assertThat(c.timetable().get(0).atS().typical()).isEqualTo(240);
        // The mass is in the cup: nothing more is weighed.
        assertThat(new Page(c, KNOWLEDGE, 80, false).first()).noneMatch(l -> l.startsWith("Mix:"));
    }

    @Test
    void whatHasGelledIsAStop() {
        Consultation c = plan(SILICONE, "70 min");
        assertThat(c.verdict()).isEqualTo(Verdict.STOP);
        assertThat(c.findings()).noneMatch(f -> f.id().equals("gels-before-poured"));
    }

    private final Instant nine = Instant.parse("2026-03-01T09:00:00Z");
    private Instant now = nine;

    private ScriptedDoor talk(String atPotLife, int passedS, String... atPlan) {
        List<String> left = new ArrayList<>(List.of(atPlan));
        Map<String, String> job = new LinkedHashMap<>(SILICONE);
        job.remove("pot-life");
        Answers start = Answers.NONE;
        for (Map.Entry<String, String> e : job.entrySet()) {
            start = new AnswersJson(KNOWLEDGE).with(start, e.getKey(), e.getValue());
        }
        boolean[] said = {false};
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    if (id.equals("pot-life")) {
                        if (!said[0] && !atPotLife.isEmpty()) {
                            said[0] = true;
                            return atPotLife;
                        }
                        now = now.plusSeconds(passedS);
                        return "60 min";
                    }
                    return id.equals("plan")
                            ? left.isEmpty() ? "quit" : left.remove(0)
                            : id.equals("review") ? "" : "don't know";
                },
                80,
                false);
        new Conversation(door, new PlanJob(KNOWLEDGE, () -> now, run -> ""), null, start).run();
        return door;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "I mixed it 4 minutes ago",
                "mixed 4 min ago",
                "already mixed, 4 min ago",
                "We have mixed it 4 min ago.",
                "Mixed it four minutes ago"
            })
    void itIsUnderstoodAtAnyQuestionAndTheQuestionStands(String typed) {
        ScriptedDoor door = talk(typed, 0);
        assertThat(door.all().replace('\u00a0', ' ')).contains("Mixed 4 min ago.", "Degas at most");
        assertThat(door.prompts.stream().filter(p -> p.equals("pot-life"))).hasSize(2);
    }

    @Test
    void minutesThatPassInTheConversationCount() {
        String quick = talk("mixed 4 min ago", 0).all().replace('\u00a0', ' ');
        String slow = talk("mixed 4 min ago", 3000).all().replace('\u00a0', ' ');
        assertThat(quick).contains("Degas at most");
        assertThat(slow).contains("Do not degas. Pour now.");
    }

    @Test
    void itIsUnderstoodOnceThePlanIsShown() {
        assertThat(talk("", 0, "I mixed it 70 minutes ago").all()).contains("Do not pour.", "discard safely");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mixed up", "I mixed it well", "mixed -4 min ago", "mixed 300 days ago"})
    void whatIsNoTimeIsNotTakenForOne(String typed) {
        assertThat(talk(typed, 0).all()).doesNotContain(" ago. The plan is for what is left");
    }
}
