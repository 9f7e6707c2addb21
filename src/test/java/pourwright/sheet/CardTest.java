package pourwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.console.CardPage;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.testing.PrintedPages;

class CardTest {
    private static final Path FOLDER = Path.of("knowledge");
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(FOLDER);
    private static final Knowledge ALL = KnowledgeReader.withObservations(FOLDER, KNOWLEDGE);
    private static final int WIDTH = 80;

    @TempDir
    Path dir;

    static Stream<Path> plans() throws IOException {
        return SheetTest.plans();
    }

    static Collection<String> families() {
        return RuleFamily.names().keySet();
    }

    private static Card ofPlan(Path file) {
        return PlanCard.of(consulted(file), KNOWLEDGE, "", "Made by a test.");
    }

    private static Consultation consulted(Path file) {
        return Advisor.consult(
                CaseFile.read(file, "plan", new AnswersJson(KNOWLEDGE)).answers(), KNOWLEDGE);
    }

    private static String flat(String text) {
        return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
    }

    /** What a reader of the page sees: marks taken away, what stood for a letter put back. */
    private static String words(String html) {
        String body = html.substring(html.indexOf("<main>"), html.indexOf("</main>"));
        return flat(body.replaceAll("<[^>]*>", " ")
                .replace("&nbsp;", " ")
                .replace("&quot;", "\"")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&"));
    }

    private static String words(List<String> lines) {
        return flat(String.join(
                " ",
                lines.stream()
                        .filter(l -> !l.matches("[=-]+"))
                        .map(l -> l.replaceFirst("^  [*!] ", ""))
                        .toList()));
    }

    /** Also nothing is lost between the record and its pages. */
    private static void bothSayTheSame(Card card) {
        List<String> lines = CardPage.lines(card);
        assertThat(lines).allMatch(l -> l.length() <= WIDTH);
        String text = words(lines);
        assertThat(words(CardHtml.of(card))).isEqualTo(text);
        card.groups()
                .forEach(g -> g.lines()
                        .forEach(l -> assertThat(text).contains(flat(l.say())).contains(flat(l.because()))));
        card.cautions().forEach(c -> assertThat(text).contains(flat(c)));
        card.foot().forEach(f -> assertThat(text).contains(flat(f)));
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyFamilyRendersAndBothFormsSayTheSame(String name) {
        Card card = RuleFamily.of(name, ALL, "Made by a test.");
        bothSayTheSame(card);
        assertThat(card.groups().size() + card.cautions().size()).isPositive();
        assertThat(card.foot().get(0)).contains("safety data sheet decides");
        String text = words(CardPage.lines(card));
        // No placeholder is left.
        assertThat(text).doesNotContain("{", "}").doesNotContainPattern("(?i)\\bthe the\\b");
        List<Card> pages = CardFit.pages(card);
        if (pages.size() > 1) {
            IntStream.range(0, pages.size())
                    .forEach(i ->
                            assertThat(pages.get(i).title()).endsWith("(" + (i + 1) + " of " + pages.size() + ")"));
        }
    }

    /** Every rule of a family is on the card, or counted among those that are not. */
    @ParameterizedTest
    @ValueSource(strings = {"degas", "pressure", "safety", "kit", "interview", "@cup", "@now"})
    void noRuleIsCutOffSilently(String name) {
        Card card = RuleFamily.of(name, ALL, "v");
        int rules = Integer.parseInt(RuleFamily.names().get(name).split(" ")[0]);
        int lines = card.groups().stream().mapToInt(g -> g.lines().size()).sum();
        int left = card.foot().stream()
                .filter(f -> f.startsWith("Not on this card: "))
                .mapToInt(
                        f -> Integer.parseInt(f.replaceAll("\\D+", " ").strip().split(" ")[0]))
                .sum();
        // Several rules can warn of one hazard.
        assertThat(lines + left).isLessThanOrEqualTo(rules);
        assertThat(lines + left + card.cautions().size()).isGreaterThanOrEqualTo(Math.min(rules, lines + left + 1));
        if (card.cautions().isEmpty()) {
            assertThat(lines + left).isEqualTo(rules);
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aPlansCardHoldsWhatMustBeAndItsHazards(Path file) {
        Consultation c = consulted(file);
        Card card = ofPlan(file);
        bothSayTheSame(card);
        String text = words(CardPage.lines(card));
        c.findings().stream()
                .filter(f -> f.isCaution()
                        || f.strength().word().equals("stop")
                        || f.strength().word().equals("change"))
                .forEach(f -> assertThat(text).contains(flat(f.say())));
        assertThat(text).contains("The safety data sheet decides.", "Made by a test.");
        if (c.verdict() == Verdict.STOP) {
            assertThat(text).contains("STOP").doesNotContain("On the scale", "Times");
        }
    }

    @Test
    void aWorkshopsOwnLimitIsCalledSo() {
        TreeMap<String, Guideline> own = new TreeMap<>(ALL.guidelines());
        Guideline g = own.get("warm-mix-temperature");
        own.put(
                "warm-mix-temperature",
                new Guideline(30, g.unit(), "common-practice", g.note(), g.safety(), g.tighter(), "workshop", 303.15));
        Knowledge k = new Knowledge(
                ALL.questions(),
                ALL.questionsById(),
                ALL.materials(),
                own,
                ALL.sources(),
                ALL.cautions(),
                ALL.closing(),
                ALL.terms(),
                ALL.pumps(),
                ALL.processes(),
                ALL.agents(),
                ALL.steps(),
                ALL.decisions(),
                ALL.remedies(),
                ALL.emergencies(),
                ALL.ownRuns(),
                java.util.Set.of());
        assertThat(words(CardPage.lines(RuleFamily.of("degas", k, "v"))))
                .contains("warm mix temperature 30 \u00b0C (your workshop)");
        assertThat(words(CardPage.lines(RuleFamily.of("degas", ALL, "v"))))
                .contains("warm mix temperature 35 \u00b0C (shipped, common practice)");
    }

    @Test
    void textIsTextAndTheFileNeedsNoOther() {
        Card card = new Card(
                "<script>\"&",
                "</h1>",
                List.of(Card.Group.of("<b>", List.of("a < b & c"))),
                List.of("<i>"),
                List.of("x"));
        String html = CardHtml.of(card);
        assertThat(html)
                .contains("&lt;script&gt;&quot;&amp;", "a &lt; b &amp; c")
                .doesNotContain("<script", "<b>", "<i>");
        assertThat(html).contains("default-src 'none'", "<html lang=\"en\">");
        assertThat(html).doesNotContainPattern("(?i)(src|href)\\s*=|url\\(|@import|https?://|<link");
        // Black on white: the highest contrast there is.
        assertThat(Pattern.compile("#(?!000|fff)[0-9a-f]{3}").matcher(html).find())
                .isFalse();
        bothSayTheSame(card);
    }

    @Test
    void emptyGroupsAndBlankLinesAreLeftAway() {
        Card card = new Card("t", "", List.of(new Card.Group("none", List.of())), List.of(), List.of("", "foot"));
        assertThat(card.groups()).isEmpty();
        assertThat(card.foot()).containsExactly("foot");
        assertThat(CardPage.lines(card)).containsExactly("t", "=", "", "foot");
    }

    @Test
    void anUnknownFamilyIsAnsweredWithWhatComesNear() {
        assertThatThrownBy(() -> RuleFamily.of("degass", ALL, "v"))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("Perhaps degas");
        assertThatThrownBy(() -> RuleFamily.of("@xyzzy", ALL, "v"))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("Known are: ");
        assertThat(RuleFamily.of("rules/degas/", ALL, "v")).isEqualTo(RuleFamily.of("degas", ALL, "v"));
    }

    /** The estimate of the type is held against a browser that prints: as many sheets of A4 and of Letter as pages. */
    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void paperHoldsWhatAPageSays(String paper) throws IOException, InterruptedException {
        for (String name : List.of("degas", "@cup", "safety", "pressure", "@safety", "pump")) {
            Card card = RuleFamily.of(name, ALL, "Made by a test, with a rule book and a knowledge.");
            assertThat(PrintedPages.of(CardHtml.of(card), paper, dir))
                    .as(name)
                    .isEqualTo(CardFit.pages(card).size());
        }
        for (String name : List.of(
                "rocking-horse-ear-mould-up-the-hill",
                "lantern-globe-deep-pour-too-thick",
                "lantern-panel-polyester",
                "first-day-nothing-known")) {
            Card card = ofPlan(Path.of("transcripts-of-cases", name + ".case.json"));
            assertThat(PrintedPages.of(CardHtml.of(card), paper, dir))
                    .as(name)
                    .isEqualTo(CardFit.pages(card).size());
        }
    }
}
