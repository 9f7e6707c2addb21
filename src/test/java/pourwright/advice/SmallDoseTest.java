package pourwright.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.interview.Slip;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Small doses and wrong weighings, against sums done by hand. */
class SmallDoseTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Map<String, String> EPOXY =
            Map.of("material", "coating-epoxy", "mix-ratio", "10:1 by weight", "amount-by", "mass");

    private static Answers answers(Map<String, String> said, String... more) {
        Answers all = Answers.NONE;
        for (Map.Entry<String, String> e : said.entrySet()) {
            all = new AnswersJson(KNOWLEDGE).with(all, e.getKey(), e.getValue());
        }
        for (int i = 0; i < more.length; i += 2) {
            all = new AnswersJson(KNOWLEDGE).with(all, more[i], more[i + 1]);
        }
        return all;
    }

    private static double figure(Consultation c, String id) {
        return c.figure(id).orElseThrow().si().typical();
    }

    /** 33 g at 10:1 is 30 g and 3 g; one gram of each is 1/30 + 1/3 = 36.7 %, where 2 % is allowed. */
    @Test
    void aGramScaleIsTooCoarseForThreeGrams() {
        Consultation c = Advisor.consult(answers(EPOXY, "batch-mass", "33 g", "scale-step", "1 g"), KNOWLEDGE);
        assertThat(figure(c, "ratio-error")).isCloseTo(1.0 / 30 + 1.0 / 3, within(1e-9));
        assertThat(figure(c, "least-batch")).isCloseTo(0.033 * (1.0 / 30 + 1.0 / 3) / 0.02, within(1e-9));
        assertThat(figure(c, "finest-step")).isCloseTo(0.001 * 0.02 / (1.0 / 30 + 1.0 / 3), within(1e-9));
        assertThat(c.finding("scale-too-coarse")).isPresent();
        assertThat(c.verdict()).isEqualTo(Verdict.CHANGE);
    }

    /** What the advice names is enough: the batch, and the scale, that it asks for bring the error to what is allowed. */
    @Test
    void whatIsAskedForIsEnoughAndNotTooMuch() {
        Consultation c = Advisor.consult(answers(EPOXY, "batch-mass", "33 g", "scale-step", "1 g"), KNOWLEDGE);
        for (double more : new double[] {1.001, 0.98}) {
            boolean enough = more > 1;
            String batch = figure(c, "least-batch") * more * 1000 + " g";
            String step = figure(c, "finest-step") / more * 1000 + " g";
            assertThat(Advisor.consult(answers(EPOXY, "batch-mass", batch, "scale-step", "1 g"), KNOWLEDGE)
                            .finding("scale-too-coarse")
                            .isEmpty())
                    .isEqualTo(enough);
            assertThat(Advisor.consult(answers(EPOXY, "batch-mass", "33 g", "scale-step", step), KNOWLEDGE)
                            .finding("scale-too-coarse")
                            .isEmpty())
                    .isEqualTo(enough);
        }
    }

    /** 12 g where 10 g belong to 100 g: 120 g of resin belong to 12 g, so 20 g more, 132 g in all. */
    @ParameterizedTest
    @CsvSource({
        "100 g, 12 g, 20, 0, 132, 0.2, wrong-dose-add-first",
        "100 g, 8 g, 0, 2, 110, 0.25, wrong-dose-add-second",
        "100 g, 10.1 g, 1, 0, 111.1, 0.01, wrong-dose-small-enough"
    })
    void aWrongWeighingIsPutRight(
            String first, String second, double addFirstG, double addSecondG, double allG, double off, String rule) {
        Consultation c = Advisor.consult(answers(EPOXY, "put-first", first, "put-second", second), KNOWLEDGE);
        assertThat(figure(c, "add-first") * 1000).isCloseTo(addFirstG, within(1e-9));
        assertThat(figure(c, "add-second") * 1000).isCloseTo(addSecondG, within(1e-9));
        assertThat(figure(c, "mass-put-right") * 1000).isCloseTo(allG, within(1e-9));
        assertThat(figure(c, "ratio-off")).isCloseTo(off, within(1e-9));
        assertThat(c.finding(rule)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "I put 12 g instead of 10 g hardener",
                "put in 12g instead of 10g of hardener",
                "We poured 12 g instead of 10 g of the hardener.",
                "I have added 12 grams instead of 10 grams part b"
            })
    void aSlipIsUnderstoodAsPeopleSayIt(String line) {
        Answers in = Slip.of(line, answers(EPOXY), KNOWLEDGE).orElseThrow();
        Answers all = answers(EPOXY);
        for (var e : in.all().entrySet()) {
            all = new AnswersJson(KNOWLEDGE).with(all, e.getKey(), e.getValue().raw());
        }
        assertThat(figure(Advisor.consult(all, KNOWLEDGE), "add-first") * 1000).isCloseTo(20, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "I put the cup instead of the jar",
                "put 12 g instead of 10 g",
                "12 g instead of 10 g hardener",
                "I put 12 g instead of 10 g sugar",
                "I put -3 g instead of 10 g hardener"
            })
    void whatIsNoSlipIsNotTakenForOne(String line) {
        assertThat(Slip.of(line, answers(EPOXY), KNOWLEDGE)).isEmpty();
    }

    /** By volume nothing is round: 15 g × 1.03 / 1.1 is 14.045 g, and that is what a saved case holds. */
    @Test
    void whatIsKeptOfASlipIsWhatWasReckonedWith() {
        Answers said = answers(Map.of("material", "fast-polyurethane", "mix-ratio", "1:1 by volume"));
        Answers in =
                Slip.of("I put 17 g instead of 15 g hardener", said, KNOWLEDGE).orElseThrow();
        Answers told = said;
        Answers read = said;
        for (var e : in.all().entrySet()) {
            told = told.with(e.getKey(), e.getValue().answer(), e.getValue().raw());
            read = new AnswersJson(KNOWLEDGE)
                    .with(read, e.getKey(), e.getValue().raw());
        }
        assertThat(in.all().get("put-first").raw()).isEqualTo("14.045 g");
        assertThat(figure(Advisor.consult(read, KNOWLEDGE), "add-first"))
                .isEqualTo(figure(Advisor.consult(told, KNOWLEDGE), "add-first"));
    }

    @Test
    void withoutARatioNobodyKnowsWhatBelongsThere() {
        assertThat(Slip.of("I put 12 g instead of 10 g hardener", Answers.NONE, KNOWLEDGE))
                .isEmpty();
    }

    @Test
    void theScaleIsAskedAboutForSmallPartsOnly() {
        assertThat(Advisor.consult(answers(EPOXY, "batch-mass", "33 g"), KNOWLEDGE).needs().stream()
                        .map(Need::question))
                .contains("scale-step");
        assertThat(Advisor.consult(answers(EPOXY, "batch-mass", "2 kg"), KNOWLEDGE).needs().stream()
                        .map(Need::question))
                .doesNotContain("scale-step");
    }
}
