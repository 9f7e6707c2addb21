package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pockets of solids whose trapped air is known in closed form. */
class KnownSolidsTest {
    private static final int SEGMENTS = 128;

    static Stream<KnownSolid> solids() {
        return Stream.concat(KnownSolids.cavities(SEGMENTS).stream(), KnownMasters.masters(SEGMENTS).stream());
    }

    @ParameterizedTest
    @MethodSource("solids")
    void volumesAndSealingHeightsAreThoseOfTheClosedForm(KnownSolid solid) {
        Trapped trapped = Pockets.find(solid.figure().mesh(), solid.setup());

        check(solid, trapped, 0.01);
        assertThat(trapped.columnM()).as("found on the surface itself").isZero();
        assertThat(trapped.noOutlet()).isFalse();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void fileNumbersOf32BitsChangeNothingThatMatters(KnownSolid solid) {
        check(solid, Pockets.find(solid.figure().meshOfStl(), solid.setup()), 0.01);
    }

    private static void check(KnownSolid solid, Trapped trapped, double share) {
        List<Pocket> found = trapped.whole().stream()
                .sorted(java.util.Comparator.comparingDouble((Pocket p) -> -Math.rint(p.volumeM3() * 1e12))
                        .thenComparingDouble(Pocket::saddleHeightM))
                .toList();
        List<double[]> expected = solid.expected();
        assertThat(found).as("pockets of %s", solid).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            double volume = expected.get(i)[0] * 1e-9;
            double seal = expected.get(i)[1] * Figure.MM;
            assertThat(found.get(i).volumeM3()).isCloseTo(volume, Offset.offset(share * volume));
            // A facet lies inside its arc by r (1 - cos(180 degrees / n)), 0.01 mm here.
            assertThat(found.get(i).saddleHeightM()).isCloseTo(seal, Offset.offset(1e-5));
        }
    }

    @Test
    void flatFacesGiveExactVolumes() {
        solids().filter(solid -> solid.name().matches("S(07|08|1[1-7]|19|20|26|27).*"))
                .forEach(solid -> {
                    Trapped trapped = Pockets.find(solid.figure().mesh(), solid.setup());
                    double expected =
                            solid.pockets().stream().mapToDouble(p -> p[0]).sum() * 1e-9;

                    assertThat(trapped.trappedM3())
                            .as(solid.name())
                            .isCloseTo(expected, Offset.offset(1e-9 * expected + 1e-18));
                });
    }

    @Test
    void curvedSolidsConvergeWithTheSquareOfTheirFacets() {
        List<KnownSolid> coarse = KnownSolids.cavities(24);
        List<KnownSolid> fine = KnownSolids.cavities(48);
        for (int i = 0; i < coarse.size(); i++) {
            if (coarse.get(i).name().matches("S(01b|02|03|04|05|06|09|28|29|30|31).*")) {
                double before = error(coarse.get(i));
                double after = error(fine.get(i));

                // Twice the facets leave a quarter of the error.
                assertThat(after / before).as(fine.get(i).name()).isBetween(0.15, 0.35);
            }
        }
    }

    private static double error(KnownSolid solid) {
        double expected = solid.pockets().stream().mapToDouble(p -> p[0]).sum() * 1e-9;
        double found = Pockets.find(solid.figure().mesh(), solid.setup()).trappedM3();
        return Math.abs(found - expected) / expected;
    }
}
