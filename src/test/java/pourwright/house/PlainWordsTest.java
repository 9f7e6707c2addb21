package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pourwright.console.Wrap;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** The program speaks plainly, wherever its words are kept. */
class PlainWordsTest {
    private static final double USUAL_WORDS = 20;
    private static final int MOST_WORDS = 30;
    private static final int NARROWEST = 24;
    private static final int WIDEST = 100;

    private static final List<SaidTexts> TEXTS = Stream.concat(SaidTexts.known().stream(), SaidTexts.coded().stream())
            .toList();

    /** Names files whose text is still too long; a file that is mended must leave the list. */
    private static final Set<String> STILL_LONG =
            Set.of("rules/diagnosis/cured-on-glass-and-cured-with-a-fresh-lot.drl");

    /**
     * Words that judge a person or what the person typed. "Wrong", "fault" and "error" stay allowed where they are about a
     * part, a can or a dial, so they count only in a sentence that says "you".
     */
    private static final Pattern BLAME = Pattern.compile(
            "\\b(?:invalid|illegal|incorrect|improper|careless\\w*|stupid\\w*|foolish\\w*|sloppy|clumsy|lazy|mistakes?|user error"
                    + "|bad (?:input|answer)|fatal|abort\\w*|syntax|nonsense|unacceptable)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern YOU = Pattern.compile("\\byou(?:r|rs)?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern BLAME_WITH_YOU = Pattern.compile(
            "\\b(?:wrong\\w*|faults?|errors?|fail\\w*|forgot\\w*|should have|must not have|did not|blame)\\b",
            Pattern.CASE_INSENSITIVE);

    /** A unit at the start of a line, as people write it. */
    private static final Pattern UNIT_FIRST = Pattern.compile(
            "^(?:%|°[CF]|K|kelvin|mm|cm|m|inch(?:es)?|g|kg|oz|lb|grams?|mL|L|litres?|mbar|bar|[hk]?Pa|inHg|s|min|h"
                    + "|seconds?|minutes?|hours?|days?|weeks?|months?|years?)(?![\\w-]).*");

    /** Words of the trade that a beginner need not know. */
    private static final List<String> TRADE = List.of(
            "absolute gauge",
            "absolute pressure",
            "addition cure",
            "air inhibition",
            "air release agent",
            "air trap",
            "alginate",
            "aliphatic",
            "amine",
            "amine blush",
            "aromatic",
            "barrier coat",
            "bleed valve",
            "blind pocket",
            "block mould",
            "boil-off",
            "bottom fill",
            "brush coat",
            "bughole",
            "bump cycle",
            "catalyst",
            "catch pot",
            "cavity",
            "cfm",
            "closed mould",
            "cold trap",
            "condensation cure",
            "conductance",
            "contact face",
            "crystallised",
            "cure",
            "degas",
            "degassing",
            "demould",
            "demould time",
            "detail coat",
            "dew point",
            "double cup",
            "draft",
            "dry fit",
            "exotherm",
            "face coat",
            "feed pot",
            "filler",
            "fish-eye",
            "flash",
            "flask",
            "flow line",
            "form oil",
            "formwork",
            "froth",
            "full cure",
            "gas ballast",
            "gasket",
            "gate",
            "gauge pressure",
            "gel",
            "gel coat",
            "gel time",
            "gelcoat",
            "glove mould",
            "gypsum",
            "hardener",
            "haze",
            "humidity",
            "hygroscopic",
            "infusion",
            "inhg",
            "inhibition",
            "inhibitor",
            "isocyanate",
            "jacket",
            "knit line",
            "laminate",
            "latex",
            "leak rate",
            "local air",
            "master",
            "mekp",
            "microballoons",
            "mix ratio",
            "moisture scavenger",
            "monomer",
            "mother mould",
            "nucleation",
            "oil mist",
            "open mould",
            "outgassing",
            "overhang",
            "parting line",
            "patch test",
            "peroxide",
            "pigment",
            "pinhole",
            "plasticiser",
            "polyol",
            "porosity",
            "porous",
            "post-cure",
            "pot life",
            "pour spout",
            "pressure cure",
            "pressure pot",
            "print coat",
            "promoter",
            "pull",
            "pump-down time",
            "pumping speed",
            "registration keys",
            "release agent",
            "relief valve",
            "riser",
            "rotary vane",
            "runaway",
            "sag",
            "sealer",
            "shelf life",
            "shell mould",
            "shellac",
            "shore",
            "silica gel",
            "sink mark",
            "slurry",
            "slush",
            "sprue",
            "styrene",
            "sulphur clay",
            "surfactant",
            "tack-free",
            "talc",
            "thickener",
            "thinner",
            "thixotrope",
            "ultimate pressure",
            "undercut",
            "vacuum chamber",
            "vane pump",
            "vapour pressure",
            "vent",
            "virtual leak",
            "viscosity",
            "void",
            "volatile",
            "warp",
            "wet out",
            "witness cup",
            "working time",
            "yield stress");

    private static List<String> those(Predicate<SaidTexts> fault) {
        return TEXTS.stream().filter(fault).map(SaidTexts::toString).toList();
    }

    private static int words(String sentence) {
        return sentence.strip().split("\\s+").length;
    }

    private static boolean tooLong(SaidTexts t) {
        List<String> sentences = t.sentences();
        return sentences.stream().anyMatch(s -> words(s) > MOST_WORDS)
                || sentences.stream().mapToInt(PlainWordsTest::words).average().orElse(0) > USUAL_WORDS;
    }

    @Test
    void sentencesAreShort() {
        assertThat(TEXTS).hasSizeGreaterThan(1000);
        assertThat(those(t -> tooLong(t) && !STILL_LONG.contains(t.where()))).isEmpty();
        assertThat(STILL_LONG.stream()
                        .filter(f -> TEXTS.stream().noneMatch(t -> t.where().equals(f) && tooLong(t))))
                .as("mended, so no longer on the list")
                .isEmpty();
    }

    @Test
    void numberAndUnitStandOnOneLineAtEveryWidth() {
        List<String> parted = new ArrayList<>();
        for (SaidTexts t : TEXTS) {
            for (int width = NARROWEST; width <= WIDEST; width++) {
                List<String> lines = Wrap.text(t.text(), width, "", "  ");
                for (int i = 1; i < lines.size(); i++) {
                    if (lines.get(i - 1).matches(".*\\d")
                            && UNIT_FIRST.matcher(lines.get(i).strip()).matches()) {
                        parted.add(t.where() + ": " + lines.get(i - 1) + " | "
                                + lines.get(i).strip());
                    }
                }
            }
        }
        assertThat(parted).isEmpty();
    }

    @Test
    void nobodyIsBlamed() {
        assertThat(those(t -> t.sentences().stream()
                        .anyMatch(s -> BLAME.matcher(s).find()
                                || YOU.matcher(s).find()
                                        && BLAME_WITH_YOU.matcher(s).find())))
                .isEmpty();
    }

    @Test
    void everyTradeWordInUseIsInTheGlossary() {
        Knowledge knowledge = KnowledgeReader.read(Path.of("knowledge"));
        Set<String> explained = new TreeSet<>();
        knowledge.terms().forEach((term, entry) -> {
            explained.add(term.toLowerCase(Locale.ROOT));
            entry.also().forEach(a -> explained.add(a.toLowerCase(Locale.ROOT)));
        });
        String all =
                String.join("\n", TEXTS.stream().map(SaidTexts::text).toList()).toLowerCase(Locale.ROOT);
        List<String> used = TRADE.stream()
                .filter(w -> Pattern.compile("(?<![\\w-])" + Pattern.quote(w) + "(?:s|es)?(?![\\w-])")
                        .matcher(all)
                        .find())
                .toList();
        assertThat(used).as("trade words in use").hasSizeGreaterThan(100);
        assertThat(used.stream().filter(w -> explained.stream().noneMatch(e -> e.equals(w) || e.equals(w + "s"))))
                .isEmpty();
    }
}
