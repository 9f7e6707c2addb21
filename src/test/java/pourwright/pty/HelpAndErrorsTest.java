package pourwright.pty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Help fits a screen, and an error says what was read, what is accepted, and one example. */
class HelpAndErrorsTest {
    private static final int SCREEN = 24;

    /** R24 */
    @ParameterizedTest
    @ValueSource(strings = {"", "plan", "diagnose", "figure", "questions", "rules", "check", "resume", "replay"})
    void helpFitsOneScreenAndBeginsWithExamples(String word) {
        Run run = word.isEmpty() ? Run.inside("--help") : Run.inside(word, "--help");
        assertThat(run.code()).isEqualTo(0);
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(SCREEN).allMatch(l -> l.length() <= 80);
        assertThat(lines.get(0)).isEqualTo("Examples:");
        assertThat(lines.get(1)).startsWith("  pourwright");
    }

    /** R24 */
    @Test
    void theVersionNamesProgramRulesAndKnowledge() {
        Run run = Run.inside("--version");
        assertThat(run.code()).isEqualTo(0);
        assertThat(run.out())
                .containsPattern("(?m)^pourwright \\S")
                .containsPattern("(?m)^rule book [0-9a-f]{6,}: \\d+ rules$")
                .containsPattern("(?m)^knowledge [0-9a-f]{6,}: \\d+ materials, ");
    }

    /** R23: what was read, what is accepted, an example; no blame, no trace, short sentences. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan material=cheese --no-input | cheese | Accepted: | alginate",
                "plan material=tin-silicone pot-life=soon --no-input | soon | xample| 40 min",
                "plan material=tin-silicone pot-life=40_kg --no-input | 40 kg | xample| 40 min",
                "plan material=tin-silicone pot-life=-5_min --no-input | 5 min | to | min",
                "plan material=tin-silicone mix-ratio=lots --no-input | lots | xample| :",
                "plan material=tin-silicone kit=magic --no-input | magic | Accepted: | vacuum",
                "plan cheese --no-input | cheese | id=value | material=tin-silicone",
                "plan material=wax cheese=1 --no-input | cheese | questions | questions",
                "plan --answers /nowhere/job.json | /nowhere/job.json | answers | ",
                "plan --chees | chees | --help | ",
                "figure cheese | cheese | figure | ",
                "diagnose symptom=cheese --no-input | cheese | Accepted: | bubbles",
                "replay /nowhere/a.case.json | /nowhere/a.case.json | | "
            })
    void anErrorSaysWhatWasReadWhatIsAcceptedAndAnExample(String words, String read, String accepted, String example) {
        Run run = Run.inside(
                Arrays.stream(words.split(" ")).map(w -> w.replace('_', ' ')).toArray(String[]::new));
        String said = run.out() + run.err();
        assertThat(run.code()).as(said).isNotIn(0, 3);
        assertThat(said).contains(read);
        for (String wanted : new String[] {accepted, example}) {
            if (wanted != null) {
                assertThat(said).contains(wanted);
            }
        }
        assertThat(said).doesNotContain("Exception", "\tat ", "null", "{", "invalid", "illegal", "\u001b");
        String[] sentences = said.strip().split("[.!?](?:\\s+|$)");
        double perSentence = (double) said.strip().split("\\s+").length / sentences.length;
        assertThat(perSentence).as(said).isLessThanOrEqualTo(20);
    }
}
