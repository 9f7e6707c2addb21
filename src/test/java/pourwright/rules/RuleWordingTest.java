package pourwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** How rules speak: short plain sentences, and no number that is not a guideline or a figure. */
class RuleWordingTest {
    private static final int MOST_BECAUSE_SENTENCES = 2;
    private static final int MOST_BECAUSE_WORDS = 25;
    private static final int MOST_SAY_SENTENCES = 3;
    private static final int MOST_SAY_WORDS = 30;
    private static final double USUAL_WORDS = 20;
    private static final List<RuleText> RULES = RuleText.all();
    private static final Pattern NUMBER_WITH_UNIT = Pattern.compile(
            "\\d[\\d.,]*\\s*(?:mbar|bar|hPa|kPa|Pa|inHg|mm|cm|m|µm|in|°C|°F|K|%|g|kg|mL|ml|L|l|s|min|h|minutes?|seconds?|hours?"
                    + "|days?|times|parts?|per cent)\\b|\\d\\s*%|\\d\\s*°");

    private static List<String> faults(Function<RuleText, List<String>> check) {
        return RULES.stream()
                .flatMap(r -> check.apply(r).stream().map(f -> r + ": " + f))
                .toList();
    }

    private static List<String> sentences(String text) {
        return Arrays.stream(text.strip().split("(?<=[.!?])\\s+"))
                .filter(s -> !s.isBlank())
                .toList();
    }

    private static int words(String sentence) {
        return sentence.strip().split("\\s+").length;
    }

    private static List<String> tooLong(String text, int sentences, int words) {
        List<String> wrong = new ArrayList<>();
        List<String> all = sentences(text);
        if (all.size() > sentences) {
            wrong.add(all.size() + " sentences: " + text);
        }
        all.stream().filter(s -> words(s) > words).forEach(s -> wrong.add(words(s) + " words: " + s));
        return wrong;
    }

    @Test
    void aRulesNameIsASentence() {
        assertThat(faults(r -> r.name().matches("[A-Z].*[^.\\s]") && words(r.name()) > 2
                        ? List.of()
                        : List.of("not a sentence with a capital and no full stop: " + r.name())))
                .isEmpty();
    }

    @Test
    void theReasonIsOneOrTwoShortSentences() {
        assertThat(faults(r -> r.tag("because").isEmpty()
                        ? List.of("no because")
                        : tooLong(r.tag("because"), MOST_BECAUSE_SENTENCES, MOST_BECAUSE_WORDS)))
                .isEmpty();
        assertThat(faults(r -> r.tag("because").matches("(?s)[A-Z\"].*[.!?]") ? List.of() : List.of(r.tag("because"))))
                .as("a reason begins with a capital and ends with a full stop")
                .isEmpty();
    }

    @Test
    void adviceIsShort() {
        assertThat(faults(r -> r.calls().stream()
                        .filter(c -> !c.say().isEmpty())
                        .flatMap(c -> tooLong(c.say(), MOST_SAY_SENTENCES, MOST_SAY_WORDS).stream())
                        .toList()))
                .isEmpty();
    }

    @Test
    void theBookAsAWholeSpeaksInShortSentences() {
        double mean = RULES.stream()
                .flatMap(r -> r.calls().stream())
                .flatMap(c -> sentences(c.say()).stream())
                .mapToInt(RuleWordingTest::words)
                .average()
                .orElseThrow();
        assertThat(mean).isLessThan(USUAL_WORDS);
    }

    @Test
    void everyVerbThatSpeaksSaysSomething() {
        assertThat(faults(r -> r.calls().stream()
                        .filter(c -> !List.of("caution", "need", "speaksFor", "speaksAgainst", "rulesOut")
                                .contains(c.verb()))
                        .filter(c -> c.say().isBlank())
                        .map(c -> c.verb() + " says nothing")
                        .toList()))
                .isEmpty();
    }

    @Test
    void adviceBeginsWithACapitalAndEndsWithAFullStop() {
        // A placeholder at the start would put a class's lower-case name or a bare number there.
        assertThat(faults(r -> r.calls().stream()
                        .map(RuleText.Call::say)
                        .filter(s -> !s.isEmpty() && !s.matches("(?s)[A-Z].*[.!?]"))
                        .toList()))
                .isEmpty();
    }

    @Test
    void noSentenceInsideAdviceBeginsWithTheMaterial() {
        assertThat(faults(r -> r.calls().stream()
                        .flatMap(c -> sentences(c.say()).stream())
                        .filter(s -> s.startsWith("{material}"))
                        .toList()))
                .isEmpty();
    }

    @Test
    void adviceHoldsNoNumberWithAUnit() {
        assertThat(faults(r -> r.calls().stream()
                        .map(RuleText.Call::say)
                        .filter(s -> NUMBER_WITH_UNIT
                                .matcher(s.replaceAll("\\{[^}]*}", ""))
                                .find())
                        .toList()))
                .isEmpty();
    }
}
