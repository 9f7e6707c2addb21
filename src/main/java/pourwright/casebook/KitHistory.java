package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import pourwright.kit.KitAdvice;
import pourwright.kit.TestDate;
import pourwright.kitfit.KitDrift;
import pourwright.knowledge.Json;

/**
 * The tests of a workshop's kit, one line each with its date. A line that cannot be read is kept as it stands and counts for
 * nothing.
 */
public final class KitHistory {
    private static final String FILE = "kit-tests.jsonl";
    private static final int MOST_BYTES = 4_000_000;
    private static final String DATE = "date";
    private static final String SPEED = "effective-speed-m3-per-s";
    private static final String BASE = "base-pressure-pa";
    private static final String LEAK = "leak-rate-pa-m3-per-s";

    private final Path file;
    private final List<String> lines;

    private KitHistory(Path file, List<String> lines) {
        this.file = file;
        this.lines = lines;
    }

    /**
     * Reads the history of a workshop; an empty one where there is none yet.
     *
     * @throws IOException when there is one that cannot be read
     */
    public static KitHistory read(Path shop) throws IOException {
        Path file = shop.resolve(FILE);
        return new KitHistory(
                file,
                Files.exists(file)
                        ? WholeFile.text(file, MOST_BYTES)
                                .lines()
                                .filter(l -> !l.isBlank())
                                .toList()
                        : List.of());
    }

    /** The same with one more test, of a day written as 2026-03-01. */
    public KitHistory with(KitAdvice advice, String date) {
        KitDrift.Test t = advice.test(TestDate.day(date).orElseThrow());
        ObjectNode line = Json.object();
        line.put(DATE, date);
        t.speedM3PerS().ifPresent(v -> line.put(SPEED, v));
        t.basePa().ifPresent(v -> line.put(BASE, v));
        t.leakPaM3PerS().ifPresent(v -> line.put(LEAK, v));
        List<String> more = new ArrayList<>(lines);
        String text = Json.write(line);
        // The same test shown twice on one day is one test.
        if (!more.contains(text)) {
            more.add(text);
        }
        return new KitHistory(file, List.copyOf(more));
    }

    /** Writes it whole. */
    public void write() throws IOException {
        WholeFile.write(file, String.join("\n", lines) + "\n");
    }

    /** The tests that can be read. */
    public List<KitDrift.Test> tests() {
        return lines.stream().flatMap(l -> test(l).stream()).toList();
    }

    private static Optional<KitDrift.Test> test(String line) {
        try {
            JsonNode n = Json.read(line);
            OptionalLong day = TestDate.day(n.path(DATE).asText());
            return day.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new KitDrift.Test(day.getAsLong(), value(n, SPEED), value(n, BASE), value(n, LEAK)));
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    private static OptionalDouble value(JsonNode n, String name) {
        JsonNode v = n.path(name);
        return v.isNumber() && Double.isFinite(v.doubleValue()) && v.doubleValue() >= 0
                ? OptionalDouble.of(v.doubleValue())
                : OptionalDouble.empty();
    }
}
