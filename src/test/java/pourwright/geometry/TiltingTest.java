package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a tilt frees: a dent cut as the cap of a ball is free as soon as the tilt is steeper than its rim (geometry of the cap). */
class TiltingTest {
    private static final Setup AROUND = Setup.of(Domain.AROUND);

    @ParameterizedTest
    @CsvSource({
        "20, 30, true",
        "25, 30, true",
        "27, 30, true",
        "33, 30, false",
        "45, 30, false",
        "60, 30, false",
        "45, 50, true",
        "20, 15, false"
    })
    void aDentIsFreedByATiltSteeperThanItsRim(double rimDegrees, double tiltDegrees, boolean free) {
        Mesh mesh = Castings.dented(15, rimDegrees);
        Trapped level = Pockets.find(mesh, AROUND);
        assertThat(level.whole()).hasSize(1);
        assertThat(level.trappedM3()).isCloseTo(Castings.capM3(15, rimDegrees), within(0.02 * level.trappedM3()));
        Map<Integer, Optional<Vec3>> freed = Tilting.frees(mesh, AROUND, level, tiltDegrees, p -> true);
        assertThat(freed.get(1).isPresent()).isEqualTo(free);
        freed.get(1).ifPresent(up -> {
            assertThat(up.dot(Vec3.UP)).isCloseTo(Math.cos(Math.toRadians(tiltDegrees)), within(1e-9));
            assertThat(Pockets.find(mesh, AROUND.withUp(up)).trappedM3()).isLessThan(1e-12);
        });
    }

    @Test
    void aSquarePostKeepsAirInACorner() {
        Mesh mesh = Castings.posted();
        Setup setup = new Setup(
                Domain.CAVITY,
                Vec3.UP,
                java.util.List.of(new Vec3(0.04, 0.02, 0.01)),
                java.util.List.of(),
                0,
                Double.NaN,
                0);
        Trapped level = Pockets.find(mesh, setup);
        assertThat(level.whole()).hasSize(2);
        assertThat(level.whole().get(0).volumeM3()).isCloseTo(2e-6, within(1e-12));
        assertThat(level.whole().get(1).volumeM3()).isCloseTo(1e-6, within(1e-12));
        Map<Integer, Optional<Vec3>> freed = Tilting.frees(mesh, setup, level, 30, p -> true);
        assertThat(freed).hasSize(2);
        assertThat(freed.values()).allMatch(Optional::isEmpty);
    }

    @Test
    void airThatDoesNotMatterDoesNotKeepAPocketFromBeingFree() {
        Mesh mesh = Castings.dented(15, 45);
        Trapped level = Pockets.find(mesh, AROUND);
        Map<Integer, Optional<Vec3>> freed = Tilting.frees(mesh, AROUND, level, 30, p -> false);
        assertThat(freed.get(1)).isPresent();
    }
}
