package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import pourwright.facts.Estimate;
import pourwright.knowledge.StockCan;
import pourwright.stock.Can;
import pourwright.units.Dimension;

/** The stock as one JSON object. Its shape is fixed: other programs depend on it. */
public final class StockJson {
    private StockJson() {}

    /**
     * The whole of it.
     *
     * @param cans the cans in the order they are shown
     * @param warnings what is said of a can's age, by its number
     * @param today the day on which ages are counted
     */
    public static ObjectNode of(List<StockCan> cans, Map<Integer, List<String>> warnings, LocalDate today) {
        ObjectNode out = ResultJson.result();
        ArrayNode all = out.putArray("cans");
        for (StockCan c : cans) {
            Can aged = StockAnswers.can(c, today);
            ObjectNode one = all.addObject();
            one.put("id", c.id()).put("material", c.material()).put("part", c.part());
            one.set("left", ResultJson.exactly(c.leftKg().doubleValue(), Dimension.MASS));
            day(one, "opened", c.opened());
            aged.openS().ifPresent(s -> one.set("open-for", age(s)));
            day(one, "bought", c.bought());
            day(one, "best-before", c.bestBefore());
            aged.pastS().ifPresent(s -> one.set("past-date", age(s)));
            if (c.price() != null) {
                one.put("price-per-kg", c.price().perKg())
                        .put("currency", c.price().currency());
            }
            ResultJson.texts(one, "warnings", warnings.getOrDefault(c.id(), List.of()));
        }
        return out;
    }

    private static ObjectNode age(double s) {
        return ResultJson.quantity(Estimate.exactly(s), Dimension.TIME, Math.round(s / StockAnswers.DAY_S) + " d");
    }

    private static void day(ObjectNode out, String name, LocalDate day) {
        if (day == null) {
            out.putNull(name);
        } else {
            out.put(name, day.toString());
        }
    }
}
