package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.casebook.ShopLock;
import pourwright.casebook.ShopPack;
import pourwright.knowledge.Json;

/** The workshop's own folder: made, filled, checked, sent elsewhere. */
class ShopCommandTest extends Yard {
    @Test
    void itIsMadeOnceAndNothingIsWrittenOver() throws IOException {
        assertThat(flat(shop())).contains("There is no folder");
        assertThat(shop("init").code()).isZero();
        Files.writeString(file("kit.json"), "{}");
        assertThat(flat(shop("init"))).contains("was there already");
        assertThat(Files.readString(file("kit.json"))).isEqualTo("{}");
        assertThat(flat(shop())).contains("kit: kept", "Words: init, material");
        assertThat(shop("check").code()).isZero();
    }

    @Test
    void aMaterialIsAskedFieldByFieldAndUsed() throws IOException {
        String typed = typed(
                "???",
                "yard blue",
                "tin",
                "tin silicone",
                "latex",
                "blue, the blue",
                "45",
                "45 min",
                "back",
                "40 min",
                "",
                "",
                "400 h",
                "no",
                "20 h",
                "don't know",
                "20 Pa\u00b7s",
                "2 min",
                "1.1 g/mL",
                "",
                "",
                "",
                "",
                "",
                "");
        Ran r = typing(typed, "material");
        assertThat(r.code()).as(r.out()).isZero();
        assertThat(flat(r))
                .contains("A name has 1 to 80 characters", "There is no class \"tin\".", "already. Take another word.")
                .contains("Say the unit too", "That is far off the class", "which is a time", "Written: ");
        var values =
                Json.read(Files.readString(file("materials/yard-blue.json"))).path("values");
        assertThat(values.path("pot-life").path("typical").asInt()).isEqualTo(40);
        assertThat(values.path("demould-time").path("typical").asInt()).isEqualTo(20);
        Ran plan = Ran.of(
                "plan",
                "material=the blue",
                "batch-mass=500 g",
                "--no-input",
                "--shop",
                dir.resolve("yard").toString());
        assertThat(flat(plan)).contains("working time");
        assertThat(flat(shop("check"))).contains("'yard-blue' is tin silicone", "pot-life 40 min; the class says");
    }

    /** The input ends, or the person leaves: nothing half written stands there. */
    @ParameterizedTest
    @ValueSource(strings = {"yard blue\n", "yard blue\ntin-silicone\n\n40 min\n", "yard blue\nquit\n", ""})
    void whoLeavesLeavesNothing(String typed) {
        Ran r = typing(typed, "material");
        assertThat(r.out()).contains("Nothing was written.");
        assertThat(dir.resolve("yard/materials/yard-blue.json")).doesNotExist();
    }

    @Test
    void aMaterialFromTheShellIsCheckedAndNotWrittenOver() {
        assertThat(flat(shop("material", "name=slow plaster", "class=plaster", "pot-life=3 h")))
                .contains("Far off its class: pot-life", "Written: ");
        assertThat(flat(shop("material", "name=slow plaster", "class=plaster", "pot-life=10 min")))
                .contains("is there already");
        assertThat(flat(shop("material", "name=x", "class=plaster", "viscosity=5 kg")))
                .contains("Here I need a thickness");
        assertThat(flat(shop("material", "name=x", "class=plaster", "colour=red")))
                .contains("'colour' is no value");
        assertThat(flat(shop("material", "name=x", "class=gold"))).contains("There is no class \"gold\"");
        assertThat(flat(shop("material", "name=tin silicone", "class=plaster"))).contains("tin-silicone");
    }

    @Test
    void aGuidelineIsSetToldAndDropped() {
        assertThat(flat(shop("guideline", "damp-air", "55", "--why", "we foam earlier")))
                .contains("55 % now; shipped it is 60 %");
        assertThat(flat(shop("guideline", "damp-air"))).contains("55 % (set by your workshop)", "we foam earlier");
        assertThat(flat(shop("check"))).contains("'damp-air' is 55 % instead of 60 %", "Read by the rules");
        assertThat(flat(shop("guideline", "damp-air", "--drop"))).contains("as shipped again");
        assertThat(flat(shop("guideline", "damp-air", "--drop"))).contains("is not set");
        assertThat(flat(shop("guideline", "damp-air", "soft"))).contains("soft");
        assertThat(flat(shop("guideline", "damp-aire", "5"))).contains("Near it: damp-air");
    }

    /** What guards safety can be tightened and never loosened. */
    @Test
    void aGuidelineOfSafetyIsNotLoosened() {
        var k = pourwright.knowledge.KnowledgeReader.read(Path.of("knowledge"));
        k.guidelines().forEach((id, g) -> {
            if (g.safety() && g.value() > 0) {
                boolean lower = g.tighter().equals("lower");
                String unit = g.unit().equals("1") ? "" : " " + g.unit();
                Ran loose = shop("guideline", id, g.value() * (lower ? 2 : 0.5) + unit);
                assertThat(loose.code()).as(id).isEqualTo(2);
                assertThat(flat(loose)).contains("guards safety");
            }
        });
        assertThat(dir.resolve("yard/guidelines.json")).doesNotExist();
    }

    /** A folder of an older version: a guideline, a class and a rule that are gone, and files that were cut short. */
    @Test
    void theCheckListsAllAtOnceAndNeverStopsAtTheFirst() throws IOException {
        Files.writeString(file("guidelines.json"), """
                {"guidelines": {
                  "gone-one": {"value": 1, "unit": "%", "source": "common-practice", "note": "x.", "safety": false},
                  "damp-air": {"value": 1, "unit": "mm", "source": "common-practice", "note": "x.", "safety": false}}}
                """);
        Files.writeString(
                file("materials/a.json"), "{\"id\":\"a\",\"name\":\"a\",\"class\":\"gone-class\",\"values\":{}}");
        Files.writeString(
                file("materials/b.json"), "{\"id\":\"plaster\",\"name\":\"b\",\"class\":\"plaster\",\"values\":{}}");
        Files.writeString(file("materials/c.json"), "{");
        Files.writeString(file("materials/d.json"), "{\"id\":\"d\",\"class\":\"plaster\",\"values\":{}}");
        Files.writeString(file("stock.json"), "[]");
        Files.writeString(file("kit.json"), "{\"pump-speed\": \"soon\"}");
        Files.writeString(file("runs.jsonl"), "half a li");
        Files.writeString(file("cases/cut.case.json"), "{\"format\":1");
        Files.copy(
                Path.of("transcripts-of-cases/ear-tip-mould-bucket-as-chamber.case.json"), file("cases/ear.case.json"));
        Files.writeString(
                file("cases/ear.case.json"),
                Files.readString(file("cases/ear.case.json")).replace("\"lid-unchecked\"", "\"rule-of-old\""));
        Ran r = shop("check");
        assertThat(r.code()).isEqualTo(2);
        assertThat(flat(r))
                .contains(
                        "There is no guideline 'gone-one' (any more)",
                        "'damp-air' is in mm, and the shipped one is in %")
                .contains("There is no class 'gone-class'", "The id 'plaster' is that of a shipped class")
                .contains(
                        "materials/c.json",
                        "materials/d.json",
                        "'name' is missing",
                        "stock.json",
                        "kit.json",
                        "1 of its lines cannot be read",
                        "cases/cut.case.json")
                .contains("ear: new: lid-unchecked (rule safety/lid-unchecked speaks now)")
                .contains("ear: gone: rule-of-old (there is no such rule any more)")
                .doesNotContain("Exception");
        var json = Json.read(shop("check", "--json").out());
        assertThat(json.path("conflict").size()).isGreaterThan(7);
    }

    @Test
    void exportAndImportGiveTheSameBytes() throws IOException {
        assertThat(flat(shop("export", dir.resolve("none.json").toString()))).contains("nothing in");
        shop("material", "name=yard blue", "class=tin-silicone", "pot-life=40..50 min");
        shop("guideline", "damp-air", "55");
        Files.copy(
                Path.of("transcripts-of-cases/lantern-finial-block-mould.case.json"), file("cases/finial.case.json"));
        Files.writeString(file("unfinished.jsonl"), "{\"word\":\"plan\"}\n");
        Path one = dir.resolve("yard.json");
        assertThat(shop("export", one.toString()).code()).isZero();
        assertThat(flat(shop("export", one.toString()))).contains("is there already");
        assertThat(Files.readString(one)).doesNotContain("unfinished", dir.toString());
        Path other = dir.resolve("other");
        Ran asked = Ran.with("no\n", Map.of(), "shop", "import", one.toString(), "--shop", other.toString());
        assertThat(asked.out()).contains("guidelines.json: new", "Nothing was changed.");
        assertThat(other).doesNotExist();
        assertThat(Ran.of("shop", "import", one.toString(), "--yes", "--shop", other.toString())
                        .code())
                .isZero();
        assertThat(ShopPack.text(ShopPack.files(other))).isEqualTo(Files.readString(one));
        assertThat(Ran.of("plan", "material=yard-blue", "--no-input", "--json", "--shop", other.toString())
                        .out())
                .isEqualTo(Ran.of(
                                "plan",
                                "material=yard-blue",
                                "--no-input",
                                "--json",
                                "--shop",
                                dir.resolve("yard").toString())
                        .out());
    }

    @Test
    void whatAnImportReplacesIsKept() throws IOException {
        shop("guideline", "damp-air", "55");
        Path one = dir.resolve("yard.json");
        shop("export", one.toString());
        shop("guideline", "damp-air", "50");
        String before = Files.readString(file("guidelines.json"));
        assertThat(flat(shop("import", one.toString(), "--yes")))
                .contains("guidelines.json: replaces yours", "before-import-1");
        assertThat(Files.readString(dir.resolve("yard/before-import-1/guidelines.json")))
                .isEqualTo(before);
        assertThat(Files.readString(file("guidelines.json"))).contains("55");
    }

    /** Whatever is wrong with the file, nothing in the folder changes. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{\"format\":1,\"workshop\":{\"../../evil.json\":[\"{}\"]}}",
                "{\"format\":1,\"workshop\":{\"cases/../../evil.case.json\":[\"{}\"]}}",
                "{\"format\":1,\"workshop\":{\"/etc/passwd\":[\"x\"]}}",
                "{\"format\":1,\"workshop\":{\"unfinished.jsonl\":[\"x\"]}}",
                "{\"format\":1,\"workshop\":{\"kit.json\":{}}}",
                "{\"format\":2,\"workshop\":{}}",
                "{\"format\":1,\"workshop\":{\"guidelines.json\":[\"{\\\"guidelines\\\":{\\\"none-such\\\":{}}}\"]}}",
                "{\"format\":1,\"workshop\":{\"materials/a.json\":[\"{}\"]}}",
                "{\"format\":1,\"workshop\":{\"stock.json\":[\"[]\"]}}",
                "{\"format\":1,\"workshop\":{\"kit.json\":\"{}\"}}",
                "{\"format\":1,\"workshop\":{\"kit.json\":[]}}",
                "{\"format\":1,\"workshop\":{\"kit.json\":[\"{\",1,\"}\"]}}",
                "{\"format\":1,\"workshop\":{\"kit.json\":[\"{\\\"pump-speed\\\": \\\"soon\\\"}\"]}}",
                "{\"format\":1,\"workshop\":{\"cases/a.case.json\":[\"{\\\"format\\\":1\"]}}",
                "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]"
            })
    void aBadImportChangesNothing(String text) throws IOException {
        shop("guideline", "damp-air", "55");
        String before = ShopPack.text(ShopPack.files(dir.resolve("yard")));
        Path one = dir.resolve("bad.json");
        Files.writeString(one, text);
        Ran r = shop("import", one.toString(), "--yes");
        assertThat(r.code()).as(flat(r)).isEqualTo(2);
        assertThat(r.err()).isNotBlank().doesNotContain("Exception");
        assertThat(ShopPack.text(ShopPack.files(dir.resolve("yard")))).isEqualTo(before);
        assertThat(dir.resolve("evil.json")).doesNotExist();
    }

    @Test
    void aFolderInUseIsNotWrittenInto() throws IOException {
        shop("guideline", "damp-air", "55");
        Path one = dir.resolve("yard.json");
        shop("export", one.toString());
        try (ShopLock held = ShopLock.take(dir.resolve("yard")).orElseThrow()) {
            assertThat(held).isNotNull();
            assertThat(flat(shop("import", one.toString(), "--yes"))).contains("Another console is open");
        }
    }

    @Test
    void badWordsGetASentence() {
        assertThat(flat(shop("polish"))).contains("\"polish\" is not a word of the shop. Accepted: init, material");
        assertThat(flat(shop("export"))).contains("Name one file");
        assertThat(flat(shop("check"))).contains("There is no folder");
        assertThat(flat(shop("init", "--json"))).contains("--json prints the check");
    }
}
