package pourwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.console.SheetPage;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

class SheetTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final int WIDTH = 80;

    private static Consultation plan(String... pairs) {
        Answers a = Answers.NONE;
        for (int i = 0; i < pairs.length; i += 2) {
            a = new AnswersJson(KNOWLEDGE).with(a, pairs[i], pairs[i + 1]);
        }
        return Advisor.consult(a, KNOWLEDGE);
    }

    private static Sheet sheet(Consultation c, String title) {
        return SheetMaker.of(c, KNOWLEDGE, title, Optional.empty(), "Made by a test.");
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    static Stream<Path> plans() throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.list(Path.of("transcripts-of-cases"))) {
            all = files.filter(f -> f.toString().endsWith(".case.json"))
                    .sorted()
                    .toList();
        }
        return all.stream().filter(f -> CaseFile.wordOf(f).equals("plan"));
    }

    /** Over every recorded plan: all that must be done and all hazards are on it, in both forms, and the text keeps its width. */
    @ParameterizedTest
    @MethodSource("plans")
    void nothingThatMattersIsLeftOut(Path file) {
        Consultation c = Advisor.consult(
                CaseFile.read(file, "plan", new AnswersJson(KNOWLEDGE)).answers(), KNOWLEDGE);
        Sheet sheet = sheet(c, "Case");
        List<String> lines = SheetPage.lines(sheet);
        assertThat(lines).allMatch(l -> l.length() <= WIDTH);
        String text = String.join(" ", lines).replaceAll("\\s+", " ");
        String html = SheetHtml.of(sheet).replace("&nbsp;", " ").replace("&quot;", "\"");
        c.findings().stream()
                .filter(f -> f.isCaution()
                        || f.strength().word().equals("stop")
                        || f.strength().word().equals("change"))
                .forEach(f -> {
                    assertThat(text).contains(plain(f.say()));
                    assertThat(html)
                            .contains(plain(f.say()).replace("&", "&amp;").replace("<", "&lt;"));
                });
        boolean stop = c.verdict() == Verdict.STOP;
        assertThat(sheet.rows().isEmpty()).isEqualTo(stop || c.timetable().isEmpty());
        if (stop) {
            assertThat(sheet.weighings()).isEmpty();
            assertThat(text).contains("STOP", "Nothing is weighed");
        }
        assertThat(text).contains("safety data sheet", "Made by a test.", "Checked by");
    }

    @Test
    void theLargerPartIsWeighedFirstAndTheSumIsNamed() {
        Sheet s = sheet(
                plan("material", "tin-silicone", "mix-ratio", "10:1", "ratio-by", "weight", "batch-mass", "1.1 kg"),
                "");
        assertThat(s.weighings().stream().map(SheetTest::plain))
                .containsExactly("1,000 g of base", "100 g of catalyst (1,100 g in all)");
        assertThat(s.title()).startsWith("Tin silicone");
    }

    @Test
    void everyBatchHasItsOwnBoxes() {
        Consultation c = plan(
                "material",
                "tin-silicone",
                "mix-ratio",
                "10:1",
                "ratio-by",
                "weight",
                "batch-mass",
                "900 g",
                "kit",
                "vacuum",
                "cup-volume",
                "2 L",
                "chamber-volume",
                "20 L",
                "pump-speed",
                "3 cfm");
        int batches = (int) c.figure("batch-count").orElseThrow().si().typical();
        assertThat(batches).isGreaterThan(1);
        Sheet s = sheet(c, "");
        assertThat(s.weighings()).hasSize(2 * batches);
        assertThat(s.weighings().get(2)).startsWith("Batch 2: ");
    }

    @Test
    void afterAWrongWeighingNothingOfTheOldPlanIsWeighed() {
        Sheet s = sheet(
                plan(
                        "material",
                        "coating-epoxy",
                        "mix-ratio",
                        "2:1",
                        "ratio-by",
                        "weight",
                        "batch-mass",
                        "30 g",
                        "put-first",
                        "20 g",
                        "put-second",
                        "12 g"),
                "");
        assertThat(s.weighings()).isEmpty();
        assertThat(s.rows()).noneMatch(r -> r.step().startsWith("Weigh"));
        assertThat(s.verdict().first()).anyMatch(f -> plain(f).contains("Add 4 g of resin"));
    }

    @Test
    void theGaugeIsTheOnesOwn() {
        Consultation c = plan(
                "material",
                "tin-silicone",
                "batch-mass",
                "900 g",
                "kit",
                "vacuum",
                "gauge-kind",
                "below-local-air",
                "gauge-reading",
                "24 inHg",
                "altitude",
                "1600 m",
                "chamber-volume",
                "20 L",
                "pump-speed",
                "3 cfm");
        assertThat(plain(sheet(c, "").gauge())).contains("inHg on your dial", "mbar absolute");
        assertThat(sheet(plan("material", "tin-silicone", "batch-mass", "900 g", "kit", "neither"), "")
                        .gauge())
                .isEmpty();
    }

    @Test
    void aTitleIsTextAndNothingElse() {
        String html = SheetHtml.of(sheet(plan("material", "wax", "batch-mass", "1 kg"), "<script>\"&' </h1>"));
        assertThat(html).contains("&lt;script&gt;&quot;&amp;' &lt;/h1&gt;").doesNotContain("<script");
    }

    @Test
    void oneFileNeedsNoOther() {
        String svg = "<svg role=\"img\" aria-labelledby=\"title\"><title id=\"title\">Ear</title></svg>\n";
        Sheet s = SheetMaker.of(
                plan("material", "fast-polyurethane", "batch-mass", "100 g", "job", "closed-mould"),
                KNOWLEDGE,
                "Ear",
                Optional.of(new MouldOnSheet(List.of("Vent V1 at 1, 2, 3 mm"), Optional.of(svg))),
                "v");
        String html = SheetHtml.of(s);
        assertThat(html).contains(svg, "Vent V1 at 1, 2, 3 mm");
        assertThat(html)
                .doesNotContainPattern("(?i)(src|href)\\s*=|url\\(|@import|https?://(?!www\\.w3\\.org)|<script|<link");
        assertThat(html).contains("default-src 'none'");
    }

    /** WCAG 2.2, success criteria 1.3.1, 3.1.1, 4.1.2 (from memory): language, headings in order, headers of a table, names of fields. */
    @Test
    void aScreenReaderFindsItsWay() {
        String html = SheetHtml.of(sheet(
                plan("material", "fast-polyurethane", "batch-mass", "100 g", "mix-ratio", "1:1", "kit", "vacuum"),
                "Hoof"));
        assertThat(html).contains("<html lang=\"en\">", "<title>Hoof</title>", "<main>");
        assertThat(html.split("<h1>", -1)).hasSize(2);
        assertThat(html.indexOf("<h1>")).isLessThan(html.indexOf("<h2>"));
        assertThat(html).doesNotContain("<h3");
        assertThat(html.split("<th scope=\"col\">", -1)).hasSize(5);
        Matcher field = Pattern.compile("<input[^>]*>").matcher(html);
        int fields = 0;
        while (field.find()) {
            fields++;
            String before = html.substring(0, field.start());
            boolean inLabel = before.lastIndexOf("<label>") > before.lastIndexOf("</label>");
            assertThat(inLabel || field.group().contains("aria-label=\""))
                    .as(field.group())
                    .isTrue();
        }
        assertThat(fields).isGreaterThan(8);
    }

    /** WCAG 2.2, success criterion 1.4.3 (from memory): 4.5 to 1, by its formula of relative luminance. */
    @Test
    void allInkStandsOutFromThePaper() {
        String html = SheetHtml.of(sheet(plan("material", "wax", "batch-mass", "1 kg"), "Wax"));
        Matcher colour = Pattern.compile("#([0-9a-f]{3})\\b").matcher(html);
        TreeSet<String> inks = new TreeSet<>();
        while (colour.find()) {
            inks.add(colour.group(1));
        }
        inks.remove("fff");
        assertThat(inks).isNotEmpty();
        for (String ink : inks) {
            double[] weights = {0.2126, 0.7152, 0.0722};
            double luminance = 0;
            for (int i = 0; i < 3; i++) {
                double v = Integer.parseInt(ink.substring(i, i + 1), 16) / 15.0;
                luminance += weights[i] * (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
            }
            assertThat(1.05 / (luminance + 0.05)).as("#" + ink).isGreaterThanOrEqualTo(4.5);
        }
    }
}
