package pourwright.kitfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.kitfit.Kits.AIR_PA;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.PumpDown;
import pourwright.physics.PumpDownCourse;
import pourwright.physics.VacuumLine;
import pourwright.testing.Generated;

class PumpDownFitTest {

    private static final double FT3_M3 = 0.3048 * 0.3048 * 0.3048;
    private static final int TRIES = 400;

    /** Of intervals that claim 95 %, so many must hold the truth: what 400 tries can tell from 95 %. */
    private static final double COVERED = 0.92;

    private static PumpDownCourse course(double volumeM3, double speed, double ultimatePa, double load) {
        return PumpDown.course(volumeM3, AIR_PA, new Pump(speed, ultimatePa), VacuumLine.NONE, load);
    }

    private static TestChamber chamber(double volumeM3, double stepPa) {
        return new TestChamber(volumeM3, AIR_PA, stepPa, TestChamber.USUAL_ROOM_K);
    }

    @Test
    void reads_the_pump_back_from_a_published_tank() {
        // Tank of 10 ft3, pump of 1 ft3/min, steady at 0.001333 atm with a leak of 0.0001 lbm/min: de Nevers, Fluid
        // Mechanics for Chemical Engineers, 3rd ed. 2005, ex. 3.7 and 3.8. Readings every 5 min for 100 min.
        double volumeM3 = 10 * FT3_M3;
        double speed = FT3_M3 / 60;
        double leak = 0.001333 * AIR_PA * speed;
        PumpDownCourse truth = course(volumeM3, speed, 0, leak);
        PumpDownFit fit =
                PumpDownFit.of(Kits.read(truth::pressurePaAt, Kits.evenly(6000, 21), 0, 0, 1), volumeM3, AIR_PA);
        assertThat(fit.verdict()).isEqualTo(PumpDownVerdict.ENOUGH);
        assertThat(fit.speedM3PerS().value()).isCloseTo(speed, withinPercentage(1e-4));
        assertThat(fit.basePa().value() / AIR_PA).isCloseTo(0.001333, within(1e-7));
        // The leak of the example: 0.0001 lbm/min at 0.075 lbm/ft3, as pressure times volume per second.
        assertThat(fit.gasLoadPaM3PerS().value())
                .isCloseTo(0.0001 / 0.075 * FT3_M3 / 60 * AIR_PA, withinPercentage(0.1));
        assertThat(fit.leftOut()).isEmpty();
    }

    @Test
    void finds_the_effective_speed_of_a_published_time() {
        // 500 L to 1 mbar in 10 min from 1013 mbar takes 20.8 m3/h: "Fundamentals of vacuum technology", ch. 2 (from
        // memory). Two readings cannot fit three numbers, so the course between them is the ideal one.
        double volumeM3 = 0.5;
        PumpDownCourse truth = course(volumeM3, volumeM3 / 600 * Math.log(1013), 0, 0);
        PumpDownFit fit =
                PumpDownFit.of(Kits.read(truth::pressurePaAt, Kits.evenly(600, 13), 0, 0, 1), volumeM3, AIR_PA);
        assertThat(fit.speedM3PerS().value() * 3600).isCloseTo(20.8, within(0.05));
    }

    @Test
    void recovers_known_kits_from_noisy_readings() {
        int[] speedCovered = {0};
        int[] baseCovered = {0};
        Generated.tries(501, TRIES).forEach(any -> {
            double volumeM3 = any.logUniform(5e-3, 0.1);
            double tauS = any.logUniform(8, 60);
            double basePa = any.logUniform(200, 3000);
            double load = any.uniform(0, 1) * basePa * volumeM3 / tauS;
            PumpDownCourse truth = course(volumeM3, volumeM3 / tauS, basePa - load * tauS / volumeM3, load);
            // Long enough that the fall levels off: the swing is then below a tenth of the base.
            double toS = tauS * (Math.log(AIR_PA / basePa) + 2.5);
            List<Reading> readings =
                    Kits.read(truth::pressurePaAt, Kits.evenly(toS, any.whole(12, 25)), 0.01, 0, any.whole(0, 1 << 30));
            PumpDownFit fit = PumpDownFit.of(readings, volumeM3, AIR_PA);
            assertThat(fit.verdict()).as("%s", any).isEqualTo(PumpDownVerdict.ENOUGH);
            // The noise is 1 % a reading; a dozen readings tell speed to about 2 % and base to about 2 %.
            assertThat(fit.speedM3PerS().value()).as("%s", any).isCloseTo(volumeM3 / tauS, withinPercentage(8));
            assertThat(fit.basePa().value()).as("%s", any).isCloseTo(basePa, withinPercentage(8));
            speedCovered[0] += fit.speedM3PerS().covers(volumeM3 / tauS) ? 1 : 0;
            baseCovered[0] += fit.basePa().covers(basePa) ? 1 : 0;
        });
        assertThat(speedCovered[0]).isBetween((int) (COVERED * TRIES), TRIES);
        assertThat(baseCovered[0]).isBetween((int) (COVERED * TRIES), TRIES);
    }

    @Test
    void recovers_known_kits_from_a_dial_with_steps() {
        Generated.tries(502, TRIES).forEach(any -> {
            double volumeM3 = any.logUniform(5e-3, 0.1);
            double tauS = any.logUniform(8, 60);
            double basePa = any.logUniform(1000, 8000);
            double stepPa = any.pick(100.0, 200.0, 500.0);
            PumpDownCourse truth = course(volumeM3, volumeM3 / tauS, basePa, 0);
            double toS = tauS * (Math.log(AIR_PA / basePa) + 3);
            PumpDownFit fit = PumpDownFit.of(
                    Kits.read(truth::pressurePaAt, Kits.evenly(toS, 20), 0, stepPa, 7), chamber(volumeM3, stepPa));
            assertThat(fit.speedM3PerS().covers(volumeM3 / tauS)).as("%s", any).isTrue();
            assertThat(fit.basePa().value()).as("%s", any).isCloseTo(basePa, within(0.6 * stepPa + 0.02 * basePa));
            assertThat(fit.basePa().covers(basePa)).as("%s", any).isTrue();
        });
    }

    @Test
    void one_wrong_reading_does_not_turn_the_fit() {
        Generated.tries(503, TRIES).forEach(any -> {
            double tauS = any.logUniform(8, 60);
            double basePa = any.logUniform(300, 3000);
            PumpDownCourse truth = course(0.02, 0.02 / tauS, basePa, 0);
            double toS = tauS * (Math.log(AIR_PA / basePa) + 2.5);
            List<Reading> readings = new ArrayList<>(
                    Kits.read(truth::pressurePaAt, Kits.evenly(toS, 14), 0.005, 0, any.whole(0, 1 << 30)));
            int odd = any.whole(2, 13);
            Reading right = readings.get(odd);
            Reading wrong = new Reading(right.timeS(), right.pressurePa() * any.pick(0.5, 1.6, 2.0));
            readings.set(odd, wrong);
            PumpDownFit fit = PumpDownFit.of(readings, 0.02, AIR_PA);
            assertThat(fit.leftOut()).as("%s", any).contains(wrong);
            assertThat(fit.used()).isEqualTo(13);
            assertThat(fit.speedM3PerS().value()).as("%s", any).isCloseTo(0.02 / tauS, withinPercentage(5));
            assertThat(fit.basePa().value()).as("%s", any).isCloseTo(basePa, withinPercentage(6));
        });
    }

    @Test
    void the_order_and_the_clock_do_not_matter() {
        PumpDownCourse truth = course(0.03, 1e-3, 500, 0);
        List<Reading> readings = Kits.read(truth::pressurePaAt, Kits.evenly(240, 15), 0.01, 0, 5);
        List<Reading> later = new ArrayList<>();
        readings.forEach(r -> later.add(0, new Reading(r.timeS() + 1000, r.pressurePa())));
        PumpDownFit one = PumpDownFit.of(readings, 0.03, AIR_PA);
        PumpDownFit two = PumpDownFit.of(later, 0.03, AIR_PA);
        assertThat(two.speedM3PerS().value()).isCloseTo(one.speedM3PerS().value(), withinPercentage(1e-6));
        assertThat(two.basePa().value()).isCloseTo(one.basePa().value(), withinPercentage(1e-6));
    }

    @Test
    void twice_the_volume_is_twice_the_speed_and_load() {
        List<Reading> readings = Kits.read(course(0.03, 1e-3, 500, 0)::pressurePaAt, Kits.evenly(240, 15), 0.01, 0, 5);
        PumpDownFit one = PumpDownFit.of(readings, 0.03, AIR_PA);
        PumpDownFit two = PumpDownFit.of(readings, 0.06, AIR_PA);
        assertThat(two.speedM3PerS().value()).isCloseTo(2 * one.speedM3PerS().value(), withinPercentage(1e-9));
        assertThat(two.gasLoadPaM3PerS().value())
                .isCloseTo(2 * one.gasLoadPaM3PerS().value(), withinPercentage(1e-9));
        assertThat(two.basePa()).isEqualTo(one.basePa());
    }

    @Test
    void says_so_when_the_fall_does_not_level_off() {
        // 101 to 20 kPa of a pump that would reach 10 to 600 Pa: the base is below what these readings can tell.
        int[] above = {0};
        Generated.tries(504, TRIES).forEach(any -> {
            double basePa = any.logUniform(10, 600);
            PumpDownCourse truth = course(0.03, 1e-3, basePa, 0);
            PumpDownFit fit = PumpDownFit.of(
                    Kits.read(truth::pressurePaAt, Kits.evenly(48, 12), 0.01, 0, any.whole(0, 1 << 30)), 0.03, AIR_PA);
            assertThat(fit.verdict())
                    .as("%s", any)
                    .isIn(PumpDownVerdict.RANGE_TOO_SMALL, PumpDownVerdict.SPEED_NOT_TOLD);
            above[0] += fit.basePa().low() > basePa ? 1 : 0;
        });
        // The upper half of a 95 % interval may miss one time in forty.
        assertThat(above[0]).isLessThan(TRIES / 25);
    }

    @Test
    void refuses_too_few_readings() {
        PumpDownCourse truth = course(0.03, 1e-3, 500, 0);
        for (int n = 0; n < 4; n++) {
            List<Reading> few = Kits.read(truth::pressurePaAt, Kits.evenly(200, Math.max(2, n)), 0, 0, 1)
                    .subList(0, n);
            assertThat(PumpDownFit.of(few, 0.03, AIR_PA).verdict()).isEqualTo(PumpDownVerdict.TOO_FEW_READINGS);
        }
        // Ten looks at two moments are two moments.
        List<Reading> twice = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            twice.add(new Reading(i % 2, i % 2 == 0 ? AIR_PA : 50_000));
        }
        assertThat(PumpDownFit.of(twice, 0.03, AIR_PA).verdict()).isEqualTo(PumpDownVerdict.TOO_FEW_READINGS);
    }

    @Test
    void refuses_readings_that_do_not_fall() {
        Generated.tries(505, 100).forEach(any -> {
            double pressurePa = any.logUniform(500, 90_000);
            List<Reading> flat =
                    Kits.read(t -> pressurePa, Kits.evenly(300, any.whole(5, 15)), 0.003, 0, any.whole(0, 1 << 30));
            assertThat(PumpDownFit.of(flat, 0.03, AIR_PA).verdict())
                    .as("%s", any)
                    .isEqualTo(PumpDownVerdict.DO_NOT_FALL);
        });
        List<Reading> rising = Kits.read(t -> 1000 + 10 * t, Kits.evenly(300, 8), 0, 0, 1);
        assertThat(PumpDownFit.of(rising, 0.03, AIR_PA).verdict()).isEqualTo(PumpDownVerdict.DO_NOT_FALL);
        assertThat(PumpDownFit.of(rising, 0.03, AIR_PA).speedM3PerS().known()).isFalse();
    }

    @Test
    void refuses_a_gauge_that_sticks_or_shows_stairs() {
        // The hand stands at 60 kPa for 40 s and then drops to where it should be.
        List<Reading> stuck = new ArrayList<>();
        PumpDownCourse truth = course(0.03, 1e-3, 500, 0);
        for (int i = 0; i <= 20; i++) {
            double timeS = 10 * i;
            boolean sticks = timeS >= 20 && timeS <= 60;
            stuck.add(new Reading(timeS, sticks ? 52_000 : truth.pressurePaAt(timeS)));
        }
        assertThat(PumpDownFit.of(stuck, 0.03, AIR_PA).verdict()).isEqualTo(PumpDownVerdict.GAUGE_STEPS);
        // A dial with marks every 25 kPa.
        List<Reading> stairs = Kits.read(truth::pressurePaAt, Kits.evenly(200, 15), 0, 50_000, 1);
        assertThat(PumpDownFit.of(stairs, chamber(0.03, 50_000)).verdict()).isEqualTo(PumpDownVerdict.GAUGE_STEPS);
    }

    @Test
    void refuses_readings_above_the_local_air() {
        // Sea-level readings, but the workshop is said to lie at 1500 m (845.6 hPa, ISO 2533).
        List<Reading> readings = Kits.read(course(0.03, 1e-3, 500, 0)::pressurePaAt, Kits.evenly(200, 12), 0, 0, 1);
        assertThat(PumpDownFit.of(readings, 0.03, 84_556).verdict()).isEqualTo(PumpDownVerdict.ABOVE_LOCAL_AIR);
    }

    @Test
    void notices_a_hose_that_throttles() {
        // 30 L, 2 L/s through 1.5 m of 4 mm hose: the speed at the chamber falls from 1.83 to 0.12 L/s between 1000 and
        // 10 mbar (own integrals of the Knudsen formula, "Fundamentals of vacuum technology", eq. 1.26).
        PumpDownCourse truth = PumpDown.course(0.03, AIR_PA, new Pump(2e-3, 10), new VacuumLine(0.004, 1.5), 0);
        PumpDownFit fit =
                PumpDownFit.of(Kits.read(truth::pressurePaAt, Kits.evenly(300, 20), 0.005, 0, 3), 0.03, AIR_PA);
        assertThat(fit.verdict()).isEqualTo(PumpDownVerdict.NOT_ONE_SPEED);
        assertThat(fit.lateSpeedM3PerS().high())
                .isLessThan(fit.earlySpeedM3PerS().low());
    }

    @Test
    void refuses_impossible_inputs() {
        assertThatThrownBy(() -> PumpDownFit.of(List.of(), 0, AIR_PA)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDownFit.of(List.of(), 1, Double.NaN)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDownFit.of(null, 1, AIR_PA)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new Reading(0, -1)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new Reading(Double.NaN, 1)).isInstanceOf(PhysicsException.class);
    }
}
