package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.console.PlanJob;
import pourwright.console.Recorded;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/**
 * The case library, replayed to the letter: verdict, findings and the conversation as the person saw it. After a change
 * that is meant, {@code pourwright replay --record} prints the differences and writes the new record.
 */
class RecordedCasesTest {
    private static final Path LIBRARY = Path.of("transcripts-of-cases");
    private static final int FEWEST_CASES = 25;
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    private static List<Path> cases() throws IOException {
        try (Stream<Path> files = Files.list(LIBRARY)) {
            return files.filter(f -> f.toString().endsWith(".case.json"))
                    .filter(f -> CaseFile.wordOf(f).equals("plan"))
                    .sorted()
                    .toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> caseIsAsRecorded() throws IOException {
        AnswersJson reader = new AnswersJson(KNOWLEDGE);
        return cases().stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                    CaseFile expected = CaseFile.read(file, "plan", reader);
                    Consultation c = Advisor.consult(expected.answers(), KNOWLEDGE);
                    assertThat(c.verdict().word()).isEqualTo(expected.verdict());
                    assertThat(CaseFile.expected(c)).isEqualTo(expected.findings());
                    Path told =
                            file.resolveSibling(file.getFileName().toString().replace(".case.json", ".txt"));
                    String transcript = Recorded.transcript(expected.answers(), new PlanJob(KNOWLEDGE));
                    assertThat(transcript).isEqualTo(Files.readString(told));
                    expected.answers()
                            .all()
                            .keySet()
                            .forEach(id -> assertThat(transcript)
                                    .as("the conversation asks for every answer of the case")
                                    .contains("\n" + id + " > "));
                    assertThat(expected.text())
                            .as("the file is in its own form")
                            .isEqualTo(Files.readString(file));
                }));
    }

    @Test
    void theLibraryIsLargeEnough() throws IOException {
        assertThat(cases()).hasSizeGreaterThanOrEqualTo(FEWEST_CASES);
    }

    @Test
    void theSessionInTheReadmeIsARecordedOne() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int from = readme.indexOf("<!-- session:begin");
        int to = readme.indexOf("<!-- session:end -->");
        assertThat(from).as("marker of the session").isPositive();
        String name = readme.substring(from).lines().findFirst().orElseThrow().replaceAll(".*begin ([a-z-]+).*", "$1");
        String shown = readme.substring(readme.indexOf("```\n", from) + 4, readme.lastIndexOf("```", to));
        String recorded = Files.readString(LIBRARY.resolve(name + ".txt"));
        assertThat(recorded).startsWith(shown.stripTrailing());
    }
}
