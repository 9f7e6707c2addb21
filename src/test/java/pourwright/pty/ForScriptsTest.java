package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** Whatever can be said at a prompt can be said without one. */
class ForScriptsTest {
    @TempDir
    private Path home;

    /** R5, R22: talked through, saved, and run from the file: the same bytes each time; what is talked goes to stdout. */
    @Test
    void aConversationCanBeSavedAndRunFromItsFile() throws IOException {
        try (Rig rig = Rig.in(home).shell("\"$@\" 2> \"$XDG_CONFIG_HOME/err\"", "plan")) {
            String page = Rig.collapsed(Typist.untilResult(rig, Typist.JOB));
            assertThat(rig.said("save the yard's ear")).contains("Saved as ");
            rig.reply("quit");
            int code = rig.exit();
            assertThat(home.resolve("err"))
                    .as("a conversation is all on standard output")
                    .isEmptyFile();
            Path file = home.resolve("pourwright/cases/the-yard-s-ear.case.json");
            Run run = Run.inside("plan", "--case", file.toString());
            assertThat(run.code()).isEqualTo(code);
            assertThat(run.err()).isEmpty();
            assertThat(Run.inside("plan", "--case", file.toString())).isEqualTo(run);
            // The result is the one that was shown: its first line and every line of the timetable.
            String again = Rig.collapsed(run.out().lines().toList());
            assertThat(page).contains(again.substring(0, again.indexOf("Times count from")));
            Path answers = home.resolve("answers.json");
            Files.writeString(
                    answers, Json.write(Json.read(Files.readString(file)).path("answers")));
            for (String form : List.of("--json", "--plain")) {
                Run byCase = Run.inside("plan", "--case", file.toString(), form);
                Run byAnswers = Run.inside("plan", "--answers", answers.toString(), form);
                assertThat(byAnswers).as(form).isEqualTo(byCase);
                assertThat(byAnswers.err()).isEmpty();
            }
        }
    }

    /** R6: the list of questions and the list of flags are one list; a question that takes no flag is a gap. */
    @Test
    void everyQuestionHasAFlagThatIsRead() throws IOException {
        Knowledge k = KnowledgeReader.read(Path.of("knowledge"));
        List<String> gaps = new ArrayList<>();
        List<Question> ofPlan = k.questions();
        List<Question> ofDiagnosis = List.copyOf(
                KnowledgeReader.forDiagnosis(Path.of("knowledge"), k).observations());
        ofPlan.forEach(q -> gaps.addAll(gap("plan", q)));
        ofDiagnosis.forEach(q -> gaps.addAll(gap("diagnose", q)));
        // Any text can be the name of a file; that there is no such file is said above.
        gaps.addAll(refused(
                "plan", ofPlan.stream().filter(q -> !q.kind().equals("text")).toList(), k));
        gaps.addAll(refused("diagnose", ofDiagnosis, k));
        assertThat(gaps).isEmpty();
        assertThat(ofPlan.size() + ofDiagnosis.size()).isGreaterThan(150);
        assertThat(Run.inside("plan", "material=wax", "cheese=1", "--no-input").code())
                .as("and what is no question is refused")
                .isEqualTo(2);
    }

    private static String value(Question q, Knowledge k) {
        return switch (q.kind()) {
            case "choice" -> q.choices().get(0).id();
            case "material" -> k.materials().keySet().iterator().next();
            default -> q.example();
        };
    }

    private static final List<String> KIT_TEXTS = List.of("pump-down-readings", "rise-readings", "uses");

    /** A flag is there when it is refused for its value, by the question it names, and not for its name. */
    private static List<String> gap(String word, Question q) {
        String flag = q.id() + "=zzz 5 furlongs";
        Run refused = q.id().equals("material")
                ? Run.inside(word, "--no-input", flag)
                : Run.inside(word, "--no-input", "material=tin-silicone", "mesh-unit=mm", flag);
        // What belongs to the test of a kit is taken by a plan as a kept note: any text is one.
        if (KIT_TEXTS.contains(q.id()) && refused.code() != 2) {
            return List.of();
        }
        return refused.code() == 2
                        && refused.err().contains("zzz")
                        && !refused.err().contains("no question")
                ? List.of()
                : List.of(flag + ": " + refused.err().strip());
    }

    /** Good values by the same names, all in one run: one job a line. */
    private List<String> refused(String word, List<Question> questions, Knowledge k) throws IOException {
        Path file = home.resolve(word + ".jsonl");
        StringBuilder jobs = new StringBuilder();
        for (Question q : questions) {
            ObjectNode job = Json.object().put("material", "tin-silicone");
            jobs.append(Json.write(job.put(q.id(), value(q, k)))).append('\n');
        }
        Files.writeString(file, jobs.toString());
        Run run = Run.inside(word, "--answers", file.toString(), "--json");
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSameSizeAs(questions);
        return lines.stream().filter(l -> l.contains("\"error\"")).toList();
    }

    /** R15: what a prompt takes as a number of a choice or as a beginning, a program must say in full. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "material=tin",
                "material=1",
                "material=wax job=emb",
                "material=wax job=5",
                "material=wax kit=vac"
            })
    void beginningsAndNumbersOfChoicesAreForPromptsOnly(String flags) throws IOException {
        Run byFlag = Run.inside(("plan --no-input " + flags).split(" "));
        assertThat(byFlag.code()).as(byFlag.toString()).isEqualTo(2);
        Path file = home.resolve("job.json");
        Files.writeString(file, "{\"" + flags.replace("=", "\":\"").replace(" ", "\",\"") + "\"}");
        Run byFile = Run.inside("plan", "--json", "--answers", file.toString());
        assertThat(byFile.code()).as(byFile.toString()).isEqualTo(2);
    }

    /** R22: a result is one JSON value that says in which form it is, and nothing else is on standard output. */
    @Test
    void aResultForProgramsSaysItsForm() throws IOException {
        for (String[] words : List.of(
                new String[] {"plan", "--json", "material=tin-silicone", "batch-mass=1 kg"},
                new String[] {"diagnose", "--json", "material=tin-silicone", "symptom=bubbles"},
                new String[] {"figure", "lid-force", "lid-diameter=300", "target-pressure=30", "--json"})) {
            Run run = Run.inside(words);
            JsonNode json = Json.read(run.out());
            assertThat(json.path("format").isInt()).as(String.join(" ", words)).isTrue();
            assertThat(run.out()).doesNotContain("\u001b");
        }
        Run heard = Run.inside("diagnose", "--no-input", "--say", "tiny bubbles under the horns");
        assertThat(heard.err()).as("a note is no result").contains("from \"");
        assertThat(heard.out()).doesNotContain("Read symptom");
        String line = "epoxy, smells of solvent, bubbles under the horns";
        Run left = Run.inside("diagnose", "--no-input", "--say", line);
        assertThat(left.err())
                .contains(
                        "Not understood, and left out: \"smells of solvent\".",
                        "Read \"epoxy\" as a family of liquids.");
        JsonNode json =
                Json.read(Run.inside("diagnose", "--json", "--say", line).out());
        assertThat(json.path("not-understood")).hasSize(1);
        assertThat(json.path("not-understood").get(0).textValue()).isEqualTo("smells of solvent");
        JsonNode all =
                Json.read(Run.inside("diagnose", "--json", "--say", "bubbles").out());
        assertThat(all.has("not-understood")).isFalse();
    }
}
