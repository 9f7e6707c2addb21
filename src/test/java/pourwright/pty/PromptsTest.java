package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** What holds at every prompt of a plan and of a diagnosis. */
class PromptsTest {
    private static final Map<String, Question> QUESTIONS = questions();

    /** No question takes this, and it holds no word that one takes. */
    private static final String WRONG = "zzz 5 furlongs";

    @TempDir
    private Path home;

    private static Map<String, Question> questions() {
        Map<String, Question> all = new LinkedHashMap<>();
        Knowledge k = KnowledgeReader.read(Path.of("knowledge"));
        Stream.concat(
                        k.questions().stream(),
                        KnowledgeReader.forDiagnosis(Path.of("knowledge"), k).observations().stream())
                .forEach(q -> all.put(q.id(), q));
        return all;
    }

    /** R9, R10, R12: at every question of a plan. */
    @Test
    void aPlanSurvivesWrongAnswersThriceSaysWhyAndWhatEnterDoes() {
        try (Rig rig = Rig.in(home).run("plan")) {
            Map<String, String> reasons = new HashMap<>();
            String id = rig.prompt();
            while (!id.equals("review")) {
                Question q = QUESTIONS.get(id);
                assertThat(rig.said("")).as("Enter at '%s'", id).contains("Nothing was typed.", "\"don't know\"");
                wrongThrice(rig, q);
                String why = rig.said("why");
                assertThat(why).as("why '%s'", id).matches("[A-Z0-9].{15,}[.]");
                reasons.put(id, why);
                assertThat(rig.prompt()).as("still asking").isEqualTo(id);
                rig.reply(Typist.JOB.getOrDefault(id, "don't know"));
                id = rig.prompt();
            }
            assertThat(reasons).hasSizeGreaterThan(15);
            assertThat(rig.screen().substring(rig.screen().lastIndexOf("Your answers:")))
                    .contains("Enter = show the result");
            assertThat(rig.said(WRONG)).contains("\"" + WRONG + "\" is not a word here.", "Enter (show the result)");
            rig.reply("");
            assertThat(rig.said("")).as("Enter after the result").startsWith("Words: ");
            rig.reply("quit");
            assertThat(rig.exit()).isIn(0, 1);
        }
    }

    /** R10: what was read, what is accepted, an example that works; after the third time a way out. */
    private static void wrongThrice(Rig rig, Question q) {
        for (int time = 1; time <= 3; time++) {
            String said = rig.said(WRONG);
            assertThat(rig.prompt()).as("asked again").isEqualTo(q.id());
            assertThat(said).as(q.id()).contains("zzz");
            switch (q.kind()) {
                case "choice" -> {
                    q.choices().forEach(c -> assertThat(said).contains(c.id()));
                    assertThat(said)
                            .contains("For example \"1\" or \""
                                    + q.choices().get(0).id() + "\".");
                }
                case "material" -> assertThat(said).contains("Accepted: ", "For example " + q.example() + ".");
                default -> assertThat(said).as(q.id()).containsPattern("[Ee]xample");
            }
            if (time == 3) {
                assertThat(said).contains("Type \"help\" for how to find it, or \"don't know\" to go on without.");
            } else {
                assertThat(said).doesNotContain("how to find it");
            }
        }
    }

    /** R9, R10, R11, R12: at every question of a diagnosis, with "don't know" from the first to the last. */
    @Test
    void aDiagnosisOfDontKnowsEndsInAResultAndEveryQuestionSaysWhatItSeparates() {
        try (Rig rig = Rig.in(home).run("diagnose")) {
            assertThat(rig.opening()).contains("press Enter to be asked");
            rig.reply("");
            int separating = 0;
            String id = rig.prompt();
            while (!id.equals("review")) {
                wrongThrice(rig, QUESTIONS.get(id));
                String why = rig.said("why");
                if (id.equals("material") || id.equals("symptom")) {
                    // The two that decide which causes there are at all.
                    assertThat(why).contains("causes");
                } else {
                    assertThat(why)
                            .as("the causes it separates, and by how much: '%s'", id)
                            .containsPattern(
                                    "speaks (?:for|against) it \\((?:slight|moderate|strong|decisive)[^)]*\\)|rules it out");
                    separating++;
                }
                rig.reply("don't know");
                assertThat(rig.prompt()).as("no question twice").isNotEqualTo(id);
                id = rig.prompt();
            }
            assertThat(separating).isGreaterThan(3);
            String said = rig.said("");
            assertThat(said).startsWith("This picture fits none").contains("Test next: ", "Next: ");
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(0);
        }
    }

    /** R9: every short question says in words what Enter does. R15: it takes number, word and unique beginning. */
    @Test
    void shortQuestionsSayWhatEnterDoesAndTakeNumberWordAndBeginning() {
        try (Rig rig = Rig.in(home).run()) {
            assertThat(rig.opening()).contains("(Enter = plan, or \"vents\", \"diagnose\", \"kit\", \"learn\")");
            assertThat(rig.said("x")).contains("\"x\" is not an answer here.", "(Enter = plan)");
            assertThat(rig.said("d")).contains("press Enter to be asked");
            assertThat(rig.said("tiny bubbles under the horns"))
                    .contains("(Enter = yes, or \"no\" to be asked instead)");
            assertThat(rig.said("maybe")).contains("\"maybe\" is not an answer here. Accepted: yes, no (Enter = yes).");
            rig.reply("2");
            assertThat(rig.prompt()).isEqualTo("material");
            rig.reply("clear polyu");
            assertThat(rig.prompt()).isEqualTo("symptom");
            Question symptom = QUESTIONS.get("symptom");
            assertThat(rig.said("2")).contains("= " + symptom.choices().get(1).text());
            for (String typed : List.of(
                    symptom.choices().get(1).id(),
                    symptom.choices().get(1).text(),
                    symptom.choices().get(1).id().toUpperCase(java.util.Locale.ROOT))) {
                rig.reply("back");
                assertThat(rig.prompt()).isEqualTo("symptom");
                assertThat(rig.said(typed))
                        .contains("= " + symptom.choices().get(1).text());
            }
            rig.reply("enough");
            assertThat(rig.prompt()).isEqualTo("diagnose");
            assertThat(rig.said("othe"))
                    .as("a beginning of a word at the result")
                    .contains("would");
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(0);
        }
        // The kit of the last plan is the default of the next one, said in words too.
        try (Rig rig = Rig.in(home).run("plan")) {
            Typist.untilResult(rig, Typist.JOB);
            rig.reply("quit");
        }
        try (Rig rig = Rig.in(home).run("plan")) {
            assertThat(rig.opening()).contains("Your kit as last time (Enter = yes, or \"no\"):");
            rig.reply("quit");
            assertThat(rig.exit()).isEqualTo(4);
        }
    }

    /** The short questions outside the order take the same words as all others, and nothing happens on them. */
    @Test
    void theShortQuestionsTakeWhyHelpAndQuitToo() throws IOException {
        Path shop = Files.createDirectories(home.resolve("pourwright"));
        Files.writeString(shop.resolve("kit.json"), "{\"chamber-volume\": \"20 L\", \"pump-speed\": \"3 cfm\"}");
        Files.writeString(
                shop.resolve("unfinished.jsonl"), "{\"word\":\"plan\"}\n{\"set\":\"material\",\"to\":\"plaster\"}\n");
        try (Rig rig = Rig.in(home).run()) {
            assertThat(rig.prompt()).isEqualTo("resume");
            shortQuestion(rig, "resume", "yes, no, drop (Enter = yes)");
            assertThat(rig.said("quit")).contains("still stands");
            assertThat(rig.exit()).isEqualTo(4);
        }
        try (Rig rig = Rig.in(home).run("resume")) {
            assertThat(rig.prompt()).isEqualTo("kit");
            shortQuestion(rig, "kit", "yes, no (Enter = yes)");
            assertThat(rig.said("quit")).contains("Kept.");
            assertThat(rig.exit()).isEqualTo(4);
        }
        assertThat(shop.resolve("unfinished.jsonl")).content().contains("plaster");
    }

    private static void shortQuestion(Rig rig, String prompt, String accepted) {
        assertThat(rig.said("why")).matches("[A-Z].{15,}[.]");
        assertThat(rig.said("help")).contains("Accepted: " + accepted, "\"why\"", "\"quit\" leaves");
        assertThat(rig.said("zzz")).contains("\"zzz\" is not an answer here.", accepted, "For example \"no\".");
        assertThat(rig.prompt()).isEqualTo(prompt);
    }
}
