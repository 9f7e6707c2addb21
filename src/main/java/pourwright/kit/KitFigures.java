package pourwright.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.figures.FigureDef;
import pourwright.figures.FigureValue;
import pourwright.kitfit.Fitted;
import pourwright.units.Dimension;

/** The figures that a test of a kit gives, each with its meaning, its formula in words and its source. */
public final class KitFigures {
    private static final Map<String, FigureDef> BOOK = new LinkedHashMap<>();
    private static final String FALL = "Found by least squares over the readings of the pump-down. ";
    private static final String EMPTY = "An empty, dry chamber at rest, and a warm pump.";

    static {
        add(
                "effective-speed-measured",
                "How fast does the kit empty the chamber?",
                Dimension.FLOW,
                FALL + "Speed S in p = base + (start - base) × exp(-S × time / chamber volume).",
                "ryans-roper-1986",
                EMPTY + " One speed over the whole fall.");
        add(
                "base-pressure-measured",
                "How deep does the kit get?",
                Dimension.PRESSURE,
                FALL + "The pressure that the fall tends to.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "gas-load-measured",
                "How much gas comes in at the base?",
                Dimension.LEAK,
                "Effective speed × base pressure: the most that leak and outgassing can be.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "leak-rate-measured",
                "How much does the chamber leak?",
                Dimension.LEAK,
                "Chamber volume × the straight part of the rise, after the part that flattens is taken out.",
                "vacuum-rise-test-module",
                "Below half the local air pressure, where the flow through a leak does not change.");
        add(
                "leak-at-most",
                "How large can the leak be at most?",
                Dimension.LEAK,
                "Upper end of the straight part that the rise readings allow.",
                "vacuum-rise-test-module",
                "Readings that do not tell the leak itself.");
        add(
                "leak-cost",
                "How much depth does the leak cost?",
                Dimension.PRESSURE,
                "Leak rate / effective speed at the chamber.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "leak-share-of-base",
                "Which part of the base pressure is the leak?",
                Dimension.FRACTION,
                "Leak cost / base pressure.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "leak-share-of-work",
                "Which part of the working pressure does the leak take?",
                Dimension.FRACTION,
                "Leak cost / pressure of the work.",
                "common-practice",
                EMPTY);
        add(
                "leak-at-most-share",
                "Which part of the working pressure can the leak take at most?",
                Dimension.FRACTION,
                "Largest leak / effective speed / pressure of the work.",
                "common-practice",
                EMPTY);
        add(
                "gas-share-of-base",
                "Which part of the base pressure is gas from inside?",
                Dimension.FRACTION,
                "What comes in at the start of the rise, less the leak, / effective speed / base pressure.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "unexplained-base",
                "How much of the base pressure is left to the pump or the gauge?",
                Dimension.PRESSURE,
                "Base pressure, less leak and gas from inside, less the depth the pump should reach.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "unexplained-share-of-base",
                "Which part of the base pressure is left to the pump or the gauge?",
                Dimension.FRACTION,
                "Unexplained part / base pressure.",
                "ryans-roper-1986",
                EMPTY);
        add(
                "expected-speed",
                "How fast should the kit be?",
                Dimension.FLOW,
                "Speed of the pump's plate through the hose, at the middle of the fall.",
                "jousten-vacuum-handbook",
                "A round hose, and air that flows smoothly.");
        add(
                "speed-share-measured",
                "Which part of the speed it should have does the kit have?",
                Dimension.FRACTION,
                "Measured speed / expected speed.",
                "common-practice",
                EMPTY);
        add(
                "hose-share-expected",
                "Which part of the pump's speed does the hose leave?",
                Dimension.FRACTION,
                "Expected speed / speed of the plate, at the middle of the fall.",
                "jousten-vacuum-handbook",
                "A round hose, and air that flows smoothly.");
        add(
                "late-speed-share",
                "How much of the speed is left deep down?",
                Dimension.FRACTION,
                "Speed over the lower half of the fall / speed over the upper half, on a logarithm of pressure.",
                "common-practice",
                EMPTY);
        add(
                "lowest-reading",
                "What is the deepest reading?",
                Dimension.PRESSURE,
                "Smallest reading of the pump-down, as absolute pressure.",
                "common-practice",
                "");
        add(
                "best-dial-reading",
                "What is the most a dial can show here?",
                Dimension.PRESSURE,
                "The local air pressure: a perfect vacuum.",
                "iso-2533",
                "A dial that counts from local air.");
        add(
                "rise-level",
                "Where would the rise end without the leak?",
                Dimension.PRESSURE,
                "Level of the part of the rise that flattens.",
                "vacuum-rise-test-module",
                "A rise that flattens.");
        add(
                "water-vapour-pressure",
                "At which pressure does water boil in this room?",
                Dimension.PRESSURE,
                "Vapour pressure of water at room temperature.",
                "wagner-pruss-1993",
                "");
        add(
                "next-rise-reading",
                "When would one more reading of the rise tell more?",
                Dimension.TIME,
                "Time after the first reading at which straight and bent differ by more than the readings' errors.",
                "vacuum-rise-test-module",
                "");
        add(
                "work-pressure",
                "How deep must the kit get for the work?",
                Dimension.PRESSURE,
                "The pressure meant, else that of the material, else one that suits thick silicone.",
                "common-practice",
                "");
    }

    private final Map<String, FigureValue> figures = new TreeMap<>();

    private static void add(String id, String asks, Dimension d, String words, String source, String valid) {
        BOOK.put(id, FigureDef.ofTest(id, asks, d, words, source, valid));
    }

    /** Ids of all of them. */
    public static Set<String> ids() {
        return Set.copyOf(BOOK.keySet());
    }

    /** A range in SI from a fit, which may have no upper end; nothing below zero. */
    static Estimate range(Fitted f) {
        double low = Math.max(0, f.low());
        double typical = Math.max(low, f.value());
        return new Estimate(low, typical, Math.max(typical, f.high()));
    }

    /** The same with factors on its ends, for an input that is only known as a range. */
    static Estimate range(Fitted f, double lowFactor, double highFactor) {
        Estimate e = range(f);
        return new Estimate(e.low() * lowFactor, e.typical(), e.high() * highFactor);
    }

    void put(String id, Estimate si, Basis basis, String... answers) {
        FigureDef def = BOOK.get(id);
        FigureValue.Sensitivity s = new FigureValue.Sensitivity(basis, "");
        figures.put(
                id,
                new FigureValue(
                        id,
                        def.dimension(),
                        si,
                        new TreeSet<>(Set.of(answers)),
                        null,
                        def,
                        java.util.List.of(answers),
                        () -> s));
    }

    void put(FigureValue given) {
        figures.put(given.id(), given);
    }

    Estimate get(String id) {
        FigureValue v = figures.get(id);
        return v == null ? null : v.si();
    }

    Map<String, FigureValue> all() {
        return figures;
    }
}
