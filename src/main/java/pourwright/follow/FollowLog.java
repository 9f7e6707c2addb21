package pourwright.follow;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What happened at the bench and when, as one line of text: "began 2026-03-01T09:00:00Z; 3:00 mix; 5:10 degas-crest". A step's
 * id stands for its being done. Immutable.
 *
 * @param began when mixing began, or empty before it has
 * @param entries what happened, in the order it was logged
 */
public record FollowLog(Optional<Instant> began, List<Entry> entries) {
    /** Nothing yet. */
    public static final FollowLog EMPTY = new FollowLog(Optional.empty(), List.of());

    /** A gauge was read; the value is what was typed. */
    public static final String GAUGE = "gauge";
    /** Froth came over the rim. */
    public static final String OVERFLOW = "overflow";
    /** A step was left out; the value is its id. */
    public static final String SKIP = "skip";
    /** Anything else; the value is what was typed. */
    public static final String NOTE = "note";

    private static final String BEGAN = "began ";
    private static final String BETWEEN = "; ";
    private static final int MINUTE_S = 60;
    private static final Pattern ENTRY = Pattern.compile("(\\d{1,5}):([0-5]\\d) ([a-z][a-z-]{0,40})(?: (.{1,120}))?");

    /**
     * One thing that happened.
     *
     * @param atS seconds from the start of mixing
     * @param what id of the step that was done, or one of the words above
     * @param value what belongs to it, or empty
     */
    public record Entry(double atS, String what, String value) {
        String text() {
            long s = Math.round(atS);
            return "%d:%02d %s%s".formatted(s / MINUTE_S, s % MINUTE_S, what, value.isEmpty() ? "" : " " + value);
        }
    }

    public FollowLog {
        entries = List.copyOf(entries);
    }

    /** What a text says, or empty when it is no such text. */
    public static Optional<FollowLog> parse(String text) {
        Optional<Instant> began = Optional.empty();
        List<Entry> entries = new ArrayList<>();
        for (String part : text.strip().split("\\s*;\\s*")) {
            Matcher m = ENTRY.matcher(part);
            if (part.startsWith(BEGAN) && began.isEmpty() && entries.isEmpty()) {
                try {
                    began = Optional.of(Instant.parse(part.substring(BEGAN.length())));
                } catch (DateTimeParseException e) {
                    return Optional.empty();
                }
            } else if (m.matches()) {
                double atS = Integer.parseInt(m.group(1)) * (double) MINUTE_S + Integer.parseInt(m.group(2));
                entries.add(new Entry(atS, m.group(3), m.group(4) == null ? "" : m.group(4)));
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(new FollowLog(began, entries));
    }

    /** The text that {@link #parse} reads back. */
    public String text() {
        List<String> parts = new ArrayList<>();
        began.ifPresent(t -> parts.add(BEGAN + t));
        entries.forEach(e -> parts.add(e.text()));
        return String.join(BETWEEN, parts);
    }

    /** The same, with mixing begun. */
    public FollowLog begun(Instant at) {
        return new FollowLog(Optional.of(at), entries);
    }

    /** The same and one thing more; a semicolon in the value becomes a comma, since it ends an entry. */
    public FollowLog with(double atS, String what, String value) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(new Entry(
                Math.max(0, Math.floor(atS)), what, value.replace(';', ',').strip()));
        return new FollowLog(began, more);
    }

    /** The same without the last thing logged. */
    public FollowLog withoutLast() {
        return entries.isEmpty() ? this : new FollowLog(began, entries.subList(0, entries.size() - 1));
    }

    /** When that happened first, seconds from the start of mixing. */
    public OptionalDouble first(String what) {
        return entries.stream()
                .filter(e -> e.what().equals(what))
                .mapToDouble(Entry::atS)
                .findFirst();
    }

    /** True when the step was done or left out. */
    public boolean settles(String step) {
        return entries.stream()
                .anyMatch(e -> e.what().equals(step)
                        || e.what().equals(SKIP) && e.value().equals(step));
    }
}
