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

    static {
        add(AirFigures.all());
        add(VacuumFigures.all());
        add(MixFigures.all());
        add(FrothFigures.all());
        add(TimeFigures.all());
        add(BubbleFigures.all());
        add(MouldFigures.all());
        add(HeatAndPressureFigures.all());
    }

    private FigureBook() {}

    private static void add(List<FigureDef> defs) {
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

    /** All definitions. */
    public static Collection<FigureDef> all() {
        return Collections.unmodifiableCollection(BOOK.values());
    }

    /** The definition of a figure, if there is one of that name. */
    public static Optional<FigureDef> get(String id) {
        return Optional.ofNullable(BOOK.get(id));
    }
}
