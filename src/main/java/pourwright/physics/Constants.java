package pourwright.physics;

/** Physical constants that more than one formula needs, in SI units. */
public final class Constants {

    /** Standard acceleration of free fall, m/s2; exact (ISO 80000-3). */
    public static final double G = 9.80665;

    /** Standard atmosphere, Pa; exact (ISO 2533:1975). */
    public static final double STANDARD_ATMOSPHERE_PA = 101_325.0;

    /** Molar gas constant, J/(mol K); exact value of the SI of 2019, rounded to ten digits (CODATA 2018). */
    public static final double GAS_CONSTANT = 8.314462618;

    /** Zero of the Celsius scale, K; exact (ISO 80000-5). */
    public static final double ZERO_CELSIUS_K = 273.15;

    private Constants() {}
}
