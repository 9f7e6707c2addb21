package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.advice.BadAnswer;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;

/**
 * The unfinished conversation on disk: one line per answer, forced out before the next question is asked, so that a
 * program killed at any moment loses nothing that was answered. A line cut short by the kill is passed over. The order of
 * the lines is all that counts: no time is written and none is read.
 */
public final class Journal {
    /** The name of the file in the workshop's folder. */
    public static final String FILE = "unfinished.jsonl";

    private static final int MOST_ASIDE = 1000;

    /** Larger than any conversation; what is larger was not written here and is not read. */
    private static final int MOST_BYTES = 16_000_000;

    private final Path file;
    private final String word;
    private final WholeFile.Opener opener;

    /**
     * @param shop the workshop's folder; made when it is not there
     * @param word what the conversation is about: {@code plan} or {@code diagnose}
     */
    public Journal(Path shop, String word) {
        this(shop, word, FileChannel::open);
    }

    Journal(Path shop, String word, WholeFile.Opener opener) {
        this.file = shop.resolve(FILE);
        this.word = word;
        this.opener = opener;
    }

    /** True when a conversation was left in this folder. */
    public static boolean standsIn(Path shop) {
        return Files.isRegularFile(shop.resolve(FILE));
    }

    /** What the unfinished conversation is about; {@code plan} when its journal does not say. */
    public static String wordLeft(Path shop) {
        return standing(shop).word();
    }

    /**
     * What stands in a folder, without understanding the answers.
     *
     * @param word what it is about
     * @param ids the questions it has answers to
     * @param unread how many whole lines are no lines of a journal; 1 when the file cannot be read at all
     */
    public record Standing(String word, Set<String> ids, int unread) {}

    /** What stands in this folder. */
    public static Standing standing(Path shop) {
        String word = "plan";
        Set<String> ids = new TreeSet<>();
        int unread = 0;
        try {
            List<String> lines = lines(shop.resolve(FILE));
            for (int n = 0; n < lines.size(); n++) {
                JsonNode node = node(lines.get(n));
                if (node.path("word").isTextual()) {
                    word = node.get("word").textValue();
                } else if (node.path("unset").isTextual()) {
                    ids.remove(node.get("unset").textValue());
                } else if (sets(node)) {
                    ids.add(node.get("set").textValue());
                } else if (!lines.get(n).isBlank() && n < lines.size() - 1) {
                    unread++;
                }
            }
        } catch (IOException e) {
            unread = 1;
        }
        return new Standing(word, ids, unread);
    }

    /** The lines; the last one is what follows the last line feed: nothing, or a line that a kill cut short. */
    private static List<String> lines(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return List.of();
        }
        // Decoded leniently: a kill inside a character spoils that line and no other.
        String text = new String(WholeFile.read(file, MOST_BYTES), StandardCharsets.UTF_8);
        return List.of(text.split("\n", -1));
    }

    private static JsonNode node(String line) {
        try {
            return Json.read(line);
        } catch (JsonProcessingException e) {
            return Json.object();
        }
    }

    private static boolean sets(JsonNode node) {
        JsonNode to = node.path("to");
        return node.path("set").isTextual() && (to.isTextual() || to.isNull());
    }

    /** Starts anew with these answers; the old journal stands until the new one is whole. */
    public void begin(Answers answers) throws IOException {
        StringBuilder lines = new StringBuilder(Json.write(Json.object().put("word", word)) + "\n");
        for (Map.Entry<String, Answers.Given> e : answers.all().entrySet()) {
            lines.append(line(e.getKey(), e.getValue().raw()));
        }
        WholeFile.write(file, lines.toString(), opener);
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

    /** Adds to the journal that {@link #begin} made; one that has gone is not made anew with half of the answers. */
    private void append(String line) throws IOException {
        // A line that a kill cut short must not swallow the next one.
        String start = endsMidLine() ? "\n" : "";
        ByteBuffer bytes = ByteBuffer.wrap((start + line).getBytes(StandardCharsets.UTF_8));
        try (FileChannel out = opener.open(file, StandardOpenOption.WRITE, StandardOpenOption.APPEND)) {
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
        Answers answers = left(reader).answers();
        return answers.all().isEmpty() ? Optional.empty() : Optional.of(answers);
    }

    /**
     * What can be gone on with.
     *
     * @param answers what was understood
     * @param lost questions whose answers this version no longer takes
     */
    private record Left(Answers answers, Set<String> lost) {}

    private Left left(AnswersJson reader) {
        Answers answers = Answers.NONE;
        Set<String> lost = new TreeSet<>();
        try {
            for (String line : lines(file)) {
                JsonNode node = node(line);
                if (node.path("unset").isTextual()) {
                    String id = node.get("unset").textValue();
                    answers = answers.without(id);
                    lost.remove(id);
                } else if (sets(node)) {
                    String id = node.get("set").textValue();
                    try {
                        answers = reader.with(answers, id, node.get("to").textValue());
                        lost.remove(id);
                    } catch (BadAnswer e) {
                        // The rest still counts.
                        lost.add(id);
                    }
                }
            }
        } catch (IOException e) {
            return new Left(Answers.NONE, Set.of());
        }
        return new Left(answers, lost);
    }

    /** True when these answers are what stands here, or more: whoever has them goes on with this journal. */
    public boolean isGoneOnWith(Answers answers, AnswersJson reader) {
        Map<String, Answers.Given> now = answers.all();
        return standing(file.getParent()).word().equals(word)
                && left(reader).answers().all().entrySet().stream()
                        .allMatch(e -> now.containsKey(e.getKey())
                                && Objects.equals(
                                        Objects.toString(now.get(e.getKey()).raw()),
                                        Objects.toString(e.getValue().raw())));
    }

    /** How many of its lines are lost on this version, as they stand or as answers. */
    public int unread(AnswersJson reader) {
        return standing(file.getParent()).unread() + left(reader).lost().size();
    }

    /**
     * Moves the unfinished conversation out of the way of another one, to a name that is free. Nothing is ever written over.
     *
     * @return where it stands now
     */
    public static Path putAside(Path shop) throws IOException {
        for (int n = 1; n < MOST_ASIDE; n++) {
            Path free = shop.resolve(FILE.replace(".", "-" + n + "."));
            if (!Files.exists(free)) {
                return Files.move(shop.resolve(FILE), free);
            }
        }
        throw new IOException("too many unfinished conversations beside");
    }

    /** Puts a copy where a person can look at it, before this journal is written anew. */
    public Path setAside() throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            return WholeFile.setAside(file);
        }
        return Files.copy(file, WholeFile.aside(file), StandardCopyOption.REPLACE_EXISTING);
    }

    /** Clears what kills left beside the files of the folder; only for the one console that keeps here. */
    public void sweep() throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(file.getParent(), "*.new")) {
            for (Path beside : left) {
                if (beside.getFileName().toString().matches("(?:unfinished\\.jsonl|kit\\.json)\\.\\d+\\.new")) {
                    Files.deleteIfExists(beside);
                }
            }
        }
    }
}
