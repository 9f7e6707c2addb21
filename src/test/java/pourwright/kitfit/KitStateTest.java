package pourwright.kitfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pourwright.kitfit.Kits.AIR_PA;

import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.PumpDown;
import pourwright.physics.PumpDownCourse;
import pourwright.physics.VacuumLine;

class KitStateTest {

    private static final double M3 = 0.03;
    private static final Pump RATED = new Pump(2e-3, 50);

    private static PumpDownFit fall(Pump pump, VacuumLine line, double load, double toS) {
        PumpDownCourse truth = PumpDown.course(M3, AIR_PA, pump, line, load);
        return PumpDownFit.of(Kits.read(truth::pressurePaAt, Kits.evenly(toS, 25), 0.003, 0, 11), M3, AIR_PA);
    }

    private static RateOfRise rise(double leak, double inside, double tauS) {
        return RateOfRise.of(
                Kits.read(
                        t -> 300 + leak / M3 * t + inside / M3 * tauS * -Math.expm1(-t / tauS),
                        Kits.evenly(6 * tauS, 20),
                        0.002,
                        0,
                        12),
                M3);
    }

    @Test
    void a_leak_explains_what_it_costs_at_the_base() {
        // A load of 0.2 mbar L/s on 2 L/s costs 0.10 mbar (computed); ten times that costs ten times as much.
        KitState state = KitState.of(fall(RATED, VacuumLine.NONE, 0.2, 180), rise(0.2, 0, 100), RATED, VacuumLine.NONE);
        assertThat(state.leakPartPa().value()).isCloseTo(100, withinPercentage(3));
        assertThat(state.basePa().value()).isCloseTo(150, withinPercentage(3));
        assertThat(state.pumpPartPa()).isEqualTo(50);
        assertThat(state.unexplainedPa().covers(0)).isTrue();
        assertThat(state.main()).isEqualTo(KitState.Part.LEAK);
        assertThat(state.speedShare().covers(1)).isTrue();
        assertThat(state.hoseShare()).isCloseTo(1, within(1e-12));
    }

    @Test
    void a_sound_kit_is_as_good_as_its_pump() {
        KitState state =
                KitState.of(fall(RATED, VacuumLine.NONE, 0.002, 200), rise(0.002, 0, 600), RATED, VacuumLine.NONE);
        assertThat(state.main()).isEqualTo(KitState.Part.PUMP_LIMIT);
        assertThat(state.mainIsSure()).isTrue();
        assertThat(state.unexplainedPa().covers(0)).isTrue();
    }

    @Test
    void gas_from_inside_is_told_from_a_leak() {
        KitState state =
                KitState.of(fall(RATED, VacuumLine.NONE, 0.5, 180), rise(0.05, 0.45, 100), RATED, VacuumLine.NONE);
        assertThat(state.main()).isEqualTo(KitState.Part.GAS_FROM_INSIDE);
        assertThat(state.gasPartPa().value()).isCloseTo(225, withinPercentage(10));
        assertThat(state.leakPartPa().value()).isCloseTo(25, withinPercentage(25));
    }

    @Test
    void a_tired_pump_is_what_neither_explains() {
        KitState state = KitState.of(
                fall(new Pump(2e-3, 1500), VacuumLine.NONE, 0, 150), rise(0.01, 0, 600), RATED, VacuumLine.NONE);
        assertThat(state.main()).isEqualTo(KitState.Part.UNEXPLAINED);
        assertThat(state.unexplainedPa().value()).isCloseTo(1450, withinPercentage(3));
        assertThat(state.mainIsSure()).isTrue();
    }

    @Test
    void a_slow_pump_is_told_from_a_thin_hose() {
        VacuumLine thin = new VacuumLine(0.006, 1.5);
        // Half the rated speed without a hose: the hose takes nothing, the pump is slow.
        KitState slow = KitState.of(
                fall(new Pump(1e-3, 1000), VacuumLine.NONE, 0, 250), rise(0.01, 0, 600), RATED, VacuumLine.NONE);
        assertThat(slow.hoseShare()).isCloseTo(1, within(1e-12));
        assertThat(slow.speedShare().value()).isCloseTo(0.5, within(0.02));
        // The rated pump through 1.5 m of 6 mm hose, watched from the air to 20 mbar: expected and found agree.
        KitState hose = KitState.of(fall(new Pump(2e-3, 1000), thin, 0, 150), rise(0.01, 0, 600), RATED, thin);
        assertThat(hose.hoseShare()).isLessThan(0.9);
        assertThat(hose.speedShare().value()).isBetween(0.7, 1.4);
        assertThat(hose.lateOverEarly().value()).isLessThan(1);
    }

    @Test
    void needs_a_pump_down_that_could_be_fitted() {
        PumpDownFit none = PumpDownFit.of(List.of(), M3, AIR_PA);
        assertThatThrownBy(() -> KitState.of(none, rise(0.1, 0, 100), RATED, VacuumLine.NONE))
                .isInstanceOf(PhysicsException.class);
    }
}
