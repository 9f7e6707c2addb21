package pourwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Which cans a mix takes from, and how much of each: the oldest can that holds enough by itself, so that one part comes
 * from one can; where none does, the oldest first, one after another. Source: first in, first out, common practice.
 *
 * @param taken cans with what is taken of each, kg, in the order of taking
 * @param shortKg what is still missing, kg; zero when there is enough
 */
public record CanUse(List<Taken> taken, double shortKg) {
    /** A millionth of a gram: less is a rounding error and no amount. */
    private static final double NOTHING_KG = 1e-9;

    /** An open can ages faster than a shut one, so it counts as older; then what is past its date, then what was bought first. */
    private static final Comparator<Can> OLDEST_FIRST = Comparator.comparingDouble((Can c) -> -or(c.openS()))
            .thenComparingDouble(c -> -or(c.pastS()))
            .thenComparingDouble(c -> -or(c.boughtS()));

    public CanUse {
        taken = List.copyOf(taken);
    }

    /**
     * What is taken of one can.
     *
     * @param can the can as it was
     * @param kg how much of it
     */
    public record Taken(Can can, double kg) {
        /** True when nothing is left in it. */
        public boolean all() {
            return can.massKg() - kg <= NOTHING_KG;
        }
    }

    private static double or(OptionalDouble age) {
        return age.orElse(-1);
    }

    /** The cans in the order in which they should be used up. Cans of one age keep their order. */
    public static List<Can> oldestFirst(List<Can> cans) {
        return cans.stream().sorted(OLDEST_FIRST).toList();
    }

    /**
     * What a mix takes.
     *
     * @param cans what is at hand
     * @param needKg how much is needed, kg
     */
    public static CanUse of(List<Can> cans, double needKg) {
        List<Can> order = oldestFirst(cans);
        for (Can c : order) {
            if (c.massKg() >= needKg - NOTHING_KG) {
                return new CanUse(List.of(new Taken(c, Math.min(needKg, c.massKg()))), 0);
            }
        }
        List<Taken> taken = new ArrayList<>();
        double left = needKg;
        for (Can c : order) {
            if (left > NOTHING_KG) {
                double kg = Math.min(left, c.massKg());
                taken.add(new Taken(c, kg));
                left -= kg;
            }
        }
        return new CanUse(taken, left > NOTHING_KG ? left : 0);
    }

    /** The greatest age among the cans that are taken from; empty when none of them has one. */
    public OptionalDouble oldest(Function<Can, OptionalDouble> age) {
        return taken.stream()
                .map(t -> age.apply(t.can()))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max();
    }

    /**
     * What it costs: each can at its own price, and what is missing at the price of the last can taken from.
     *
     * @return nothing when a can taken from has no price, or when two are priced in different money
     */
    public Optional<Double> cost() {
        double sum = 0;
        String currency = null;
        double last = 0;
        for (Taken t : taken) {
            Optional<Can.Price> p = t.can().price();
            if (p.isEmpty() || currency != null && !currency.equals(p.get().currency())) {
                return Optional.empty();
            }
            currency = p.get().currency();
            last = p.get().perKg();
            sum += t.kg() * last;
        }
        return currency == null ? Optional.empty() : Optional.of(sum + shortKg * last);
    }
}
