package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A refusal says what was read, what is accepted, and shows an example where the question has one. */
class ErrorWordsTest {
    private static final String ACCEPTED =
            "(?s).*(?:Accepted: |This takes |Give |Here I need |Put the smaller|Expected |Say |is one JSON object).*";
    private static final String EXAMPLE = "(?s).*(?:Example: |[Ff]or example ).*";

    static Stream<Arguments> answers() {
        return BadInputTest.answers();
    }

    static Stream<Arguments> files() {
        return BadInputTest.files();
    }

    @ParameterizedTest
    @MethodSource("answers")
    void anAnswerThatCannotBeReadIsToldBackWithWhatIsAccepted(String id, String typed, String unused) {
        Ran ran = id.equals("material")
                ? Ran.of("plan", "--no-input", id + "=" + typed)
                : Ran.of("plan", "--no-input", "material=tin-silicone", id + "=" + typed);
        String said = ran.err().strip();
        String read = typed.replaceAll("\\p{Cntrl}", "").strip();
        assertThat(said).startsWith(id + ": ").matches(ACCEPTED);
        if (read.isEmpty()) {
            assertThat(said).contains("I read nothing");
        } else if (read.equals("10..5 kg")) {
            assertThat(said).contains("from 10 kg to 5 kg");
        } else {
            assertThat(said).contains(read);
        }
        if (!id.equals("job") && !id.equals("kit")) {
            // Those two take a word of the list that was just given.
            assertThat(said).matches(EXAMPLE);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void aFileThatHoldsNoAnswersIsToldWhatItShouldHold(String text, String field) {
        String said = Ran.with(text, java.util.Map.of(), "plan", "--no-input", "--answers", "-")
                .err();
        if (said.contains("There is no question")) {
            assertThat(said).contains("'" + field + "'", "'pourwright questions' lists them all");
        } else {
            assertThat(said).matches("(?s).*(?:Accepted: |takes |Give |Expected |Say |one JSON object).*");
            if (field.equals("answers") || field.equals("material")) {
                assertThat(said).matches(EXAMPLE);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"material", "job"})
    void anAnswerFarTooLongIsToldTheMost(String id) {
        String said = Ran.of("plan", "--no-input", id + "=" + "x".repeat(5000)).err();
        assertThat(said).contains(id, "\"xxx", "Accepted: at most 1000 characters");
    }

    @Test
    void aFileThatIsNotThereIsNamedAndWhatToGiveIsSaid() {
        assertThat(Ran.of("plan", "--no-input", "--answers", "/none/job.json").err())
                .contains("/none/job.json", "Give the name of a JSON file, for example job.json");
    }
}
