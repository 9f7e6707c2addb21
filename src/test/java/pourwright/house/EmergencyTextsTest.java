package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.knowledge.Emergency;
import pourwright.knowledge.KnowledgeReader;

/** What a person in a hurry is told must never be what a safety data sheet forbids. */
class EmergencyTextsTest {
    private static final List<Emergency> ALL = KnowledgeReader.emergencies(Path.of("knowledge"));

    /** Each must not be told: found in a sentence, a word that forbids it must stand before it in the same sentence. */
    private static final List<Pattern> FORBIDDEN = Stream.of(
                    "\\brub\\b",
                    "\\b(?:close|closing|tighten|seal)\\b",
                    "\\blid on\\b|\\bcover (?:it|the cup)(?! with dry sand)",
                    "\\bwater on\\b|\\bpour water\\b|\\bquench\\b|\\bhose (?:it )?down\\b|\\bflush\\b",
                    "\\bsawdust\\b|\\brags?\\b|\\bpaper\\b|\\bcloth\\b",
                    "\\bsolvent\\b|\\bacetone\\b|\\bthinner\\b|\\bthin it\\b",
                    "\\bvacuum\\b|\\bpull(?:ed)? (?:deeper|harder|on)\\b",
                    "\\b(?:loosen|force|drill|weld|hammer|pry)\\b",
                    "\\bclamp\\b",
                    "\\b(?:lift|lean|stir|shake|heat|warm it)\\b",
                    "\\bcompressed air\\b",
                    "\\b(?:back|return\\w*) (?:in|into|to) (?:the|it|its)\\b|\\binto it\\b",
                    "\\bgoes back\\b",
                    "\\bfresh mix\\b",
                    "\\bfight\\b|\\bextinguish\\w*\\b|\\bput (?:it|the fire) out\\b",
                    "\\b(?:vomit\\w*|drink|milk|cream|ointment|vinegar|neutrali[sz]e\\w*|salve|inhaler|antidote|lenses)\\b")
            .map(p -> Pattern.compile(p, Pattern.CASE_INSENSITIVE))
            .toList();

    private static final Pattern FORBIDS = Pattern.compile(
            "\\b(?:never|not|no|nobody|nothing|without|from solvent|is water)\\b", Pattern.CASE_INSENSITIVE);

    static Stream<Emergency> all() {
        return ALL.stream();
    }

    private static boolean forbiddenTold(String step) {
        for (String sentence : step.split("(?<=[.:;?])\\s+")) {
            for (Pattern p : FORBIDDEN) {
                Matcher m = p.matcher(sentence);
                while (m.find()) {
                    if (!FORBIDS.matcher(sentence.substring(0, m.start())).find()) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("all")
    void nothingForbiddenIsTold(Emergency e) {
        assertThat(e.steps().stream().filter(EmergencyTextsTest::forbiddenTold)).isEmpty();
    }

    /** The test can fail. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Rub the eye.",
                "Close the can.",
                "Pour water on the isocyanate.",
                "Soak it up with sawdust.",
                "Wipe the peroxide with a rag.",
                "Clean the skin with solvent.",
                "Put the cup under vacuum.",
                "Loosen the bolts.",
                "Undo a clamp.",
                "Lift the cup out.",
                "Put a lid on it.",
                "Blow it free with compressed air.",
                "Pour the rest back into its can.",
                "Fight the fire.",
                "Do not run. Stir the mix.",
                "Drink milk."
            })
    void eachOfTheseWouldBeFound(String told) {
        assertThat(forbiddenTold(told)).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "splash-in-eye | do not rub | 15 minutes | medical help | sds",
                "breathing | stop the work | fresh air | medical help | sds",
                "liquid-on-skin | wash | never solvent | medical help | sds",
                "isocyanate-spill | air the room | no lid | fire service | open container",
                "peroxide-spill | never sawdust, rags | plastic tools | no flame | sds",
                "peroxide-met-promoter | do not stir | everybody out | fire service | nobody goes back",
                "bulging-can | never close | everybody back | outdoors only as its sds says | pour nothing",
                "cup-smoking | do not lift | everybody out | no lid | no vacuum",
                "lid-cracks | off the lid | everybody back | let air in gently | never pulled again",
                "pressure-pot-hisses | step back | do not touch or tighten | air supply | zero",
                "pot-will-not-open | never loosen a clamp or force | air supply | wait | specialist",
                "fire-or-fumes | everybody out | fire service | nobody goes back | never put water",
                "somebody-hurt | emergency number now | same danger | cut the power before | sds",
                "foam-in-pump | let air in | then stop | gloves | never force",
                "oil-drawn-back | let air in | do not pour | then stop the pump | gloves",
                "too-thick-to-pour | do not pour | vacuum | thin in a metal tray | outdoors"
            })
    void whatMustBeSaidIsSaid(String id, String first, String second, String third, String fourth) {
        Emergency e = ALL.stream().filter(x -> x.id().equals(id)).findFirst().orElseThrow();
        assertThat(String.join(" ", e.steps()).toLowerCase(Locale.ROOT)).contains(first, second, third, fourth);
    }

    /** First aid is the data sheet's: the closing of whatever touches people names its section 4, or another that decides. */
    @ParameterizedTest
    @MethodSource("all")
    void everyEntryDefers(Emergency e) {
        assertThat(e.closing()).contains("emergency number").matches(".*(SDS section|Local rules).* decides?\\.");
        if (List.of("somebody-hurt", "splash-in-eye", "breathing", "liquid-on-skin")
                .contains(e.id())) {
            assertThat(e.defers()).isEqualTo("SDS section 4 decides.");
        }
    }

    /** The other house tests read the same texts. */
    @Test
    void theHouseReadsThem() {
        List<String> said = SaidTexts.known().stream()
                .filter(t -> t.where().startsWith("knowledge/emergencies.json"))
                .map(SaidTexts::text)
                .toList();
        assertThat(said).contains(ALL.get(0).line());
        ALL.forEach(e -> {
            assertThat(said).containsAll(e.steps()).contains(e.title(), e.defers());
            assertThat(said).doesNotContainAnyElementsOf(e.says());
        });
    }
}
