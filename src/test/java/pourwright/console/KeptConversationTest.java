package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Whatever is wrong with the workshop's folder: one sentence, no damage, and the conversation goes on. */
class KeptConversationTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final Diagnoser DIAGNOSER =
            new Diagnoser(KnowledgeReader.forDiagnosis(Path.of("knowledge"), KNOWLEDGE));

    @TempDir
    Path folder;

    private Path shop() {
        return folder.resolve("shop");
    }

    private Path journal() {
        return shop().resolve("unfinished.jsonl");
    }

    private static Job job(String word) {
        return word.equals("plan") ? new PlanJob(KNOWLEDGE) : new DiagnoseJob(DIAGNOSER);
    }

    private Conversation.End talk(Door door, String word, Answers start) {
        return new Conversation(door, job(word), shop(), start).run();
    }

    private Answers left(String word) {
        return new Journal(shop(), word)
                .unfinished(new AnswersJson(job(word).knowledge()))
                .orElse(Answers.NONE);
    }

    private static Answers some(String word, String... idsAndTexts) {
        AnswersJson reader = new AnswersJson(job(word).knowledge());
        Answers answers = Answers.NONE;
        for (int i = 0; i < idsAndTexts.length; i += 2) {
            answers = reader.with(answers, idsAndTexts[i], idsAndTexts[i + 1]);
        }
        return answers;
    }

    private static List<String> sentences(ScriptedDoor door, String part) {
        return Stream.of(door.all().split("(?<=[.!?]) "))
                .filter(s -> s.contains(part))
                .toList();
    }

    /** A door that lets a test look at the disk, or break it, at the moment something is shown or asked. */
    private record Watched(ScriptedDoor door, UnaryOperator<String> onSay) implements Door {
        @Override
        public String ask(String prompt, List<String> words) {
            return door.ask(prompt, words);
        }

        @Override
        public void say(String line) {
            door.say(onSay.apply(line));
        }

        @Override
        public int width() {
            return door.width();
        }

        @Override
        public boolean plain() {
            return door.plain();
        }
    }

    private List<String> onDisk() {
        try {
            return Files.readAllLines(journal(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "diagnose"})
    void anAnswerIsOnDiskBeforeItIsReadBack(String word) {
        List<String> echoed = new ArrayList<>();
        Map<String, String> typed = Map.of("material", "tin silicone", "job", "1", "symptom", "1", "level", "2");
        ScriptedDoor door = new ScriptedDoor(
                id -> id.equals(word) && !echoed.isEmpty() || echoed.size() > 15
                        ? "quit"
                        : id.equals(word) ? "" : typed.getOrDefault(id, "don't know"),
                80,
                false);
        talk(
                new Watched(door, line -> {
                    if (line.startsWith("  = ")) {
                        String id = door.prompts.get(door.prompts.size() - 1);
                        List<String> lines = onDisk();
                        assertThat(lines.get(0)).isEqualTo("{\"word\":\"" + word + "\"}");
                        assertThat(lines.get(lines.size() - 1)).as(line).startsWith("{\"set\":\"" + id + "\",");
                        echoed.add(id);
                    }
                    return line;
                }),
                word,
                Answers.NONE);
        assertThat(echoed).hasSizeGreaterThan(5);
    }

    @Test
    void wordsOfOnesOwnAreOnDiskBeforeTheNextQuestion() {
        List<String> kept = new ArrayList<>();
        ScriptedDoor door = new ScriptedDoor(
                id -> switch (id) {
                    case "diagnose" -> "tiny bubbles all through the part";
                    case "right" -> "yes";
                    default -> {
                        kept.addAll(left("diagnose").all().keySet());
                        yield null;
                    }
                },
                80,
                false);
        talk(door, "diagnose", Answers.NONE);
        assertThat(kept).contains("symptom");
    }

    @Test
    void aTakenBackAnswerIsTakenBackOnDisk() {
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "1", "back", "quit");
        talk(door, "plan", Answers.NONE);
        assertThat(left("plan").all().keySet()).containsExactly("material");
    }

    @Test
    void anInterruptedResultCanBeShownAgain() {
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    if (id.equals("plan")) {
                        throw new Door.Interrupted();
                    }
                    return id.equals("material") ? "plaster" : "don't know";
                },
                80,
                false);
        assertThat(talk(door, "plan", Answers.NONE)).isEqualTo(Conversation.End.INTERRUPTED);
        assertThat(door.all()).contains("\"pourwright resume\" shows it again");
        ScriptedDoor again = ScriptedDoor.typing("quit");
        talk(again, "plan", left("plan"));
        assertThat(again.prompts).containsExactly("plan");
        assertThat(journal()).doesNotExist();
    }

    @Test
    void anotherConversationIsLeftAloneUntilThereIsAnAnswer() throws IOException {
        talk(ScriptedDoor.typing("", "bubbles", "clear polyurethane"), "diagnose", Answers.NONE);
        byte[] before = Files.readAllBytes(journal());
        assertThat(before).isNotEmpty();
        ScriptedDoor looked = ScriptedDoor.typing("why", "back", "quit");
        talk(looked, "plan", Answers.NONE);
        assertThat(Files.readAllBytes(journal())).isEqualTo(before);
        assertThat(sentences(looked, "An unfinished diagnosis with")).hasSize(1);
        assertThat(looked.all()).contains("of before still stands");
        // Answers given on the command line and a result at once do not end the other conversation either.
        ScriptedDoor given = ScriptedDoor.typing("enough", "quit");
        talk(given, "plan", some("plan", "material", "plaster"));
        assertThat(Files.readAllBytes(journal())).isEqualTo(before);
        talk(ScriptedDoor.typing("tin silicone", "quit"), "plan", Answers.NONE);
        assertThat(Journal.wordLeft(shop())).isEqualTo("plan");
        assertThat(left("plan").all().keySet()).containsExactly("material");
    }

    @Test
    void whoGoesOnIsNotWarnedOfHimself() {
        talk(ScriptedDoor.typing("tin silicone", "1"), "plan", Answers.NONE);
        ScriptedDoor resumed = ScriptedDoor.typing("quit");
        talk(resumed, "plan", left("plan"));
        assertThat(resumed.all()).doesNotContain("stands in").contains("Kept.");
        assertThat(left("plan").all().keySet()).containsExactly("material", "job");
    }

    @Test
    void aLockFileThatWasLeftHoldsNobodyUp() throws IOException {
        Files.createDirectories(shop());
        Files.writeString(shop().resolve("console.lock"), "process 1, on another day");
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "quit");
        talk(door, "plan", Answers.NONE);
        assertThat(door.all()).contains("Kept.").doesNotContain("Another console");
    }

    @Test
    void twoConsolesInOneFolder() {
        ScriptedDoor second = ScriptedDoor.typing("plaster", "answers", "save second", "quit");
        boolean[] talked = {false};
        ScriptedDoor first = new ScriptedDoor(
                id -> {
                    if (id.equals("job") && !talked[0]) {
                        talked[0] = true;
                        talk(second, "plan", Answers.NONE);
                        return "1";
                    }
                    return id.equals("material") ? "tin silicone" : "quit";
                },
                80,
                false);
        talk(first, "plan", Answers.NONE);
        assertThat(sentences(second, "Another console is open in")).hasSize(1);
        assertThat(second.all()).contains("1. material: ").endsWith("Left. The answers were not kept.");
        assertThat(first.all()).doesNotContain("Another console").contains("Kept.");
        assertThat(left("plan").all().keySet()).containsExactly("material", "job");
        assertThat(left("plan").choice("material")).isEqualTo("tin-silicone");
        ScriptedDoor third = ScriptedDoor.typing("quit");
        talk(third, "plan", left("plan"));
        assertThat(third.all()).as("the folder is free again").contains("Kept.");
    }

    /** The journal turns into a folder while the conversation runs, and back: as a disk that fills and is cleared. */
    @Test
    void troubleOnTheWayIsToldOnceAndEndsWithNothingLost() {
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    try {
                        if (id.equals("pot-life")) {
                            Files.delete(journal());
                            Files.createDirectories(journal().resolve("in-the-way"));
                        } else if (id.equals("amount-by")) {
                            Files.delete(journal().resolve("in-the-way"));
                            Files.delete(journal());
                        }
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                    return switch (id) {
                        case "material" -> "tin silicone";
                        case "job" -> "1";
                        case "pot-life" -> "40 min";
                        case "mix-ratio" -> "10:1";
                        case "amount-by" -> "mass";
                        default -> "quit";
                    };
                },
                80,
                false);
        talk(door, "plan", Answers.NONE);
        assertThat(sentences(door, "Answers cannot be kept in")).hasSize(1);
        assertThat(sentences(door, "Answers are kept again in")).hasSize(1);
        assertThat(door.all()).endsWith("Kept. \"pourwright resume\" goes on from here.");
        assertThat(left("plan").all().keySet())
                .containsExactly("material", "job", "pot-life", "mix-ratio", "amount-by");
    }

    @Test
    void aJournalThatGoesAwayIsWrittenWholeAgain() {
        ScriptedDoor door = new ScriptedDoor(
                id -> {
                    if (id.equals("job")) {
                        journal().toFile().delete();
                    }
                    return id.equals("material") ? "tin silicone" : id.equals("job") ? "1" : "quit";
                },
                80,
                false);
        talk(door, "plan", Answers.NONE);
        assertThat(door.all()).doesNotContain("cannot");
        assertThat(left("plan").all().keySet()).containsExactly("material", "job");
    }

    @Test
    void troubleToTheEndIsNotCalledKept() throws IOException {
        Files.writeString(shop(), "a file");
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "1", "quit");
        talk(door, "plan", Answers.NONE);
        assertThat(sentences(door, "Answers cannot be kept in"))
                .singleElement()
                .asString()
                .contains(shop() + " is a file, not a folder");
        assertThat(door.all()).endsWith("Left. The answers were not kept.").doesNotContain("resume");
        assertThat(shop()).hasContent("a file");
    }

    @Test
    void aFolderFarFromAnyIsNotMadeUp() {
        Path far = folder.resolve("no-home/.config/pourwright");
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "quit");
        new Conversation(door, job("plan"), far, Answers.NONE).run();
        assertThat(door.all()).contains("there is no folder " + folder.resolve("no-home"));
        assertThat(folder.resolve("no-home")).doesNotExist();
    }

    @Test
    void theFolderAboveIsMadeToo() {
        Path config = folder.resolve(".config/pourwright");
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "quit");
        new Conversation(door, job("plan"), config, Answers.NONE).run();
        assertThat(config.resolve("unfinished.jsonl")).isRegularFile();
    }

    @Test
    void aJournalThatCannotBeReadIsKeptBeside() throws IOException {
        Files.createDirectories(shop());
        byte[] rubbish = {0, (byte) 0xff, '\n', 7, '\n', '[', '\n', 0};
        Files.write(journal(), rubbish);
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "quit");
        talk(door, "plan", Answers.NONE);
        assertThat(sentences(door, "cannot be read")).hasSize(1);
        assertThat(Files.readAllBytes(shop().resolve("unfinished.jsonl.unreadable")))
                .isEqualTo(rubbish);
        assertThat(left("plan").all().keySet()).containsExactly("material");
    }

    @Test
    void aHugeJournalIsKeptBesideToo() throws IOException {
        Files.createDirectories(shop());
        try (RandomAccessFile huge = new RandomAccessFile(journal().toFile(), "rw")) {
            huge.setLength(5_000_000_000L);
        }
        ScriptedDoor door = ScriptedDoor.typing("tin silicone", "quit");
        talk(door, "plan", Answers.NONE);
        assertThat(sentences(door, "cannot be read")).hasSize(1);
        assertThat(shop().resolve("unfinished.jsonl.unreadable")).hasSize(5_000_000_000L);
        assertThat(left("plan").all().keySet()).containsExactly("material");
    }

    @Test
    void aSpoiltLineIsAskedAgainAndTheRestGoesOn() throws IOException {
        talk(ScriptedDoor.typing("tin silicone", "1", "40 min"), "plan", Answers.NONE);
        String whole = Files.readString(journal());
        Files.writeString(journal(), whole.replace("{\"set\":\"job\"", "{\"sat:\"job\""));
        ScriptedDoor door = ScriptedDoor.typing("1", "quit");
        talk(door, "plan", left("plan"));
        assertThat(sentences(door, "Part of the unfinished conversation")).hasSize(1);
        assertThat(door.prompts).startsWith("job");
        assertThat(left("plan").all().keySet()).containsExactlyInAnyOrder("material", "pot-life", "job");
        assertThat(Files.readString(shop().resolve("unfinished.jsonl.unreadable")))
                .contains("{\"sat:");
    }

    @Test
    void aLineThatAKillCutShortIsNoTrouble() throws IOException {
        talk(ScriptedDoor.typing("tin silicone", "1", "40 min"), "plan", Answers.NONE);
        byte[] whole = Files.readAllBytes(journal());
        Files.write(journal(), java.util.Arrays.copyOf(whole, whole.length - 6));
        ScriptedDoor door = ScriptedDoor.typing("quit");
        talk(door, "plan", left("plan"));
        assertThat(door.all()).doesNotContain("cannot be read");
        assertThat(left("plan").all().keySet()).containsExactly("material", "job");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"kit\":\"vac", "\u0000\u0001", "[]", "{\"kit\":\"a spaceship\"}", "{\"cheese\":1}", ""})
    void aBrokenKitIsAskedAgainAndKeptBeside(String broken) throws IOException {
        Files.createDirectories(shop());
        Path kit = shop().resolve("kit.json");
        Files.writeString(kit, broken);
        Map<String, String> answers = new HashMap<>(Map.of("material", "tin silicone", "job", "1", "kit", "vacuum"));
        ScriptedDoor door = ScriptedDoor.answering(answers);
        assertThat(talk(door, "plan", Answers.NONE)).isIn(Conversation.End.ADVICE, Conversation.End.STOP);
        assertThat(sentences(door, "kit.json cannot be read")).hasSize(1);
        assertThat(door.prompts).contains("kit");
        assertThat(Files.readString(shop().resolve("kit.json.unreadable"))).isEqualTo(broken);
        assertThat(Files.readString(kit)).contains("\"kit\" : \"vacuum\"");
    }

    @Test
    void aKitThatCannotBeWrittenIsOneSentence() throws IOException {
        Files.createDirectories(shop());
        Map<String, String> answers = Map.of("material", "tin silicone", "job", "1", "kit", "vacuum");
        ScriptedDoor inner = ScriptedDoor.answering(answers);
        boolean[] broken = {false};
        talk(
                new Watched(inner, line -> {
                    if (!broken[0] && line.startsWith("  = ")) {
                        broken[0] =
                                shop().resolve("kit.json/in-the-way").toFile().mkdirs();
                    }
                    return line;
                }),
                "plan",
                Answers.NONE);
        assertThat(sentences(inner, "The kit cannot be remembered in")).hasSize(1);
        assertThat(inner.all()).endsWith("Done.").doesNotContain("Answers cannot be kept");
    }

    @Test
    void aCaseThatCannotBeSavedIsOneSentenceAndTheResultStands() throws IOException {
        Files.createDirectories(shop());
        Files.writeString(shop().resolve("cases"), "a file");
        int[] n = {0};
        List<String> words = List.of("save ear", "save " + "x".repeat(300), "again", "quit");
        ScriptedDoor door = new ScriptedDoor(
                id -> id.equals("plan")
                        ? words.get(n[0]++)
                        : id.equals("material") ? "plaster" : id.equals("job") ? "1" : "don't know",
                80,
                false);
        assertThat(talk(door, "plan", Answers.NONE)).isIn(Conversation.End.ADVICE, Conversation.End.STOP);
        assertThat(sentences(door, "The case cannot be saved in"))
                .singleElement()
                .asString()
                .contains("is a file, not a folder");
        assertThat(door.all()).contains("Give the case a shorter name");
        assertThat(shop().resolve("cases")).hasContent("a file");
    }
}
