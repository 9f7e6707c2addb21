package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** A case says the same after it was written and read. */
class CaseFileTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final AnswersJson READER = new AnswersJson(KNOWLEDGE);
    private static final AnswersJson SEEN = new AnswersJson(
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KNOWLEDGE).base());

    @TempDir
    Path dir;

    static Stream<Path> library() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("transcripts-of-cases"))) {
            return files.filter(f -> f.toString().endsWith(".case.json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("library")
    void aRecordedCaseIsWrittenAsItIsRead(Path file) throws IOException {
        String word = CaseFile.wordOf(file);
        AnswersJson reader = word.equals("plan") ? READER : SEEN;
        CaseFile c = CaseFile.read(file, word, reader);
        Path copy = dir.resolve("copy.case.json");
        Files.writeString(copy, c.text());
        CaseFile again = CaseFile.read(copy, word, reader);
        assertThat(again).isEqualTo(c);
        assertThat(again.text()).isEqualTo(c.text());
    }

    @Test
    void aConsultationGivesTheSameAdviceFromItsCase() throws IOException {
        Answers answers = READER.read(
                Json.read(
                        "{\"material\":\"tin silicone\",\"batch-mass\":1200.50,\"room-temperature\":\"70 °F\","
                                + "\"altitude\":null,\"mix-ratio\":\"10:1\",\"pot-life\":\"30..50 min\",\"cup-volume\":\"½ gal\"}"));
        Consultation c = Advisor.consult(answers, KNOWLEDGE);
        Path file = dir.resolve("a.case.json");
        WholeFile.write(
                file, CaseFile.of(c, "workshop", "a \"note\"\nof two lines").text());
        CaseFile read = CaseFile.read(file, "plan", READER);
        assertThat(read.answers().all().keySet())
                .containsExactlyElementsOf(answers.all().keySet());
        Consultation again = Advisor.consult(read.answers(), KNOWLEDGE);
        assertThat(Json.write(new ResultJson(KNOWLEDGE).of(again)))
                .isEqualTo(Json.write(new ResultJson(KNOWLEDGE).of(c)));
        assertThat(read.verdict()).isEqualTo(c.verdict().word());
        assertThat(read.findings()).isEqualTo(CaseFile.expected(c));
        assertThat(read.note()).isEqualTo("a \"note\"\nof two lines");
        assertThat(read.provenance()).isEqualTo("workshop");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "7",
                "null",
                "{\"format\":1}",
                "{\"format\":2,\"word\":\"plan\",\"answers\":{}}",
                "{\"format\":1,\"word\":\"plan\"}",
                "{\"format\":1,\"word\":\"plan\",\"answers\":7}",
                "{\"format\":1,\"word\":\"plan\",\"answers\":{\"cheese\":1}}",
                "{\"format\":1,\"word\":\"plan\",\"answers\":{},\"x\":1}",
                "{\"format\":1.5,\"word\":\"plan\",\"answers\":{}}",
                "{\"format\":\"1\",\"word\":\"plan\",\"answers\":{}}"
            })
    void whatIsNoCaseIsRefusedInOneSentence(String text) throws IOException {
        Path file = dir.resolve("bad.case.json");
        Files.writeString(file, text);
        assertThatThrownBy(() -> CaseFile.read(file, "plan", READER))
                .isInstanceOf(BadAnswer.class)
                .hasMessageMatching("(?s)[^\n]+");
    }

    @Test
    void tooDeepAFileIsRefusedToo() throws IOException {
        Path file = dir.resolve("deep.case.json");
        Files.writeString(file, "[".repeat(1000));
        assertThatThrownBy(() -> CaseFile.read(file, "plan", READER)).isInstanceOf(BadAnswer.class);
    }
}
