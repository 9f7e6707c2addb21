package pourwright.degas;

/**
 * One moment of a cure.
 *
 * @param timeS        time from the start of the course, s
 * @param temperatureK mean temperature of the mix, K
 * @param conversion   how much of the cure is done, 0 to 1
 * @param viscosityPaS viscosity, Pa s; infinite at gel and beyond
 */
public record CureSample(double timeS, double temperatureK, double conversion, double viscosityPaS) {}
