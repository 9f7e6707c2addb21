package pourwright.degas;

import pourwright.physics.Require;
import pourwright.physics.VapourPressure;
import pourwright.physics.Volatile;

/**
 * What boils off from a mix.
 *
 * @param liquid the volatile part
 * @param share  its vapour pressure in the mix over that of the pure liquid, 0 to 1 (Raoult's law: its mole share)
 */
public record Vapour(Volatile liquid, double share) {

    /**
     * Checks the vapour.
     *
     * @throws pourwright.physics.PhysicsException when the liquid is missing or the share is not 0 to 1
     */
    public Vapour {
        Require.given("liquid that boils off", liquid);
        Require.within("share of the vapour pressure", share, 0, 1, "");
    }

    /** Vapour pressure at a temperature, Pa. */
    double pressurePa(double temperatureK) {
        return share * VapourPressure.saturationPa(liquid, temperatureK);
    }
}
