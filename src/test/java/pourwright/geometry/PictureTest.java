package pourwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** Drawing and sketch hold what was found, as text too. */
class PictureTest {
    private static final KnownSolid TOWERS = KnownSolids.cavities(16).stream()
            .filter(solid -> solid.name().startsWith("S12"))
            .findFirst()
            .orElseThrow();
    private static final Mesh MESH = TOWERS.figure().mesh();
    private static final Trapped TRAPPED = Pockets.find(MESH, TOWERS.setup());

    @Test
    void theDrawingIsSoundAndTellsAllInWords() throws Exception {
        String svg = Picture.svg(MESH, TOWERS.setup(), TRAPPED);

        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Trapped air: 3 pockets, 4.49 mL together");
        String words = document.getElementsByTagName("desc").item(0).getTextContent();
        assertThat(words)
                .contains("Circle 1 (hatched): pocket of 2.10 mL, sealed at height 8.0 mm, top at 29.0 mm.")
                .contains("Triangle V1: vent at height 38.0 mm.")
                .contains("Square G: gate at height 0.0 mm (assumed: the lowest point).");
        // One body, and each pocket, in each of the two views.
        assertThat(svg.split("fill-rule=\"evenodd\"")).hasSize(1 + 2 * (1 + 3));
        assertThat(svg).doesNotContain("href");
    }

    @Test
    void theSketchShowsEachPocketAtItsHeight() {
        String sketch = Picture.text(MESH, TOWERS.setup(), TRAPPED);

        List<String> lines = sketch.lines().toList();
        assertThat(lines).allMatch(line -> line.length() <= 80);
        assertThat(lines).filteredOn(line -> line.contains("|")).hasSizeBetween(10, 40);
        for (char mark : new char[] {'1', '2', '3'}) {
            assertThat(lines)
                    .filteredOn(line -> line.contains("|") && line.substring(11).indexOf(mark) >= 0)
                    .isNotEmpty()
                    // Rows are about 2 mm high: no mark lies a row below the sealing height of 8 mm.
                    .allMatch(line -> Double.parseDouble(line.substring(0, 9).strip()) > 6);
        }
        assertThat(sketch.lines().filter(line -> line.contains("|")))
                .anyMatch(line -> line.contains("V"))
                .anyMatch(line -> line.contains("G"));
        assertThat(sketch).endsWith("Trapped air: 3 pockets, 4.49 mL together.\n");
    }

    @Test
    void aMouldWithoutOutletOrWithoutPocketIsSaidInTheTitle() {
        Mesh ball = Shapes.ball(10, 24).mesh();
        Setup closed = Setup.of(Domain.CAVITY);
        Setup around = Setup.of(Domain.AROUND);

        assertThat(Picture.svg(ball, closed, Pockets.find(ball, closed))).contains("No outlet: nothing can fill");
        assertThat(Picture.text(ball, around, Pockets.find(ball, around))).endsWith("No trapped air.\n");
    }
}
