package pourwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pourwright.diagnosis.EvidenceTable;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;

/** What every rule of evidence must keep to, so that the table of evidence can be drawn from the rules. */
class EvidenceRulesTest {
    private static final int FEWEST_RULES = 150;
    private static final int FEWEST_CAUSES = 45;
    private static final int FEWEST_OBSERVATIONS = 60;
    private static final Set<String> STRENGTHS = Set.of("decisive", "strong", "moderate", "slight");
    private static final Set<String> EVIDENCE = Set.of("speaksFor", "speaksAgainst");
    private static final DiagnosticKnowledge K = RuleFiles.DIAGNOSTIC;
    private static final List<RuleText> RULES =
            RuleText.all().stream().filter(r -> r.file().evidence()).toList();

    @Test
    void thereAreEnough() {
        assertThat(RULES).hasSizeGreaterThanOrEqualTo(FEWEST_RULES);
        assertThat(K.causes()).hasSizeGreaterThanOrEqualTo(FEWEST_CAUSES);
        assertThat(K.observations()).hasSizeGreaterThanOrEqualTo(FEWEST_OBSERVATIONS);
    }

    @Test
    void evidenceNamesACauseAndAStrength() {
        List<String> wrong = new ArrayList<>();
        for (RuleText r : RULES) {
            for (RuleText.Call c : r.calls()) {
                boolean about = EVIDENCE.contains(c.verb()) || c.verb().equals("rulesOut");
                if (about && !K.causes().containsKey(c.target())) {
                    wrong.add(r + ": no cause is called '" + c.target() + "'");
                }
                if (EVIDENCE.contains(c.verb())
                        && !STRENGTHS.contains(c.strings().get(1))) {
                    wrong.add(r + ": no strength is called '" + c.strings().get(1) + "'");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void evidenceReadsOneObservationOrFiguresAndNothingIsDenied() {
        List<String> wrong = new ArrayList<>();
        for (RuleText r : RULES) {
            boolean evidence = r.calls().stream()
                    .anyMatch(c -> EVIDENCE.contains(c.verb()) || c.verb().equals("rulesOut"));
            int said = r.named("\\b(Said)\\s*\\(").size();
            int figures = r.named("\\b(Figure)\\s*\\(").size();
            if (evidence && !(said == 1 && figures == 0 || said == 0 && figures >= 1)) {
                wrong.add(r + " reads " + said + " observations and " + figures + " figures");
            }
            if (r.when().matches("(?s).*\\b(not|exists|forall|Method|Refused|Unknown)\\s*\\(.*")) {
                wrong.add(r + " denies something or reads what only a plan has");
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyCauseHasStrongEvidenceForItAndSomethingAgainst() {
        Set<String> strong = new TreeSet<>(K.causes().keySet());
        Set<String> against = new TreeSet<>(K.causes().keySet());
        RULES.forEach(r -> r.calls().forEach(c -> {
            if (c.verb().equals("speaksFor") && !c.strings().get(1).matches("moderate|slight")) {
                strong.remove(c.target());
            }
            if (c.verb().equals("speaksAgainst") || c.verb().equals("rulesOut")) {
                against.remove(c.target());
            }
        }));
        assertThat(strong).as("causes without strong evidence for them").isEmpty();
        assertThat(against).as("causes without anything against them").isEmpty();
    }

    @Test
    void noObservationIsWithoutEffect() {
        Set<String> silent = K.observations().stream()
                .filter(q -> q.kind().equals("choice"))
                .map(Question::id)
                .collect(Collectors.toCollection(TreeSet::new));
        // The symptom sets the base rates.
        silent.remove("symptom");
        for (MaterialClass m : K.base().materials().values()) {
            EvidenceTable table = EvidenceTable.draw(K, m);
            K.observations()
                    .forEach(q -> q.choices().forEach(c -> {
                        if (!table.of(q.id(), c.id()).isEmpty()
                                || !table.ruledOut(q.id(), c.id()).isEmpty()) {
                            silent.remove(q.id());
                        }
                    }));
        }
        assertThat(silent).as("observations that no rule reads").isEmpty();
    }

    @Test
    void aContradictionNamesTwoObservationsItReads() {
        List<String> wrong = new ArrayList<>();
        for (RuleText r : RULES) {
            for (RuleText.Call c : r.calls()) {
                if (c.verb().equals("contradicts")) {
                    for (String id : c.strings().subList(0, 2)) {
                        if (K.base().question(id).isEmpty() || !r.when().contains("\"" + id + "\"")) {
                            wrong.add(r + " does not read '" + id + "'");
                        }
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }
}
