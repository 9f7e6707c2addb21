package pourwright.kitfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.kitfit.Kits.AIR_PA;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.testing.Generated;

class RateOfRiseTest {

    private static final int TRIES = 300;
    private static final double M3 = 0.03;

    private static List<Reading> rise(
            double startPa, double slope, double swingPa, double tauS, double toS, int count, double share, int seed) {
        return Kits.read(
                t -> startPa + slope * t + swingPa * -Math.expm1(-t / tauS), Kits.evenly(toS, count), share, 0, seed);
    }

    @Test
    void gives_the_published_leak() {
        // Vacuum-decay example of the US Code of Federal Regulations, 40 CFR 1065.644: 2.0000 L, 25.300 to 50.600 kPa
        // in
        // 70 s is 7.229 mbar L/s (0.00030 mol/s). A leak is straight, so readings between lie on the line.
        List<Reading> readings = rise(25_300, 25_300 / 70.0, 0, 1, 70, 8, 0, 1);
        RateOfRise rise = RateOfRise.of(readings, 2e-3);
        assertThat(rise.verdict()).isEqualTo(RiseVerdict.LEAK);
        assertThat(rise.leakPaM3PerS().value() * 10).isCloseTo(7.229, within(5e-4));
        // 30 L from 2 to 12 mbar in 60 s is 5.0 mbar L/s (computed).
        assertThat(RateOfRise.of(rise(200, 1000 / 60.0, 0, 1, 60, 6, 0, 1), 0.03)
                        .leakPaM3PerS()
                        .value())
                .isCloseTo(0.5, within(1e-9));
    }

    @Test
    void tells_a_leak_and_recovers_it() {
        int[] told = {0};
        int[] covered = {0};
        Generated.tries(601, TRIES).forEach(any -> {
            double slope = any.logUniform(0.5, 20);
            double toS = 8000 / slope;
            RateOfRise rise = RateOfRise.of(rise(1000, slope, 0, 1, toS, 15, 0.005, any.whole(0, 1 << 30)), M3);
            assertThat(rise.verdict()).as("%s", any).isNotIn(RiseVerdict.OUTGASSING, RiseVerdict.NO_RISE_SEEN);
            if (rise.verdict() == RiseVerdict.LEAK) {
                told[0]++;
                assertThat(rise.leakPaM3PerS().value()).as("%s", any).isCloseTo(M3 * slope, withinPercentage(3));
                covered[0] += rise.leakPaM3PerS().covers(M3 * slope) ? 1 : 0;
            }
        });
        // One in twenty is called bent by chance, and one interval in twenty misses.
        assertThat(told[0]).isGreaterThan((int) (0.9 * TRIES));
        assertThat(covered[0]).isGreaterThan((int) (0.9 * told[0]));
    }

    @Test
    void tells_outgassing_with_its_level() {
        int[] told = {0};
        Generated.tries(602, TRIES).forEach(any -> {
            double swingPa = any.logUniform(1000, 20_000);
            double tauS = any.logUniform(60, 1200);
            double startPa = any.uniform(100, 800);
            RateOfRise rise =
                    RateOfRise.of(rise(startPa, 0, swingPa, tauS, 4 * tauS, 16, 0.005, any.whole(0, 1 << 30)), M3);
            assertThat(rise.verdict())
                    .as("%s", any)
                    .isNotIn(RiseVerdict.LEAK, RiseVerdict.STEEPENS, RiseVerdict.CANNOT_TELL);
            assertThat(rise.leakPaM3PerS().low()).as("%s", any).isLessThan(0.1 * M3 * swingPa / tauS);
            if (rise.verdict() == RiseVerdict.OUTGASSING) {
                told[0]++;
                assertThat(rise.levelPa().value()).as("%s", any).isCloseTo(startPa + swingPa, withinPercentage(4));
                assertThat(rise.timeConstantS().value()).as("%s", any).isCloseTo(tauS, withinPercentage(15));
            }
        });
        assertThat(told[0]).isGreaterThan((int) (0.85 * TRIES));
    }

    @Test
    void tells_both_apart() {
        int[] told = {0};
        Generated.tries(603, TRIES).forEach(any -> {
            double swingPa = any.logUniform(1000, 8000);
            double tauS = any.logUniform(60, 600);
            double slope = any.uniform(0.15, 0.5) * swingPa / tauS;
            RateOfRise rise =
                    RateOfRise.of(rise(500, slope, swingPa, tauS, 5 * tauS, 20, 0.003, any.whole(0, 1 << 30)), M3);
            assertThat(rise.verdict()).as("%s", any).isNotIn(RiseVerdict.OUTGASSING, RiseVerdict.STEEPENS);
            if (rise.verdict() == RiseVerdict.BOTH) {
                told[0]++;
                assertThat(rise.leakPaM3PerS().value()).as("%s", any).isCloseTo(M3 * slope, withinPercentage(35));
            }
        });
        assertThat(told[0]).isGreaterThan((int) (0.9 * TRIES));
    }

    @Test
    void a_wet_chamber_rises_to_the_vapour_pressure_of_water() {
        // 23 °C: 2810 Pa, CRC Handbook of Chemistry and Physics 1992-93.
        TestChamber room = new TestChamber(M3, AIR_PA, 0, 296.15);
        List<Reading> wet = rise(300, 0, 2510, 120, 700, 15, 0.005, 4);
        RateOfRise rise = RateOfRise.of(wet, room);
        assertThat(rise.verdict()).isEqualTo(RiseVerdict.OUTGASSING);
        assertThat(rise.waterPa()).isCloseTo(2810.4, within(1.0));
        assertThat(rise.mayBeWater()).isTrue();
        // The same toward a quarter of that is not water that lies there.
        assertThat(RateOfRise.of(rise(100, 0, 600, 120, 700, 15, 0.005, 4), room)
                        .mayBeWater())
                .isFalse();
    }

    @Test
    void says_what_it_cannot_tell_and_when_to_look_again() {
        // Outgassing watched for a fifth of its time constant, with a coarse gauge: a leak would look the same.
        List<Reading> brief = rise(500, 0, 5000, 600, 120, 5, 0.02, 9);
        RateOfRise rise = RateOfRise.of(brief, M3);
        assertThat(rise.verdict()).isEqualTo(RiseVerdict.CANNOT_TELL);
        assertThat(rise.leakPaM3PerS().low()).isZero();
        assertThat(rise.leakPaM3PerS().high()).isGreaterThan(0);
        assertThat(rise.nextReadingS().getAsDouble()).isGreaterThanOrEqualTo(240);
        // The reading it asks for tells: with the whole course up to then, the rise is seen to bend.
        double againS = rise.nextReadingS().getAsDouble();
        RateOfRise again = RateOfRise.of(rise(500, 0, 5000, 600, againS, 20, 0.01, 9), M3);
        assertThat(again.bend().low()).isGreaterThan(0);
    }

    @Test
    void a_straight_rise_says_how_slow_an_outgassing_would_hide_in_it() {
        RateOfRise rise = RateOfRise.of(rise(500, 5, 0, 1, 600, 15, 0.003, 2), M3);
        assertThat(rise.verdict()).isEqualTo(RiseVerdict.LEAK);
        assertThat(rise.hiddenTimeConstantS()).isGreaterThan(600 / 0.3);
        // The same readings with an outgassing four times as fast as that are not called straight.
        double tauS = rise.hiddenTimeConstantS() / 4;
        RateOfRise bent = RateOfRise.of(rise(500, 0, 5 * tauS, tauS, 600, 15, 0.003, 2), M3);
        assertThat(bent.verdict()).isNotEqualTo(RiseVerdict.LEAK);
    }

    @Test
    void a_tight_chamber_gives_only_an_upper_end() {
        RateOfRise rise = RateOfRise.of(rise(1000, 0, 0, 1, 600, 8, 0.005, 3), M3);
        assertThat(rise.verdict()).isEqualTo(RiseVerdict.NO_RISE_SEEN);
        assertThat(rise.leakPaM3PerS().high()).isBetween(0.0, M3 * 20 / 600);
        assertThat(rise.nextReadingS()).isPresent();
    }

    @Test
    void refuses_what_is_no_rise() {
        assertThat(RateOfRise.of(rise(5000, -5, 0, 1, 600, 8, 0, 3), M3).verdict())
                .isEqualTo(RiseVerdict.FALLS);
        assertThat(RateOfRise.of(rise(1000, 1, 0, 1, 600, 3, 0, 3), M3).verdict())
                .isEqualTo(RiseVerdict.TOO_FEW_READINGS);
        List<Reading> steeper = Kits.read(t -> 1000 + 0.02 * t * t, Kits.evenly(600, 10), 0.003, 0, 3);
        assertThat(RateOfRise.of(steeper, M3).verdict()).isEqualTo(RiseVerdict.STEEPENS);
        // Above half the local air a leak is no longer choked; such readings do not count.
        assertThat(RateOfRise.of(rise(60_000, 5, 0, 1, 600, 8, 0, 3), M3).verdict())
                .isEqualTo(RiseVerdict.TOO_FEW_READINGS);
    }

    @Test
    void one_wrong_reading_does_not_bend_a_leak() {
        List<Reading> readings = new ArrayList<>(rise(500, 5, 0, 1, 600, 14, 0.003, 2));
        Reading right = readings.get(9);
        Reading wrong = new Reading(right.timeS(), right.pressurePa() * 1.5);
        readings.set(9, wrong);
        RateOfRise rise = RateOfRise.of(readings, M3);
        assertThat(rise.leftOut()).contains(wrong);
        assertThat(rise.verdict()).isEqualTo(RiseVerdict.LEAK);
        assertThat(rise.leakPaM3PerS().value()).isCloseTo(0.15, withinPercentage(2));
    }
}
