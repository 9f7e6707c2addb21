package pourwright.degas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.degas.Jobs.AIR_PA;
import static pourwright.degas.Jobs.ROOM_K;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.physics.FrothCourse;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.PumpDown;
import pourwright.physics.PumpDownCourse;
import pourwright.physics.VacuumLine;
import pourwright.physics.VapourPressure;
import pourwright.physics.Volatile;
import pourwright.testing.Generated;

class DegasTest {

    /** Factor by which the usual case may be late in a slow chamber, well within the 2 the model is good for. */
    private static final double LATE_AT_MOST = 1.4;

    private static final double CUP_M = 0.1;
    private static final double SURFACE_M2 = Math.PI * CUP_M * CUP_M / 4;

    static Charge batch(Mix mix, double depthM, double airFraction, double bubbleM) {
        double massKg = mix.density() * SURFACE_M2 * depthM * (1 - airFraction);
        return Charge.justMixed(mix, massKg, airFraction, bubbleM, 1.8, AIR_PA, ROOM_K);
    }

    static Stage stage(double openAtS, double pumpedS) {
        return new Stage(Vessel.cup(CUP_M, 5e-4), SURFACE_M2, 0.3, ROOM_K, openAtS, pumpedS, 20, 60, 2e-4);
    }

    static DegasResult usual(double viscosityPaS, double emptiedInS, double depthM) {
        return Degas.of(
                batch(Jobs.silicone(viscosityPaS), depthM, 0.07, 2.5e-3),
                Jobs.kit(0.012, emptiedInS, 300),
                stage(0, 900));
    }

    // Common practice: a mixed silicone of 20 Pa s crests between 1 and 3.5 min and has begun to fall by 4 min, in a
    // chamber emptied in 30 s and in one emptied in 3 min. Nothing is fitted to this.
    @ParameterizedTest
    @ValueSource(doubles = {0.06, 0.07, 0.08})
    void in_a_fast_chamber_silicone_crests_when_a_caster_expects_it(double depthM) {
        DegasResult result = usual(20, 30, depthM);
        assertThat(result.firstRiseS()).isLessThan(result.crestS());
        assertThat(result.crestS()).isBetween(60.0, 210.0);
        assertThat(result.fallBegunS()).isBetween(result.crestS(), 240.0);
        assertThat(result.fallenS()).isBetween(result.fallBegunS(), 600.0);
        assertThat(result.crestFactor()).isBetween(3.0, 5.0001);
    }

    // A known miss: in the slow chamber it is late, as FrothCourse is, which leaves out hindrance: at 60, 70 and 80 mm
    // the
    // crest comes at 205, 260 and 285 s, where 210 s is the end of the band, and the fall begins at 251, 294 and 324 s,
    // where 240 s is. The band is not widened: this holds the model to that miss, with a small margin.
    @ParameterizedTest
    @ValueSource(doubles = {0.06, 0.07, 0.08})
    void in_a_slow_chamber_silicone_is_late_by_less_than_the_trust_claimed(double depthM) {
        DegasResult result = usual(20, 180, depthM);
        assertThat(result.crestS()).isBetween(60.0, LATE_AT_MOST * 210);
        assertThat(result.fallBegunS()).isBetween(result.crestS(), LATE_AT_MOST * 240);
    }

    @ParameterizedTest
    @CsvSource({"30", "180"})
    void agrees_with_the_simpler_course_of_froth(double emptiedInS) {
        // FrothCourse has neither head, hindrance nor cure; both are trusted to a factor of 2.
        VacuumKit kit = Jobs.kit(0.012, emptiedInS, 300);
        PumpDownCourse course = PumpDown.course(0.012, AIR_PA, kit.pump(), kit.line(), 0);
        FrothCourse.Course simple = FrothCourse.of(
                new FrothCourse.Case(0.07, 20, 1150, 0.07, 2.5e-3, AIR_PA, 300, 5, 1.25), course::pressurePaAt);
        DegasResult result = usual(20, emptiedInS, 0.07);
        assertThat(result.crestS() / simple.crestS()).isBetween(1 / 1.5, 1.5);
        assertThat(result.fallBegunS() / simple.fallBegunS()).isBetween(1 / 1.5, 1.5);
    }

    @Test
    void without_bubbles_the_pressure_is_the_closed_form() {
        Generated.tries(831, 60).forEach(any -> {
            double freeM3 = any.logUniform(5e-3, 0.1);
            double speed = freeM3 / any.logUniform(5, 60);
            double ultimatePa = any.logUniform(10, 1000);
            double leak = any.uniform(0, 100) * speed;
            VacuumLine line = any.pick(VacuumLine.NONE, new VacuumLine(any.uniform(0.006, 0.012), 1.5));
            VacuumKit kit = new VacuumKit(freeM3, new Pump(speed, ultimatePa), line, leak, AIR_PA, 0);
            Charge clear = new Charge(Jobs.silicone(20), 0.2, Bubbles.NONE, 0, ROOM_K, 0);
            DegasResult result = Degas.of(clear, kit, stage(30, 600));
            PumpDownCourse closed = PumpDown.course(freeM3, AIR_PA, kit.pump(), line, leak);
            for (DegasSample sample : result.course()) {
                if (sample.timeS() > 30 && sample.timeS() <= 630) {
                    double expected = closed.pressurePaAt(sample.timeS() - 30);
                    assertThat(sample.pressurePa()).as("%s", any).isCloseTo(expected, withinPercentage(0.2));
                }
            }
            assertThat(result.crestS()).isInfinite();
            assertThat(result.airLeft()).isZero();
            assertThat(result.largestLeftM()).isZero();
        });
    }

    @Test
    void gas_is_neither_made_nor_lost() {
        Generated.tries(832, 150).forEach(any -> {
            DegasResult result = Degas.of(anyBatch(any), anyKit(any), anyStage(any));
            assertThat(result.books().gap()).as("%s", any).isCloseTo(0, within(1e-9));
            // What the books hold in the bubbles is what the batch takes along.
            assertThat(result.books().bubblesPaM3())
                    .as("%s", any)
                    .isCloseTo(result.after().bubbles().gasPaM3(), withinPercentage(1e-6));
            // The pump can only take what was there, leaked in, broke out or was let in.
            assertThat(result.books().pumpedPaM3()).as("%s", any).isPositive();
        });
    }

    @Test
    void merging_makes_and_loses_no_gas_and_brings_the_crest_no_later() {
        int[] sooner = {0};
        Generated.tries(834, 80).forEach(any -> {
            Charge batch = anyBatch(any);
            VacuumKit kit = anyKit(any);
            Stage stage = anyStage(any);
            DegasResult apart = Degas.of(batch, kit, stage);
            DegasResult merging = Degas.merging(batch, kit, stage);
            assertThat(merging.books().gap()).as("%s", any).isCloseTo(0, within(1e-9));
            assertThat(merging.crestM()).as("%s", any).isLessThanOrEqualTo(apart.crestM() * 1.01);
            assertThat(merging.airLeft()).as("%s", any).isLessThanOrEqualTo(apart.airLeft() + 1e-3);
            sooner[0] += merging.crestS() < apart.crestS() * 0.99 ? 1 : 0;
        });
        assertThat(sooner[0]).as("runs in which it mattered").isGreaterThan(10);
    }

    @Test
    void touching_bubbles_double_in_volume_in_each_life_of_a_film() {
        // 7 × 20 Pa s / (1150 kg/m3 × 9.80665 m/s2 × 1.25 mm) = 9.93 s (Science 279:1704, 1998, from memory).
        Mix thick = Jobs.silicone(20);
        double lifeS = 7 * 20 / (thick.density() * 9.80665 * 1.25e-3);
        Column column = new Column(thick, Bubbles.spread(1e-6, 2.5e-3, 1, AIR_PA, 0), AIR_PA, 1e-3, 0.07);
        column.swell(AIR_PA, 0);
        double gas = column.amount();
        column.merge(lifeS, 20);
        assertThat(Math.pow(column.left().classes().get(0).diameterAtAirM() / 2.5e-3, 3))
                .isCloseTo(2, withinPercentage(1));
        assertThat(column.amount()).isEqualTo(gas);
        column.merge(lifeS, Double.POSITIVE_INFINITY);
        assertThat(Math.pow(column.left().classes().get(0).diameterAtAirM() / 2.5e-3, 3))
                .isCloseTo(2, withinPercentage(1));
    }

    static Charge anyBatch(Generated any) {
        return batch(
                Jobs.silicone(any.logUniform(1, 60)),
                any.uniform(0.03, 0.1),
                any.uniform(0.01, 0.15),
                any.logUniform(5e-4, 4e-3));
    }

    private static VacuumKit anyKit(Generated any) {
        double freeM3 = any.uniform(0.008, 0.05);
        return new VacuumKit(
                freeM3,
                new Pump(freeM3 / any.logUniform(5, 60), any.logUniform(10, 1000)),
                any.pick(VacuumLine.NONE, new VacuumLine(0.008, 1.5)),
                any.uniform(0, 0.2),
                AIR_PA,
                any.pick(0.0, 3000.0));
    }

    private static Stage anyStage(Generated any) {
        return stage(any.uniform(0, 300), any.uniform(60, 900));
    }

    @Test
    void half_the_steps_change_little() {
        Generated.tries(833, 40).forEach(any -> {
            Charge charge = anyBatch(any);
            VacuumKit kit = anyKit(any);
            Stage stage = anyStage(any);
            DegasResult one = Degas.of(charge, kit, stage);
            DegasResult half = Degas.of(charge, kit, stage, false, 0.5);
            // One class of size leaves at once, so the gas left can jump by a class; far below the trust claimed.
            assertThat(one.crestM()).as("%s", any).isCloseTo(half.crestM(), withinPercentage(3));
            assertThat(one.airLeft()).as("%s", any).isCloseTo(half.airLeft(), within(0.002));
            assertThat(one.lowestPa()).as("%s", any).isCloseTo(half.lowestPa(), withinPercentage(1));
        });
    }

    @Test
    void a_larger_pump_froths_sooner_and_higher() {
        int[] compared = {0};
        Generated.tries(834, 100).forEach(any -> {
            Charge charge = anyBatch(any);
            Stage stage = stage(0, 900);
            double freeM3 = any.uniform(0.008, 0.05);
            double speed = freeM3 / any.logUniform(15, 60);
            DegasResult small = Degas.of(charge, kit(freeM3, speed), stage);
            DegasResult large = Degas.of(charge, kit(freeM3, 2 * speed), stage);
            if (small.crestFactor() > 1.5) {
                compared[0]++;
                assertThat(large.firstRiseS()).as("%s", any).isLessThanOrEqualTo(small.firstRiseS());
            }
            // The time of the crest itself may come a little later: a higher froth also stands longer near its top.
            assertThat(large.crestM()).as("%s", any).isGreaterThanOrEqualTo(0.999 * small.crestM());
        });
        assertThat(compared[0]).isGreaterThan(10);
    }

    static VacuumKit kit(double freeM3, double speed) {
        return new VacuumKit(freeM3, new Pump(speed, 300), VacuumLine.NONE, 0, AIR_PA, 300);
    }

    @Test
    void longer_pulls_and_thinner_mixes_leave_less_air() {
        Generated.tries(835, 60).forEach(any -> {
            VacuumKit kit = Jobs.kit(0.012, any.logUniform(20, 200), 300);
            double viscosity = any.logUniform(2, 40);
            double bubbleM = any.logUniform(5e-4, 3e-3);
            double depthM = any.uniform(0.03, 0.1);
            double pulledS = any.uniform(120, 400);
            DegasResult one = Degas.of(batch(Jobs.silicone(viscosity), depthM, 0.07, bubbleM), kit, stage(0, pulledS));
            DegasResult longer =
                    Degas.of(batch(Jobs.silicone(viscosity), depthM, 0.07, bubbleM), kit, stage(0, 2 * pulledS));
            DegasResult thinner =
                    Degas.of(batch(Jobs.silicone(viscosity / 3), depthM, 0.07, bubbleM), kit, stage(0, pulledS));
            assertThat(longer.airLeft()).as("%s", any).isLessThanOrEqualTo(one.airLeft());
            assertThat(longer.largestLeftM()).as("%s", any).isLessThanOrEqualTo(one.largestLeftM() * (1 + 1e-9));
            assertThat(thinner.airLeft()).as("%s", any).isLessThanOrEqualTo(one.airLeft() * 1.02 + 1e-4);
        });
    }

    @Test
    void the_release_puts_the_mix_back_to_its_own_height() {
        DegasResult result = usual(20, 30, 0.07);
        DegasSample end = result.course().get(result.course().size() - 1);
        assertThat(end.pressurePa()).isCloseTo(AIR_PA, within(1e-6));
        // Bubbles that swelled shrink back by Boyle's law: what is left is the share that the result names.
        double liquidM = 0.07 * 0.93;
        assertThat(end.heightM()).isCloseTo(liquidM / (1 - result.airLeft()), withinPercentage(0.05));
        assertThat(end.heightM()).isLessThan(result.crestM() / 3);
    }

    @Test
    void a_low_cup_runs_over() {
        Stage low = new Stage(Vessel.cup(CUP_M, 5e-4), SURFACE_M2, 0.12, ROOM_K, 0, 600, 20, 60, 2e-4);
        Charge charge = batch(Jobs.silicone(20), 0.07, 0.07, 2.5e-3);
        DegasResult over = Degas.of(charge, Jobs.kit(0.012, 30, 300), low);
        assertThat(over.crestM()).isGreaterThan(0.12);
        assertThat(over.overflowS()).isBetween(over.firstRiseS(), over.crestS());
        Stage high = new Stage(Vessel.cup(CUP_M, 5e-4), SURFACE_M2, 0.36, ROOM_K, 0, 600, 20, 60, 2e-4);
        assertThat(Degas.of(charge, Jobs.kit(0.012, 30, 300), high).overflowS()).isInfinite();
    }

    @Test
    void a_volatile_holds_the_pressure_at_its_vapour_pressure() {
        // Styrene boils at 7.2 mbar at 23 °C (Perry's handbook); the pump would reach 1 mbar.
        Mix plain = Jobs.silicone(1);
        Mix styrene = new Mix(
                1100,
                0.5,
                ROOM_K,
                0,
                0.5,
                0.03,
                1.25,
                5,
                1800,
                0.2,
                plain.reaction(),
                Optional.of(new Vapour(Volatile.STYRENE, 1)));
        DegasResult result = Degas.of(batch(styrene, 0.05, 0.03, 1e-3), Jobs.kit(0.02, 20, 100), stage(0, 300));
        assertThat(result.boils()).isTrue();
        assertThat(result.lowestPa()).isCloseTo(720, within(15.0));
        assertThat(result.lowestPa())
                .isCloseTo(VapourPressure.saturationPa(Volatile.STYRENE, ROOM_K), withinPercentage(2));
        assertThat(result.books().vapourPaM3()).isPositive();
        assertThat(result.books().gap()).isCloseTo(0, within(1e-9));
        assertThat(usual(20, 30, 0.07).boils()).isFalse();
    }

    @Test
    void an_operator_who_bleeds_air_stays_above_the_floor() {
        VacuumKit bled = new VacuumKit(0.012, new Pump(2e-3, 50), VacuumLine.NONE, 0, AIR_PA, 5000);
        DegasResult result = Degas.of(batch(Jobs.silicone(20), 0.07, 0.07, 2.5e-3), bled, stage(0, 300));
        assertThat(result.lowestPa()).isCloseTo(5000, within(1e-6));
        assertThat(result.boils()).isFalse();
    }

    @Test
    void a_mix_that_gels_keeps_its_bubbles() {
        // 3 min to gel, pulled for 10: the froth sets with its gas.
        Mix fast = WorkingTime.fitted(Jobs.silicone(20), new Rating(180, 0.1, ROOM_K, Rating.End.GEL));
        DegasResult result = Degas.of(batch(fast, 0.07, 0.07, 1e-3), Jobs.kit(0.012, 30, 300), stage(60, 600));
        assertThat(result.workingTimeUsed()).isGreaterThan(1);
        assertThat(result.viscosityPaS()).isInfinite();
        assertThat(result.gelS()).isCloseTo(180, withinPercentage(10));
        assertThat(result.largestLeftM()).isGreaterThan(2e-4);
        assertThat(result.clearS()).isInfinite();
    }

    @Test
    void a_second_pull_in_the_mould_takes_what_the_pour_folded_in() {
        DegasResult cup = usual(20, 30, 0.07);
        Charge poured = cup.after().poured(0.4, 0.01, 1e-3, 1.8, AIR_PA);
        double airM3 = poured.bubbles().volumeAtAirM3(AIR_PA, 0.021);
        double carried = cup.airLeft() / (1 - cup.airLeft());
        assertThat(airM3 / (0.4 / 1150)).isCloseTo(carried + 0.01 / 0.99, withinPercentage(0.1));
        assertThat(poured.agedS()).isCloseTo(980, within(1e-9));
        Stage mould = new Stage(new Vessel(0.08, 10, 0), 0.02, 0.1, ROOM_K, 30, 300, 20, 60, 2e-4);
        DegasResult again = Degas.of(poured, Jobs.kit(0.03, 30, 300), mould);
        assertThat(again.airLeft()).isLessThan(0.5 * airM3 / (airM3 + 0.4 / 1150));
        assertThat(again.viscosityPaS()).isGreaterThan(cup.viscosityPaS());
        assertThat(again.workingTimeUsed()).isGreaterThan(cup.workingTimeUsed());
        assertThat(again.gelS()).isCloseTo(cup.gelS(), withinPercentage(10));
        assertThat(again.books().gap()).isCloseTo(0, within(1e-9));
    }

    @Test
    void the_froth_loads_the_pump() {
        // Gas that breaks out of the mix has to be pumped too, so the pressure lags behind that of an empty chamber.
        Charge full = batch(Jobs.silicone(20), 0.08, 0.12, 3e-3);
        Charge clear = new Charge(full.mix(), full.massKg(), Bubbles.NONE, 0, ROOM_K, 0);
        VacuumKit kit = Jobs.kit(0.006, 30, 300);
        DegasResult withFroth = Degas.of(full, kit, stage(0, 300));
        DegasResult without = Degas.of(clear, kit, stage(0, 300));
        for (double timeS : new double[] {5, 20, 50, 100, 250}) {
            assertThat(pressureAt(withFroth, timeS)).isGreaterThan(1.003 * pressureAt(without, timeS));
        }
        double more = withFroth.books().pumpedPaM3() - without.books().pumpedPaM3();
        double broken = full.bubbles().gasPaM3() - withFroth.books().bubblesPaM3();
        // Nearly all that broke out went through the pump, less what the operator did not have to let in.
        assertThat(more).isBetween(0.5 * broken, 1.05 * broken);
    }

    static double pressureAt(DegasResult result, double timeS) {
        return result.course().stream()
                .filter(s -> s.timeS() >= timeS)
                .findFirst()
                .orElseThrow()
                .pressurePa();
    }

    @Test
    void refuses_a_chamber_without_room_for_the_froth() {
        Charge charge = batch(Jobs.silicone(20), 0.1, 0.07, 2.5e-3);
        assertThatThrownBy(() -> Degas.of(charge, Jobs.kit(0.003, 30, 300), stage(0, 300)))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("The froth can fill")
                .hasMessageContaining("3.00\u00a0L free");
        assertThatThrownBy(() -> Degas.of(null, Jobs.kit(0.01, 30, 300), stage(0, 300)))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> stage(-1, 10)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Charge.justMixed(Jobs.silicone(20), 1, 1, 1e-3, 1.8, AIR_PA, ROOM_K))
                .isInstanceOf(PhysicsException.class);
    }
}
