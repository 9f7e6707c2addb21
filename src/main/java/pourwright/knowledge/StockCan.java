package pourwright.knowledge;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A can of a workshop's stock, as its file holds it.
 *
 * @param id its number
 * @param material id of its class, or of a material of the workshop's own
 * @param part {@code first}, {@code second} or {@code whole}
 * @param leftKg what is left, kg, exactly as reckoned: not below zero
 * @param opened the day it was opened, or null while it was never opened
 * @param bought the day it was bought, or null
 * @param bestBefore the date printed on it, or null
 * @param price what was paid for it, or null
 */
public record StockCan(
        int id,
        String material,
        String part,
        BigDecimal leftKg,
        LocalDate opened,
        LocalDate bought,
        LocalDate bestBefore,
        Price price) {
    /**
     * A price.
     *
     * @param amount units of money, above zero
     * @param currency the word for the money, as typed
     * @param forKg for how much, kg, above zero
     */
    public record Price(BigDecimal amount, String currency, BigDecimal forKg) {
        /** Units of money for a kilogram. */
        public double perKg() {
            return amount.doubleValue() / forKg.doubleValue();
        }
    }

    /** The same can with another amount in it. */
    public StockCan withLeft(BigDecimal kg) {
        return new StockCan(id, material, part, kg, opened, bought, bestBefore, price);
    }
}
