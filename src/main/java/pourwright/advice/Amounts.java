package pourwright.advice;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/**
 * Values in the units a workshop reads: grams or ounces, °C or °F, mbar or inHg, litres or gallons. What nobody chose is shown
 * in the usual unit for its size.
 */
public final class Amounts {
    /** In the usual units. */
    public static final Amounts USUAL = new Amounts(Map.of());

    private static final double GRAMS_BELOW_KG = 20;
    private static final double POUNDS_ABOVE_KG = 4.5;
    private static final double GALLON_SHARE = 0.25;
    private static final double INHG_BELOW_PA = 150_000;

    /** Spoken of in plain numbers, other units of the same kind are those of the same can, scale or gauge. */
    private static final Map<String, Set<String>> ALIKE = Map.of(
            "g", Set.of("g", "kg", "mg", "t"),
            "oz", Set.of("oz", "lb"),
            "°C", Set.of("°C"),
            "°F", Set.of("°F"),
            "mbar", Set.of("mbar", "bar", "Pa", "hPa", "kPa"),
            "inHg", Set.of("inHg", "inHg abs"),
            "L", Set.of("L", "mL", "m³", "cm³", "cL", "dL"),
            "US gal", Set.of("US gal", "US qt", "US pt", "US cup", "US fl oz"),
            "UK gal", Set.of("UK gal", "UK qt", "UK pt", "UK cup", "UK fl oz"));

    private static final Map<String, String> UNIT = Map.of(
            "g", "g",
            "oz", "oz",
            "celsius", "°C",
            "fahrenheit", "°F",
            "mbar", "mbar",
            "inhg", "inHg",
            "l", "L",
            "us-gal", "US gal",
            "uk-gal", "UK gal");

    private static final Map<Dimension, String> QUESTION = Map.of(
            Dimension.MASS, "unit-mass",
            Dimension.TEMPERATURE, "unit-temperature",
            Dimension.PRESSURE, "unit-pressure",
            Dimension.VOLUME, "unit-volume");

    private static final Map<String, Map<Dimension, String>> SETS = Map.of(
            "metric",
            Map.of(
                    Dimension.MASS, "g",
                    Dimension.TEMPERATURE, "°C",
                    Dimension.PRESSURE, "mbar",
                    Dimension.VOLUME, "L"),
            "us",
            Map.of(
                    Dimension.MASS, "oz",
                    Dimension.TEMPERATURE, "°F",
                    Dimension.PRESSURE, "inHg",
                    Dimension.VOLUME, "US gal"));

    private final Map<Dimension, String> chosen;

    private Amounts(Map<Dimension, String> chosen) {
        this.chosen = Map.copyOf(chosen);
    }

    /** As the answers want it: a unit chosen by itself before the set of all. */
    public static Amounts of(Answers answers) {
        Map<Dimension, String> all = new java.util.EnumMap<>(Dimension.class);
        all.putAll(SETS.getOrDefault(answers.choice("units"), Map.of()));
        QUESTION.forEach(
                (d, q) -> Optional.ofNullable(UNIT.get(answers.choice(q))).ifPresent(unit -> all.put(d, unit)));
        return all.isEmpty() ? USUAL : new Amounts(all);
    }

    /** The unit chosen for pressures, if any. */
    Optional<String> pressure() {
        return Optional.ofNullable(chosen.get(Dimension.PRESSURE));
    }

    /** The unit for a value of that size, SI. */
    public String unit(double si, Dimension d) {
        double size = Math.abs(si);
        return switch (chosen.getOrDefault(d, "")) {
            case "oz" -> size < POUNDS_ABOVE_KG ? "oz" : "lb";
            case "°F" -> "°F";
            case "inHg" -> size < INHG_BELOW_PA ? "inHg" : "psi";
            case "US gal" -> gallons(size, "US gal", "US fl oz");
            case "UK gal" -> gallons(size, "UK gal", "UK fl oz");
            default -> d == Dimension.MASS && size < GRAMS_BELOW_KG ? "g" : Show.bestUnit(si, d);
        };
    }

    private static String gallons(double si, String large, String small) {
        return si < GALLON_SHARE * UnitBook.toSi(1, large, Dimension.VOLUME) ? small : large;
    }

    /** One value in the unit that suits it, with no more digits than it deserves. */
    public String one(double si, Dimension dimension) {
        return one(si, dimension, null);
    }

    /** A pressure from true zero: in inches of mercury it says so, since a dial counts the other way. */
    public String fromZero(double pa) {
        String shown = one(pa, Dimension.PRESSURE);
        return shown.endsWith("inHg") ? shown + " absolute" : shown;
    }

    String one(double si, Dimension dimension, String wanted) {
        Dimension d = asPeopleSay(si, dimension);
        String unit = wanted == null ? unit(si, d) : wanted;
        return Show.quantity(rounded(si, unit, d), unit, d);
    }

    /** The same value in the chosen unit, where it was typed in one of another kind; else nothing. */
    Optional<String> beside(Answer.Quantity typed, Dimension d) {
        String wanted = chosen.get(d);
        if (wanted == null
                || !typed.si().exact()
                || ALIKE.get(wanted).contains(typed.unit())
                || !UnitBook.knows(typed.unit(), d)) {
            return Optional.empty();
        }
        return Optional.of(one(typed.si().typical(), d));
    }

    /** A plain number below one is a share, and a share is said in per cent. */
    static Dimension asPeopleSay(double si, Dimension d) {
        return d == Dimension.NUMBER && si > 0 && si < 1 ? Dimension.FRACTION : d;
    }

    /** No more digits than the value deserves: two, and whole grams for what goes on a scale. */
    static double rounded(double si, String unit, Dimension d) {
        double v = UnitBook.fromSi(si, unit, d);
        if (v == 0 || Double.isInfinite(v)) {
            return si;
        }
        double scale = Math.pow(10, digits(v, unit, d) - 1 - Math.floor(Math.log10(Math.abs(v))));
        double shown = scale >= 1 ? Math.round(v * scale) / scale : Math.round(v * scale) * Math.round(1 / scale);
        return UnitBook.toSi(shown, unit, d);
    }

    private static int digits(double v, String unit, Dimension d) {
        boolean fine = d == Dimension.PRESSURE && Math.abs(v) >= 100 || d == Dimension.MASS && Math.abs(v) >= 100;
        // An ounce is 28 grams: with three digits a scale could not be read as closely as in grams.
        if (fine || d == Dimension.MASS && unit.equals("oz") && Math.abs(v) >= 10) {
            return 4;
        }
        return d == Dimension.MASS || d == Dimension.VOLUME || d == Dimension.TEMPERATURE ? 3 : 2;
    }
}
