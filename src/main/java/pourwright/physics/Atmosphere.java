package pourwright.physics;

/** The standard atmosphere: the air pressure to expect at a height when no barometer is at hand. */
public final class Atmosphere {

    /** Lowest altitude of this layer that is served, m. */
    public static final double LOWEST_ALTITUDE_M = -1_000.0;

    /** Top of the troposphere in ISO 2533:1975, m (geopotential). */
    public static final double HIGHEST_ALTITUDE_M = 11_000.0;

    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double LAPSE_RATE_K_PER_M = 0.0065;
    private static final double MOLAR_MASS_KG_PER_MOL = 0.0289644;
    /** The gas constant that ISO 2533:1975 fixes; it differs from the SI value of today in the fifth digit. */
    private static final double ISO_GAS_CONSTANT = 8.31432;

    private static final double EXPONENT =
            Constants.G * MOLAR_MASS_KG_PER_MOL / (ISO_GAS_CONSTANT * LAPSE_RATE_K_PER_M);
    /** Nominal radius of the earth in ISO 2533:1975, m. */
    private static final double EARTH_RADIUS_M = 6_356_766.0;

    private Atmosphere() {}

    /**
     * Air pressure of the standard atmosphere, p = 101 325 (1 - 0.0065 H / 288.15)^5.255876.
     * Weather moves the true pressure by about 3 % either way (common practice), so a barometer is better.
     * The altitude is geopotential; taking a map height instead changes the pressure by 0.008 % at 2000 m.
     * Source: ISO 2533:1975, Standard Atmosphere.
     *
     * @param altitudeM geopotential altitude above the sea, m, from -1000 to 11 000
     * @return air pressure, Pa
     * @throws PhysicsException when the altitude is not a number or lies outside the range
     */
    public static double barometricPressurePa(double altitudeM) {
        Checked.within("altitude", altitudeM, LOWEST_ALTITUDE_M, HIGHEST_ALTITUDE_M, "m");
        double temperatureRatio = 1 - LAPSE_RATE_K_PER_M * altitudeM / SEA_LEVEL_TEMPERATURE_K;
        return Constants.STANDARD_ATMOSPHERE_PA * Math.pow(temperatureRatio, EXPONENT);
    }

    /**
     * Geopotential altitude of a geometric (map) height, H = r Z / (r + Z), r = 6 356 766 m. Source: ISO 2533:1975.
     *
     * @param heightM geometric height above the sea, m, from -1000 to 11 019 (which is 11 000 m geopotential)
     * @return geopotential altitude, m
     * @throws PhysicsException when the height is not a number or lies outside the range
     */
    public static double geopotentialAltitudeM(double heightM) {
        Checked.within("height", heightM, LOWEST_ALTITUDE_M, 11_019.0, "m");
        return EARTH_RADIUS_M * heightM / (EARTH_RADIUS_M + heightM);
    }
}
