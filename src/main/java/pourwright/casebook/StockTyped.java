package pourwright.casebook;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.advice.BadAnswer;
import pourwright.facts.Answer;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.StockCan;
import pourwright.stock.Cans;
import pourwright.units.Dimension;
import pourwright.units.DontKnow;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.Read;
import pourwright.units.TypedText;

/** What a person types of a can, read into the can. Each fault is one sentence that says what is accepted. */
public final class StockTyped {
    /** What can be said of a can, in the order in which it is asked. */
    public static final List<String> FIELDS =
            List.of("material", "part", "left", "opened", "bought", "best-before", "price", "for");

    private static final double MOST_KG = 10_000;
    private static final double MOST_DAYS = 36_500;
    /** A milligram: finer than any scale a can is weighed on. */
    private static final int KG_DIGITS = 6;

    private static final String NUMBER = "(\\d{1,9}(?:[.,]\\d{1,4})?)";
    private static final Pattern PRICE = Pattern.compile("(?i)(?:(" + Cans.CURRENCY + ")\\s*" + NUMBER + "|" + NUMBER
            + "\\s*(" + Cans.CURRENCY + "))(\\s*(?:per|/)\\s*kg)?");

    private final Knowledge knowledge;
    private final LocalDate today;

    /** @param today the day, for whatever is said as an age and for "today" */
    public StockTyped(Knowledge knowledge, LocalDate today) {
        this.knowledge = knowledge;
        this.today = today;
    }

    /**
     * Words such as {@code left=3.2 kg} by what they speak of.
     *
     * @throws BadAnswer when one speaks of nothing a can has
     */
    public static Map<String, String> fields(List<String> words) {
        Map<String, String> all = new LinkedHashMap<>();
        for (String w : words) {
            int at = w.indexOf('=');
            String name = at <= 0 ? "" : w.substring(0, at).strip().toLowerCase(Locale.ROOT);
            if (!FIELDS.contains(name)) {
                throw new BadAnswer(
                        "stock",
                        TypedText.quote(w) + " says nothing of a can. Accepted: " + String.join("=, ", FIELDS)
                                + "=, for example left=\"3.2 kg\".");
            }
            if (all.put(name, w.substring(at + 1).strip()) != null) {
                throw new BadAnswer("stock", "\"" + name + "\" stands twice. Say each thing of a can once.");
            }
        }
        return all;
    }

    /** A can that is new to the list. */
    public StockCan added(int id, Map<String, String> typed) {
        MaterialClass material = material(typed.getOrDefault("material", ""));
        String part = part(material, typed.getOrDefault("part", ""));
        StockCan bare = new StockCan(
                id, material.id(), part, kg("left", typed.getOrDefault("left", "")), null, null, null, null);
        Map<String, String> rest = new LinkedHashMap<>(typed);
        List.of("material", "part", "left").forEach(rest::remove);
        return changed(bare, rest);
    }

    /** A can with what was typed of it put in; the rest stays. */
    public StockCan changed(StockCan c, Map<String, String> typed) {
        MaterialClass m = typed.containsKey("material") ? material(typed.get("material")) : null;
        String material = m == null ? c.material() : m.id();
        String part = typed.containsKey("part") ? part(material(material), typed.get("part")) : c.part();
        StockCan done = new StockCan(
                c.id(),
                material,
                part,
                typed.containsKey("left") ? kg("left", typed.get("left")) : c.leftKg(),
                typed.containsKey("opened") ? past("opened", typed.get("opened")) : c.opened(),
                typed.containsKey("bought") ? past("bought", typed.get("bought")) : c.bought(),
                typed.containsKey("best-before") ? day("best-before", typed.get("best-before")) : c.bestBefore(),
                price(c, typed));
        if (done.opened() != null && done.bought() != null && done.opened().isBefore(done.bought())) {
            throw new BadAnswer(
                    "opened",
                    "opened: a can cannot be opened on " + done.opened() + " and bought on " + done.bought() + ".");
        }
        return done;
    }

    /** The material of that name. */
    public MaterialClass material(String typed) {
        if (!typed.isBlank()
                && new AnswerReader(knowledge)
                                .fromProgram(knowledge.question("material").orElseThrow(), typed)
                        instanceof AnswerReader.Understood u
                && u.answer() instanceof Answer.Choice c) {
            return knowledge.materials().get(c.id());
        }
        throw new BadAnswer(
                "material",
                "material: " + TypedText.quote(typed)
                        + " is no liquid known here. Accepted: a class or a material of your own, for example"
                        + " tin-silicone; \"pourwright questions\" names them.");
    }

    /** True when the material is weighed out of two cans. */
    public static boolean inTwoCans(MaterialClass m) {
        return !List.of("none", "water").contains(m.mix().by());
    }

    private static String part(MaterialClass m, String typed) {
        String said = typed.toLowerCase(Locale.ROOT).strip();
        if (!inTwoCans(m)) {
            String own = m.mix().names().isEmpty() ? "" : m.mix().names().get(0);
            if (List.of("", "whole", "first", "1", own.toLowerCase(Locale.ROOT)).contains(said)) {
                return "whole";
            }
            throw new BadAnswer(
                    "part", "part: the stock of " + m.name() + " is one part. Leave \"part\" out, or say part=whole.");
        }
        String first = m.mix().names().get(0);
        String second = m.mix().names().get(1);
        if (List.of("first", "1", first.toLowerCase(Locale.ROOT)).contains(said)) {
            return "first";
        }
        if (List.of("second", "2", second.toLowerCase(Locale.ROOT)).contains(said)) {
            return "second";
        }
        throw new BadAnswer(
                "part",
                "part: " + (said.isEmpty() ? "it is not said which can this is" : TypedText.quote(typed) + " is no can")
                        + " of " + m.name() + ". Accepted: " + first + " or " + second
                        + ", also \"first\" and \"second\"; a set is kept as its two cans.");
    }

    /** A mass of a can, exactly to the milligram. */
    public BigDecimal kg(String field, String typed) {
        Expect e = new Expect(Dimension.MASS, "kg", 0.0, MOST_KG, "3.2 kg", false, false);
        if (QuantityReader.read(typed, e) instanceof Read r && !r.range() && !r.about()) {
            return BigDecimal.valueOf(r.typicalSi())
                    .setScale(KG_DIGITS, java.math.RoundingMode.HALF_UP)
                    .stripTrailingZeros();
        }
        throw new BadAnswer(
                field,
                field + ": " + TypedText.quote(typed)
                        + " is no weight. Accepted: one weight with its unit, 0 to 10,000 kg, for example 3.2 kg.");
    }

    private LocalDate past(String field, String typed) {
        if (field.equals("opened") && typed.strip().equalsIgnoreCase("never")) {
            return null;
        }
        LocalDate day = day(field, typed);
        if (day != null && day.isAfter(today)) {
            throw new BadAnswer(field, field + ": " + day + " is still to come; today is " + today + ".");
        }
        return day;
    }

    private LocalDate day(String field, String typed) {
        String said = typed.strip().toLowerCase(Locale.ROOT);
        if (DontKnow.typed(said)) {
            return null;
        }
        if (said.equals("today")) {
            return today;
        }
        try {
            if (said.matches("\\d{4}-\\d{2}-\\d{2}")) {
                return LocalDate.parse(said);
            }
        } catch (DateTimeException e) {
            throw new BadAnswer(field, field + ": there is no day " + said + ". For example 2026-03-01.");
        }
        Expect e = new Expect(Dimension.TIME, "d", 0.0, MOST_DAYS, "95 d", false, false);
        boolean age = !field.equals("best-before");
        if (age && QuantityReader.read(said.replaceFirst("\\s+ago$", ""), e) instanceof Read r) {
            return today.minusDays(Math.round(r.typicalSi() / 86_400));
        }
        throw new BadAnswer(
                field,
                field + ": " + TypedText.quote(typed) + " is no day. Accepted: a day such as 2026-03-01"
                        + (age ? ", \"today\", an age such as \"95 d\"" : "")
                        + (field.equals("opened") ? ", or \"never\"." : "."));
    }

    private StockCan.Price price(StockCan c, Map<String, String> typed) {
        String said = typed.get("price");
        if (said == null) {
            if (typed.containsKey("for")) {
                throw new BadAnswer(
                        "for", "for: it says for how much a price is. Give the price too: price=\"48 EUR\".");
            }
            return c.price();
        }
        if (DontKnow.typed(said)) {
            return null;
        }
        Matcher m = PRICE.matcher(said.strip());
        if (!m.matches()) {
            throw new BadAnswer(
                    "price",
                    "price: " + TypedText.quote(said)
                            + " is no price. Accepted: a number and a word for the money of at most 8 letters, such as"
                            + " \"48 EUR\" with for=\"5 kg\", or \"9.60 EUR per kg\".");
        }
        BigDecimal amount = new BigDecimal((m.group(2) == null ? m.group(3) : m.group(2)).replace(',', '.'));
        String currency = m.group(1) == null ? m.group(4) : m.group(1);
        boolean perKg = m.group(5) != null;
        String size = typed.get("for");
        if (amount.signum() == 0) {
            throw new BadAnswer("price", "price: leave it out where nothing was paid; a price is above zero.");
        }
        if (perKg == (size != null)) {
            throw new BadAnswer(
                    "for",
                    perKg
                            ? "for: the price is for a kilogram already. Leave one of the two out."
                            : "for: say for how much " + said
                                    + " is, for example for=\"5 kg\", or give the price per kg.");
        }
        BigDecimal forKg = perKg ? BigDecimal.ONE : kg("for", size);
        if (forKg.signum() == 0) {
            throw new BadAnswer("for", "for: a price for nothing says nothing. For example for=\"5 kg\".");
        }
        return new StockCan.Price(amount, currency, forKg);
    }
}
