package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The largest ball inside a shape, against shapes where it is known by construction. */
class LumpTest {
    @Test
    void aCubeHoldsABallAsWideAsItself() {
        assertThat(Lump.thickestM(Castings.cube(30))).isCloseTo(0.030, within(0.0003));
    }

    @Test
    void aBallHoldsItself() {
        assertThat(Lump.thickestM(Castings.ball(12))).isCloseTo(0.024, within(0.0003));
    }

    @Test
    void aThinPlateIsAsThickAsThin() {
        assertThat(Lump.thickestM(Shapes.box(0, 0, 0, 100, 60, 4).mesh())).isCloseTo(0.004, within(0.0001));
    }

    @Test
    void aThickPostOnAThinPlateCounts() {
        Mesh mesh = Shapes.blocks(
                        new double[] {0, 20, 50, 100},
                        new double[] {0, 20, 50, 60},
                        new double[] {0, 4, 44},
                        (x, y, z) -> z < 4 || x > 20 && x < 50 && y > 20 && y < 50)
                .mesh();
        // 30 mm square and 44 mm high: the square limits it.
        assertThat(Lump.thickestM(mesh)).isCloseTo(0.030, within(0.0005));
    }

    @Test
    void aRingIsAsThickAsItsTube() {
        assertThat(Lump.thickestM(Shapes.torus(30, 6, 96).mesh())).isCloseTo(0.012, within(0.0003));
    }
}
