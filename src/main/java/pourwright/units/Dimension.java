package pourwright.units;

import java.util.Locale;

/** The kinds of quantity that cross the edge of the program, each with the SI unit used inside. */
public enum Dimension {
    TIME("s", "a time", "s, min, h, d"),
    MASS("kg", "a weight", "g, kg, oz, lb"),
    VOLUME("m³", "a volume", "mL, L, fl oz, pint, gal"),
    LENGTH("m", "a length", "mm, cm, m, in, ft"),
    PRESSURE("Pa", "a pressure", "mbar, kPa, bar, torr, inHg, psi"),
    TEMPERATURE("K", "a temperature", "°C, °F, K"),
    FLOW("m³/s", "a pump speed", "L/s, L/min, m³/h, cfm"),
    LEAK("Pa m³/s", "a leak rate", "mbar L/s, torr L/s, Pa m³/s"),
    VISCOSITY("Pa·s", "a thickness (viscosity)", "Pa·s, mPa·s, cP"),
    DENSITY("kg/m³", "a density", "g/mL, kg/m³, lb/gal"),
    FRACTION("1", "a share", "%"),
    FORCE("N", "a force", "N, kgf, lbf"),
    SPEED("m/s", "a speed", "mm/s, mm/min, m/s"),
    CONDUCTANCE("m³/s", "a conductance", "L/s, m³/s"),
    ENERGY_PER_MOLE("J/mol", "an energy per mole", "kJ/mol, J/mol"),
    SURFACE_TENSION("N/m", "a surface tension", "mN/m, N/m"),
    TEMPERATURE_DIFFERENCE("K", "a temperature difference", "K, °C, °F"),
    NUMBER("1", "a plain number", "a number without a unit");

    private final String siUnit;
    private final String kind;
    private final String usual;

    Dimension(String siUnit, String kind, String usual) {
        this.siUnit = siUnit;
        this.kind = kind;
        this.usual = usual;
    }

    /** Symbol of the SI unit in which values of this kind are held. */
    public String siUnit() {
        return siUnit;
    }

    /** The kind in plain words with its article, for a sentence: "a time". */
    public String kind() {
        return kind;
    }

    /** The units people mostly type for it, for a sentence: "s, min, h, d". */
    public String usualUnits() {
        return usual;
    }

    /** The name used in knowledge files: lower case, words joined by a hyphen ("temperature-difference"). */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The dimension of that name.
     *
     * @throws IllegalArgumentException if there is none; a fault of a knowledge file, never of a person
     */
    public static Dimension named(String name) {
        for (Dimension d : values()) {
            if (d.id().equals(name)) {
                return d;
            }
        }
        StringBuilder known = new StringBuilder();
        for (Dimension d : values()) {
            known.append(known.length() == 0 ? "" : ", ").append(d.id());
        }
        throw new IllegalArgumentException("No kind of quantity is called '" + name + "'. Known: " + known);
    }
}
