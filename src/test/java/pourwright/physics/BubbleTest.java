package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.NO_SHARE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.testing.Generated;

class BubbleTest {

    /** Percent: a published value printed with three or four digits. */
    private static final double PRINTED_DIGITS = 0.2;

    /** Percent: the law itself, only rounding error allowed. */
    private static final double ROUNDING = 1e-9;

    /** Density of air used for the reference vectors, kg/m3. */
    private static final double AIR = 1.2;

    private static final double ATMOSPHERE = 101_325;

    // Computed with g 9.80665 and air of 1.2 kg/m3 for this project (Python 3.11).
    @ParameterizedTest
    @CsvSource({
        "0.6, 1150, 1e-3, 1.043e-3",
        "0.6, 1150, 1e-4, 1.043e-5",
        "20, 1100, 1e-3, 2.993e-5",
        "20, 1100, 3e-3, 2.694e-4",
        "20, 1100, 1e-4, 2.993e-7",
        "1e-3, 998, 1e-4, 5.43e-3"
    })
    void rises_at_the_stokes_speed(double viscosityPaS, double density, double diameterM, double speedMPerS) {
        assertThat(Bubble.stokesRiseMPerS(diameterM, density, AIR, viscosityPaS))
                .isCloseTo(speedMPerS, withinPercentage(PRINTED_DIGITS));
        assertThat(Bubble.cleanRiseMPerS(diameterM, density, AIR, viscosityPaS))
                .isCloseTo(1.5 * speedMPerS, withinPercentage(PRINTED_DIGITS));
    }

    @Test
    void agrees_with_a_published_viscosity_from_a_rising_bubble() {
        // H. C. Verma, Concepts of Physics 1, example 14.9 p. 292: 2 mm, 1750 kg/m3, 0.35 cm/s gives 11 poise.
        double speedMPerS = Bubble.stokesRiseMPerS(2e-3, 1750, 0, 1.0);
        assertThat(speedMPerS / 0.35e-2 * 10).isCloseTo(11, withinPercentage(1.1));
    }

    @Test
    void tells_where_the_stokes_law_ends() {
        // Computed: 0.1 mm in water has Reynolds number 0.54, 1 mm 540; a 3 mm bubble in rubber is far inside the law.
        double small = Bubble.stokesRiseMPerS(1e-4, 998, AIR, 1e-3);
        double large = Bubble.stokesRiseMPerS(1e-3, 998, AIR, 1e-3);
        assertThat(Bubble.reynolds(small, 1e-4, 998, 1e-3)).isCloseTo(0.54, within(0.01));
        assertThat(Bubble.reynolds(large, 1e-3, 998, 1e-3))
                .isCloseTo(542, within(2.0))
                .isGreaterThan(Bubble.STOKES_LIMIT_REYNOLDS);
        double rubber = Bubble.stokesRiseMPerS(3e-3, 1100, AIR, 20);
        assertThat(Bubble.reynolds(rubber, 3e-3, 1100, 20)).isLessThan(Bubble.STOKES_LIMIT_REYNOLDS);
    }

    @Test
    void speed_scales_with_size_squared_and_turns_round_with_the_weight() {
        Generated.tries(11, 200).forEach(any -> {
            double d = any.logUniform(1e-5, 1e-2);
            double mu = any.logUniform(1e-3, 100);
            double liquid = any.uniform(800, 2000);
            double gas = any.uniform(0, 700);
            double speed = Bubble.stokesRiseMPerS(d, liquid, gas, mu);
            assertThat(Bubble.stokesRiseMPerS(2 * d, liquid, gas, mu)).isCloseTo(4 * speed, withinPercentage(ROUNDING));
            assertThat(Bubble.stokesRiseMPerS(d, liquid, gas, 2 * mu)).isCloseTo(speed / 2, withinPercentage(ROUNDING));
            assertThat(Bubble.stokesRiseMPerS(d, gas + 1, liquid + 1, mu)).isNegative();
            assertThat(Bubble.reynolds(-speed, d, liquid, mu)).isEqualTo(Bubble.reynolds(speed, d, liquid, mu));
        });
    }

    // Computed from the Richardson-Zaki law with n 4.65 (Richardson, Citation Classic, Feb. 1979).
    @ParameterizedTest
    @CsvSource({"0, 1", "0.1, 0.613", "0.3, 0.190", "0.5, 0.040", "1, 0"})
    void crowds_slow_bubbles(double gasFraction, double share) {
        assertThat(Bubble.hindrance(gasFraction, 4.65)).isCloseTo(share, within(5e-4));
    }

    @Test
    void larger_exponents_and_crowds_never_speed_up() {
        Generated.tries(12, 200).forEach(any -> {
            double e = any.uniform(0.01, 0.98);
            double n = any.uniform(2.4, 4.65);
            assertThat(Bubble.hindrance(e, n + 0.1)).isLessThan(Bubble.hindrance(e, n));
            assertThat(Bubble.hindrance(e + 0.01, n)).isLessThan(Bubble.hindrance(e, n));
        });
    }

    // K. Subramanya, 1000 Solved Problems in Fluid Mechanics, ex. 1.15 p. 9 (29.2 kPa), and Irfan Khan, ex. 1.10
    // (29.2 Pa): the same digits with millimetres and metres.
    @ParameterizedTest
    @CsvSource({"1e-5, 0.073, 29200", "1e-2, 0.073, 29.2"})
    void tension_raises_the_pressure_inside(double diameterM, double sigma, double pressurePa) {
        assertThat(Bubble.laplacePa(diameterM, sigma)).isCloseTo(pressurePa, withinPercentage(PRINTED_DIGITS));
    }

    @Test
    void agrees_with_published_pressures_in_small_and_deep_bubbles() {
        // Book chapter 10.1201/b17278-4, abstract: 1 um 3.87 atm, 100 nm 29.7 atm inside; s 72.8 mN/m, 1 atm outside.
        assertThat(1 + Bubble.laplacePa(1e-6, 0.0728) / ATMOSPHERE).isCloseTo(3.87, within(0.01));
        assertThat(1 + Bubble.laplacePa(1e-7, 0.0728) / ATMOSPHERE).isCloseTo(29.7, within(0.1));
        // H. C. Verma, Concepts of Physics 1, ex. 14.11w p. 295: r 1 mm, 10 cm deep, s 0.075: 1130 Pa with g 9.8.
        assertThat(SideWall.pressurePa(1000, 0.1) + Bubble.laplacePa(2e-3, 0.075))
                .isCloseTo(1130, withinPercentage(PRINTED_DIGITS));
    }

    @Test
    void swells_under_vacuum() {
        // Computed: 1013 to 30 mbar multiplies the radius by 3.23 and the Stokes speed by 10.5.
        double swollenM = Bubble.expandedDiameterM(1e-3, 101_300, 3000, 1100, 0, 0);
        assertThat(swollenM / 1e-3).isCloseTo(3.23, within(0.005));
        assertThat(Bubble.stokesRiseMPerS(swollenM, 1100, 0, 20) / Bubble.stokesRiseMPerS(1e-3, 1100, 0, 20))
                .isCloseTo(10.5, within(0.1));
    }

    @Test
    void keeps_its_gas_whatever_the_pressure() {
        Generated.tries(13, 500).forEach(any -> {
            double d = any.logUniform(1e-7, 1e-2);
            double startPa = any.logUniform(100, 5e5);
            double endPa = any.logUniform(100, 5e5);
            double rho = any.uniform(800, 2000);
            double depth = any.pick(0.0, any.logUniform(1e-3, 1));
            double sigma = any.pick(0.0, any.uniform(0.01, 0.08));
            double end = Bubble.expandedDiameterM(d, startPa, endPa, rho, depth, sigma);
            double headPa = SideWall.pressurePa(rho, depth);
            double before = (startPa + headPa + Bubble.laplacePa(d, sigma)) * d * d * d;
            double after = (endPa + headPa + Bubble.laplacePa(end, sigma)) * end * end * end;
            assertThat(after).as("%s", any).isCloseTo(before, withinPercentage(ROUNDING));
            assertThat(Bubble.expandedDiameterM(end, endPa, startPa, rho, depth, sigma))
                    .as("there and back, %s", any)
                    .isCloseTo(d, withinPercentage(ROUNDING));
            assertThat(end > d).isEqualTo(endPa < startPa);
        });
    }

    // Widely quoted from Epstein and Plesset, J. Chem. Phys. 18:1505, 1950 (from memory): r 10 um, s 72.8 mN/m:
    // 1.17 s without and 6.63 s with air-saturated water. The rest is computed with s 72 mN/m, quasi-steady.
    @ParameterizedTest
    @CsvSource({
        "0, 0.0728, 1.166",
        "1, 0.0728, 6.6312",
        "1, 0.072, 6.6956",
        "0.25, 0.072, 1.461",
        "0.5, 0.072, 1.959",
        "0.75, 0.072, 2.996",
        "0.9, 0.072, 4.447"
    })
    void dissolves_in_the_published_time(double saturation, double sigma, double timeS) {
        assertThat(Bubble.dissolutionTimeS(20e-6, 101_300, sigma, 0.02, 2e-9, saturation))
                .isCloseTo(timeS, withinPercentage(0.05));
    }

    @Test
    void dissolves_by_the_closed_form_without_tension() {
        // r²/(2 L D (1 - f)) = 1.25 s for r 10 um, L 0.02, D 2e-9 m2/s, no gas dissolved.
        assertThat(Bubble.dissolutionTimeS(20e-6, 101_300, 0, 0.02, 2e-9, 0))
                .isCloseTo(1.25, withinPercentage(ROUNDING));
        assertThat(Bubble.dissolutionTimeS(20e-6, 101_300, 0, 0.02, 2e-9, 1)).isInfinite();
    }

    @Test
    void lives_longer_when_larger_or_in_more_gas_and_shorter_with_tension() {
        Generated.tries(14, 300).forEach(any -> {
            double d = any.logUniform(1e-6, 1e-2);
            double sigma = any.uniform(0.02, 0.07);
            double f = any.uniform(0, 1);
            double time = Bubble.dissolutionTimeS(d, 1e5, sigma, 0.05, 1e-9, f);
            assertThat(time).as("%s", any).isPositive().isFinite();
            assertThat(Bubble.dissolutionTimeS(1.01 * d, 1e5, sigma, 0.05, 1e-9, f))
                    .as("%s", any)
                    .isGreaterThan(time);
            assertThat(Bubble.dissolutionTimeS(d, 1e5, sigma, 0.05, 1e-9, f + 1e-3))
                    .as("%s", any)
                    .isGreaterThan(time);
            assertThat(Bubble.dissolutionTimeS(d, 1e5, 1.01 * sigma, 0.05, 1e-9, f))
                    .as("%s", any)
                    .isLessThan(time);
            double growsFrom = 1 + Bubble.laplacePa(d, sigma) / 1e5;
            assertThat(Bubble.dissolutionTimeS(d, 1e5, sigma, 0.05, 1e-9, growsFrom * 1.0001))
                    .isInfinite();
        });
    }

    @Test
    void both_ways_to_integrate_meet() {
        // The method changes where (1 - f) R is a hundredth of 2 s/P; the two must give one curve there.
        double lengthM = 2 * 0.03 / 1e5;
        double below = Bubble.dissolutionTimeS(2 * lengthM, 1e5, 0.03, 0.05, 1e-9, 1 - 0.0099999);
        double above = Bubble.dissolutionTimeS(2 * lengthM, 1e5, 0.03, 0.05, 1e-9, 1 - 0.0100001);
        assertThat(above).isCloseTo(below, withinPercentage(1e-4)).isLessThan(below);
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> Bubble.stokesRiseMPerS(x, 1100, 1, 20), NEGATIVE);
        refused(x -> Bubble.stokesRiseMPerS(1e-3, x, 1, 20), NOT_POSITIVE);
        refused(x -> Bubble.stokesRiseMPerS(1e-3, 1100, x, 20), NEGATIVE);
        refused(x -> Bubble.cleanRiseMPerS(1e-3, 1100, 1, x), NOT_POSITIVE);
        refused(x -> Bubble.reynolds(x, 1e-3, 1100, 20), Double.NaN, Double.NEGATIVE_INFINITY);
        refused(x -> Bubble.reynolds(1, x, 1100, 20), NEGATIVE);
        refused(x -> Bubble.reynolds(1, 1e-3, x, 20), NOT_POSITIVE);
        refused(x -> Bubble.reynolds(1, 1e-3, 1100, x), NOT_POSITIVE);
        refused(x -> Bubble.hindrance(x, 4.65), NO_SHARE);
        refused(x -> Bubble.hindrance(0.1, x), NOT_POSITIVE);
        refused(x -> Bubble.laplacePa(x, 0.03), NOT_POSITIVE);
        refused(x -> Bubble.laplacePa(1e-3, x), NEGATIVE);
        refused(x -> Bubble.expandedDiameterM(x, 1e5, 3e3, 1100, 0.1, 0.03), NOT_POSITIVE);
        refused(x -> Bubble.expandedDiameterM(1e-3, x, 3e3, 1100, 0.1, 0.03), NOT_POSITIVE);
        refused(x -> Bubble.expandedDiameterM(1e-3, 1e5, x, 1100, 0.1, 0.03), NOT_POSITIVE);
        refused(x -> Bubble.expandedDiameterM(1e-3, 1e5, 3e3, x, 0.1, 0.03), NOT_POSITIVE);
        refused(x -> Bubble.expandedDiameterM(1e-3, 1e5, 3e3, 1100, x, 0.03), NEGATIVE);
        refused(x -> Bubble.expandedDiameterM(1e-3, 1e5, 3e3, 1100, 0.1, x), NEGATIVE);
        refused(x -> Bubble.dissolutionTimeS(x, 1e5, 0.03, 0.02, 2e-9, 1), NOT_POSITIVE);
        refused(x -> Bubble.dissolutionTimeS(1e-5, x, 0.03, 0.02, 2e-9, 1), NOT_POSITIVE);
        refused(x -> Bubble.dissolutionTimeS(1e-5, 1e5, x, 0.02, 2e-9, 1), NEGATIVE);
        refused(x -> Bubble.dissolutionTimeS(1e-5, 1e5, 0.03, x, 2e-9, 1), NOT_POSITIVE);
        refused(x -> Bubble.dissolutionTimeS(1e-5, 1e5, 0.03, 0.02, x, 1), NOT_POSITIVE);
        refused(x -> Bubble.dissolutionTimeS(1e-5, 1e5, 0.03, 0.02, 2e-9, x), NEGATIVE);
    }
}
