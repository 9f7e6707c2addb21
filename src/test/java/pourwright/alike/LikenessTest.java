package pourwright.alike;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.Advisor;
import pourwright.casebook.CaseLibrary;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.teach.Told;

/** Cases are near by what decides about them, and by nothing else. */
class LikenessTest {
    private static final DiagnosticKnowledge SEEN =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    private static final Diagnoser DIAGNOSER = new Diagnoser(SEEN);
    private static final List<Told> CASES = CaseLibrary.read(Path.of("transcripts-of-cases"), SEEN.base(), false);

    static Stream<Told> cases() {
        return CASES.stream();
    }

    private static Picture picture(String word, Answers a) {
        return word.equals("plan")
                ? Picture.of(Advisor.consult(a, SEEN.base()), SEEN.base())
                : Picture.of(DIAGNOSER.diagnose(a), SEEN.base());
    }

    private static Picture picture(Told t) {
        return picture(t.word(), t.answers());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aCaseIsNearestToItselfAndAsNearBothWays(Told t) {
        Picture here = picture(t);
        assertThat(Likeness.of(here, here).distance()).isZero();
        assertThat(Likeness.of(here, here).differs()).isEmpty();
        for (Told other : CASES) {
            if (other.word().equals(t.word()) && !other.name().equals(t.name())) {
                double there = Likeness.of(here, picture(other)).distance();
                assertThat(there).as(other.name()).isGreaterThan(0).isLessThanOrEqualTo(1);
                assertThat(Likeness.of(picture(other), here).distance()).isCloseTo(there, within(1e-12));
            }
        }
    }

    /** "vent-length" is read by no rule about a plan in an open box, so it cannot make a case another. */
    @ParameterizedTest
    @MethodSource("cases")
    void anAnswerOnWhichNothingRestsChangesNothing(Told t) {
        Picture here = picture(t);
        List<String> idle = t.answers().all().keySet().stream()
                .filter(id ->
                        t.answers().get(id).isPresent() && !here.deciding().containsKey(id))
                .filter(id -> {
                    Picture without = picture(t.word(), t.answers().without(id));
                    return without.concluded().equals(here.concluded())
                            && without.deciding().equals(here.deciding());
                })
                .toList();
        for (String id : idle) {
            assertThat(Likeness.of(here, picture(t.word(), t.answers().without(id)))
                            .distance())
                    .as(id)
                    .isZero();
        }
    }

    @Test
    void anotherLiquidIsFartherThanAnotherMass() {
        Told t = CASES.stream()
                .filter(c -> c.name().equals("lantern-finial-block-mould"))
                .findFirst()
                .orElseThrow();
        Picture here = picture(t);
        Answers heavier =
                t.answers().with("batch-mass", new Answer.Quantity(Estimate.exactly(1.1), "kg", "1.1 kg"), "1.1 kg");
        Answers other = t.answers().with("material", new Answer.Choice("platinum-silicone"), "platinum-silicone");
        assertThat(Likeness.of(here, picture("plan", other)).distance())
                .isGreaterThan(Likeness.of(here, picture("plan", heavier)).distance());
        assertThat(Likeness.of(here, picture("plan", other)).differs()).contains("material");
    }

    /** Two pictures by hand: weights 3 and 1, one choice differs, a tenfold quantity; conclusions share 2 of 6. */
    @Test
    void theMeasureIsTheStatedOne() {
        Answers a = Answers.NONE
                .with("job", new Answer.Choice("embed"), "embed")
                .with("batch-mass", new Answer.Quantity(Estimate.exactly(0.1), "kg", ""), "0.1 kg");
        Answers b = Answers.NONE
                .with("job", new Answer.Choice("embed"), "embed")
                .with("batch-mass", new Answer.Quantity(Estimate.exactly(1), "kg", ""), "1 kg");
        Map<String, Double> deciding = Map.of("job", 3.0, "batch-mass", 1.0);
        Likeness l = Likeness.of(
                new Picture(a, deciding, Map.of("x", 2.0, "y", 4.0), ""),
                new Picture(b, deciding, Map.of("x", 2.0), ""));
        assertThat(l.distance()).isCloseTo((1.0 / 4 + 4.0 / 6) / 2, within(1e-12));
        assertThat(l.same()).containsExactly("job");
        assertThat(l.differs()).containsExactly("batch-mass");
    }
}
