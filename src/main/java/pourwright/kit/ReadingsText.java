package pourwright.kit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import pourwright.advice.BadAnswer;
import pourwright.units.Dimension;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.Read;

/**
 * Readings as people write them down: {@code 0 s 1013 mbar; 30 s 400; 1 min 160}. A unit named once holds for the
 * readings after it that name none, and for those before the first that does.
 */
final class ReadingsText {
    private static final int MOST = 400;
    private static final int MOST_WORDS = 8;
    private static final int SHOWN = 40;
    private static final String CLOCK = "\\d{1,3}:[0-5]\\d";
    /** No clock and no gauge shows a power of ten of three digits. */
    private static final Pattern HUGE = Pattern.compile("[eE]\\+?\\d{3}");

    private static final int SECONDS = 60;
    private static final String SECOND = "s";

    /** No pressure a chamber can have lies above, in mbar. */
    private static final double MOST_MBAR = 1200;

    /** A week, in seconds. */
    private static final double LONGEST_S = 604_800;

    private final String question;
    private final boolean dial;

    /**
     * @param question id of the question the text answers
     * @param dial     whether the gauge counts from local air, so that the sign of a reading does not matter
     */
    ReadingsText(String question, boolean dial) {
        this.question = question;
        this.dial = dial;
    }

    /**
     * One reading before it is turned into an absolute pressure.
     *
     * @param timeS   time, s
     * @param shownPa what the gauge showed, Pa, without a sign on a dial
     * @param typed   the pressure as typed
     */
    record Seen(double timeS, double shownPa, String typed) {}

    private record Split(String entry, String time, String pressure) {}

    /**
     * Reads them.
     *
     * @throws BadAnswer naming the first reading that cannot be understood
     */
    List<Seen> read(String text) {
        List<Split> splits = new ArrayList<>();
        for (String entry : text.split("[;\\n|]")) {
            if (!entry.isBlank()) {
                splits.add(split(entry.strip()));
            }
            if (splits.size() > MOST) {
                throw new BadAnswer(question, "There are more than " + MOST + " readings. A dozen are enough.");
            }
        }
        String timeUnit = firstUnit(splits, true);
        String pressureUnit = firstUnit(splits, false);
        if (pressureUnit.isEmpty() && !splits.isEmpty()) {
            throw new BadAnswer(
                    question, "The pressures have no unit. Name it once, for example 0 s 1013 mbar; 30 s 400.");
        }
        timeUnit = timeUnit.isEmpty() ? SECOND : timeUnit;
        List<Seen> seen = new ArrayList<>();
        for (Split s : splits) {
            timeUnit = unit(s.time()).isEmpty() ? timeUnit : unit(s.time());
            pressureUnit = unit(s.pressure()).isEmpty() ? pressureUnit : unit(s.pressure());
            String pressure = unit(s.pressure()).isEmpty() ? s.pressure() + " " + pressureUnit : s.pressure();
            Double timeS = time(unit(s.time()).isEmpty() ? s.time() + " " + timeUnit : s.time());
            Read read = pressure(pressure);
            if (timeS == null || read == null) {
                throw unreadable(s.entry());
            }
            seen.add(new Seen(timeS, read.typicalSi(), pressure));
        }
        return seen;
    }

    private String firstUnit(List<Split> splits, boolean ofTime) {
        return splits.stream()
                .map(s -> unit(ofTime ? s.time() : s.pressure()))
                .filter(u -> !u.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** Where the time ends and the pressure begins: the first place at which both sides can be read. */
    private Split split(String entry) {
        if (HUGE.matcher(entry).find()) {
            throw unreadable(entry);
        }
        String[] words = Arrays.stream(
                        entry.replaceAll("[=,:](?=\\s|$)|=", " ").strip().split("\\s+"))
                .filter(w -> !w.equalsIgnoreCase("at"))
                .toArray(String[]::new);
        for (int k = 1; k < words.length && words.length <= MOST_WORDS; k++) {
            String time = String.join(" ", Arrays.copyOfRange(words, 0, k));
            String pressure = String.join(" ", Arrays.copyOfRange(words, k, words.length));
            boolean bare = unit(pressure).isEmpty();
            if (time(unit(time).isEmpty() ? time + " " + SECOND : time) != null
                    && pressure(bare ? pressure + " mbar" : pressure) != null) {
                return new Split(entry, time, pressure);
            }
        }
        throw unreadable(entry);
    }

    /** The word that follows the number, or nothing; a clock such as 1:30 needs none. */
    private static String unit(String amount) {
        return amount.matches(CLOCK) ? SECOND : amount.replaceFirst("^[^\\p{L}\"'\u2033\u2032%]*", "");
    }

    private static Double time(String text) {
        if (text.matches(CLOCK)) {
            String[] parts = text.split(":");
            return (double) Integer.parseInt(parts[0]) * SECONDS + Integer.parseInt(parts[1]);
        }
        Expect e = new Expect(Dimension.TIME, SECOND, 0, LONGEST_S, "30 s", true, false);
        return QuantityReader.read(text, e) instanceof Read r ? r.typicalSi() : null;
    }

    private Read pressure(String text) {
        Expect e = new Expect(Dimension.PRESSURE, "mbar", 0, MOST_MBAR, "400 mbar", true, dial);
        return QuantityReader.read(text, e) instanceof Read r ? r : null;
    }

    private BadAnswer unreadable(String entry) {
        String shown = entry.length() <= SHOWN ? entry : entry.substring(0, SHOWN) + "\u2026";
        return new BadAnswer(
                question,
                "\"" + shown + "\" is not a reading. Accepted: a time and a pressure, such as 30 s 400 mbar, with a"
                        + " semicolon between readings."
                        + (dial || !shown.contains("-")
                                ? ""
                                : " A minus belongs to a dial: say gauge-kind=below-local-air."));
    }
}
