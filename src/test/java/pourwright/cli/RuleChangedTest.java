package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.knowledge.Json;

/**
 * A rule that is changed on purpose is reported by the replay, with exactly the cases it changes. Which these are is read
 * from the recorded cases themselves, and not from the program.
 */
class RuleChangedTest {
    private static final Path CASES = Path.of("transcripts-of-cases");
    private static final Pattern REPORTED = Pattern.compile("(?m)^(\\S+?)\\.case\\.json: ");

    @TempDir
    private Path shop;

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(CASES)) {
            return all.filter(f -> f.toString().endsWith(".case.json")).sorted().toList();
        }
    }

    /** Names of the recorded cases that pin a finding. */
    private static Set<String> pinning(String finding) throws IOException {
        Set<String> names = new TreeSet<>();
        for (Path f : files()) {
            for (JsonNode pinned : Json.read(Files.readString(f)).path("expect").path("findings")) {
                if (pinned.asText().equals(finding)) {
                    names.add(f.toString().replace(".case.json", ""));
                }
            }
        }
        return names;
    }

    private static Ran replay(String... options) throws IOException {
        List<String> args = new ArrayList<>(List.of("replay"));
        args.addAll(List.of(options));
        files().forEach(f -> args.add(f.toString()));
        return Ran.of(args.toArray(String[]::new));
    }

    private static Set<String> reported(Ran r) {
        Set<String> names = new TreeSet<>();
        Matcher m = REPORTED.matcher(r.out());
        while (m.find()) {
            names.add(m.group(1));
        }
        return names;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cup-too-small",
                "chamber-collapses",
                "mass-left-in-cup",
                "hazard-implosion",
                "leak-large",
                "platinum-on-sulphur-clay",
                "kit-lid-marked"
            })
    void aRuleThatIsTakenOutIsReportedWithTheCasesThatPinIt(String rule) throws IOException {
        Set<String> expected = pinning(rule);
        assertThat(expected).as("the library has cases of it").isNotEmpty();
        Ran r = replay("--without", rule);
        assertThat(reported(r)).isEqualTo(expected);
        assertThat(r.out()).contains("gone: " + rule + " (its rule is left out)");
        assertThat(r.code()).isEqualTo(1);
    }

    @Test
    void aRuleThatNoCasePinsChangesNone() throws IOException {
        String rule = "alginate-sets-before-the-pump";
        assertThat(pinning(rule)).isEmpty();
        Ran r = replay("--without", rule);
        assertThat(reported(r)).isEmpty();
        assertThat(r.code()).isZero();
        assertThat(r.out()).contains(files().size() + " of " + files().size() + " cases as recorded.");
    }

    /** A stop that rested on one rule alone is no stop without it. */
    @Test
    void theVerdictThatMovesIsNamed() {
        Ran r = Ran.of(
                "replay",
                "--without",
                "chamber-collapses",
                CASES.resolve("ear-tip-mould-bucket-as-chamber.case.json").toString());
        assertThat(r.out())
                .containsPattern("ear-tip-mould-bucket-as-chamber.case.json: the verdict was stop and is (go|change)");
    }

    /** Evidence that is taken out moves causes, and only in diagnoses that had given that answer. */
    @Test
    void evidenceThatIsTakenOutMovesOnlyDiagnosesWithThatAnswer() throws IOException {
        Ran r = replay("--without", "grew-while-it-set");
        Set<String> with = new TreeSet<>();
        for (Path f : files()) {
            if (Json.read(Files.readString(f))
                    .path("answers")
                    .path("first-seen")
                    .asText()
                    .equals("during-cure")) {
                with.add(f.toString().replace(".case.json", ""));
            }
        }
        assertThat(with).containsAll(reported(r));
        assertThat(reported(r)).isNotEmpty();
        assertThat(r.out()).contains("the first causes were ").contains("about those that moved speak ");
    }

    /** A threshold made impossible to reach silences the one rule that reads it, and the check of the shop says which cases differ. */
    @Test
    void aThresholdThatIsChangedIsReportedByTheCheckOfTheShop() throws IOException {
        Path cases = Files.createDirectories(shop.resolve("cases"));
        for (Path f : files()) {
            if (Json.read(Files.readString(f)).path("word").asText().equals("plan")) {
                Files.copy(f, cases.resolve(f.getFileName()));
            }
        }
        Ran before = Ran.of("shop", "check", "--shop", shop.toString());
        assertThat(before.code()).as(before.out()).isZero();
        // No other rule reads this guideline, and no figure does.
        String rule = "casting-shrinks-visibly";
        Set<String> expected = pinning(rule).stream()
                .map(n -> n.substring(n.lastIndexOf('/') + 1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(expected).hasSizeGreaterThan(1);
        assertThat(Ran.of("shop", "guideline", "shrinkage-that-shows", "90 %", "--shop", shop.toString())
                        .code())
                .isZero();
        Ran after = Ran.of("shop", "check", "--json", "--shop", shop.toString());
        assertThat(after.code()).isEqualTo(1);
        JsonNode changed = Json.read(after.out()).path("cases-changed");
        Set<String> names = new TreeSet<>();
        changed.properties().forEach(e -> {
            names.add(e.getKey());
            assertThat(e.getValue()).as(e.getKey()).hasSize(1);
            assertThat(e.getValue().get(0).asText())
                    .matches("gone: " + rule + " \\(rule \\w+/" + rule + " is silent now\\)");
        });
        assertThat(names).isEqualTo(expected);
    }

    @Test
    void anUnknownRuleIsRefused() throws IOException {
        Ran r = replay("--without", "cup-to-small");
        assertThat(r.code()).isEqualTo(2);
        assertThat(r.err()).contains("No rule is called \"cup-to-small\". Perhaps cup-too-small");
        assertThat(replay("--without", "cup-too-small", "--record").code()).isEqualTo(2);
    }
}
