package pourwright.degas;

/**
 * One moment of a degas.
 *
 * @param timeS        time from the start of the stage, s
 * @param pressurePa   absolute pressure in the chamber, Pa
 * @param heightM      height of the mix with its froth, m
 * @param temperatureK temperature of the mix, K
 * @param viscosityPaS viscosity of the mix, Pa s; infinite once gelled
 * @param gasLeft      gas still in the mix over that at the start, 0 to 1
 */
public record DegasSample(
        double timeS, double pressurePa, double heightM, double temperatureK, double viscosityPaS, double gasLeft) {}
