package pourwright.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.units.Dimension;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.Read;
import pourwright.units.TypedText;

/**
 * The cans of one part as one line of text, which is how they stand in an answer:
 * {@code 3: 450 g, open 95 d, 12.5 EUR per kg; 5: 3.2 kg}. Only the mass is needed.
 */
public final class Cans {
    /** Money is a word as it is typed; it is never converted. */
    public static final String CURRENCY = "[^\\s\\d.,;:/\\p{C}]{1,8}";

    private static final int MOST_CANS = 50;
    private static final double MOST_KG = 10_000;
    private static final double MOST_DAYS = 36_500;
    private static final double DAY_S = 86_400;
    private static final Pattern NAMED = Pattern.compile("([\\p{L}\\d][\\p{L}\\d-]{0,19})\\s*:\\s*(.*)");
    private static final Pattern AGE = Pattern.compile("(?i)(open|opened|bought|past)\\s+(.+)");
    private static final Pattern PRICE =
            Pattern.compile("(\\d{1,9}(?:\\.\\d{1,6})?)\\s*(" + CURRENCY + ")\\s*(?i:per|/)\\s*kg");
    private static final String ACCEPTED = " Accepted: a weight, then \"open 95 d\", \"bought 400 d\","
            + " \"past 20 d\" or \"12.5 EUR per kg\" where known, with commas between, and a semicolon between cans.";

    private Cans() {}

    /** What is wrong with a text, in a sentence that says what is accepted. */
    public static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unreadable(String sentence) {
            super(sentence, null, false, false);
        }
    }

    /**
     * Reads a line.
     *
     * @throws Unreadable when it is no list of cans
     */
    public static List<Can> read(String text) {
        String[] entries = text.strip().split("\\s*;\\s*", -1);
        if (entries.length > MOST_CANS) {
            throw new Unreadable("That is more than " + MOST_CANS + " cans of one part." + ACCEPTED);
        }
        List<Can> cans = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        for (int i = 0; i < entries.length; i++) {
            Can c = one(entries[i], i + 1);
            if (!names.add(c.name())) {
                throw new Unreadable("Two cans are called \"" + c.name() + "\"." + ACCEPTED);
            }
            cans.add(c);
        }
        return List.copyOf(cans);
    }

    private static Can one(String entry, int place) {
        Matcher named = NAMED.matcher(entry);
        boolean has = named.matches();
        String name = has ? named.group(1) : Integer.toString(place);
        String[] facts = (has ? named.group(2) : entry).split("\\s*,\\s*", -1);
        double kg = quantity(facts[0], Dimension.MASS, "kg", MOST_KG, "3.2 kg");
        if (kg <= 0) {
            throw new Unreadable(TypedText.quote(entry) + " holds nothing." + ACCEPTED);
        }
        OptionalDouble open = OptionalDouble.empty();
        OptionalDouble bought = OptionalDouble.empty();
        OptionalDouble past = OptionalDouble.empty();
        Optional<Can.Price> price = Optional.empty();
        Set<String> said = new LinkedHashSet<>();
        for (int i = 1; i < facts.length; i++) {
            Matcher age = AGE.matcher(facts[i]);
            Matcher cost = PRICE.matcher(facts[i]);
            String kind;
            if (age.matches()) {
                kind = age.group(1).toLowerCase(Locale.ROOT).replace("opened", "open");
                double s = quantity(age.group(2), Dimension.TIME, "d", MOST_DAYS, "95 d");
                switch (kind) {
                    case "open" -> open = OptionalDouble.of(s);
                    case "bought" -> bought = OptionalDouble.of(s);
                    default -> past = OptionalDouble.of(s);
                }
            } else if (cost.matches() && Double.parseDouble(cost.group(1)) > 0) {
                kind = "price";
                price = Optional.of(new Can.Price(Double.parseDouble(cost.group(1)), cost.group(2)));
            } else {
                throw new Unreadable(TypedText.quote(facts[i]) + " says nothing of a can." + ACCEPTED);
            }
            if (!said.add(kind)) {
                throw new Unreadable(TypedText.quote(entry) + " says \"" + kind + "\" twice." + ACCEPTED);
            }
        }
        return new Can(name, kg, open, bought, past, price);
    }

    private static double quantity(String typed, Dimension d, String unit, double most, String example) {
        Expect e = new Expect(d, unit, 0.0, most, example, true, false);
        if (QuantityReader.read(typed, e) instanceof Read r) {
            return r.typicalSi();
        }
        throw new Unreadable(TypedText.quote(typed) + " is not " + d.kind() + " of a can." + ACCEPTED);
    }

    /** The line for some cans; {@link #read} gives the same cans back, ages to the day. */
    public static String text(List<Can> cans) {
        List<String> entries = new ArrayList<>();
        for (Can c : cans) {
            StringBuilder s = new StringBuilder(c.name() + ": " + mass(c.massKg()));
            c.openS().ifPresent(a -> s.append(", open ").append(days(a)));
            c.boughtS().ifPresent(a -> s.append(", bought ").append(days(a)));
            c.pastS().ifPresent(a -> s.append(", past ").append(days(a)));
            c.price()
                    .ifPresent(p -> s.append(", ")
                            .append(plain(p.perKg()))
                            .append(' ')
                            .append(p.currency())
                            .append(" per kg"));
            entries.add(s.toString());
        }
        return String.join("; ", entries);
    }

    /** A mass of a can as people say it: grams below a kilogram. */
    public static String mass(double kg) {
        return kg < 1 ? plain(kg * 1000) + " g" : plain(kg) + " kg";
    }

    private static String days(double s) {
        return Math.round(s / DAY_S) + " d";
    }

    private static String plain(double v) {
        return BigDecimal.valueOf(Math.round(v * 1e6))
                .movePointLeft(6)
                .stripTrailingZeros()
                .toPlainString();
    }
}
