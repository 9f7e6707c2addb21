package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pourwright.advice.BadAnswer;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;

/**
 * The unfinished conversation on disk: one line per answer, forced out before the next question is asked, so that a
 * program killed at any moment loses nothing that was answered. A line cut short by the kill is passed over.
 */
public final class Journal {
    private final Path file;

    private final String word;

    /**
     * @param shop the workshop's folder; made when it is not there
     * @param word what the conversation is about: {@code plan} or {@code diagnose}
     */
    public Journal(Path shop, String word) {
        this.file = shop.resolve("unfinished.jsonl");
        this.word = word;
    }

    /** True when a conversation was left in this folder. */
    public static boolean standsIn(Path shop) {
        return Files.isRegularFile(shop.resolve("unfinished.jsonl"));
    }

    /** What the unfinished conversation is about; {@code plan} when its journal does not say. */
    public static String wordLeft(Path shop) {
        try (Stream<String> lines = Files.lines(shop.resolve("unfinished.jsonl"), StandardCharsets.UTF_8)) {
            String first = lines.findFirst().orElse("");
            return Json.read(first).path("word").asText("plan");
        } catch (IOException | UncheckedIOException e) {
            return "plan";
        }
    }

    /** Starts anew with these answers; the old journal stands until the new one is whole. */
    public void begin(Answers answers) throws IOException {
        StringBuilder lines = new StringBuilder(Json.write(Json.object().put("word", word)) + "\n");
        for (Map.Entry<String, Answers.Given> e : answers.all().entrySet()) {
            lines.append(line(e.getKey(), e.getValue().raw()));
        }
        WholeFile.write(file, lines.toString());
    }

    /** Notes an answer. */
    public void set(String id, Object raw) throws IOException {
        append(line(id, raw));
    }

    private static String line(String id, Object raw) {
        ObjectNode line = Json.object();
        line.put("set", id);
        if (raw == null) {
            line.putNull("to");
        } else {
            line.put("to", raw.toString());
        }
        return Json.write(line) + "\n";
    }

    /** Notes that an answer was taken back. */
    public void unset(String id) throws IOException {
        append(Json.write(Json.object().put("unset", id)) + "\n");
    }

    /** The conversation is over: nothing is left to resume. */
    public void end() throws IOException {
        Files.deleteIfExists(file);
    }

    private void append(String line) throws IOException {
        Files.createDirectories(file.getParent());
        // A line that a kill cut short must not swallow the next one.
        String start = endsMidLine() ? "\n" : "";
        ByteBuffer bytes = ByteBuffer.wrap((start + line).getBytes(StandardCharsets.UTF_8));
        try (FileChannel out = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
            out.force(true);
        }
    }

    private boolean endsMidLine() throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) == 0) {
            return false;
        }
        try (FileChannel in = FileChannel.open(file, StandardOpenOption.READ)) {
            ByteBuffer last = ByteBuffer.allocate(1);
            in.read(last, in.size() - 1);
            return last.get(0) != '\n';
        }
    }

    /** The answers of the unfinished conversation, if there is one with at least one answer. */
    public Optional<Answers> unfinished(AnswersJson reader) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        Answers answers = Answers.NONE;
        try {
            // Decoded leniently: a kill inside a character spoils that line and no other.
            for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n", -1)) {
                answers = replay(answers, line, reader);
            }
        } catch (IOException e) {
            return Optional.empty();
        }
        return answers.all().isEmpty() ? Optional.empty() : Optional.of(answers);
    }

    private static Answers replay(Answers answers, String line, AnswersJson reader) {
        try {
            JsonNode node = Json.read(line);
            if (node.has("unset")) {
                return answers.without(node.get("unset").asText());
            }
            JsonNode to = node.path("to");
            if (!node.path("set").isTextual() || !(to.isTextual() || to.isNull())) {
                return answers;
            }
            return reader.with(answers, node.get("set").asText(), to.isTextual() ? to.textValue() : null);
        } catch (JsonProcessingException | BadAnswer e) {
            // A line cut short by a kill, or an answer that this version no longer takes: the rest still counts.
            return answers;
        }
    }
}
