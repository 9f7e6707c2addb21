package pourwright.stock;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One can of one part. Ages are those of the day the answer was given: no clock is read here.
 *
 * @param name what stands on it
 * @param massKg what is left in it, kg, above zero
 * @param openS how long it has been open, s; empty when it was never opened
 * @param boughtS how long ago it was bought, s; empty when nobody said
 * @param pastS how long it is past the date printed on it, s; empty when it is not, or none is printed
 * @param price what a kilogram of it cost; empty when nobody said
 */
public record Can(
        String name,
        double massKg,
        OptionalDouble openS,
        OptionalDouble boughtS,
        OptionalDouble pastS,
        Optional<Price> price) {
    /**
     * A price.
     *
     * @param perKg units of money for a kilogram, above zero
     * @param currency the word for the money, as it was typed; nothing is ever converted
     */
    public record Price(double perKg, String currency) {}
}
