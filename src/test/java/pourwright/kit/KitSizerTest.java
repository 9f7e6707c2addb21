package pourwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** The pump that is picked serves, a smaller one does not, and both are what a plan says. */
class KitSizerTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final AnswersJson READER = new AnswersJson(KNOWLEDGE);

    private static Answers answers(String... words) {
        Answers all = Answers.NONE;
        for (String word : words) {
            int at = word.indexOf('=');
            all = READER.with(all, word.substring(0, at), word.substring(at + 1));
        }
        return all;
    }

    private static Sizing size(String uses, String... words) {
        return KitSizer.size(answers(words), KNOWLEDGE, uses);
    }

    @Test
    void aBiggerChamberWantsABiggerPump() {
        double small = size("fast-polyurethane", "chamber-volume=8 L", "hose-bore=12 mm", "hose-length=1 m")
                .pick()
                .orElseThrow()
                .speedM3PerS();
        double large = size("fast-polyurethane", "chamber-volume=40 L", "hose-bore=12 mm", "hose-length=1 m")
                .pick()
                .orElseThrow()
                .speedM3PerS();
        assertThat(large).isGreaterThan(small);
    }

    @Test
    void aPlanWithThePickedPumpDegasses() {
        Sizing s = size("tin-silicone, clear-polyurethane", "chamber-volume=20 L", "hose-bore=12 mm");
        Sizing.Pick pick = s.pick().orElseThrow();
        for (String material : new String[] {"tin-silicone", "clear-polyurethane"}) {
            Consultation c = Advisor.consult(
                    answers(
                            "material=" + material,
                            "kit=vacuum",
                            "chamber-volume=20 L",
                            "hose-bore=12 mm",
                            "pump-kind=" + pick.kind(),
                            "pump-speed=" + pick.speedM3PerS() * 1000 + " L/s"),
                    KNOWLEDGE);
            assertThat(c.methods()).contains("degas-mix");
            assertThat(c.figure("reachable-pressure").orElseThrow().si().typical())
                    .isLessThanOrEqualTo(
                            c.figure("vacuum-pressure").orElseThrow().si().high());
        }
    }

    @Test
    void aKindThatStopsShortIsRuledOutInWords() {
        Sizing s = size("infusion-epoxy", "chamber-volume=20 L", "hose-bore=12 mm");
        Sizing.Kind hand = s.kinds().stream()
                .filter(k -> k.id().equals("hand"))
                .findFirst()
                .orElseThrow();
        assertThat(hand.serves()).isEmpty();
        assertThat(hand.material()).isEqualTo("infusion-epoxy");
        assertThat(hand.why()).endsWith(".").doesNotContain("{");
    }

    @Test
    void aNarrowHoseIsWhereABiggerPumpStopsHelping() {
        Sizing s = size("clear-polyurethane", "chamber-volume=40 L", "hose-bore=4 mm", "hose-length=3 m");
        assertThat(s.enough()).isNotEmpty();
        assertThat(s.enough().get(0).limit()).isEqualTo(Sizing.Limit.HOSE);
        Sizing wide = size("clear-polyurethane", "chamber-volume=40 L", "hose-bore=20 mm", "hose-length=1 m");
        assertThat(wide.enough().get(0).limit()).isNotEqualTo(Sizing.Limit.HOSE);
    }

    @Test
    void whatNeedsNoVacuumIsSaid() {
        Sizing s = size("alginate", "chamber-volume=20 L");
        assertThat(s.wants()).extracting(Sizing.Want::vacuum).containsExactly(false);
        assertThat(s.pick()).isEmpty();
    }

    @Test
    void whatIsNoMaterialIsBadInput() {
        assertThatThrownBy(() -> size("tin-silicone, moon dust"))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("moon dust");
        assertThatThrownBy(() -> size(" , ")).isInstanceOf(BadAnswer.class);
    }
}
