package pourwright.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** What a line in own words comes to, and what of it is named back as not understood. */
class WordPickerTest {
    private static final DiagnosticKnowledge KNOWLEDGE = knowledge();
    private static final WordPicker PICKER = new WordPicker(KNOWLEDGE);

    private static DiagnosticKnowledge knowledge() {
        Path dir = Path.of("knowledge");
        Knowledge base = KnowledgeReader.read(dir);
        return KnowledgeReader.forDiagnosis(dir, base);
    }

    @ParameterizedTest
    @CsvSource({
        "epoxy with bubbles, epoxy",
        "the urethane has bubbles, polyurethane",
        "pu; bubbles, polyurethane",
        "silicone full of bubbles, silicone",
        "bubbles in gypsum, gypsum"
    })
    void aWordOfEveryClassOfAFamilyNamesTheFamily(String text, String family) {
        WordPicker.Picked picked = PICKER.pick(text);
        assertThat(picked.family()).isEqualTo(family);
        assertThat(picked.answers().has("material")).isFalse();
        assertThat(picked.answers().choices("symptom")).contains("bubbles");
        assertThat(picked.leftOut()).isEmpty();
        assertThat(KNOWLEDGE.base().materials().values())
                .filteredOn(m -> m.family().equals(family))
                .hasSizeGreaterThan(1);
    }

    @ParameterizedTest
    @CsvSource({
        "tin silicone with bubbles, tin-silicone",
        "deep pour epoxy; bubbles, deep-pour-epoxy",
        "plaster with bubbles, plaster",
        "polyester with bubbles, polyester"
    })
    void theNameOfAClassGoesBeforeItsFamily(String text, String material) {
        WordPicker.Picked picked = PICKER.pick(text);
        assertThat(picked.answers().choice("material")).isEqualTo(material);
        assertThat(picked.family()).isEmpty();
        assertThat(picked.leftOut()).isEmpty();
    }

    @Test
    void twoFamiliesOrADeniedOneNarrowNothing() {
        assertThat(PICKER.pick("epoxy or silicone, bubbles").family()).isEmpty();
        assertThat(PICKER.pick("no epoxy, bubbles").family()).isEmpty();
        assertThat(PICKER.pick("no epoxy, bubbles").leftOut()).containsExactly("no epoxy");
        assertThat(PICKER.pick("no epoxy, bubbles").answers().choices("symptom"))
                .as("a negation stays in its clause")
                .containsExactly("bubbles");
    }

    @Test
    void whatWasNotUnderstoodIsNamedWithoutItsFillers() {
        assertThat(PICKER.pick("epoxy, smells of solvent, bubbles under the horns")
                        .leftOut())
                .containsExactly("smells of solvent");
        assertThat(PICKER.pick("it is a bit qwerty and there are bubbles in the xylophone")
                        .leftOut())
                .containsExactly("qwerty", "xylophone");
        assertThat(PICKER.pick("there are some bubbles in it").leftOut()).isEmpty();
        assertThat(PICKER.pick("the of and").leftOut()).isEmpty();
        assertThat(PICKER.pick("").leftOut()).isEqualTo(List.of());
    }

    @Test
    void aDeniedWordIsNoObservationAndIsNamedBack() {
        WordPicker.Picked picked = PICKER.pick("bubbles but not sticky");
        assertThat(picked.answers().choices("symptom")).containsExactly("bubbles");
        assertThat(picked.leftOut()).containsExactly("not sticky");
    }

    /** What is understood and what is named back are the whole text but for fillers. */
    @Test
    void nothingIsPassedOverInSilence() {
        String text = "alpha bubbles beta sticky gamma tin silicone delta";
        assertThat(PICKER.pick(text).leftOut()).containsExactly("alpha", "beta", "gamma", "delta");
    }
}
