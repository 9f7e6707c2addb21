package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.console.RulePage;
import pourwright.knowledge.Json;
import pourwright.knowledge.KnowledgeReader;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;

/** Questions to a plan, a rule as prose and a word explained: from the shell, as JSON, and in a conversation. */
class AskCommandTest {
    private static final List<String> JOB = List.of(
            "material=tin-silicone",
            "job=rubber-around-master",
            "batch-mass=1.2 kg",
            "kit=vacuum",
            "cup-volume=2 L",
            "bump-cycles=yes");

    @TempDir
    Path dir;

    private static Ran ask(String... more) {
        List<String> all = new ArrayList<>(List.of("ask"));
        all.addAll(JOB);
        all.addAll(List.of(more));
        return Ran.of(all.toArray(String[]::new));
    }

    private static JsonNode tree(Ran ran) {
        try {
            return Json.read(ran.out());
        } catch (JsonProcessingException e) {
            throw new AssertionError(ran.toString(), e);
        }
    }

    private static int deepest(JsonNode figures) {
        int most = 0;
        for (var f : figures.properties()) {
            most = Math.max(most, 1 + deepest(f.getValue().path("from")));
        }
        return most;
    }

    /** What would put another cause first is found, and holds when it is diagnosed anew. */
    @Test
    void aDiagnosisSaysWhyNotAnotherCause() {
        List<String> part = List.of("material=fast-polyurethane", "symptom=bubbles", "first-seen=during-cure");
        List<String> call = new ArrayList<>(List.of("diagnose"));
        call.addAll(part);
        call.addAll(List.of("--json", "--why-not", "stirred-in-air"));
        JsonNode not = tree(Ran.of(call.toArray(String[]::new))).path("why-not").path(0);
        assertThat(not.path("cause").textValue()).isEqualTo("stirred-in-air");
        assertThat(not.path("would-come-first-if")).isNotEmpty();
        for (JsonNode set : not.path("would-come-first-if")) {
            List<String> again = new ArrayList<>(List.of("diagnose"));
            again.addAll(part);
            set.properties().forEach(e -> {
                again.removeIf(a -> a.startsWith(e.getKey() + "="));
                again.add(e.getKey() + "=" + e.getValue().textValue());
            });
            again.add("--json");
            assertThat(tree(Ran.of(again.toArray(String[]::new)))
                            .path("causes")
                            .path(0)
                            .path("id")
                            .textValue())
                    .isEqualTo("stirred-in-air");
        }
        call.set(call.size() - 1, "knitting wool");
        assertThat(Ran.of(call.toArray(String[]::new)).code()).isEqualTo(2);
    }

    @Test
    void allQuestionsAreAnsweredInOneObject() {
        Ran ran = ask(
                "--json",
                "--how",
                "1",
                "--why",
                "cup-volume",
                "--why-not",
                "layers",
                "--what-if",
                "cup-volume=5 L",
                "--sensitive");
        assertThat(ran.code()).isZero();
        JsonNode all = tree(ran);
        assertThat(all.path("verdict").textValue()).isEqualTo("change");
        JsonNode how = all.path("how").path(0);
        assertThat(how.path("figures").path("cup-volume").path("value").doubleValue())
                .isEqualTo(0.002);
        assertThat(how.path("answers").path("cup-volume").textValue()).isEqualTo("2 L");
        assertThat(how.path("sources")).isNotEmpty();
        // The froth wants what the mass and the density say, and these hang below it.
        JsonNode froth = how.path("figures").path("froth-volume");
        assertThat(froth.path("from").path("cup-load").path("from")).isNotEmpty();
        assertThat(deepest(how.path("figures"))).isGreaterThan(3);
        assertThat(all.path("why").path(0).path("would-differ")).isNotEmpty();
        assertThat(all.path("why-not").path(0).path("wanted").textValue()).isEqualTo("layers");
        JsonNode what = all.path("what-if");
        assertThat(what.path("verdict").textValue()).isEqualTo("go");
        assertThat(what.path("gone")).isNotEmpty();
        assertThat(what.path("figures")
                        .path("batch-count")
                        .path("old")
                        .path("value")
                        .doubleValue())
                .isGreaterThan(what.path("figures")
                        .path("batch-count")
                        .path("new")
                        .path("value")
                        .doubleValue());
        assertThat(what.path("timetable")).isNotEmpty();
        assertThat(all.path("sensitive").path(0).path("turns-verdict").booleanValue())
                .isTrue();
    }

    @Test
    void anAnswerToWhyNotHoldsWhenAProgramGivesIt() {
        JsonNode ways =
                tree(ask("--json", "--why-not", "go")).path("why-not").path(0).path("would-be-advised-if");
        assertThat(ways).isNotEmpty();
        JsonNode way = ways.path(0);
        List<String> typed = new ArrayList<>(List.of("--json"));
        way.path("answers").properties().forEach(e -> {
            typed.add("--what-if");
            typed.add(e.getKey() + "=" + e.getValue().textValue());
        });
        assertThat(tree(ask(typed.toArray(String[]::new)))
                        .path("what-if")
                        .path("verdict")
                        .textValue())
                .isEqualTo("go");
    }

    @Test
    void theTextSaysThatItIsNoRecommendation() {
        String out = ask("--why-not", "degas in the mould").out();
        assertThat(out)
                .contains("comes nearest to", "mould-fits = yes", "recommends nothing", "what-if mould-fits=yes");
        assertThat(ask("--why-not", "degas-mix").out()).contains("already");
    }

    @Test
    void whatCannotBeAskedIsOneSentence() {
        for (Ran ran : List.of(
                ask(),
                ask("--json", "--why-not", "qwertz"),
                ask("--json", "--how", "999"),
                ask("--json", "--why", "nothing"),
                ask("--what-if", "cup-volum=2"))) {
            assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
            assertThat(ran.err().lines()).hasSize(1);
        }
        assertThat(ask("--why-not", "qwertz").out()).contains("Ways of working: ");
        assertThat(Ran.of("rule", "cup-to-small").err()).contains("Perhaps cup-too-small");
    }

    @Test
    void everyRuleCanBeRead() {
        Ran ran = Ran.of("rule", "cup-too-small");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("because: ", "when ", "then ", "source: ", "it speaks with: ", "it is silent");
        List<RuleCard> cards = Stream.of(RuleBook.method(), RuleBook.judge(), RuleBook.kit(), RuleBook.diagnosis())
                .flatMap(b -> b.cards().stream())
                .toList();
        RulePage page = new RulePage(KnowledgeReader.read(Path.of("knowledge")), 80);
        for (RuleCard c : cards) {
            assertThat(page.lines(c.id(), null))
                    .as(c.id())
                    .anyMatch(l -> l.startsWith("  it speaks with"))
                    .anyMatch(l -> l.startsWith("  when "));
        }
        JsonNode json = tree(Ran.of("rule", "cup-too-small", "--json"));
        assertThat(json.path("fires")).isNotEmpty();
        assertThat(json.path("near-misses").path(0).path("why").textValue()).isNotBlank();
    }

    @Test
    void aThresholdSaysWhoSetIt() {
        assertThat(Ran.of("rule", "box-wall-bulges").out())
                .contains("wall-pressure-brace: 20 mbar, set by the shipped guidelines");
    }

    @Test
    void theConsoleHasWordsForThem() {
        List<String> all = new ArrayList<>(List.of("plan"));
        all.addAll(JOB);
        all.addAll(List.of("--shop", dir.toString()));
        List<String> words = List.of(
                "define pot life",
                "why",
                "enough",
                "why not degas-in-mould",
                "why-not vents",
                "why cup-volume",
                "why cup-volum",
                "sensitive",
                "rule cup-too-small",
                "define ventz",
                "quit");
        String out = Ran.with(String.join("\n", words) + "\n", Map.of(), all.toArray(String[]::new))
                .out();
        assertThat(out).contains("pot life: ", "What would differ", "The plan is not to degas again in the mould.");
        assertThat(out).contains("Perhaps cup-volume.", "What to measure or find out next", "Close to it: vent");
        assertThat(out).contains("here cup-volume: 2 L, as you said.");
        assertThat(out.lines().filter(l -> l.length() > 80)).isEmpty();
    }
}
