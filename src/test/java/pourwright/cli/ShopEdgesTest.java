package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.casebook.OwnGuidelines;
import pourwright.casebook.OwnMaterial;
import pourwright.casebook.ShopPack;
import pourwright.casebook.WholeFile;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** The workshop's folder where something is odd: long, foreign, old, contradictory, in the way. */
class ShopEdgesTest extends Yard {
    private static final Knowledge SHIPPED = KnowledgeReader.read(Path.of("knowledge"));

    /** The records of years are longer than one JSON string may be. */
    @Test
    void longRecordsComeBackByteForByte() throws IOException {
        String line =
                "{\"began\":\"2026-01-01T08:00:00Z\",\"material\":\"plaster\",\"kit\":\"k\",\"ratios\":{\"pot-life\":1.1}}\n";
        String text = line.repeat(2000);
        assertThat(text.length()).isGreaterThan(100_000);
        Files.writeString(file("runs.jsonl"), text);
        String one = dir.resolve("one.json").toString();
        assertThat(shop("export", one).code()).isZero();
        Ran r = at("other", "", "import", one, "--yes");
        assertThat(r.code()).as(flat(r)).isZero();
        assertThat(Files.readString(dir.resolve("other/runs.jsonl"))).isEqualTo(text);
    }

    /** What could not be read again is not written at all. */
    @Test
    void anExportThatCouldNotBeReadIsRefused() throws IOException {
        Files.writeString(file("runs.jsonl"), "x".repeat(70_000));
        Path one = dir.resolve("one.json");
        Ran r = shop("export", one.toString());
        assertThat(r.code()).isEqualTo(2);
        assertThat(flat(r)).contains("too large for one file").doesNotContain("Exception");
        assertThat(one).doesNotExist();
    }

    @Test
    void whatAnExportLeavesOutIsNamed() throws IOException {
        Files.writeString(file("kit.json"), "{}");
        Files.writeString(file("cases/My Ear.case.json"), "{}");
        Files.writeString(file("unfinished.jsonl"), "{}");
        assertThat(flat(shop("export", dir.resolve("one.json").toString())))
                .contains("Left out, as pourwright names no file so: cases/My Ear.case.json.");
    }

    @Test
    void foreignLettersAreKeptAndControlCharactersRefused() throws IOException {
        String name = "Br\u00e4ms \u9752";
        assertThat(shop("material", "name=" + name, "class=plaster", "pot-life=20 min", "says=\u9752 , gips")
                        .code())
                .isZero();
        String one = dir.resolve("one.json").toString();
        shop("export", one);
        at("other", "", "import", one, "--yes");
        assertThat(Json.read(Files.readString(dir.resolve("other/materials/br-ms.json")))
                        .path("name")
                        .asText())
                .isEqualTo(name);
        for (String bad : List.of("a\u001b[2Jb", "a\u202eb", "x".repeat(81), "", "\u9752")) {
            Ran r = shop("material", "name=" + bad, "class=plaster", "pot-life=20 min");
            assertThat(r.code()).as(flat(r)).isEqualTo(2);
            assertThat(r.err()).doesNotContain("\u001b", "Exception");
        }
        assertThat(shop("guideline", "damp-air", "55", "--why", "a\u001b[2J").code())
                .isEqualTo(2);
        assertThat(shop("guideline", "damp-air", "55", "--why", "x".repeat(301)).code())
                .isEqualTo(2);
        assertThat(dir.resolve("yard/guidelines.json")).doesNotExist();
    }

    /** A class's own id is refused where it is typed, and not after all else was typed. */
    @Test
    void questionsGoBackAndExplain() {
        String lines = typed("plaster", "why", "slow one", "back", "slow two", "why", "don't know", "plaster", "quit");
        Ran r = at("yard", lines, "material");
        assertThat(flat(r))
                .contains("\"plaster\" is a class that came with the program")
                .contains("Plans and cases call the material by this name")
                .contains("The class stands in for whatever the sheet does not say")
                .contains("There is no class \"\"")
                .contains("Nothing was written.");
        assertThat(dir.resolve("yard")).doesNotExist();
    }

    @Test
    void aMaterialWithoutAnyValueIsNone() {
        assertThat(flat(shop("material", "name=slow one", "class=plaster"))).contains("one value of its sheet");
        assertThat(flat(at("yard", "slow one\nplaster\n" + "\n".repeat(20), "material")))
                .contains("no other than its class", "Nothing was written.");
        assertThat(dir.resolve("yard/materials")).doesNotExist();
    }

    @Test
    void somethingInTheWayGetsASentence() throws IOException {
        Files.writeString(file("materials"), "a file where a folder should be");
        Ran r = shop("material", "name=slow one", "class=plaster", "pot-life=20 min");
        assertThat(r.code()).isEqualTo(2);
        assertThat(r.err()).contains("cannot be written").doesNotContain("Exception");
        Files.writeString(dir.resolve("plain"), "");
        for (List<String> words : List.of(List.of("init"), List.of("check"), List.of("guideline", "damp-air", "55"))) {
            Ran in = at("plain", "", words.toArray(String[]::new));
            assertThat(in.code()).as(words + flat(in)).isEqualTo(2);
            assertThat(in.err()).isNotBlank().doesNotContain("Exception");
        }
        assertThat(shop("import", "a\u0000b").code()).isEqualTo(2);
    }

    @Test
    void aHugeFileGetsASentence() throws IOException {
        Files.writeString(file("guidelines.json"), " ".repeat(6_000_000));
        for (List<String> words : List.of(
                List.<String>of(),
                List.of("check"),
                List.of("guideline", "damp-air", "55"),
                List.of("export", dir.resolve("one.json").toString()))) {
            Ran r = shop(words.toArray(String[]::new));
            assertThat(r.code()).as(words + flat(r)).isEqualTo(2);
            assertThat(flat(r)).isNotBlank().doesNotContain("Exception", "a fault of the program");
        }
        assertThat(dir.resolve("one.json")).doesNotExist();
    }

    /** Two guidelines that belong together and are crossed. */
    @Test
    void guidelinesThatContradictEachOtherAreNamed() {
        shop("guideline", "detail-coat-most", "0.8 mm");
        assertThat(shop("check").code()).isZero();
        shop("guideline", "detail-coat-least", "0.9 mm");
        Ran r = shop("check");
        assertThat(r.code()).isEqualTo(2);
        assertThat(flat(r)).contains("'detail-coat-least' is 0.9 mm and so above 'detail-coat-most', which is 0.8 mm");
    }

    /** A folder of an older version: what is gone is named, mended with one command, and the rest works. */
    @Test
    void anUpgradeKeepsTheFolder() throws IOException {
        shop("guideline", "damp-air", "55");
        Path own = file("guidelines.json");
        Files.writeString(own, Files.readString(own).replace("\"damp-air\"", "\"gone-one\""));
        shop("material", "name=slow one", "class=plaster", "pot-life=20 min");
        Files.copy(
                Path.of("transcripts-of-cases/ear-tip-mould-bucket-as-chamber.case.json"), file("cases/ear.case.json"));
        Ran check = shop("check");
        assertThat(check.code()).isEqualTo(2);
        assertThat(flat(check)).contains("no guideline 'gone-one'", "1 of 1 saved cases");
        assertThat(shop().code()).isZero();
        String one = dir.resolve("one.json").toString();
        assertThat(shop("export", one).code()).isZero();
        assertThat(flat(at("other", "", "import", one, "--yes"))).contains("gone-one", "Nothing was changed");
        assertThat(dir.resolve("other")).doesNotExist();
        assertThat(at("other", "", "guideline", "dry-air", "45").code()).isZero();
        assertThat(at("other", "", "export", one, "--yes").code()).isZero();
        // What was wrong in the folder before does not keep a sound file out.
        assertThat(shop("import", one, "--yes").code()).isZero();
        assertThat(shop("check").code()).isZero();
    }

    @Test
    void whatIsGoneIsDroppedByName() throws IOException {
        shop("guideline", "damp-air", "55");
        Path own = file("guidelines.json");
        Files.writeString(own, Files.readString(own).replace("\"damp-air\"", "\"gone-one\""));
        assertThat(shop("check").code()).isEqualTo(2);
        assertThat(shop("guideline", "gone-one", "--drop").code()).isZero();
        assertThat(shop("check").code()).isZero();
        assertThat(shop("material", "name=slow one", "class=plaster", "pot-life=20 min")
                        .code())
                .isZero();
    }

    /** Whatever a workshop sets, the folder that was sent advises as the folder it came from. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theFolderThatWasSentAdvisesAlike(long seed) throws IOException {
        Random random = new Random(seed);
        Path yard = dir.resolve("yard");
        OwnGuidelines own = new OwnGuidelines(yard, SHIPPED);
        List<Map.Entry<String, Guideline>> all = SHIPPED.guidelines().entrySet().stream()
                .filter(e -> !e.getValue().safety()
                        && e.getValue().unit().equals("min")
                        && e.getValue().value() > 0)
                .toList();
        for (int n = 0; n < 5; n++) {
            Map.Entry<String, Guideline> e = all.get(random.nextInt(all.size()));
            own.set(
                    e.getKey(),
                    e.getValue().value() * (0.5 + random.nextDouble()) + " "
                            + e.getValue().unit(),
                    "reason " + (char) (0xe0 + n));
        }
        List<String> classes = List.copyOf(SHIPPED.materials().keySet());
        OwnMaterial m = new OwnMaterial(SHIPPED, Set.copyOf(classes));
        m.name("own " + seed);
        m.base(classes.get(random.nextInt(classes.size())));
        for (String f : m.fields()) {
            String usual = m.usual(f);
            m.read(f, usual).ifPresent(v -> {
                if (random.nextBoolean() || f.equals("pot-life")) {
                    m.set(f, v);
                }
            });
        }
        WholeFile.write(yard.resolve("materials/" + m.id() + ".json"), m.text());
        String one = dir.resolve("one.json").toString();
        assertThat(shop("export", one).code()).isZero();
        Ran put = at("other", "", "import", one, "--yes");
        assertThat(put.code()).as(flat(put)).isZero();
        assertThat(ShopPack.text(ShopPack.files(dir.resolve("other")))).isEqualTo(Files.readString(Path.of(one)));
        String here = plan(m.id(), "yard");
        assertThat(here).isEqualTo(plan(m.id(), "other")).contains("verdict");
        assertThat(plan(m.id(), "none")).doesNotContain("verdict");
    }

    private String plan(String material, String folder) {
        return Ran.of(
                        "plan",
                        "material=" + material,
                        "batch-mass=800 g",
                        "room-temperature=24 C",
                        "--no-input",
                        "--json",
                        "--shop",
                        dir.resolve(folder).toString())
                .out();
    }
}
