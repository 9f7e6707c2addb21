package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import pourwright.knowledge.Json;
import pourwright.teach.Progress;

/**
 * What each person has done in the course: a file of lines for each, in the workshop's folder. A line that cannot be read
 * counts for nothing and stays as it is.
 */
public final class Learners {
    /** Where they lie in the workshop's folder. */
    public static final String FOLDER = "learners";

    /** How their files end. */
    public static final String END = ".jsonl";

    private static final int MOST_BYTES = 1_000_000;
    private static final String NAME = "name";
    private static final String DAY = "day";
    private static final String LESSON = "lesson";
    private static final String EXERCISE = "exercise";
    private static final String FROM = "from";
    private static final String SEED = "seed";
    private static final String RIGHT = "right";
    private static final String UNAIDED = "unaided";
    private static final String BELIEVES = "misconceptions";

    private final Path shop;

    public Learners(Path shop) {
        this.shop = shop;
    }

    /** The file of a person; the same for names that differ in case or signs only. */
    public Path file(String name) {
        return shop.resolve(FOLDER).resolve(plain(name) + END);
    }

    /** A name as a file has it; empty when nothing of it is left. */
    public static String plain(String name) {
        StringBuilder out = new StringBuilder();
        name.toLowerCase(java.util.Locale.ROOT)
                .codePoints()
                .map(c -> Character.isLetterOrDigit(c) ? c : '-')
                .forEach(out::appendCodePoint);
        return out.toString().replaceAll("-+", "-").replaceAll("^-|-$", "");
    }

    /** Names of all who learn here, sorted. */
    public List<String> names() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        Path folder = shop.resolve(FOLDER);
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + END)) {
                for (Path f : found) {
                    String file = f.getFileName().toString();
                    names.add(read(file.substring(0, file.length() - END.length()))
                            .name());
                }
            }
        }
        return List.copyOf(names);
    }

    /**
     * What a person has done; nothing yet for somebody new.
     *
     * @throws IOException when the file is there and cannot be read
     */
    public Progress read(String name) throws IOException {
        Path file = file(name);
        if (!Files.isRegularFile(file)) {
            return new Progress(name.strip(), List.of());
        }
        List<Progress.Event> events = new ArrayList<>();
        String called = name.strip();
        for (String line : WholeFile.text(file, MOST_BYTES).lines().toList()) {
            JsonNode n = json(line);
            called = n.path(NAME).asText(called);
            event(n).ifPresent(events::add);
        }
        return new Progress(called, events);
    }

    private static JsonNode json(String line) {
        try {
            return Json.read(line);
        } catch (JsonProcessingException e) {
            return Json.object();
        }
    }

    private static Optional<Progress.Event> event(JsonNode n) {
        if (!n.path(LESSON).isTextual() || !n.path(DAY).asText().matches("\\d{4}-\\d\\d-\\d\\d")) {
            return Optional.empty();
        }
        List<String> believes = new ArrayList<>();
        n.path(BELIEVES).forEach(b -> believes.add(b.asText()));
        return Optional.of(new Progress.Event(
                n.path(DAY).asText(),
                n.path(LESSON).asText(),
                n.path(EXERCISE).asText(),
                n.path(FROM).asText(),
                n.path(SEED).asLong(),
                n.path(RIGHT).asBoolean(false),
                n.path(UNAIDED).asBoolean(false),
                believes));
    }

    /** Adds what was just done; what stood in the file stays byte for byte. */
    public void add(String name, Progress.Event e) throws IOException {
        Path file = file(name);
        String before = Files.isRegularFile(file) ? WholeFile.text(file, MOST_BYTES) : "";
        ObjectNode line = Json.object();
        line.put(NAME, name.strip());
        line.put(DAY, e.day());
        line.put(LESSON, e.lesson());
        if (e.isExercise()) {
            line.put(EXERCISE, e.exercise());
            line.put(FROM, e.from());
            line.put(SEED, e.seed());
            line.put(RIGHT, e.right());
            if (e.unaided()) {
                line.put(UNAIDED, true);
            }
            if (!e.misconceptions().isEmpty()) {
                ArrayNode ids = line.putArray(BELIEVES);
                e.misconceptions().forEach(ids::add);
            }
        }
        WholeFile.write(
                file, before + (before.isEmpty() || before.endsWith("\n") ? "" : "\n") + Json.write(line) + "\n");
    }
}
