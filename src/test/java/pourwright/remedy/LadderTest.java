package pourwright.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LadderTest {
    @Test
    void roundValuesFromTheSmallestChangeToTheLargest() {
        assertThat(Ladder.byRatio(2, 5)).containsExactly(2.2, 2.5, 2.8, 3.0, 3.5, 4.0, 4.5, 5.0);
        assertThat(Ladder.byRatio(2, 1)).containsExactly(1.8, 1.6, 1.5, 1.4, 1.3, 1.2, 1.1, 1.0);
        assertThat(Ladder.byRatio(0.9, 1.2)).containsExactly(1.0, 1.1, 1.2);
        assertThat(Ladder.byRatio(85, 130)).containsExactly(90.0, 100.0, 110.0, 120.0, 130.0);
    }

    @Test
    void nothingWhereThereIsNoWayToGo() {
        assertThat(Ladder.byRatio(3, 3)).isEmpty();
        assertThat(Ladder.byRatio(0, 3)).isEmpty();
        assertThat(Ladder.byRatio(3, 0)).isEmpty();
    }

    @Test
    void writtenWithoutTheDustOfBinaryFractions() {
        for (double v : Ladder.byRatio(0.0011, 900)) {
            assertThat(String.valueOf(v).replaceAll("E-?\\d+$", "").length())
                    .as("%s", v)
                    .isLessThanOrEqualTo(7);
        }
    }

    @Test
    void warmthGoesByWholeDegrees() {
        assertThat(Ladder.byDegree(21, 24)).containsExactly(22.0, 23.0, 24.0);
        assertThat(Ladder.byDegree(21.5, 19)).containsExactly(21.0, 20.0, 19.0);
        assertThat(Ladder.byDegree(21, 21)).isEqualTo(List.of());
    }
}
