package pourwright.kit;

import java.util.List;
import java.util.Optional;

/**
 * Pumps for the materials a workshop means to use, in its chamber.
 *
 * @param wants   the materials, and whether vacuum helps them at all
 * @param pick    the smallest pump that serves all of them, if one does
 * @param kinds   each kind of pump: the speed from which it serves all, or why it does not
 * @param enough  for each material, the speed beyond which a bigger pump gains little, and what holds it back
 * @param consulted how many jobs were planned to find out
 */
public record Sizing(List<Want> wants, Optional<Pick> pick, List<Kind> kinds, List<Enough> enough, int consulted) {
    /**
     * A material.
     *
     * @param id     its id
     * @param name   what the trade calls it
     * @param vacuum whether it is degassed in a chamber at all
     */
    public record Want(String id, String name, boolean vacuum) {}

    /**
     * A pump.
     *
     * @param kind        id of its kind
     * @param name        what the trade calls it
     * @param speedM3PerS free-air speed, m3/s
     */
    public record Pick(String kind, String name, double speedM3PerS) {}

    /**
     * A kind of pump.
     *
     * @param id       its id
     * @param name     what the trade calls it
     * @param serves   the smallest speed that serves all, if one does
     * @param material id of the material for which the largest one fails; empty when it serves all
     * @param why      why it does, in words; empty when it serves all
     */
    public record Kind(String id, String name, Optional<Double> serves, String material, String why) {}

    /** What a bigger pump cannot change. */
    public enum Limit {
        /** The hose passes no more. */
        HOSE,
        /** The kind of pump is near the end of its own depth. */
        PUMP_DEPTH,
        /** The liquid boils at this depth, so nobody may go deeper. */
        BOIL_OFF,
        /** Froth and hold take their time however fast the chamber empties. */
        FROTH,
        /** None of the listed speeds: each larger one still gains. */
        NONE
    }

    /**
     * Where a bigger pump stops helping one material.
     *
     * @param material    id of the material
     * @param name        what the trade calls it
     * @param speedM3PerS speed beyond which the next larger one gains little, m3/s
     * @param limit       what holds it back
     */
    public record Enough(String material, String name, double speedM3PerS, Limit limit) {}
}
