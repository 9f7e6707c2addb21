package pourwright.interview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.diagnosis.WordPicker;

/** Words people use instead of the trade's: what each comes to, as an answer or in a line told about a fault. Common practice. */
class TradeWordsTest {
    private static final WordPicker PICKER = new WordPicker(Asked.K);

    /** Words that answer a question of the plan. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pot-life-meaning | gels | gel",
                "pot-life-meaning | goes off | gel",
                "pot-life-meaning | kicks | gel",
                "pot-life-meaning | sets up | gel",
                "pot-life-meaning | cooks | gel",
                "mix-ratio | 10 resin to 1 curing agent | 10 resin : 1 curing agent",
                "mix-ratio | 1 catalyst to 10 base | 10 base : 1 catalyst",
                "mix-ratio | 2 % catalyst | 2 % of base (100:2)",
                "gauge-reading | pulled 29 inches | 29 inHg",
                "gauge-reading | it pulls 29\" | 29 inHg",
                "vacuum-time | degassed for 10 | 10 min",
                "vacuum-time | 10 minutes | 10 min",
                "kit | pressure pot | pressure",
                "chamber-body | paint pot | pressure-pot"
            },
            quoteCharacter = '`')
    void anAnswerInTheirWords(String question, String typed, String expected) {
        assertThat(Asked.echo(Asked.answer(question, typed))).isEqualTo(expected);
    }

    /** Words that mean nothing without another: the console asks, with what each could be. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kit | the pot | vacuum; pressure",
                "chamber-body | the pot | pressure-pot; kitchen-pot",
                "mix-ratio | 100 part A to 90 part B | 100 base : 90 hardener; 100 hardener : 90 base; 100:90",
                "material | epoxy | coating-epoxy; deep-pour-epoxy; infusion-epoxy; laminating-epoxy",
                "material | clear casting epoxy | deep-pour-epoxy; polyester; clear-polyurethane; coating-epoxy; infusion-epoxy; laminating-epoxy",
                "material | silicone | brushable-silicone; platinum-silicone; tin-silicone"
            })
    void aWordThatCouldBeTwoThingsIsAsked(String question, String typed, String expected) {
        List<String> meanings = Asked.again(question, typed).meanings();
        assertThat(meanings).containsExactlyInAnyOrder(expected.split("; "));
        meanings.forEach(m -> Asked.answer(question, m));
    }

    /** A hardener by any name says nothing about the liquid, and a promoter is not one: no answer is guessed. */
    @ParameterizedTest
    @CsvSource({
        "material, catalyst",
        "material, hardener",
        "material, curing agent",
        "material, part A",
        "material, part B",
        "mix-ratio, 1 % activator",
        "mix-ratio, 1 % accelerator",
        "mix-ratio, 1 % promoter",
        "mix-ratio, 1 % cobalt",
        "mix-ratio, 1 % drier"
    })
    void aWordThatNamesNoFamilyIsNoAnswer(String question, String typed) {
        assertThat(Asked.again(question, typed).meanings()).isEmpty();
    }

    /** Fault words that are an answer to the question what is wrong. */
    @ParameterizedTest
    @CsvSource({
        "craters, face",
        "oily, face",
        "greasy, face",
        "milky, colour",
        "ripped, sticks",
        "froth, froth",
        "foam, bubbles",
        "blew up, froth",
        "sticky, soft"
    })
    void aFaultByItsNameAtThePrompt(String typed, String expected) {
        assertThat(Asked.echo(Asked.answer("symptom", typed))).isEqualTo(expected);
    }

    /** Words that fit several faults, or none by itself: the console shows the choices and takes nothing. */
    @ParameterizedTest
    @CsvSource({"wet", "head", "fizz", "boil", "pits", "chunked", "cheese", "doughnut", "step", "offset", "goes off"})
    void aFaultThatIsAskedAbout(String typed) {
        assertThat(Asked.again("symptom", typed).sentence()).contains("bubbles").contains("don't know");
    }

    /** Words in a line told about a fault, and all the answers they come to. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "it cures soft | {symptom=soft}",
                "it stays gummy | {later=gummy, symptom=soft}",
                "it never went off | {symptom=soft}",
                "the top is sticky | {symptom=soft}",
                "it has a greasy top | {softness=tacky-top}",
                "it foamed | {symptom=bubbles}",
                "divots | {symptom=bubbles}",
                "pock marks | {shape=ragged-crater, symptom=bubbles}",
                "bug holes | {symptom=bubbles}",
                "fish eyes | {surface-look=rimmed-craters, symptom=face}",
                "cissing | {surface-look=rimmed-craters}",
                "dewetting | {surface-look=rimmed-craters}",
                "cloudy | {symptom=colour}",
                "foggy | {colour-look=cloudy, symptom=colour}",
                "it has shrunk | {symptom=shape}",
                "it is sucked in | {symptom=shape}",
                "it has sunk | {symptom=shape}",
                "warped | {symptom=shape}",
                "bowed | {symptom=shape}",
                "like a potato chip | {warped-when=after}",
                "a step at the seam | {joint-look=step}",
                "it won't pull down | {symptom=gauge}",
                "it volcanoed | {froth-course=overflowed, symptom=froth}",
                "it puked | {symptom=froth}"
            })
    void aFaultInTheirWords(String told, String expected) {
        Map<String, Object> read = new TreeMap<>();
        PICKER.pick(told).answers().all().forEach((id, given) -> read.put(id, given.raw()));
        assertThat(read).hasToString(expected);
    }
}
