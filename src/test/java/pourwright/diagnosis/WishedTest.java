package pourwright.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;

/** What would put another cause first is diagnosed anew from typed answers. */
class WishedTest {
    private static final DiagnosticKnowledge K =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    private static final AnswersJson READER = new AnswersJson(K.base());
    private final Diagnoser diagnoser = new Diagnoser(K);

    private static Answers foam() {
        Answers answers = Answers.NONE;
        for (String[] a : List.of(
                new String[] {"material", "fast-polyurethane"},
                new String[] {"symptom", "bubbles"},
                new String[] {"where", "all-through"})) {
            answers = READER.with(answers, a[0], a[1]);
        }
        return answers;
    }

    @Test
    void whatIsOfferedPutsTheCauseFirst() {
        int found = 0;
        for (RankedCause c : diagnoser.diagnose(foam()).ranked().subList(1, 9)) {
            Diagnosis.Wish wish = diagnoser.whyNot(foam(), c.cause().id());
            for (List<Diagnosis.Otherwise> set : wish.sets()) {
                found++;
                assertThat(set).hasSizeBetween(1, 2);
                Answers seen = foam();
                for (Diagnosis.Otherwise o : set) {
                    seen = READER.with(seen, o.question(), o.choice());
                }
                assertThat(diagnoser.diagnose(seen).ranked().get(0).cause().id())
                        .as("%s", set)
                        .isEqualTo(c.cause().id());
            }
        }
        assertThat(found).isGreaterThan(5);
    }

    @Test
    void aPairIsOfferedOnlyWhereNoSingleObservationDoes() {
        for (RankedCause c : diagnoser.diagnose(foam()).ranked().subList(1, 9)) {
            List<List<Diagnosis.Otherwise>> sets =
                    diagnoser.whyNot(foam(), c.cause().id()).sets();
            assertThat(sets.stream().map(List::size).distinct().count()).isLessThanOrEqualTo(1);
        }
    }
}
