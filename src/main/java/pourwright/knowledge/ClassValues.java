package pourwright.knowledge;

import java.util.Map;
import java.util.Set;
import pourwright.units.Dimension;

/** The numbers a material class may carry, and what each measures. */
public final class ClassValues {
    private static final Map<String, Dimension> VALUES = Map.ofEntries(
            Map.entry("pot-life", Dimension.TIME),
            Map.entry("pot-life-mass", Dimension.MASS),
            Map.entry("pot-life-temperature", Dimension.TEMPERATURE),
            Map.entry("demould-time", Dimension.TIME),
            Map.entry("full-cure-time", Dimension.TIME),
            Map.entry("viscosity", Dimension.VISCOSITY),
            Map.entry("unthickened-viscosity", Dimension.VISCOSITY),
            Map.entry("liquid-density", Dimension.DENSITY),
            Map.entry("density-a", Dimension.DENSITY),
            Map.entry("density-b", Dimension.DENSITY),
            Map.entry("linear-shrinkage", Dimension.FRACTION),
            Map.entry("cup-rise-factor", Dimension.NUMBER),
            Map.entry("vacuum-pressure", Dimension.PRESSURE),
            Map.entry("vacuum-hold", Dimension.TIME),
            Map.entry("vacuum-hold-cap", Dimension.TIME),
            Map.entry("mixing-time", Dimension.TIME),
            Map.entry("depth-limit", Dimension.LENGTH),
            Map.entry("activation-energy", Dimension.ENERGY_PER_MOLE),
            Map.entry("surface-tension", Dimension.SURFACE_TENSION),
            Map.entry("adiabatic-rise", Dimension.TEMPERATURE_DIFFERENCE),
            Map.entry("ratio-tolerance", Dimension.FRACTION),
            Map.entry("warm-limit", Dimension.TEMPERATURE),
            Map.entry("cold-limit", Dimension.TEMPERATURE));

    private ClassValues() {}

    /** Every name a class value may have. */
    public static Set<String> names() {
        return VALUES.keySet();
    }

    /**
     * What a class value measures.
     *
     * @throws KnowledgeFault when no class value has that name
     */
    public static Dimension dimension(String name) {
        Dimension d = VALUES.get(name);
        if (d == null) {
            throw new KnowledgeFault("'" + name + "' is not a value of a material");
        }
        return d;
    }
}
