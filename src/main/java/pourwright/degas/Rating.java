package pourwright.degas;

import pourwright.physics.Require;

/**
 * The working time a data sheet gives.
 *
 * @param timeS        time from mixing, s, above zero
 * @param massKg       mass it was measured on, kg, above zero
 * @param temperatureK temperature of parts and room, K, above zero
 * @param end          what ends the rated time
 */
public record Rating(double timeS, double massKg, double temperatureK, End end) {

    /** What ends a rated time. */
    public enum End {
        /** The mix gels: it strings or snaps. */
        GEL,
        /** The viscosity has doubled, warming of the mix included in its age but not in its flow. */
        DOUBLED
    }

    /**
     * Checks the rating.
     *
     * @throws pourwright.physics.PhysicsException when a value is not a number above zero
     */
    public Rating {
        Require.positive("rated time", timeS, "s");
        Require.positive("rated mass", massKg, "kg");
        Require.positive("rated temperature", temperatureK, "K");
        Require.given("end of the rated time", end);
    }
}
