package pourwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.kit.KitAdvisor;

/** Every rule fires in each of its firing cases and stays silent in each of its near misses. */
class RuleCasesTest {
    private final AnswersJson reader = new AnswersJson(RuleFiles.KNOWLEDGE);
    private final AnswersJson kits = new AnswersJson(RuleFiles.OF_KITS);
    private final AnswersJson seen = new AnswersJson(RuleFiles.DIAGNOSTIC.base());
    private final Diagnoser diagnoser = new Diagnoser(RuleFiles.DIAGNOSTIC);

    @TestFactory
    Stream<DynamicTest> casesHold() {
        return RuleFiles.all().stream()
                .map(rule -> DynamicTest.dynamicTest(rule.toString(), () -> {
                    JsonNode cases = rule.readCases();
                    List<String> wrong = new ArrayList<>();
                    assertThat(cases.path("fires").size()).as("firing cases").isPositive();
                    assertThat(cases.path("near-misses").size())
                            .as("near misses")
                            .isPositive();
                    for (JsonNode answers : cases.get("fires")) {
                        if (!fired(rule, answers).contains(rule.id())) {
                            wrong.add("should fire: " + answers);
                        }
                    }
                    for (JsonNode miss : cases.get("near-misses")) {
                        assertThat(miss.path("why").asText())
                                .as("a near miss says why")
                                .isNotBlank();
                        if (fired(rule, miss.get("answers")).contains(rule.id())) {
                            wrong.add("should not fire: " + miss);
                        }
                    }
                    assertThat(wrong).isEmpty();
                }));
    }

    private Set<String> fired(RuleFiles.RuleFile rule, JsonNode given) {
        if (rule.evidence()) {
            return Set.copyOf(diagnoser.diagnose(seen.read(given)).rulesFired());
        }
        if (rule.ofKits()) {
            return Set.copyOf(
                    KitAdvisor.advise(kits.read(given), RuleFiles.OF_KITS).rulesFired());
        }
        Answers answers = reader.read(given);
        if (answers.get("material").isEmpty()) {
            return Set.of();
        }
        try {
            return Set.copyOf(Advisor.consult(answers, RuleFiles.KNOWLEDGE).rulesFired());
        } catch (BadAnswer e) {
            throw new AssertionError(given + ": " + e.getMessage(), e);
        }
    }
}
