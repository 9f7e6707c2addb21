package pourwright.degas;

import java.util.List;

/**
 * What a pull does. The times of the froth count from the opening of the pump valve; infinite where they never come.
 *
 * @param firstRiseS       the height passes 1.2 times the mix, s
 * @param crestS           last time within 1 % of the largest rise, s
 * @param fallBegunS       10 % of the rise is lost again, s
 * @param fallenS          a quarter of the rise is left, s
 * @param clearS           the last bubble that can be seen has left, s
 * @param crestFactor      largest height over the height of the mix
 * @param crestM           largest height over the floor of the vessel, m
 * @param overflowS        the froth passes the rim, s
 * @param lowestPa         lowest absolute pressure reached, Pa
 * @param boils            whether vapour of the mix held the pressure up
 * @param airLeft          air left at the pour, share of the volume under local air pressure
 * @param largestLeftM     largest bubble left at the pour, diameter under local air pressure, m; 0 when none is
 * @param viscosityPaS     viscosity at the pour, Pa s; infinite once gelled
 * @param temperatureK     temperature at the pour, K
 * @param peakK            highest temperature up to the pour, K
 * @param gelS             time from mixing to gel if the mix stayed in this vessel, s
 * @param workingTimeUsed  age of the mix at the pour over its time to gel, both from mixing; 1 and above is gelled
 * @param fastestReynolds  largest Reynolds number of a median bubble; above 0.3 the times are too short
 * @param books            where all the gas went
 * @param after            the batch at the pour
 * @param course           the course, for a picture
 */
public record DegasResult(
        double firstRiseS,
        double crestS,
        double fallBegunS,
        double fallenS,
        double clearS,
        double crestFactor,
        double crestM,
        double overflowS,
        double lowestPa,
        boolean boils,
        double airLeft,
        double largestLeftM,
        double viscosityPaS,
        double temperatureK,
        double peakK,
        double gelS,
        double workingTimeUsed,
        double fastestReynolds,
        GasBooks books,
        Charge after,
        List<DegasSample> course) {

    /** The list is copied. */
    public DegasResult {
        course = List.copyOf(course);
    }
}
