package pourwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Strength;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.Agent;
import pourwright.knowledge.Question;

/** What the matrix calls a strong effect on the cure, the rules speak of: no master that poisons a rubber passes in silence. */
class InhibitionMatrixTest {
    private static final Map<String, String> GROUPS =
            Map.of("platinum-silicone", "platinum", "tin-silicone", "tin", "polyurethane-rubber", "aromatic");

    @TestFactory
    Stream<DynamicTest> aStrongEffectIsSpokenOf() {
        List<String> masters = RuleFiles.KNOWLEDGE.question("master-material").orElseThrow().choices().stream()
                .map(Question.Choice::id)
                .toList();
        return GROUPS.entrySet().stream()
                .flatMap(g -> masters.stream()
                        .filter(RuleFiles.KNOWLEDGE.agents()::containsKey)
                        .filter(m -> effect(m, g.getValue()).equals("strong"))
                        .map(m -> DynamicTest.dynamicTest(g.getKey() + " on " + m, () -> spoken(g.getKey(), m))));
    }

    private static String effect(String master, String group) {
        Agent.Effect e = RuleFiles.KNOWLEDGE.agents().get(master).effects().get(group);
        return e == null ? "none" : e.effect();
    }

    private static void spoken(String material, String master) {
        Answers answers = Answers.NONE
                .with("material", new Answer.Choice(material), material)
                .with("job", new Answer.Choice("rubber-around-master"), "rubber-around-master")
                .with("master-material", new Answer.Choice(master), master)
                .with("master-sealed", new Answer.Choice("no"), "no");
        Consultation c = Advisor.consult(answers, RuleFiles.KNOWLEDGE);
        assertThat(c.findings())
                .anyMatch(f ->
                        f.answers().contains("master-material") && f.strength().compareTo(Strength.DO) <= 0);
    }
}
