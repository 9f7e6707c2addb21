package pourwright.physics;

/** The temperature at which moisture from the air settles on a cold mould or can. */
public final class DewPoint {

    /** Lowest dew point served, K: the end of the published range of the formula used below freezing. */
    public static final double LOWEST_K = 233.15;

    /** Highest air temperature served, K. */
    public static final double HIGHEST_AIR_K = 373.15;

    /** Slope constant of the Magnus formula over water; Alduchov and Eskridge, J. Appl. Meteorol. 35:601, 1996. */
    private static final double MAGNUS_SLOPE = 17.625;

    /** Temperature constant of the Magnus formula, K; same source. */
    private static final double MAGNUS_K = 243.04;

    private static final double FREEZING_VAPOUR_PA =
            VapourPressure.saturationPa(Volatile.WATER, Constants.ZERO_CELSIUS_K);

    private DewPoint() {}

    /**
     * Dew point: where saturated water vapour has the pressure that the air's moisture has now.
     * Above freezing both steps use the saturation line of water (IAPWS-IF97 region 4).
     * Below freezing they use the Magnus formula over liquid water (Alduchov and Eskridge 1996, from memory),
     * joined to that line at 0 C. Frost forms slightly warmer than this.
     *
     * @param temperatureK     air temperature, K, from 233.15 to 373.15
     * @param relativeHumidity relative humidity as a share, above 0 and up to 1
     * @return dew point, K, never above the air temperature
     * @throws PhysicsException when an input is not a number or out of its range, or the dew point is below 233.15 K
     */
    public static double kelvin(double temperatureK, double relativeHumidity) {
        Checked.within("air temperature", temperatureK, LOWEST_K, HIGHEST_AIR_K, "K");
        Checked.positive("relative humidity", relativeHumidity, "");
        Checked.within("relative humidity", relativeHumidity, 0, 1, "");
        if (relativeHumidity == 1) {
            return temperatureK;
        }
        double vapourPa = relativeHumidity * saturationPa(temperatureK);
        double dewK;
        if (vapourPa >= FREEZING_VAPOUR_PA) {
            dewK = VapourPressure.boilingTemperatureK(Volatile.WATER, vapourPa);
        } else {
            double log = Math.log(vapourPa / FREEZING_VAPOUR_PA);
            dewK = Constants.ZERO_CELSIUS_K + MAGNUS_K * log / (MAGNUS_SLOPE - log);
        }
        if (dewK < LOWEST_K) {
            throw new PhysicsException("The air is too dry for a dew point above " + Checked.text(LOWEST_K, "K") + ".");
        }
        return Math.min(temperatureK, dewK);
    }

    private static double saturationPa(double temperatureK) {
        if (temperatureK >= Constants.ZERO_CELSIUS_K) {
            return VapourPressure.saturationPa(Volatile.WATER, temperatureK);
        }
        double celsius = temperatureK - Constants.ZERO_CELSIUS_K;
        return FREEZING_VAPOUR_PA * Math.exp(MAGNUS_SLOPE * celsius / (MAGNUS_K + celsius));
    }
}
