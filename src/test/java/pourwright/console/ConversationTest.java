package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;
import pourwright.testing.Generated;

/** The conversation as a person has it: typed lines in, shown lines out. */
class ConversationTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final int MOST_QUESTIONS = 120;

    @TempDir
    Path shop;

    private static Conversation.End run(ScriptedDoor door) {
        return new Conversation(door, new PlanJob(KNOWLEDGE), null, Answers.NONE).run();
    }

    private static final Map<String, String> JOB = Map.ofEntries(
            Map.entry("material", "tin silicone"),
            Map.entry("job", "1"),
            Map.entry("kit", "vacuum"),
            Map.entry("batch-mass", "1.2 kg"),
            Map.entry("amount-by", "mass"),
            Map.entry("cup-volume", "5 L"),
            Map.entry("pot-life", "40 min"),
            Map.entry("pot-life-meaning", "gel"),
            Map.entry("chamber-volume", "20 L"),
            Map.entry("pump-speed", "3 cfm"));

    @Test
    void aJobIsPlannedToTheEnd() {
        ScriptedDoor door = ScriptedDoor.answering(JOB);
        assertThat(run(door)).isEqualTo(Conversation.End.ADVICE);
        assertThat(door.all()).contains("= 1.2 kg", "= 40 min", "GO.", "Mix: ", "Done.");
        assertThat(door.prompts).doesNotHaveDuplicates().endsWith("plan");
        assertThat(door.prompts.size()).isLessThan(MOST_QUESTIONS);
    }

    static Stream<String> materials() {
        return KNOWLEDGE.materials().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("materials")
    void nothingKnownButTheLiquidStillGivesAPlan(String material) {
        ScriptedDoor door = ScriptedDoor.answering(Map.of("material", material));
        assertThat(run(door)).isIn(Conversation.End.ADVICE, Conversation.End.STOP);
        assertThat(door.prompts).doesNotHaveDuplicates().endsWith("plan");
        assertThat(door.all()).doesNotContain("(not known)", "{", "NaN", "Infinity");
    }

    @Test
    void withoutALiquidNothingCanBePlannedAndThatIsSaid() {
        ScriptedDoor door = ScriptedDoor.typing("don't know", "enough", "quit");
        assertThat(run(door)).isEqualTo(Conversation.End.UNFINISHED);
        assertThat(door.all()).contains("needed first");
    }

    @Test
    void everyQuestionHasAReasonAndHelp() {
        List<String> without = new ArrayList<>();
        Map<String, Integer> turn = new HashMap<>();
        ScriptedDoor[] door = new ScriptedDoor[1];
        door[0] = new ScriptedDoor(
                id -> {
                    if (id.equals("plan")) {
                        return "quit";
                    }
                    int t = turn.merge(id, 1, Integer::sum);
                    if (t == 2 || t == 3) {
                        String last = door[0].lines.get(door[0].lines.size() - 1);
                        if (last.startsWith(id + " > ")) {
                            without.add(id + " " + (t == 2 ? "why" : "help"));
                        }
                    }
                    return t == 1 ? "why" : t == 2 ? "help" : JOB.getOrDefault(id, "don't know");
                },
                80,
                false);
        assertThat(run(door[0])).isEqualTo(Conversation.End.ADVICE);
        assertThat(without).isEmpty();
        assertThat(turn).hasSizeGreaterThan(15);
    }

    @Test
    void backGoesAsFarAsOneLikesAndEnterTakesTheEarlierAnswer() {
        // All answers first, then back to the start, then Enter all the way: the plan is the same.
        ScriptedDoor straight = ScriptedDoor.answering(JOB);
        run(straight);
        int questions = straight.prompts.size() - 1;
        int[] asked = {0};
        ScriptedDoor there = new ScriptedDoor(
                id -> {
                    int n = asked[0]++;
                    if (n < questions) {
                        return JOB.getOrDefault(id, "don't know");
                    }
                    return n < 2 * questions ? "back" : id.equals("plan") ? "quit" : "";
                },
                80,
                false);
        assertThat(run(there)).isEqualTo(Conversation.End.ADVICE);
        List<String> again = there.prompts.subList(2 * questions, there.prompts.size());
        assertThat(again).as("the same questions in the same order").isEqualTo(straight.prompts);
        assertThat(there.all()).containsPattern("\\(Enter = tin[- ]silicone\\)").contains("(Enter = 1.2 kg)");
        assertThat(plan(there.lines)).isEqualTo(plan(straight.lines));
    }

    @Test
    void backAtTheFirstQuestionSaysSo() {
        ScriptedDoor door = ScriptedDoor.typing("back", "quit");
        run(door);
        assertThat(door.all()).contains("This is the first question.");
    }

    /** The last page shown, from its verdict on. */
    private static List<String> plan(List<String> lines) {
        int from = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).matches("(GO|CHANGE|STOP)\\b.*")) {
                from = i;
            }
        }
        return lines.subList(from, lines.size());
    }

    @Test
    void anAnswerCanBeChangedByNumberAndByName() {
        ScriptedDoor door = ScriptedDoor.typing(
                "tin silicone",
                "change 1",
                "plaster",
                "answers",
                "change material",
                "wax",
                "enough",
                "answers",
                "change 1",
                "plaster",
                "quit",
                "quit");
        run(door);
        assertThat(door.all())
                .contains("1. material: " + KNOWLEDGE.materials().get("plaster").name());
        assertThat(door.all())
                .contains("1. material: " + KNOWLEDGE.materials().get("wax").name());
    }

    @Test
    void aChangeOfNothingSaysWhatCanBeChanged() {
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "change 99", "change", "change cheese", "quit");
        run(door);
        assertThat(door.lines.stream().filter(l -> l.contains("Say which answer")))
                .hasSize(3);
    }

    @Test
    void nonsenseThreeTimesOffersAWayOut() {
        ScriptedDoor door = ScriptedDoor.typing("cheese", "brick", "cheese", "quit");
        run(door);
        assertThat(door.all()).contains("Type \"help\" for how to find it, or \"don't know\" to go on without.");
        ScriptedDoor twice = ScriptedDoor.typing("cheese", "brick", "quit");
        run(twice);
        assertThat(twice.all()).doesNotContain("how to find it");
    }

    @Test
    void aMeaningIsChosenByItsNumber() {
        // A bare number where it could mean several things is asked about; "2" then takes the second of them.
        int chosen = 0;
        for (Question q : KNOWLEDGE.questions()) {
            if (!q.kind().equals("quantity") || Boolean.FALSE.equals(q.asked())) {
                continue;
            }
            Map<String, Integer> turn = new HashMap<>();
            ScriptedDoor door = new ScriptedDoor(
                    id -> {
                        if (id.equals("plan")) {
                            return "quit";
                        }
                        if (!id.equals(q.id())) {
                            return JOB.getOrDefault(id, "don't know");
                        }
                        int t = turn.merge(id, 1, Integer::sum);
                        if (t == 1) {
                            return Double.toString(Math.sqrt(Math.max(q.min(), 1e-3) * q.max()));
                        }
                        return t == 2 ? "2" : "don't know";
                    },
                    80,
                    false);
            run(door);
            int at = door.lines.indexOf(q.id() + " > 2");
            if (at > 0 && door.lines.get(at - 1).matches("  2\\. .*")) {
                assertThat(door.lines.get(at + 1)).as(q.id()).startsWith("  = ");
                chosen++;
            }
        }
        assertThat(chosen).as("bare numbers that were asked about").isPositive();
    }

    @Test
    void aChoiceIsTakenByNumberByWordAndByAUniqueBeginning() {
        Question job = KNOWLEDGE.question("job").orElseThrow();
        Question.Choice embed = job.choice("embed").orElseThrow();
        int number = job.choices().indexOf(embed) + 1;
        for (String typed : List.of(Integer.toString(number), "embed", "EMBED", "emb", embed.text(), "encase")) {
            ScriptedDoor door = new ScriptedDoor(
                    id -> switch (id) {
                        case "material" -> "clear-polyurethane";
                        case "job" -> typed;
                        default -> "quit";
                    },
                    80,
                    false);
            run(door);
            assertThat(door.lines).as(typed).contains("  = cast clear resin around an object");
        }
    }

    @Test
    void aBeginningOfSeveralIsAskedAbout() {
        ScriptedDoor door = ScriptedDoor.typing("plat", "quit");
        run(door);
        assertThat(door.all())
                .contains(KNOWLEDGE.materials().get("platinum-silicone").name());
        ScriptedDoor several = ScriptedDoor.typing("poly", "1", "quit");
        run(several);
        assertThat(several.all()).containsPattern("Which\\? For example \"1\" or \"[a-z-]+\"\\.");
        assertThat(several.all()).contains("1. ", "2. ");
        assertThat(several.prompts).as("the first of them was taken").contains("job");
    }

    @Test
    void theEndOfTheInputKeepsEverythingAndSaysWhatIsNext() {
        ScriptedDoor door = ScriptedDoor.typing("tin silicone");
        Conversation.End end = new Conversation(door, new PlanJob(KNOWLEDGE), shop, Answers.NONE).run();
        assertThat(end).isEqualTo(Conversation.End.UNFINISHED);
        assertThat(door.all()).contains("The input ended.", "The next question was '", "resume");
        assertThat(new Journal(shop, "plan")
                        .unfinished(new AnswersJson(KNOWLEDGE))
                        .orElseThrow()
                        .choice("material"))
                .isEqualTo("tin-silicone");
    }

    @Test
    void whatWasLeftGoesOnWithNothingAskedTwice() {
        List<String> typed = new ArrayList<>();
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    typed.add(id);
                    return typed.size() > 8 ? "quit" : JOB.getOrDefault(id, "don't know");
                },
                80,
                false);
        assertThat(new Conversation(door, new PlanJob(KNOWLEDGE), shop, Answers.NONE).run())
                .isEqualTo(Conversation.End.UNFINISHED);
        Answers left =
                new Journal(shop, "plan").unfinished(new AnswersJson(KNOWLEDGE)).orElseThrow();
        assertThat(left.all().keySet()).containsExactlyElementsOf(typed.subList(0, 8));
        ScriptedDoor rest = ScriptedDoor.answering(JOB);
        assertThat(new Conversation(rest, new PlanJob(KNOWLEDGE), shop, left).run())
                .isEqualTo(Conversation.End.ADVICE);
        assertThat(rest.prompts).doesNotContainAnyElementsOf(typed.subList(0, 8));
        assertThat(new Journal(shop, "plan").unfinished(new AnswersJson(KNOWLEDGE)))
                .as("done")
                .isEmpty();
    }

    @Test
    void everyWordAtThePlanAnswers() {
        List<String> words = List.of(
                "more",
                "cautions",
                "how 1",
                "how 999",
                "how",
                "how x",
                "figures",
                "rules",
                "sources",
                "answers",
                "again",
                "help",
                "why",
                "define froth",
                "define cheese",
                "define",
                "cheese",
                "",
                "save",
                "save Lantern Yard ear");
        Map<String, List<String>> said = new LinkedHashMap<>();
        int[] n = {-1};
        int[] mark = {0};
        ScriptedDoor[] door = new ScriptedDoor[1];
        door[0] = new ScriptedDoor(
                id -> {
                    if (!id.equals("plan")) {
                        return JOB.getOrDefault(id, "don't know");
                    }
                    if (n[0] >= 0) {
                        said.put(words.get(n[0]), List.copyOf(door[0].lines.subList(mark[0], door[0].lines.size())));
                    }
                    n[0]++;
                    mark[0] = door[0].lines.size() + 1;
                    return n[0] < words.size() ? words.get(n[0]) : "quit";
                },
                80,
                false);
        new Conversation(door[0], new PlanJob(KNOWLEDGE), shop, Answers.NONE).run();
        assertThat(said.keySet()).containsExactlyElementsOf(words);
        assertThat(said).allSatisfy((word, lines) -> assertThat(lines).as(word).isNotEmpty());
        assertThat(String.join(" ", said.get("define cheese"))).contains("no word");
        assertThat(shop.resolve("cases").resolve("lantern-yard-ear.case.json")).isRegularFile();
    }

    @Test
    void aFolderThatCannotBeWrittenCostsOnlyTheSafetyNet() throws IOException {
        Path file = shop.resolve("a-file");
        Files.writeString(file, "");
        ScriptedDoor door = ScriptedDoor.answering(JOB);
        assertThat(new Conversation(door, new PlanJob(KNOWLEDGE), file.resolve("shop"), Answers.NONE).run())
                .isEqualTo(Conversation.End.ADVICE);
        assertThat(door.all()).contains("Answers cannot be kept in", "a-file is a file, not a folder");
    }

    @Test
    void answersThatCannotBothBeTrueAreSettled() {
        Map<String, String> job = new HashMap<>(JOB);
        job.putAll(Map.of("gauge-kind", "below-local-air", "gauge-reading", "29 inHg", "altitude", "1500 m"));
        int[] asked = {0};
        ScriptedDoor door = new ScriptedDoor(
                id -> id.equals("plan") || ++asked[0] > MOST_QUESTIONS
                        ? "quit"
                        : id.equals("gauge-reading") && asked[0] > 60 ? "24 inHg" : job.getOrDefault(id, "don't know"),
                80,
                false);
        run(door);
        assertThat(door.prompts).contains("gauge-reading");
        assertThat(door.all()).contains("the most would be");
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 200})
    void noLineIsWiderThanTheScreen(int width) {
        List<String> words =
                List.of("more", "cautions", "how 1", "how 5", "figures", "rules", "sources", "answers", "help", "quit");
        for (boolean plain : new boolean[] {false, true}) {
            int[] n = {0};
            Map<String, Integer> turn = new HashMap<>();
            ScriptedDoor door = new ScriptedDoor(
                    id -> {
                        if (id.equals("plan")) {
                            return words.get(n[0]++);
                        }
                        int t = turn.merge(id, 1, Integer::sum);
                        return t == 1
                                ? "help"
                                : t == 2 ? "why" : t == 3 ? "nonsense" : JOB.getOrDefault(id, "don't know");
                    },
                    width,
                    plain);
            run(door);
            assertThat(door.lines.stream()
                            .filter(l -> !l.contains(" > "))
                            .filter(l -> l.codePointCount(0, l.length()) > width)
                            .filter(l -> l.strip().contains(" ")))
                    .isEmpty();
        }
    }

    static Stream<Generated> tries() {
        return Generated.tries(7L, 100);
    }

    @ParameterizedTest
    @MethodSource("tries")
    void aRandomConversationNeverBreaks(Generated any) {
        int number = Integer.parseInt(any.toString().replaceAll("try (\\d+) of.*", "$1"));
        ScriptedDoor door = random(any);
        assertThat(run(door)).isNotNull();
        assertThat(door.lines.stream().filter(l -> l.matches(".*(?:[{}]|NaN|Infinity|Exception|\\(not known\\)).*")))
                .isEmpty();
        ScriptedDoor same =
                random(Generated.tries(7L, number + 1).skip(number).findFirst().orElseThrow());
        run(same);
        assertThat(same.lines).as("the same seed says the same").isEqualTo(door.lines);
    }

    /** Answers mostly, with nonsense, second thoughts and curiosity between. */
    private static ScriptedDoor random(Generated any) {
        int[] asked = {0};
        return new ScriptedDoor(
                id -> {
                    if (++asked[0] > 150) {
                        return null;
                    }
                    if (id.equals("plan")) {
                        return any.pick(
                                "quit",
                                "more",
                                "how 1",
                                "how 3",
                                "figures",
                                "rules",
                                "back",
                                "change 1",
                                "change 4",
                                "again",
                                "sources",
                                "cautions",
                                "\u0007",
                                "answers");
                    }
                    double what = any.uniform(0, 1);
                    if (what < 0.12) {
                        return any.pick(
                                "back",
                                "why",
                                "help",
                                "answers",
                                "change 1",
                                "change 3",
                                "change x",
                                "change",
                                "",
                                "  ",
                                "?",
                                "enough");
                    }
                    if (what < 0.2) {
                        return any.pick(
                                "nonsense",
                                "-5",
                                "0",
                                "1e999",
                                "5 furlongs",
                                "99999999999999",
                                "1:0",
                                "\u001b[2J",
                                "5",
                                "½ kg",
                                "10..5",
                                "3",
                                "x".repeat(500),
                                "quit now");
                    }
                    if (what < 0.205) {
                        return "quit";
                    }
                    if (what < 0.35) {
                        return "don't know";
                    }
                    return answer(id, any);
                },
                any.pick(40, 80, 200),
                any.pick(true, false));
    }

    private static String answer(String id, Generated any) {
        Question q = KNOWLEDGE.question(id).orElse(null);
        if (q == null) {
            return "yes";
        }
        return switch (q.kind()) {
            case "material" -> any.pick(KNOWLEDGE.materials().keySet().toArray(String[]::new));
            case "choice" ->
                any.pick(q.choices().stream().map(Question.Choice::id).toArray(String[]::new));
            case "ratio" -> any.whole(1, 100) + ":" + any.whole(1, 10) + any.pick("", " by weight", " by volume");
            default -> {
                double low = Math.max(q.min(), 1e-3);
                double x = q.min() > 0 ? any.logUniform(low, q.max()) : any.uniform(q.min(), q.max());
                yield any.pick("", "about ") + String.format(java.util.Locale.ROOT, "%.4f", x) + " " + q.unit();
            }
        };
    }

    @Test
    void anAnswerGivenBeforehandIsNotAskedAgain() {
        Answers start = Answers.NONE.with("material", new Answer.Choice("plaster"), "plaster");
        ScriptedDoor door = ScriptedDoor.answering(JOB);
        new Conversation(door, new PlanJob(KNOWLEDGE), null, start).run();
        assertThat(door.prompts).doesNotContain("material");
    }
}
