package pourwright.physics;

/** Liquids that boil off under vacuum, alone or inside a casting material. */
public enum Volatile {

    /** Water: slurries, damp fillers, wet moulds. */
    WATER("water"),

    /** Styrene: the thinner of polyester and vinyl ester resins. */
    STYRENE("styrene"),

    /** Methyl methacrylate: the liquid of acrylic casting systems. */
    METHYL_METHACRYLATE("methyl methacrylate"),

    /** Acetone: cleaning and spills. */
    ACETONE("acetone"),

    /** Ethanol: cleaning and release agents. */
    ETHANOL("ethanol"),

    /** Toluene: solvent of some rubbers and release agents. */
    TOLUENE("toluene");

    private final String plainName;

    Volatile(String plainName) {
        this.plainName = plainName;
    }

    /**
     * The name in plain words.
     *
     * @return name in lower case
     */
    public String plainName() {
        return plainName;
    }
}
