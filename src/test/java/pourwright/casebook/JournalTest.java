package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** The unfinished conversation survives a kill at any byte. */
class JournalTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final AnswersJson READER = new AnswersJson(KNOWLEDGE);

    @TempDir
    Path shop;

    private Path file() {
        return shop.resolve("unfinished.jsonl");
    }

    private Journal written() throws IOException {
        Journal journal = new Journal(shop, "plan");
        journal.begin(Answers.NONE);
        journal.set("material", "tin silicone");
        journal.set("room-temperature", "21,5 °C");
        journal.set("pot-life", "about 40 min");
        journal.set("batch-mass", new BigDecimal("1200"));
        journal.unset("pot-life");
        journal.set("altitude", null);
        journal.set("pot-life", "½ h");
        journal.set("mix-ratio", "10:1");
        return journal;
    }

    @Test
    void whatWasWrittenIsReadBack() throws IOException {
        Answers answers = written().unfinished(READER).orElseThrow();
        assertThat(answers.all().keySet())
                .containsExactly("material", "room-temperature", "batch-mass", "altitude", "pot-life", "mix-ratio");
        assertThat(answers.choice("material")).isEqualTo("tin-silicone");
        assertThat(answers.get("altitude")).isEmpty();
        assertThat(answers.has("altitude")).isTrue();
    }

    @Test
    void aKillAtAnyByteKeepsEveryWholeLine() throws IOException {
        written();
        byte[] whole = Files.readAllBytes(file());
        for (int length = 0; length <= whole.length; length++) {
            Files.write(file(), Arrays.copyOf(whole, length));
            Optional<Answers> left = new Journal(shop, "plan").unfinished(READER);
            Answers wanted = replayed(whole, length);
            assertThat(left.map(a -> raw(a)).orElse(Map.of()))
                    .as("cut after byte " + length)
                    .isEqualTo(raw(wanted));
        }
    }

    /** What the whole lines before the cut say; a last line that only lacks its end counts too. */
    private static Answers replayed(byte[] whole, int length) throws IOException {
        int end = length;
        if (length < whole.length && whole[length] != '\n') {
            while (end > 0 && whole[end - 1] != '\n') {
                end--;
            }
        }
        Path other = Files.createTempDirectory("journal");
        Files.write(other.resolve("unfinished.jsonl"), Arrays.copyOf(whole, end));
        Answers answers = new Journal(other, "plan").unfinished(READER).orElse(Answers.NONE);
        Files.delete(other.resolve("unfinished.jsonl"));
        Files.delete(other);
        return answers;
    }

    private static Map<String, String> raw(Answers answers) {
        Map<String, String> raw = new LinkedHashMap<>();
        answers.all().forEach((id, g) -> raw.put(id, String.valueOf(g.raw())));
        return raw;
    }

    @Test
    void afterACutLineTheConversationGoesOnWithNothingLost() throws IOException {
        written();
        byte[] whole = Files.readAllBytes(file());
        List<Integer> ends = lineEnds(whole);
        int cut = ends.get(ends.size() - 1) - 4;
        Files.write(file(), Arrays.copyOf(whole, cut));
        Journal journal = new Journal(shop, "plan");
        Answers before = journal.unfinished(READER).orElseThrow();
        journal.set("cup-volume", "5 L");
        Answers after = journal.unfinished(READER).orElseThrow();
        assertThat(after.all().keySet())
                .as("the next answer is not glued to the cut line")
                .containsAll(before.all().keySet())
                .contains("cup-volume");
    }

    private static List<Integer> lineEnds(byte[] bytes) {
        List<Integer> ends = new java.util.ArrayList<>();
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                ends.add(i + 1);
            }
        }
        return ends;
    }

    @Test
    void rubbishInTheFileNeverThrows() throws IOException {
        for (byte[] rubbish : new byte[][] {
            {},
            {0},
            {(byte) 0xff, (byte) 0xfe},
            "\n\n\n".getBytes(StandardCharsets.UTF_8),
            "[]\n7\n\"x\"\nnull\n".getBytes(StandardCharsets.UTF_8),
            "{\"set\":1}\n{\"set\":null,\"to\":1}\n{\"unset\":[]}\n{\"set\":\"cheese\",\"to\":\"x\"}\n"
                    .getBytes(StandardCharsets.UTF_8),
            "{\"set\":\"batch-mass\",\"to\":[1]}\n{\"set\":\"batch-mass\",\"to\":{}}\n"
                    .getBytes(StandardCharsets.UTF_8),
            "{\"set\":\"material\"}\n".getBytes(StandardCharsets.UTF_8),
            "[".repeat(5000).getBytes(StandardCharsets.UTF_8)
        }) {
            Files.write(file(), rubbish);
            assertThat(new Journal(shop, "plan").unfinished(READER))
                    .as(new String(rubbish, StandardCharsets.ISO_8859_1))
                    .isEmpty();
        }
    }

    @Test
    void rubbishInOneLineLosesThatLineOnly() throws IOException {
        written();
        byte[] whole = Files.readAllBytes(file());
        // The first line holds the word, the second the material.
        int first = lineEnds(whole).get(1);
        byte[] spoilt = whole.clone();
        spoilt[first + 10] = (byte) 0xff;
        Files.write(file(), spoilt);
        assertThat(new Journal(shop, "plan")
                        .unfinished(READER)
                        .orElse(Answers.NONE)
                        .all()
                        .keySet())
                .contains("material", "mix-ratio")
                .doesNotContain("room-temperature");
    }

    @Test
    void theEndLeavesNothing() throws IOException {
        Journal journal = written();
        journal.end();
        assertThat(journal.unfinished(READER)).isEmpty();
        assertThat(file()).doesNotExist();
        journal.end();
    }

    @Test
    void aDiskThatFillsUpCostsTheLastAnswerOnly() throws IOException {
        Answers many = written().unfinished(READER).orElseThrow();
        FullDisk disk = new FullDisk(1000);
        Journal journal = new Journal(shop, "plan", disk);
        journal.begin(Answers.NONE);
        journal.set("material", "tin silicone");
        for (int room = 0; room < 30; room++) {
            disk.free(room);
            assertThatThrownBy(() -> journal.set("room-temperature", "21 °C")).isInstanceOf(IOException.class);
            assertThatThrownBy(() -> journal.begin(many)).as("not even whole").isInstanceOf(IOException.class);
            assertThat(names()).containsExactly("unfinished.jsonl");
        }
        disk.free(1000);
        journal.set("pot-life", "40 min");
        assertThat(journal.unfinished(READER).orElseThrow().all().keySet()).contains("material", "pot-life");
    }

    @Test
    void aDeviceThatIsFullForEverSaysSo() throws IOException {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "a device that is always full");
        Files.createSymbolicLink(file(), full);
        assertThatThrownBy(() -> new Journal(shop, "plan").set("pot-life", "40 min"))
                .isInstanceOf(IOException.class);
        Files.delete(file());
    }

    @Test
    void aJournalThatHasGoneIsNotMadeAnewWithHalfOfTheAnswers() throws IOException {
        Journal journal = written();
        Files.delete(file());
        assertThatThrownBy(() -> journal.set("pot-life", "40 min")).isInstanceOf(IOException.class);
        assertThat(file()).doesNotExist();
    }

    @Test
    void aHugeFileIsNeitherReadNorLost() throws IOException {
        try (RandomAccessFile huge = new RandomAccessFile(file().toFile(), "rw")) {
            // A hole: it has the size and takes no room.
            huge.setLength(6_000_000_000L);
        }
        assertThat(Journal.wordLeft(shop)).isEqualTo("plan");
        assertThat(new Journal(shop, "plan").unfinished(READER)).isEmpty();
        assertThat(Journal.standing(shop).unread()).isEqualTo(1);
        assertThat(new Journal(shop, "plan").setAside()).isRegularFile();
        assertThat(file()).doesNotExist();
    }

    @Test
    void whatStandsIsKnownWithoutUnderstandingIt() throws IOException {
        written();
        assertThat(Journal.standing(shop))
                .isEqualTo(new Journal.Standing(
                        "plan",
                        Set.of("material", "room-temperature", "batch-mass", "altitude", "pot-life", "mix-ratio"),
                        0));
        Files.writeString(
                file(),
                "{\"word\":\"diagnose\"}\nrubbish\n{\"set\":\"symptom\",\"to\":\"bubbles\"}\n\n7\n{\"set\":\"lev");
        assertThat(Journal.standing(shop))
                .as("two lines of rubbish; the last was cut by a kill")
                .isEqualTo(new Journal.Standing("diagnose", Set.of("symptom"), 2));
    }

    @Test
    void anAnswerThatIsNoLongerTakenIsCountedAsLost() throws IOException {
        Journal journal = written();
        assertThat(journal.unread(READER)).isZero();
        journal.set("cheese", "mild");
        journal.set("batch-mass", "three bananas");
        assertThat(journal.unread(READER)).isEqualTo(2);
        journal.set("batch-mass", "1 kg");
        assertThat(journal.unread(READER)).isEqualTo(1);
    }

    @Test
    void whoGoesOnHasEveryAnswerThatStands() throws IOException {
        Journal journal = written();
        Answers all = journal.unfinished(READER).orElseThrow();
        assertThat(journal.isGoneOnWith(all, READER)).isTrue();
        assertThat(journal.isGoneOnWith(READER.with(all, "cup-volume", "2 L"), READER))
                .as("and more")
                .isTrue();
        assertThat(journal.isGoneOnWith(all.without("altitude"), READER)).isFalse();
        assertThat(journal.isGoneOnWith(READER.with(all, "batch-mass", "2 kg"), READER))
                .isFalse();
        assertThat(new Journal(shop, "diagnose").isGoneOnWith(all, READER)).isFalse();
    }

    @Test
    void theAgeOfTheFileDoesNotMatter() throws IOException {
        Journal journal = written();
        Answers before = journal.unfinished(READER).orElseThrow();
        for (String time : List.of("1970-01-01T00:00:00Z", "2099-12-31T23:59:59Z", "2001-09-09T01:46:40Z")) {
            Files.setLastModifiedTime(file(), FileTime.from(Instant.parse(time)));
            journal.set("cup-volume", "2 L");
            assertThat(raw(new Journal(shop, "plan").unfinished(READER).orElseThrow()))
                    .as(time)
                    .containsAllEntriesOf(raw(before))
                    .containsEntry("cup-volume", "2 L");
        }
        assertThat(Files.readString(file())).doesNotContainPattern("\\d{4}-\\d\\d-\\d\\d|\\d{10}");
    }

    @Test
    void onlyWhatKillsLeftIsSweptAway() throws IOException {
        Journal journal = written();
        for (String name : List.of("unfinished.jsonl.0.new", "kit.json.12.new", "mine.new", "kit.json.new.txt")) {
            Files.writeString(shop.resolve(name), "half");
        }
        journal.sweep();
        assertThat(names()).containsExactly("kit.json.new.txt", "mine.new", "unfinished.jsonl");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(shop)) {
            return all.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
