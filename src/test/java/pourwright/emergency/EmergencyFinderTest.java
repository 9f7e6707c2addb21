package pourwright.emergency;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.knowledge.Emergency;
import pourwright.knowledge.KnowledgeReader;

/** Whether a hasty line finds what it means. */
class EmergencyFinderTest {
    private static final List<Emergency> ALL = KnowledgeReader.emergencies(Path.of("knowledge"));
    private static final EmergencyFinder FINDER = new EmergencyFinder(ALL);
    private static final int LONG_WORD = 6;

    private static String taken(String typed) {
        return FINDER.find(typed).map(f -> f.taken().id()).orElse("nothing");
    }

    static Stream<Emergency> all() {
        return ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everythingPeopleSayFindsItsOwn(Emergency e) {
        List<String> phrases = new ArrayList<>(e.says());
        phrases.addAll(List.of(e.title(), e.inShort(), e.id(), e.title().toUpperCase(Locale.ROOT)));
        for (String said : phrases) {
            assertThat(taken(said)).as(said).isEqualTo(e.id());
        }
    }

    /** A letter left out, doubled, changed, or swapped with its neighbour, anywhere in a word of six letters or more. */
    @ParameterizedTest
    @MethodSource("all")
    void oneSlipInALongWordFindsTheSame(Emergency e) {
        List<String> lost = new ArrayList<>();
        int tried = 0;
        for (String said : e.says()) {
            for (String word : said.split(" ")) {
                for (String slipped : word.length() < LONG_WORD ? Set.<String>of() : slips(word)) {
                    tried++;
                    String typed = said.replace(word, slipped);
                    if (!taken(typed).equals(e.id())) {
                        lost.add(typed + " -> " + taken(typed));
                    }
                }
            }
        }
        assertThat(tried).isPositive();
        assertThat(lost).isEmpty();
    }

    private static Set<String> slips(String word) {
        Set<String> all = new TreeSet<>();
        for (int i = 0; i < word.length(); i++) {
            String before = word.substring(0, i);
            String after = word.substring(i + 1);
            all.add(before + after);
            all.add(before + word.charAt(i) + word.charAt(i) + after);
            all.add(before + "x" + after);
            if (!after.isEmpty()) {
                all.add(before + after.charAt(0) + word.charAt(i) + after.substring(1));
            }
        }
        all.remove(word);
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "foam rim, foam-at-rim",
        "its foaming over the cup!!, foam-at-rim",
        "froth coming up to the lid quick, foam-at-rim",
        "silcone got sucked into the hose, foam-in-pump",
        "overflowed into the pump, foam-in-pump",
        "cup smokng, cup-smoking",
        "the cup is too hot to hold, cup-smoking",
        "my pot of resin is smoking like hell, cup-smoking",
        "lid creking, lid-cracks",
        "there's a crack in the lid, lid-cracks",
        "oil got sucked back into the chamber, oil-drawn-back",
        "pump oil all over the mix, oil-drawn-back",
        "iso in my eye, splash-in-eye",
        "MEKP splashed in eyes, splash-in-eye",
        "resin all over my hands, liquid-on-skin",
        "spilt hardener on my arm, liquid-on-skin",
        "can't breathe, breathing",
        "tight chest after pouring urethane, breathing",
        "dropped the iso tin on the floor, isocyanate-spill",
        "spilld some isocyanate, isocyanate-spill",
        "spilled the mekp, peroxide-spill",
        "peroxide all over the bench, peroxide-spill",
        "mixed cobalt and mekp, peroxide-met-promoter",
        "poured the promotor into the catalyst, peroxide-met-promoter",
        "the iso can is bulging, bulging-can",
        "tin hissing when opened, bulging-can",
        "resin is stringing, boils-under-vacuum",
        "wont stop boiling in the chamber, boils-under-vacuum",
        "mold leaks, mould-leaks",
        "mould box is leeking at the bottom, mould-leaks",
        "presure pot hissing, pressure-pot-hisses",
        "relief valve of the pot blows, pressure-pot-hisses",
        "pot lid wont open, pot-will-not-open",
        "lid still under pressure, pot-will-not-open",
        "mix has gone thick, too-thick-to-pour",
        "resin is already gelling in the cup, too-thick-to-pour",
        "power went out mid degas, pump-stopped",
        "pump just stoped, pump-stopped",
        "got an electric shock, somebody-hurt",
        "swallowed some resin, somebody-hurt",
        "he is unconscious, somebody-hurt",
        "cut my hand on the glass, somebody-hurt",
        "the pot exploded, fire-or-fumes",
        "fire, fire-or-fumes",
        "the room is full of fumes, fire-or-fumes",
        "forgot the relaese, part-stuck",
        "part is stuck in the mold, part-stuck"
    })
    void whatPeopleTypeFindsWhatTheyMean(String typed, String id) {
        assertThat(taken(typed)).isEqualTo(id);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "?!",
                "help me please",
                "what is the weather in june",
                "zzzz",
                "1234",
                "resin everywhere",
                "\u0000\u202e"
            })
    void whatNamesNothingFindsNothing(String typed) {
        assertThat(FINDER.find(typed)).isEmpty();
    }

    @Test
    void onATieDangerToPeopleGoesFirst() {
        Emergency part = one("a-part", Emergency.Danger.PART, "gizmo squeaks");
        Emergency people = one("people", Emergency.Danger.PEOPLE, "gizmo rattles");
        // Also against the order of the list.
        List<Emergency> more = new ArrayList<>(List.of(part, people));
        more.addAll(ALL);
        EmergencyFinder finder = new EmergencyFinder(more);
        EmergencyFinder.Found found = finder.find("gizmo").orElseThrow();
        assertThat(found.taken()).isEqualTo(people);
        assertThat(found.others()).containsExactly(part);
        assertThat(finder.find("gizmo squeaks").orElseThrow().taken()).isEqualTo(part);
    }

    private static Emergency one(String id, Emergency.Danger danger, String says) {
        return new Emergency(id, "Thing", "thing", danger, List.of(says), List.of("x", "y"), "l", "d", "s");
    }

    @Test
    void theOtherCloseOnesAreNamed() {
        EmergencyFinder.Found found = FINDER.find("hissing").orElseThrow();
        List<String> ids = new ArrayList<>(List.of(found.taken().id()));
        found.others().forEach(o -> ids.add(o.id()));
        assertThat(ids).contains("bulging-can", "pressure-pot-hisses").doesNotHaveDuplicates();
        assertThat(ids.size()).isLessThanOrEqualTo(4);
    }

    @Test
    void theSameLineFindsTheSameAndALongOneEnds() {
        String line = "foam ".repeat(100_000);
        assertThat(FINDER.find(line)).isEqualTo(new EmergencyFinder(ALL).find(line));
        assertThat(taken(line)).isEqualTo("foam-at-rim");
    }

    @ParameterizedTest
    @CsvSource({
        "smoking, smok",
        "smokes, smok",
        "smoke, smok",
        "hisses, hiss",
        "hissing, hiss",
        "stopped, stop",
        "spilled, spill",
        "bleed, bleed",
        "strings, string",
        "eyes, ey",
        "gas, ga",
        "lid, lid"
    })
    void wordsAreKnownWithoutTheirEndings(String word, String stem) {
        assertThat(Fragment.stem(word)).isEqualTo(stem);
    }
}
