package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.advice.BadAnswer;
import pourwright.knowledge.Json;

/**
 * How a case came out, told in one line: {@code horse ear bad pinholes at the tips}.
 *
 * @param name the case as it was called; empty for the one at hand
 * @param good whether it came out well
 * @param what what was seen, or empty
 */
public record Outcome(String name, boolean good, String what) {
    private static final Pattern LINE = Pattern.compile("(?is)(.*?)\\s*\\b(good|bad)\\b[\\s:,.]*(.*)");
    private static final int LONGEST = 300;
    private static final int MOST_BYTES = 1_000_000;
    private static final String PART = "outcome";

    /** Reads the line; none when neither good nor bad is in it. */
    public static Optional<Outcome> read(String line) {
        Matcher m = LINE.matcher(line.replaceAll("[\\p{Cc}\\p{Cf}]", " ").strip());
        return m.matches()
                ? Optional.of(new Outcome(
                        m.group(1).strip(),
                        m.group(2).equalsIgnoreCase("good"),
                        m.group(3).strip()))
                : Optional.empty();
    }

    /** As the case file has it. */
    public String text(String day) {
        return (good ? "good" : "bad") + (what.isEmpty() ? "" : ": " + what) + " (" + day + ")";
    }

    /**
     * Writes it into a case. What stood there stays before it: a part can come out well and fail a year later.
     *
     * @param day as 2026-03-01
     * @return what stands there now
     * @throws BadAnswer when the text is too long, the file is no case, or it cannot be written
     */
    public String write(Path file, String day) {
        if (what.length() > LONGEST) {
            throw new BadAnswer(PART, "Say it in at most " + LONGEST + " letters.");
        }
        try {
            JsonNode tree = Json.read(WholeFile.text(file, MOST_BYTES));
            if (!(tree instanceof ObjectNode old) || !old.path("answers").isObject()) {
                throw new BadAnswer(PART, file + " is not a case.");
            }
            String before = old.path(PART).asText();
            String now = before.isEmpty() ? text(day) : before + "; " + text(day);
            ObjectNode out = Json.object();
            old.properties().forEach(e -> {
                // In its place among the parts: before where the case comes from.
                if (e.getKey().equals("provenance") && !old.has(PART)) {
                    out.put(PART, now);
                }
                out.set(e.getKey(), e.getValue());
            });
            out.put(PART, now);
            WholeFile.write(file, Json.pretty(out) + "\n");
            return now;
        } catch (JsonProcessingException e) {
            throw new BadAnswer(PART, file + ", line " + Json.line(e) + ": this is not valid JSON.");
        } catch (IOException e) {
            throw new BadAnswer(PART, "The outcome cannot be written: " + Trouble.why(file, e) + ".");
        }
    }
}
