package pourwright.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Json;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.testing.Generated;

class DiagnoserTest {
    private static final DiagnosticKnowledge K =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    private static final Diagnoser DIAGNOSER = new Diagnoser(K);
    private static final AnswersJson READER = new AnswersJson(K.base());

    private static Answers answers(String... pairs) {
        ObjectNode all = Json.object();
        for (int i = 0; i < pairs.length; i += 2) {
            all.put(pairs[i], pairs[i + 1]);
        }
        return READER.read(all);
    }

    private static String first(Answers a) {
        return DIAGNOSER.diagnose(a).ranked().get(0).cause().id();
    }

    /** A random part: a class, a symptom and a handful of observations. */
    private static Answers randomPart(Generated r) {
        List<MaterialClass> classes = List.copyOf(K.base().materials().values());
        Answers a =
                answers("material", classes.get(r.whole(0, classes.size() - 1)).id());
        int n = r.whole(1, 9);
        for (int i = 0; i < n; i++) {
            Question q = K.observations().get(r.whole(0, K.observations().size() - 1));
            if (!q.choices().isEmpty()) {
                String c = q.choices().get(r.whole(0, q.choices().size() - 1)).id();
                a = READER.with(a, q.id(), c);
            }
        }
        return a;
    }

    private static Map<String, Double> odds(Answers a) {
        Map<String, Double> odds = new java.util.TreeMap<>();
        DIAGNOSER.diagnose(a).ranked().forEach(c -> odds.put(c.cause().id(), c.decibans()));
        return odds;
    }

    @Test
    void theOrderOfAnsweringDoesNotMatter() {
        Generated.tries(20261125, 400).forEach(r -> {
            Answers a = randomPart(r);
            List<Map.Entry<String, Answers.Given>> shuffled =
                    new ArrayList<>(a.all().entrySet());
            Collections.rotate(shuffled, r.whole(1, shuffled.size()));
            Collections.swap(shuffled, 0, r.whole(0, shuffled.size() - 1));
            Answers b = Answers.NONE;
            for (var e : shuffled) {
                b = b.with(e.getKey(), e.getValue().answer(), e.getValue().raw());
            }
            assertThat(odds(b)).isEqualTo(odds(a));
        });
    }

    @Test
    void dontKnowNeverMakesItSurer() {
        Generated.tries(7, 300).forEach(r -> {
            Answers a = randomPart(r);
            Question q = K.observations().get(r.whole(0, K.observations().size() - 1));
            if (a.has(q.id())) {
                return;
            }
            Answers b = a.with(q.id(), new Answer.DontKnow(), null);
            assertThat(odds(b)).isEqualTo(odds(a));
        });
    }

    @Test
    void theTableSaysWhatTheRulesSay() {
        Generated.tries(99, 300).forEach(r -> {
            Answers a = randomPart(r);
            State s = DIAGNOSER.state(a);
            if (!s.unsettled().isEmpty()) {
                return;
            }
            List<Evidence> fromTable = new ArrayList<>();
            for (Question q : K.observations()) {
                a.choices(q.id()).forEach(c -> fromTable.addAll(s.table().of(q.id(), c)));
            }
            List<String> table =
                    fromTable.stream().map(DiagnoserTest::told).sorted().toList();
            List<String> rules = s.evidence().stream()
                    .filter(e -> !e.choice().isEmpty())
                    .map(DiagnoserTest::told)
                    .sorted()
                    .toList();
            assertThat(table).isEqualTo(rules);
        });
    }

    private static String told(Evidence e) {
        return e.cause() + " " + e.decibans() + " " + e.question() + "=" + e.choice() + " by "
                + e.conclusion().rule().id();
    }

    @Test
    void evidenceIsCappedAndOddsStayOdds() {
        Generated.tries(3, 300).forEach(r -> {
            Answers a = randomPart(r);
            for (RankedCause c : DIAGNOSER.diagnose(a).ranked()) {
                assertThat(Math.abs(c.decibans() - c.prior())).isLessThanOrEqualTo(23 + 1e-9);
                assertThat(c.probability()).isBetween(0.0, 1.0);
            }
        });
    }

    @Test
    void oneFactCountsOnce() {
        // Rising and running over are one fact: the mould's level.
        Map<String, Double> rose =
                odds(answers("material", "clear-polyurethane", "symptom", "bubbles", "level", "rose"));
        Map<String, Double> both = odds(
                answers("material", "clear-polyurethane", "symptom", "bubbles", "level", "rose", "overflowed", "yes"));
        assertThat(both.get("moisture-reaction")).isEqualTo(rose.get("moisture-reaction"));
    }

    @Test
    void whatTheClassCannotHaveIsRuledOut() {
        assertThat(DIAGNOSER
                        .diagnose(answers("material", "tin-silicone", "symptom", "bubbles"))
                        .ruledOut())
                .contains("moisture-reaction", "monomer-boiled");
        assertThat(DIAGNOSER
                        .diagnose(answers("material", "clear-polyurethane", "degassed", "no"))
                        .ruledOut())
                .contains("gelled-under-vacuum", "weak-vacuum");
    }

    @Test
    void anUnlikelyPictureIsSaidToFitNothing() {
        assertThat(DIAGNOSER
                        .diagnose(answers("material", "tin-silicone", "symptom", "bubbles"))
                        .fits())
                .isFalse();
    }

    @Test
    void contradictoryAnswersCountForNothingUntilTheyAreSettled() {
        Answers level = answers("material", "clear-polyurethane", "symptom", "bubbles");
        Answers both = READER.with(READER.with(level, "level", "sank"), "overflowed", "yes");
        Diagnosis d = DIAGNOSER.diagnose(both);
        assertThat(d.contradictions()).isNotEmpty();
        assertThat(odds(both)).isEqualTo(odds(level));
        assertThat(d.findings().get(0).say()).endsWith("?");
    }

    /** Both stand at the cap. The overdose was stated, so more speaks for it than for the crack it made. */
    @Test
    void ofCausesThatTheCapMakesEqualTheOneWithMoreEvidenceComesFirst() {
        Answers a = answers(
                "material",
                "vinyl-ester",
                "symptom",
                "cracked",
                "cup-heat",
                "smoked",
                "gel-speed",
                "fast",
                "measured",
                "hardener-over");
        a = READER.with(READER.with(a, "crack-place", "thick-core"), "colour-look", "amber-core");
        assertThat(odds(a).get("exotherm-crack")).isEqualTo(odds(a).get("over-catalysed"));
        assertThat(first(a)).isEqualTo("over-catalysed");
    }

    @Test
    void theJobsOwnFiguresAreEvidence() {
        Answers before = answers("material", "fast-polyurethane", "symptom", "bubbles", "pot-life", "5 min");
        Answers late = READER.with(before, "poured-after", "9 min");
        assertThat(odds(late).get("poured-too-late")).isGreaterThan(odds(before).get("poured-too-late") + 3);
    }

    @Test
    void askingEndsAndNeverAsksTwice() {
        Generated.tries(11, 60).forEach(r -> {
            Answers a = randomPart(r);
            a = a.has("symptom") ? a : READER.with(a, "symptom", "bubbles");
            TreeSet<String> asked = new TreeSet<>();
            var next = DIAGNOSER.next(a);
            while (next.isPresent()) {
                Question q = next.get().question();
                assertThat(asked.add(q.id())).as(q.id()).isTrue();
                assertThat(asked).hasSizeLessThanOrEqualTo(20);
                assertThat(next.get().reasons(DIAGNOSER, a)).isNotEmpty();
                a = q.choices().isEmpty() || r.whole(0, 3) == 0
                        ? a.with(q.id(), new Answer.DontKnow(), null)
                        : READER.with(
                                a,
                                q.id(),
                                q.choices()
                                        .get(r.whole(0, q.choices().size() - 1))
                                        .id());
                next = DIAGNOSER.next(a);
            }
        });
    }

    /** For each cause there is a picture in which it comes first: the answers that speak most for it alone. */
    @TestFactory
    Stream<DynamicTest> everyCauseCanComeFirst() {
        return K.causes().values().stream()
                .map(cause -> DynamicTest.dynamicTest(cause.id(), () -> {
                    List<String> tried = new ArrayList<>();
                    for (MaterialClass m : K.base().materials().values()) {
                        if (cause.impossibleIn(m)) {
                            continue;
                        }
                        for (String symptom : cause.arises().keySet()) {
                            Answers a = telling(cause.id(), answers("material", m.id(), "symptom", symptom));
                            if (first(a).equals(cause.id())) {
                                return;
                            }
                            tried.add(m.id() + " " + symptom + ": " + first(a));
                        }
                    }
                    assertThat(tried).as("no picture brings it first").isEmpty();
                }));
    }

    private static Answers telling(String cause, Answers start) {
        Answers a = start;
        EvidenceTable table = DIAGNOSER.table(K.base().materials().get(start.choice("material")));
        for (Question q : K.observations()) {
            Question.Choice best = q.choices().stream()
                    .max(Comparator.comparingInt(c -> lead(table, q, c, cause)))
                    .orElse(null);
            if (best != null && !q.id().equals("symptom") && lead(table, q, best, cause) > 0) {
                a = READER.with(a, q.id(), best.id());
            }
        }
        return a;
    }

    /** How much more an answer speaks for a cause than for the best of the others. */
    private static int lead(EvidenceTable table, Question q, Question.Choice c, String cause) {
        int own = 0;
        int others = 0;
        if (table.ruledOut(q.id(), c.id()).contains(cause)) {
            return Integer.MIN_VALUE;
        }
        for (Evidence e : table.of(q.id(), c.id())) {
            if (e.cause().equals(cause)) {
                own = e.decibans();
            } else {
                others = Math.max(others, e.decibans());
            }
        }
        return own > 0 && own >= others ? own : 0;
    }
}
