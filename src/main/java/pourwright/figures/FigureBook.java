package pourwright.figures;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Every figure Pourwright can compute, in the order a person would ask for them. */
public final class FigureBook {
    private static final Map<String, FigureDef> BOOK = new LinkedHashMap<>();

    private static final Map<String, List<FigureDef>> TOPICS = new LinkedHashMap<>();

    static {
        add("the air you work in", AirFigures.all());
        add("pump, hose and chamber", VacuumFigures.all());
        add("how much to mix", MixFigures.all());
        add("small doses and wrong weighings", DoseFigures.all());
        add("froth in the cup", FrothFigures.all());
        add("the clock", TimeFigures.all());
        add("bubbles", BubbleFigures.all());
        add("the mould", MouldFigures.all());
        add("stock and cost", StockFigures.all());
        add("heat and the pressure pot", HeatAndPressureFigures.all());
    }

    private FigureBook() {}

    private static void add(String topic, List<FigureDef> defs) {
        TOPICS.put(topic, defs);
        for (FigureDef d : defs) {
            if (BOOK.put(d.id(), d) != null) {
                throw new IllegalStateException("the figure '" + d.id() + "' is defined twice");
            }
        }
    }

    /** Ids of all figures. */
    public static Set<String> ids() {
        return Collections.unmodifiableSet(BOOK.keySet());
    }

    /** All definitions by what they are about. */
    public static Map<String, List<FigureDef>> topics() {
        return Collections.unmodifiableMap(TOPICS);
    }

    /** All definitions. */
    public static Collection<FigureDef> all() {
        return Collections.unmodifiableCollection(BOOK.values());
    }

    /** The definition of a figure, if there is one of that name. */
    public static Optional<FigureDef> get(String id) {
        return Optional.ofNullable(BOOK.get(id));
    }
}
