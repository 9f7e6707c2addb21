package pourwright.casebook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pourwright.knowledge.StockCan;
import pourwright.knowledge.StockList;
import pourwright.stock.Can;

/** The stock of one material as answers of a plan: days become ages here, so that no plan ever reads a clock. */
public final class StockAnswers {
    static final double DAY_S = 86_400;

    private StockAnswers() {}

    /**
     * The cans with something in them, by question: {@code cans-first} and {@code cans-second}.
     *
     * @param today the day on which ages are counted
     */
    public static Map<String, List<Can>> of(StockList stock, String material, LocalDate today) {
        Map<String, List<Can>> all = new TreeMap<>();
        for (String part : List.of("first", "second")) {
            List<Can> cans = stock.cans().stream()
                    .filter(c -> c.material().equals(material) && part(c).equals(part))
                    .filter(c -> c.leftKg().signum() > 0)
                    .map(c -> can(c, today))
                    .toList();
            if (!cans.isEmpty()) {
                all.put("cans-" + part, cans);
            }
        }
        return all;
    }

    /** What comes in one part is weighed as the first. */
    private static String part(StockCan c) {
        return c.part().equals("whole") ? "first" : c.part();
    }

    /** One can, with its ages. */
    public static Can can(StockCan c, LocalDate today) {
        return new Can(
                Integer.toString(c.id()),
                c.leftKg().doubleValue(),
                age(c.opened(), today, 0),
                age(c.bought(), today, 0),
                age(c.bestBefore(), today, 1),
                Optional.ofNullable(c.price()).map(p -> new Can.Price(p.perKg(), p.currency())));
    }

    private static OptionalDouble age(LocalDate since, LocalDate today, long least) {
        if (since == null) {
            return OptionalDouble.empty();
        }
        long days = ChronoUnit.DAYS.between(since, today);
        // A day still to come is no age: a clock that was wrong makes no can older or younger than new.
        return days < least
                ? least == 0 ? OptionalDouble.of(0) : OptionalDouble.empty()
                : OptionalDouble.of(days * DAY_S);
    }
}
