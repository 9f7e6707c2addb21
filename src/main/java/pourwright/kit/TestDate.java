package pourwright.kit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.OptionalLong;

/** The day of a test, as it is written and as it is counted. */
public final class TestDate {
    private static final String FORM = "\\d{4}-\\d{2}-\\d{2}";

    private TestDate() {}

    /** The number of a day written as 2026-03-01, counted from 1970; nothing when there is no such day. */
    public static OptionalLong day(String date) {
        if (date == null || !date.matches(FORM)) {
            return OptionalLong.empty();
        }
        try {
            return OptionalLong.of(LocalDate.parse(date).toEpochDay());
        } catch (DateTimeException e) {
            return OptionalLong.empty();
        }
    }
}
