package pourwright.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped knowledge loads; every way to break a copy of it ends in a fault that names the file and the place. */
class KnowledgeReaderTest {
    private static final Path SHIPPED = Path.of("knowledge");
    private static final String TIN = "materials/tin-silicone.json";
    private static final String POT_LIFE_LOW = "(\"pot-life\": \\{\\s*\"low\": )[0-9.]+";
    private static final String FIGURES = "guidelines/figures.json";
    private static final String PLAN = "questions/plan.json";

    @TempDir
    Path dir;

    private Path copy() throws IOException {
        Path to = dir.resolve("knowledge");
        try (Stream<Path> files = Files.walk(SHIPPED)) {
            for (Path f : files.toList()) {
                Path target = to.resolve(SHIPPED.relativize(f).toString());
                if (Files.isDirectory(f)) {
                    Files.createDirectories(target);
                } else if (!f.getFileName().toString().endsWith(".sum")) {
                    Files.copy(f, target);
                }
            }
        }
        return to;
    }

    /** Replaces the first match of a pattern in a file of the copy; it must be there. */
    private static void edit(Path file, String regex, String by) throws IOException {
        String text = Files.readString(file);
        String changed = text.replaceFirst(regex, by);
        assertThat(changed).as("the edit of " + file + " changes something").isNotEqualTo(text);
        Files.writeString(file, changed);
    }

    @Test
    void theShippedKnowledgeLoads() {
        Knowledge k = KnowledgeReader.readAndCheckAll(SHIPPED);
        assertThat(k.materials()).hasSize(23);
        assertThat(k.questions()).hasSizeGreaterThan(80);
        assertThat(k.guidelines()).isNotEmpty();
        assertThat(k.cautions()).isNotEmpty();
        assertThat(k.closing()).contains("SDS");
    }

    @Test
    void anUntouchedCopyLoads() throws IOException {
        assertThat(KnowledgeReader.read(copy()).materials()).hasSize(23);
    }

    static Stream<Arguments> breaks() {
        return Stream.of(
                // what is broken, in which file, pattern, replacement, what the fault must name
                Arguments.of(
                        "unknown field of a material",
                        TIN,
                        "\"id\":",
                        "\"colour\": \"red\", \"id\":",
                        List.of("colour")),
                Arguments.of("unknown class value", TIN, "\"viscosity\":", "\"colour\":", List.of("colour")),
                Arguments.of("missing field", TIN, "\"family\": \"silicone\",", "", List.of("family")),
                Arguments.of(
                        "unknown family", TIN, "\"family\": \"silicone\"", "\"family\": \"cheese\"", List.of("family")),
                Arguments.of("missing source", TIN, ",\\s*\"source\": \"typical-data-sheet\"", "", List.of("source")),
                Arguments.of(
                        "unknown source",
                        TIN,
                        "\"source\": \"typical-data-sheet\"",
                        "\"source\": \"hearsay\"",
                        List.of("hearsay")),
                Arguments.of(
                        "unit of another dimension",
                        TIN,
                        "\"unit\": \"min\"",
                        "\"unit\": \"kg\"",
                        List.of("/values/", "unit")),
                Arguments.of(
                        "unknown unit", TIN, "\"unit\": \"min\"", "\"unit\": \"jiffy\"", List.of("/values/", "unit")),
                Arguments.of("low above high", TIN, POT_LIFE_LOW, "$1999999", List.of("/values/pot-life")),
                Arguments.of("text for a number", TIN, POT_LIFE_LOW, "$1\"ten\"", List.of("/values/pot-life")),
                Arguments.of(
                        "ratio with low above high",
                        TIN,
                        "(\"second\": \\{\\s*\"low\": )[0-9.]+",
                        "$1999999",
                        List.of("/mix/second")),
                Arguments.of(
                        "id is not the file's name",
                        TIN,
                        "\"id\": \"tin-silicone\"",
                        "\"id\": \"tin-rubber\"",
                        List.of("tin-rubber")),
                Arguments.of(
                        "doubled key",
                        TIN,
                        "\"family\": \"silicone\",",
                        "\"family\": \"silicone\", \"family\": \"epoxy\",",
                        List.of("line")),
                Arguments.of("not JSON", TIN, "\\{", "", List.of("line")),
                Arguments.of("text after the end", TIN, "(?s)\\}\\s*$", "} {}", List.of("line")),
                Arguments.of("a list", TIN, "(?s)^.*$", "[]", List.of(TIN)),
                Arguments.of("a number", TIN, "(?s)^.*$", "7", List.of(TIN)),
                Arguments.of("nothing", TIN, "(?s)^.*$", "", List.of(TIN)),
                Arguments.of("too deep", TIN, "(?s)^.*$", "[".repeat(200), List.of(TIN)),
                Arguments.of("no number at all", TIN, "\"low\": [0-9.]+", "\"low\": NaN", List.of("line")),
                Arguments.of(
                        "unknown field of a guideline",
                        FIGURES,
                        "\"value\":",
                        "\"colour\": 1, \"value\":",
                        List.of("colour")),
                Arguments.of("guideline without a note", FIGURES, ",\\s*\"note\": \"[^\"]*\"", "", List.of("note")),
                Arguments.of(
                        "guideline without a source",
                        FIGURES,
                        "\"source\": \"common-practice\",",
                        "",
                        List.of("source")),
                Arguments.of(
                        "guideline of an unknown source",
                        FIGURES,
                        "\"common-practice\"",
                        "\"hearsay\"",
                        List.of("hearsay")),
                Arguments.of(
                        "guideline of an unknown unit",
                        FIGURES,
                        "\"unit\": \"K\"",
                        "\"unit\": \"jiffy\"",
                        List.of("jiffy")),
                Arguments.of(
                        "safety without a direction",
                        FIGURES,
                        "\"safety\": false",
                        "\"safety\": true",
                        List.of("unmeasured-liquid-warmth")),
                Arguments.of(
                        "question of an unknown kind",
                        PLAN,
                        "\"kind\": \"choice\"",
                        "\"kind\": \"riddle\"",
                        List.of("kind")),
                Arguments.of(
                        "question with an empty range",
                        PLAN,
                        "\"min\": 0.5,\\s*\"max\": 1440",
                        "\"min\": 9, \"max\": 9",
                        List.of("pot-life")),
                Arguments.of(
                        "question in a unit of another dimension",
                        PLAN,
                        "\"unit\": \"min\"",
                        "\"unit\": \"kg\"",
                        List.of("pot-life", "kg")),
                Arguments.of("question without its words", PLAN, "\"ask\": \"[^\"]*\",", "", List.of("ask")),
                Arguments.of(
                        "the same question twice",
                        PLAN,
                        "\"id\": \"job\"",
                        "\"id\": \"material\"",
                        List.of("material")),
                Arguments.of(
                        "caution of an unknown source",
                        "cautions.json",
                        "\"source\": \"[^\"]*\"",
                        "\"source\": \"hearsay\"",
                        List.of("hearsay")),
                Arguments.of(
                        "emergency of an unknown source",
                        "emergencies.json",
                        "\"from-memory\"",
                        "\"hearsay\"",
                        List.of("emergencies.json", "somebody-hurt", "hearsay")),
                Arguments.of(
                        "the same emergency twice",
                        "emergencies.json",
                        "\"id\": \"breathing\"",
                        "\"id\": \"splash-in-eye\"",
                        List.of("emergencies.json", "splash-in-eye", "twice")),
                Arguments.of(
                        "one thing said for two emergencies",
                        "emergencies.json",
                        "\"asthma\"",
                        "\"eye burns\"",
                        List.of("emergencies.json", "breathing", "eye burns", "splash-in-eye")),
                Arguments.of(
                        "a step that needs two lines",
                        "emergencies.json",
                        "Do not rub\\.",
                        "Do not rub, whatever happens and however much it itches.",
                        List.of("emergencies.json", "steps")),
                Arguments.of(
                        "a closing that needs two lines",
                        "emergencies.json",
                        "Anyone hurt or unsure:",
                        "Anyone hurt or unsure right now:",
                        List.of("emergencies.json", "longer than 80")),
                Arguments.of(
                        "danger to people behind danger to the part",
                        "emergencies.json",
                        "\"danger\": \"people\"",
                        "\"danger\": \"part\"",
                        List.of("emergencies.json", "splash-in-eye", "danger to people")),
                Arguments.of(
                        "an emergency that defers to nothing",
                        "emergencies.json",
                        "\"SDS section 4 decides.\"",
                        "\"Be careful.\"",
                        List.of("emergencies.json", "defers")),
                Arguments.of("no closing sentence", "cautions.json", "\"closing\":", "\"closed\":", List.of("clos")),
                Arguments.of("source without a title", "sources.json", "\"title\":", "\"name\":", List.of("title")),
                Arguments.of(
                        "pump in a wrong unit",
                        "pumps.json",
                        "\"unit\": \"[^\"]*\"",
                        "\"unit\": \"kg\"",
                        List.of("unit")),
                Arguments.of("step without words", "steps.json", "\"say\":", "\"says\":", List.of("say")),
                Arguments.of(
                        "unknown field of a word",
                        "glossary.json",
                        "\"means\":",
                        "\"colour\": \"red\", \"means\":",
                        List.of("colour")),
                Arguments.of(
                        "unknown effect",
                        "inhibition.json",
                        "\"effect\": \"[a-z]+\"",
                        "\"effect\": \"dreadful\"",
                        List.of("effect")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("breaks")
    void aBrokenCopyIsFaultedWithFileAndPlace(String what, String file, String regex, String by, List<String> named)
            throws IOException {
        Path copy = copy();
        edit(copy.resolve(file), regex, by);
        assertThatThrownBy(() -> KnowledgeReader.read(copy))
                .as(what)
                .isInstanceOf(KnowledgeFault.class)
                .message()
                .contains(named)
                .satisfies(m -> assertThat(m).as("one line").doesNotContain("\n", "Exception"))
                .satisfies(m -> assertThat(m.contains(file) || m.contains("'"))
                        .as("names its file or its entry: " + m)
                        .isTrue());
    }

    /**
     * A sealed folder was checked whole by the build and is read without checks. What is changed afterwards breaks the
     * seal, and is a fault as in any other folder.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("breaks")
    void whatIsChangedUnderTheSealIsCheckedAgain(String what, String file, String regex, String by, List<String> named)
            throws IOException {
        Path copy = copy();
        Seal.write(copy);
        assertThat(KnowledgeReader.read(copy).readAll()).isPositive();
        edit(copy.resolve(file), regex, by);
        assertThatThrownBy(() -> KnowledgeReader.read(copy)).as(what).isInstanceOf(KnowledgeFault.class);
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        for (String file : List.of(
                "sources.json",
                "cautions.json",
                "steps.json",
                "glossary.json",
                "pumps.json",
                "inhibition.json",
                "emergencies.json",
                "choices-of-process.json")) {
            Path copy = copy();
            Files.delete(copy.resolve(file));
            assertThatThrownBy(() -> KnowledgeReader.read(copy))
                    .isInstanceOf(KnowledgeFault.class)
                    .hasMessageContaining(file);
            deleteAll(copy);
        }
    }

    @Test
    void aMissingFolderIsNamed() {
        assertThatThrownBy(() -> KnowledgeReader.read(dir.resolve("nowhere")))
                .isInstanceOf(KnowledgeFault.class)
                .hasMessageContaining("nowhere");
    }

    @Test
    void aGuidelineInTwoFilesIsFaulted() throws IOException {
        Path copy = copy();
        Files.writeString(
                copy.resolve("guidelines/more.json"),
                "{\"guidelines\":{\"froth-cap\":{\"value\":4,\"unit\":\"1\",\"source\":\"common-practice\",\"note\":\"x.\",\"safety\":false}}}");
        assertThatThrownBy(() -> KnowledgeReader.read(copy))
                .isInstanceOf(KnowledgeFault.class)
                .hasMessageContaining("froth-cap")
                .hasMessageContaining("guidelines/");
    }

    @Test
    void aWordThatMeansTwoMaterialsIsFaulted() throws IOException {
        Path copy = copy();
        edit(copy.resolve(TIN), "\"says\": \\[", "\"says\": [ \"plaster\",");
        assertThatThrownBy(() -> KnowledgeReader.read(copy))
                .isInstanceOf(KnowledgeFault.class)
                .hasMessageContaining("plaster");
    }

    @Test
    void aFileThatNoSchemaKnowsIsFaulted() throws IOException {
        Path copy = copy();
        Files.writeString(copy.resolve("extra.json"), "{}");
        assertThatThrownBy(() -> KnowledgeReader.read(copy))
                .isInstanceOf(KnowledgeFault.class)
                .hasMessageContaining("extra.json");
    }

    @Test
    void textThatIsNotUtf8IsFaulted() throws IOException {
        Path copy = copy();
        Files.write(copy.resolve(TIN), "{\"id\":\"tin\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> KnowledgeReader.read(copy))
                .isInstanceOf(KnowledgeFault.class)
                .hasMessageContaining(TIN);
    }

    @Test
    void aSealHoldsUntilOneByteChanges() throws IOException {
        Path copy = copy();
        Seal.write(copy);
        assertThat(Seal.fits(copy)).isTrue();
        edit(copy.resolve(TIN), "\"note\": \"([A-Z])", "\"note\": \"X$1");
        assertThat(Seal.fits(copy)).isFalse();
        Seal.write(copy);
        Files.writeString(copy.resolve("materials/new.json"), "{}");
        assertThat(Seal.fits(copy)).isFalse();
    }

    private static void deleteAll(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path f : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(f);
            }
        }
    }
}
