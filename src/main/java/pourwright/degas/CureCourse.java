package pourwright.degas;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import pourwright.physics.Require;

/**
 * Conversion, temperature and viscosity of a mix over time, from any state on until the peak and the gel are past.
 *
 * <p>Heat balance of one temperature: dT/dt = rise × da/dt - (T - room)/time constant. The time constant is the heat
 * capacity of mix and vessel over the loss of {@link Vessel}. Each step takes the loss as an exponential, so a thin part
 * that follows its room costs no more steps, and without loss T - T0 = rise × a holds to the last digit. The conversion
 * takes second-order (Heun) steps of at most {@value #STEP} in conversion: times are good to 5e-4.
 */
public final class CureCourse {

    private static final double STEP = 0.0015;

    /** No more conversion than this is followed: the last hundredth takes for ever and gives no heat. */
    private static final double LAST_CONVERSION = 0.99;

    /** Steps in time are at most this share of the gel time at the start temperature. */
    private static final double MOST_OF_GEL = 0.02;

    private static final int MOST_STEPS = 20_000;

    private final Mix mix;
    private final double[] timeS;
    private final double[] conversion;
    private final double[] temperatureK;
    private final double gelS;
    private final int peak;

    private CureCourse(Mix mix, double[] timeS, double[] conversion, double[] temperatureK) {
        this.mix = mix;
        this.timeS = timeS;
        this.conversion = conversion;
        this.temperatureK = temperatureK;
        this.gelS = crossing(mix.reaction().gelConversion());
        int highest = 0;
        for (int i = 1; i < temperatureK.length; i++) {
            highest = temperatureK[i] > temperatureK[highest] ? i : highest;
        }
        this.peak = highest;
    }

    /**
     * Follows a mix.
     *
     * @param mix             the mix
     * @param massKg          its mass, kg, above zero
     * @param vessel          what holds it
     * @param roomK           temperature of the room, K
     * @param startK          temperature of the mix at the start, K
     * @param startConversion conversion at the start, 0 to below gel
     * @return the course; times count from its start
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public static CureCourse of(
            Mix mix, double massKg, Vessel vessel, double roomK, double startK, double startConversion) {
        Require.given("mix", mix);
        Require.positive("mass", massKg, "kg");
        Require.given("vessel", vessel);
        Require.positive("temperature of the room", roomK, "K");
        Require.positive("temperature of the mix", startK, "K");
        Require.within("conversion at the start", startConversion, 0, 1, "");
        Reaction reaction = mix.reaction();
        double mixCapacity = massKg * mix.specificHeatJPerKgK();
        double capacity = mixCapacity + vessel.capacityJPerK();
        double lossPerS = vessel.lossWPerK(massKg / mix.density(), mix.conductivityWPerMK()) / capacity;
        double riseK = reaction.adiabaticRiseK() * mixCapacity / capacity;
        double[] times = new double[900];
        double[] conversions = new double[900];
        double[] temperatures = new double[900];
        conversions[0] = startConversion;
        temperatures[0] = startK;
        double longestS = MOST_OF_GEL * (1 - reaction.ageAt(startConversion)) * gelEstimateS(reaction, startK, roomK);
        int count = 1;
        while (count < MOST_STEPS) {
            double a = conversions[count - 1];
            double t = temperatures[count - 1];
            boolean cooling = count > 1 && t <= temperatures[count - 2];
            boolean atRest = riseK == 0 || cooling || lossPerS == 0 && a >= LAST_CONVERSION;
            if (a >= LAST_CONVERSION || a > reaction.gelConversion() && atRest) {
                break;
            }
            double rate = reaction.ratePerS(a, t);
            double stepS = STEP / rate;
            if (longestS > 0 && a < reaction.gelConversion()) {
                stepS = Math.min(stepS, longestS);
            }
            // A step that would warm it much is too long for a rate that grows with warmth.
            double kept = kept(lossPerS * stepS);
            double ahead = Math.min(1, a + rate * stepS);
            double aheadK = temperature(roomK, t, lossPerS * stepS, riseK * (ahead - a), kept);
            double next = Math.min(1, a + (rate + reaction.ratePerS(ahead, aheadK)) / 2 * stepS);
            if (count == times.length) {
                times = Arrays.copyOf(times, 2 * count);
                conversions = Arrays.copyOf(conversions, 2 * count);
                temperatures = Arrays.copyOf(temperatures, 2 * count);
            }
            times[count] = times[count - 1] + stepS;
            conversions[count] = next;
            temperatures[count] = temperature(roomK, t, lossPerS * stepS, riseK * (next - a), kept);
            count++;
        }
        return new CureCourse(
                mix,
                Arrays.copyOf(times, count),
                Arrays.copyOf(conversions, count),
                Arrays.copyOf(temperatures, count));
    }

    private static double gelEstimateS(Reaction reaction, double startK, double roomK) {
        // Only a scale for the steps: the rate at the start sets it, at the warmer of the two temperatures.
        return reaction.gelConversion() / reaction.ratePerS(0, Math.max(startK, roomK));
    }

    /** Share of heat that is still there at the end of a step when it came in evenly. */
    private static double kept(double lossShare) {
        return lossShare == 0 ? 1 : -Math.expm1(-lossShare) / lossShare;
    }

    private static double temperature(double roomK, double nowK, double lossShare, double heatK, double kept) {
        return roomK + (nowK - roomK) * Math.exp(-lossShare) + heatK * kept;
    }

    /**
     * Time to gel, from the start of the course.
     *
     * @return time, s; infinite when it is not reached
     */
    public double gelS() {
        return gelS;
    }

    /**
     * Time to any conversion.
     *
     * @param wanted conversion, 0 to 1
     * @return time, s; infinite when it is not reached
     */
    double crossing(double wanted) {
        int last = conversion.length - 1;
        if (wanted <= conversion[0]) {
            return 0;
        }
        if (wanted > conversion[last]) {
            return Double.POSITIVE_INFINITY;
        }
        int found = Arrays.binarySearch(conversion, wanted);
        int high = found >= 0 ? found : -found - 1;
        double rateLow = mix.reaction().ratePerS(conversion[high - 1], temperatureK[high - 1]);
        double rateHigh = mix.reaction().ratePerS(conversion[high], temperatureK[high]);
        double u = (wanted - conversion[high - 1]) / (conversion[high] - conversion[high - 1]);
        double span = conversion[high] - conversion[high - 1];
        double v = 1 - u;
        // Time over conversion has the known slopes 1/rate, which gives a cubic.
        return v * v * (timeS[high - 1] * (1 + 2 * u) + span / rateLow * u)
                + u * u * (timeS[high] * (1 + 2 * v) - span / rateHigh * v);
    }

    /**
     * When the mix would be twice as thick as at first, were its warmth to change nothing: what some labels call pot life.
     *
     * @return time from the start of the course, s; infinite when it is not reached
     */
    public double doubledS() {
        return crossing(mix.reaction().conversionAtAge(mix.doublingShare()));
    }

    /**
     * The course as a list, evenly over time.
     *
     * @param most  how many at most, 2 or more
     * @return samples, the first at the start
     */
    public List<CureSample> samples(int most) {
        double endS = timeS[timeS.length - 1];
        return IntStream.range(0, most)
                .mapToDouble(i -> endS * i / (most - 1))
                .distinct()
                .mapToObj(t -> new CureSample(t, temperatureKAt(t), conversionAt(t), viscosityPaSAt(t)))
                .toList();
    }

    /**
     * Highest mean temperature of the mix.
     *
     * @return temperature, K
     */
    public double peakK() {
        return temperatureK[peak];
    }

    /**
     * When it is hottest, from the start of the course.
     *
     * @return time, s
     */
    public double peakS() {
        return timeS[peak];
    }

    /**
     * Temperature after a time; the last one when the course has ended.
     *
     * @param afterS time from the start of the course, s, zero or more
     * @return temperature, K
     */
    public double temperatureKAt(double afterS) {
        return at(temperatureK, afterS);
    }

    /**
     * Conversion after a time; the last one when the course has ended.
     *
     * @param afterS time from the start of the course, s, zero or more
     * @return conversion, 0 to 1
     */
    public double conversionAt(double afterS) {
        return at(conversion, afterS);
    }

    /**
     * Viscosity after a time.
     *
     * @param afterS time from the start of the course, s, zero or more
     * @return viscosity, Pa s; infinite at gel and beyond
     */
    public double viscosityPaSAt(double afterS) {
        return mix.viscosityPaS(conversionAt(afterS), temperatureKAt(afterS));
    }

    private double at(double[] values, double afterS) {
        int last = timeS.length - 1;
        if (afterS >= timeS[last]) {
            return values[last];
        }
        int found = Arrays.binarySearch(timeS, afterS);
        int low = Math.max(0, found >= 0 ? found : -found - 2);
        double share = (afterS - timeS[low]) / (timeS[low + 1] - timeS[low]);
        return values[low] + share * (values[low + 1] - values[low]);
    }
}
