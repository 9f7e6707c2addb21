package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.testing.Generated;

class PumpDownCourseTest {

    private static final double ATM_PA = 101_325;

    /** The promise of the class description: a share of the distance from the floor. */
    private static final double PROMISED_SHARE = 1e-5;

    /** What the differential equation solver may add of its own. */
    private static final double SOLVER_PA = 1e-6;

    private static final double ROUNDING_PERCENT = 1e-9;

    private static final Pump PUMP = new Pump(2e-3, 10);
    private static final VacuumLine HOSE = new VacuumLine(0.006, 1.5);

    @Test
    void decaysByOneEFoldPerTimeConstant() {
        // 10 ft3 at 1 ft3/min: after 10 min the pressure is 1/e = 0.36788 atm (exact decay).
        double ft3M3 = 0.3048 * 0.3048 * 0.3048;
        PumpDownCourse course = PumpDown.course(10 * ft3M3, ATM_PA, new Pump(ft3M3 / 60, 0), VacuumLine.NONE, 0);
        assertThat(course.pressurePaAt(600) / ATM_PA).isCloseTo(0.36788, within(5e-6));
        assertThat(course.pressurePaAt(0)).isEqualTo(ATM_PA);
    }

    @Test
    void isTheReverseOfTheTime() {
        Generated.tries(61, 400).forEach(some -> {
            double volumeM3 = some.logUniform(0.001, 0.2);
            Pump pump = new Pump(some.logUniform(1e-4, 1e-2), some.pick(0.0, some.logUniform(0.1, 200)));
            VacuumLine line =
                    some.pick(VacuumLine.NONE, new VacuumLine(some.logUniform(0.002, 0.03), some.logUniform(0.2, 5)));
            double load = some.pick(0.0, some.logUniform(1e-4, 0.02));
            double floorPa = PumpDown.reachablePressurePa(pump, line, load, ATM_PA);
            if (floorPa > ATM_PA / 2) {
                return;
            }
            double abovePa = some.logUniform(1e-5, 0.9) * (ATM_PA - floorPa);
            double timeS = PumpDown.timeS(volumeM3, ATM_PA, floorPa + abovePa, pump, line, load);
            PumpDownCourse course = PumpDown.course(volumeM3, ATM_PA, pump, line, load);
            assertThat(course.pressurePaAt(timeS))
                    .as("%s", some)
                    .isCloseTo(floorPa + abovePa, within(PROMISED_SHARE * abovePa));
            assertThat(course.floorPa()).isEqualTo(floorPa);
        });
    }

    @Test
    void followsTheDifferentialEquation() {
        // A second way to the same curve: dp/dt = -(T(p) - Q)/V by a Dormand-Prince solver.
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double timeS, double[] pressurePa) {
                return new double[] {-(PumpLine.throughput(pressurePa[0], PUMP, HOSE) - 0.005) / 0.03};
            }
        };
        for (double startPa : new double[] {ATM_PA, 2000, 0}) {
            PumpDownCourse course = PumpDown.course(0.03, startPa, PUMP, HOSE, 0.005);
            for (double timeS : new double[] {1, 10, 60, 200, 900}) {
                double expectedPa = new DormandPrince853Integrator(1e-6, 50, 1e-9, 1e-11)
                        .integrate(equation, new ODEState(0, new double[] {startPa}), timeS)
                        .getPrimaryState()[0];
                assertThat(course.pressurePaAt(timeS))
                        .as("from %s Pa after %s s", startPa, timeS)
                        .isCloseTo(
                                expectedPa,
                                within(PROMISED_SHARE * Math.abs(expectedPa - course.floorPa()) + SOLVER_PA));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void onlyEverFallsAndStaysAboveTheFloor(boolean hose) {
        PumpDownCourse course = PumpDown.course(0.03, ATM_PA, PUMP, hose ? HOSE : VacuumLine.NONE, 0.005);
        double before = ATM_PA;
        for (double timeS = 0.1; timeS < 1e4; timeS *= 1.01) {
            double nowPa = course.pressurePaAt(timeS);
            assertThat(nowPa).isLessThanOrEqualTo(before).isGreaterThanOrEqualTo(course.floorPa() * (1 - 1e-15));
            before = nowPa;
        }
        assertThat(course.pressurePaAt(1e9)).isCloseTo(course.floorPa(), withinPercentage(ROUNDING_PERCENT));
        assertThat(course.pressurePaAt(Double.POSITIVE_INFINITY)).isEqualTo(course.floorPa());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void risesToTheFloorFromBelowButNotAboveTheBarometer(boolean hose) {
        VacuumLine line = hose ? HOSE : VacuumLine.NONE;
        PumpDownCourse small = PumpDown.course(0.03, 5, PUMP, line, 0.05);
        assertThat(small.pressurePaAt(10)).isGreaterThan(5).isLessThan(small.floorPa());
        assertThat(small.pressurePaAt(1e5)).isCloseTo(small.floorPa(), withinPercentage(ROUNDING_PERCENT));
        PumpDownCourse large = PumpDown.course(0.03, ATM_PA, PUMP, line, 1e4, ATM_PA);
        assertThat(large.pressurePaAt(100)).isEqualTo(ATM_PA);
        assertThat(large.floorPa()).isEqualTo(ATM_PA);
        assertThat(PumpDown.course(0.03, ATM_PA, PUMP, line, 1e4).pressurePaAt(100))
                .isGreaterThan(ATM_PA);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void staysWhereItStartsAtTheFloor(boolean hose) {
        VacuumLine line = hose ? HOSE : VacuumLine.NONE;
        double floorPa = PumpDown.reachablePressurePa(PUMP, line, 0.005, ATM_PA);
        PumpDownCourse course = PumpDown.course(0.03, floorPa, PUMP, line, 0.005);
        assertThat(course.pressurePaAt(100)).isCloseTo(floorPa, withinPercentage(ROUNDING_PERCENT));
        assertThat(PumpDown.course(0.03, 0, new Pump(1e-3, 0), line, 0).pressurePaAt(5))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.NEGATIVE_INFINITY})
    void refusesImpossibleInputs(double bad) {
        PumpDownCourse course = PumpDown.course(0.03, ATM_PA, PUMP, HOSE, 0);
        assertThatThrownBy(() -> course.pressurePaAt(bad))
                .isInstanceOf(PhysicsException.class)
                .hasMessageContaining("time");
        assertThatThrownBy(() -> PumpDown.course(bad, ATM_PA, PUMP, HOSE, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.course(0.03, bad, PUMP, HOSE, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.course(0.03, ATM_PA, PUMP, HOSE, bad)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.course(0.03, ATM_PA, PUMP, HOSE, 0, bad))
                .isInstanceOf(PhysicsException.class);
    }

    @Test
    void refusesAStartAboveTheBarometerAndWhatIsMissing() {
        assertThatThrownBy(() -> PumpDown.course(0.03, ATM_PA, PUMP, HOSE, 0, 9e4))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.course(0.03, ATM_PA, null, HOSE, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> PumpDown.course(0.03, ATM_PA, PUMP, null, 0)).isInstanceOf(PhysicsException.class);
    }
}
