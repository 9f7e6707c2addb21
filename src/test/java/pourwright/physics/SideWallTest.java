package pourwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pourwright.physics.Refusals.NEGATIVE;
import static pourwright.physics.Refusals.NOT_POSITIVE;
import static pourwright.physics.Refusals.refused;

import org.junit.jupiter.api.Test;

class SideWallTest {

    @Test
    void pushes_with_the_weight_of_the_liquid_above() {
        // By hand: 1100 × 9.80665 × 0.05 m = 539.4 Pa, the 540 Pa of a head of 50 mm of resin.
        assertThat(SideWall.pressurePa(1100, 0.05)).isCloseTo(539.37, within(0.01));
        assertThat(SideWall.pressurePa(1100, 0)).isZero();
    }

    @Test
    void refuses_what_cannot_be() {
        refused(x -> SideWall.pressurePa(x, 0.05), NOT_POSITIVE);
        refused(x -> SideWall.pressurePa(1100, x), NEGATIVE);
    }
}
