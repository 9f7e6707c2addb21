package pourwright.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pourwright.advice.Consultation;
import pourwright.advice.Facts;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.RuleText;

class RuleProseTest {
    private static final Knowledge ALL = KnowledgeReader.withObservations(Path.of("knowledge"), Asked.KNOWLEDGE);

    private static List<RuleCard> cards() {
        return Stream.of(RuleBook.method(), RuleBook.judge(), RuleBook.kit(), RuleBook.diagnosis())
                .flatMap(b -> b.cards().stream())
                .toList();
    }

    /** A pattern that no sentence is known for would stop this: nothing is passed over. */
    @Test
    void everyRuleOfTheBookIsTranslated() {
        RuleProse prose = new RuleProse(ALL, Map.of());
        List<String> odd = new ArrayList<>();
        assertThat(cards()).hasSizeGreaterThan(900);
        for (RuleCard card : cards()) {
            RuleText text = RuleText.of(card);
            List<String> said = new ArrayList<>(prose.conditions(text));
            assertThat(said).as(card.id()).isNotEmpty();
            assertThat(text.then()).as(card.id()).isNotEmpty();
            said.addAll(prose.conclusions(text));
            said.stream()
                    .filter(s -> s.isBlank() || s.matches(".*[${}\\[\\]].*") || s.contains("not set"))
                    .forEach(s -> odd.add(card.id() + ": " + s));
        }
        assertThat(odd).isEmpty();
    }

    @Test
    void questionsAndChoicesStandInTheirOwnWords() {
        RuleProse prose = new RuleProse(ALL, Map.of());
        List<String> ids = new ArrayList<>();
        for (RuleCard card : cards()) {
            prose.conditions(RuleText.of(card)).stream()
                    .filter(s -> s.matches("\"[a-z-]+\" (?:was answered|has no answer).*"))
                    .forEach(s -> ids.add(card.id() + ": " + s));
        }
        assertThat(ids).isEmpty();
    }

    @Test
    void aRuleReadsAsItIsWritten() {
        RuleText text = RuleText.of(RuleBook.card("cup-too-small").orElseThrow());
        assertThat(new RuleProse(ALL, Map.of()).conditions(text))
                .contains("the froth volume is likely above the cup volume")
                .anyMatch(s -> s.startsWith("not so: ") && s.endsWith("was answered with \"yes\""));
    }

    /** The reading of conditions is held against the rule engine: over all recorded plans the two agree on every rule. */
    @Test
    void theConditionsHoldExactlyWhereTheRuleFires() {
        List<RuleText> rules = Stream.of(RuleBook.method(), RuleBook.judge())
                .flatMap(b -> b.cards().stream())
                .map(RuleText::of)
                .toList();
        List<String> differ = new ArrayList<>();
        int fired = 0;
        for (Consultation c : Asked.recorded()) {
            List<Object> facts = Facts.of(c, Asked.KNOWLEDGE);
            for (RuleText r : rules) {
                boolean holds = new Alternative(r).lacking(facts) == 0;
                boolean fires = c.rulesFired().contains(r.card().id());
                fired += fires ? 1 : 0;
                if (holds != fires) {
                    differ.add(r.card().id() + " in " + c.answers().all());
                }
            }
        }
        assertThat(fired).isGreaterThan(500);
        assertThat(differ).isEmpty();
    }

    @Test
    void whatIsNoPatternIsRefused() {
        RuleCard card = RuleBook.card("cup-too-small").orElseThrow();
        assertThat(RuleText.of(card).written()).startsWith("Method(");
        assertThatThrownBy(() -> WantedWords.card(new Wanted(Wanted.Kind.FINDING, "no-such-rule", ""))
                        .orElseThrow())
                .isInstanceOf(java.util.NoSuchElementException.class);
    }
}
