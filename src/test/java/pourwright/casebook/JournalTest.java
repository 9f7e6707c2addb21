package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
                .contains("material", "mix-ratio");
    }

    @Test
    void theEndLeavesNothing() throws IOException {
        Journal journal = written();
        journal.end();
        assertThat(journal.unfinished(READER)).isEmpty();
        assertThat(file()).doesNotExist();
        journal.end();
    }
}
