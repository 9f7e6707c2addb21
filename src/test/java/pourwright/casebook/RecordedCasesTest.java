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
import pourwright.console.DiagnoseJob;
import pourwright.console.PlanJob;
import pourwright.console.Recorded;
import pourwright.diagnosis.Diagnoser;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/**
 * The case library, replayed to the letter: verdict, findings and the conversation as the person saw it. After a change
 * that is meant, {@code pourwright replay --record} prints the differences and writes the new record.
 */
class RecordedCasesTest {
    private static final Path LIBRARY = Path.of("transcripts-of-cases");
    private static final int FEWEST_CASES = 25;
    private static final int FEWEST_OUTSIDE = 20;
    private static final int FEWEST_DIAGNOSES = 40;
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Diagnoser DIAGNOSER =
            new Diagnoser(KnowledgeReader.forDiagnosis(Path.of("knowledge"), KNOWLEDGE));

    private static List<Path> cases() throws IOException {
        return cases(LIBRARY, "plan");
    }

    private static List<Path> cases(Path folder, String word) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".case.json"))
                    .filter(f -> CaseFile.wordOf(f).equals(word))
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
                                    .as("the conversation asks for every answer of the case, and for all cans at once")
                                    .contains("\n" + id.replaceFirst("^cans-(first|second)$", "cans") + " > "));
                    assertThat(expected.text())
                            .as("the file is in its own form")
                            .isEqualTo(Files.readString(file));
                }));
    }

    /** The conversation asks what it wants to know, not all that a case says; both must come to the same first cause. */
    @TestFactory
    Stream<DynamicTest> diagnosisIsAsRecorded() throws IOException {
        AnswersJson reader = new AnswersJson(DIAGNOSER.knowledge().base());
        return cases(LIBRARY, "diagnose").stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
                    CaseFile expected = CaseFile.read(file, "diagnose", reader);
                    assertThat(CaseFile.expected(DIAGNOSER.diagnose(expected.answers())))
                            .isEqualTo(expected.causes());
                    Path told =
                            file.resolveSibling(file.getFileName().toString().replace(".case.json", ".txt"));
                    assertThat(Recorded.transcript(expected.answers(), new DiagnoseJob(DIAGNOSER)))
                            .isEqualTo(Files.readString(told));
                    assertThat(expected.text())
                            .as("the file is in its own form")
                            .isEqualTo(Files.readString(file));
                }));
    }

    @Test
    void theSetsAreLargeEnough() throws IOException {
        List<Path> outside = cases(LIBRARY.resolve("outside"), "diagnose");
        assertThat(outside).hasSizeGreaterThanOrEqualTo(FEWEST_OUTSIDE);
        assertThat(cases(LIBRARY, "diagnose").size() + outside.size()).isGreaterThanOrEqualTo(FEWEST_DIAGNOSES);
    }

    /** What was promised of the set from outside; nothing is tuned on it, so a change that loses it must be undone. */
    @Test
    void theOutsideSetIsDiagnosedAsPromised() throws IOException {
        AnswersJson reader = new AnswersJson(DIAGNOSER.knowledge().base());
        Accuracy accuracy = new Accuracy(DIAGNOSER);
        for (Path file : cases(LIBRARY.resolve("outside"), "diagnose")) {
            accuracy.add(file.getFileName().toString(), CaseFile.read(file, "diagnose", reader));
        }
        assertThat(accuracy.first()).as(accuracy.score()).isGreaterThanOrEqualTo(0.65);
        assertThat(accuracy.amongFirst()).as(accuracy.score()).isGreaterThanOrEqualTo(0.85);
        assertThat(accuracy.medianAsked()).as(accuracy.score()).isLessThanOrEqualTo(9);
    }

    @Test
    void theLibraryIsLargeEnough() throws IOException {
        assertThat(cases()).hasSizeGreaterThanOrEqualTo(FEWEST_CASES);
    }

    @Test
    void theSessionInTheReadmeIsARecordedOne() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        for (String mark : List.of("session", "diagnosis")) {
            int from = readme.indexOf("<!-- " + mark + ":begin");
            int to = readme.indexOf("<!-- " + mark + ":end -->");
            assertThat(from).as("marker of the " + mark).isPositive();
            String name =
                    readme.substring(from).lines().findFirst().orElseThrow().replaceAll(".*begin ([a-z-]+).*", "$1");
            String shown = readme.substring(readme.indexOf("```\n", from) + 4, readme.lastIndexOf("```", to));
            String recorded = Files.readString(LIBRARY.resolve(name + ".txt"));
            assertThat(recorded).startsWith(shown.stripTrailing());
        }
    }
}
