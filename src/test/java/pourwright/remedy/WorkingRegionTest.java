package pourwright.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Verdict;

class WorkingRegionTest {
    private final Consultation job = FixSearchTest.plan(FixSearchTest.SMALL_CUP);
    private final WorkingRegion region = WorkingRegion.around(job, FixSearchTest.KNOWLEDGE);

    @Test
    void theJobStandsInTheMiddleWithItsOwnVerdict() {
        assertThat(region.massesKg()).hasSize(9).isSorted();
        assertThat(region.roomsK()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(region.massesKg().get(region.column())).isEqualTo(1.2);
        assertThat(region.verdicts().get(region.row()).get(region.column())).isEqualTo(job.verdict());
    }

    @Test
    void everyCellIsThePlanOfThatBatchAndRoom() {
        for (int row : new int[] {0, region.row(), region.roomsK().size() - 1}) {
            for (int column : new int[] {0, 3, 8}) {
                Map<String, String> cell = new LinkedHashMap<>(FixSearchTest.SMALL_CUP);
                cell.put("amount-by", "mass");
                cell.put("batch-mass", region.massesKg().get(column) + " kg");
                cell.put("room-temperature", (region.roomsK().get(row) - 273.15) + " °C");
                assertThat(region.verdicts().get(row).get(column))
                        .isEqualTo(FixSearchTest.plan(cell).verdict());
            }
        }
    }

    /** A small batch fits the cup, a large one does not. */
    @Test
    void bothKindsOfCellAreFound() {
        assertThat(region.count(Verdict.GO)).isPositive();
        assertThat(region.count(Verdict.GO)).isLessThan(81);
    }

    @Test
    void theChartIsReadWithoutColour() {
        List<String> lines = RegionChart.lines(region);
        assertThat(lines).hasSize(region.roomsK().size() + 1).allMatch(l -> l.length() <= 64);
        assertThat(lines.stream().filter(l -> l.contains("["))).hasSize(1);
        String own = RegionChart.letter(job.verdict());
        assertThat(lines.get(region.row())).contains("[" + own + "]");
    }

    @Test
    void theDrawingNeedsNothingElse() {
        String svg = RegionChart.svg(region, "tin silicone & <more>");
        assertThat(svg).startsWith("<svg ").endsWith("</svg>\n").doesNotContain("href", "<image", "<script");
        assertThat(svg)
                .contains("tin silicone &amp; &lt;more&gt;")
                .contains("<title")
                .contains("<desc");
        for (Verdict v : Verdict.values()) {
            long cells = region.count(v);
            assertThat(svg.split("font-weight=\"bold\">" + RegionChart.letter(v) + "</text>", -1))
                    .hasSize((int) cells + 1);
        }
    }

    @Test
    void withoutAnAmountThereIsNoMap() {
        Consultation none = FixSearchTest.plan(Map.of("material", "tin-silicone"));
        assertThatThrownBy(() -> WorkingRegion.around(none, FixSearchTest.KNOWLEDGE))
                .isInstanceOf(BadAnswer.class)
                .hasMessageContaining("batch-mass");
    }
}
