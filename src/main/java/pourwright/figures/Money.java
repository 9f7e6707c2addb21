package pourwright.figures;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.facts.Answers;
import pourwright.stock.Cans;

/**
 * Figures that are money. Money is no quantity of physics: such a figure is a plain number, and the word for the money
 * stands in the answers it comes from.
 */
public final class Money {
    private Money() {}

    /** True when the figure is money. */
    public static boolean is(String figure) {
        return figure.startsWith("cost-");
    }

    /** The one word for money in the prices of all cans; empty when there is no price or more than one kind of money. */
    public static Optional<String> of(Answers answers) {
        Set<String> words = new TreeSet<>();
        for (String id : List.of("cans-first", "cans-second")) {
            String text = answers.text(id);
            if (!text.isEmpty()) {
                Cans.read(text).forEach(c -> c.price().ifPresent(p -> words.add(p.currency())));
            }
        }
        return words.size() == 1 ? Optional.of(words.iterator().next()) : Optional.empty();
    }

    /** An amount with two decimals and no word. */
    public static String amount(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
