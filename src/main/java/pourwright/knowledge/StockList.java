package pourwright.knowledge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The cans a workshop has, read strictly from its folder.
 *
 * @param next the number the next can gets
 * @param cans the cans, in the order of the file
 */
public record StockList(int next, List<StockCan> cans) {
    /** The file's name in the workshop's folder. */
    public static final String FILE = "stock.json";

    private static final long MOST_BYTES = 1_000_000;
    private static final int MOST_NUMBER = 1_000_000;
    private static final double MOST_KG = 10_000;
    private static final double MOST_MONEY = 1e9;
    private static final String CURRENCY = "[^\\s\\d.,;:/\\p{C}]{1,8}";

    public StockList {
        cans = List.copyOf(cans);
    }

    /** True when the workshop keeps a stock. */
    public static boolean isIn(Path shop) {
        return shop != null && Files.isRegularFile(shop.resolve(FILE));
    }

    /**
     * Reads the stock of a workshop; an empty one where there is none.
     *
     * @param schemas the folder of the schemas, or null to leave that check out: every fault it finds is found here too
     * @throws KnowledgeFault when the file cannot be used, naming the place in it
     */
    public static StockList read(Path shop, Path schemas) {
        if (!isIn(shop)) {
            return new StockList(1, List.of());
        }
        Path file = shop.resolve(FILE);
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new KnowledgeFault(file + " is larger than one megabyte");
            }
        } catch (IOException e) {
            throw new KnowledgeFault(file + " cannot be read");
        }
        JsonNode tree = KnowledgeReader.tree(file, file.toString());
        if (schemas != null) {
            Schemas.check(tree, schemas.resolve("stock.schema.json"), file.toString());
        }
        StockList all = Tree.whole(new Tree(tree, file + " at "), t -> {
            if (!tree.path("cans").isArray()) {
                throw new KnowledgeFault(t.where() + "/cans: expected a list of cans");
            }
            return new StockList(whole(t, "next"), t.list("cans", StockList::can));
        });
        Set<Integer> ids = new HashSet<>();
        for (StockCan c : all.cans()) {
            if (!ids.add(c.id())) {
                throw new KnowledgeFault(file + ": two cans have the number " + c.id());
            }
        }
        return all;
    }

    private static StockCan can(Tree t) {
        String material = t.text("material");
        if (!material.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new KnowledgeFault(t.where() + "/material: expected the id of a material, such as tin-silicone");
        }
        String part = t.text("part");
        if (!List.of("first", "second", "whole").contains(part)) {
            throw new KnowledgeFault(t.where() + "/part: expected first, second or whole");
        }
        return new StockCan(
                whole(t, "id"),
                material,
                part,
                number(t, "left-kg", 0, MOST_KG),
                day(t, "opened"),
                day(t, "bought"),
                day(t, "best-before"),
                price(t));
    }

    private static StockCan.Price price(Tree t) {
        boolean price = t.has("price");
        if (price != t.has("for-kg") || price != t.has("currency")) {
            throw new KnowledgeFault(t.where() + ": price, for-kg and currency stand together or not at all");
        }
        if (!price) {
            return null;
        }
        String currency = t.text("currency");
        if (!currency.matches(CURRENCY)) {
            throw new KnowledgeFault(
                    t.where() + "/currency: expected a word of at most 8 letters or signs, no figures");
        }
        BigDecimal amount = number(t, "price", 0, MOST_MONEY);
        BigDecimal kg = number(t, "for-kg", 0, MOST_KG);
        if (amount.signum() == 0 || kg.signum() == 0) {
            throw new KnowledgeFault(t.where() + ": price and for-kg must be above zero");
        }
        return new StockCan.Price(amount, currency, kg);
    }

    private static int whole(Tree t, String name) {
        double v = t.number(name);
        if (v != Math.rint(v) || v < 1 || v > MOST_NUMBER) {
            throw new KnowledgeFault(t.where() + "/" + name + ": expected a whole number from 1 to " + MOST_NUMBER);
        }
        return (int) v;
    }

    private static BigDecimal number(Tree t, String name, double least, double most) {
        double v = t.number(name);
        if (!(v >= least && v <= most)) {
            throw new KnowledgeFault(
                    t.where() + "/" + name + ": expected a number from " + (long) least + " to " + (long) most);
        }
        return BigDecimal.valueOf(v);
    }

    private static LocalDate day(Tree t, String name) {
        String text = t.textOr(name, null);
        if (text == null) {
            return null;
        }
        try {
            if (text.matches("\\d{4}-\\d{2}-\\d{2}")) {
                return LocalDate.parse(text);
            }
        } catch (DateTimeException e) {
            // Written like a day, and no day: said below.
            text = text.strip();
        }
        throw new KnowledgeFault(t.where() + "/" + name + ": expected a day, such as 2026-03-01");
    }

    /** The stock as the text of its file; {@link #read} gives the same back. */
    public String text() {
        ObjectNode out = Json.object();
        out.put("next", next);
        ArrayNode all = out.putArray("cans");
        for (StockCan c : cans) {
            ObjectNode one = all.addObject();
            one.put("id", c.id());
            one.put("material", c.material());
            one.put("part", c.part());
            one.put("left-kg", plain(c.leftKg()));
            put(one, "opened", c.opened());
            put(one, "bought", c.bought());
            put(one, "best-before", c.bestBefore());
            if (c.price() != null) {
                one.put("price", plain(c.price().amount()));
                one.put("currency", c.price().currency());
                one.put("for-kg", plain(c.price().forKg()));
            }
        }
        return Json.pretty(out) + "\n";
    }

    private static BigDecimal plain(BigDecimal v) {
        BigDecimal shortest = v.stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }

    private static void put(ObjectNode out, String name, LocalDate day) {
        if (day != null) {
            out.put(name, day.toString());
        }
    }
}
