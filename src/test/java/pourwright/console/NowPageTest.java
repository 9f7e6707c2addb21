package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.knowledge.Emergency;
import pourwright.knowledge.KnowledgeReader;

/** Five lines that fit a glance. */
class NowPageTest {
    private static final List<Emergency> ALL = KnowledgeReader.emergencies(Path.of("knowledge"));
    private static final int COLUMNS = 80;
    private static final int LINES = 5;

    static Stream<String> everythingSaid() {
        return ALL.stream().flatMap(e -> Stream.concat(Stream.of(e.id(), e.title(), e.inShort()), e.says().stream()));
    }

    @ParameterizedTest
    @MethodSource("everythingSaid")
    void fiveLinesAndTheEmergencyLineAtTheEnd(String typed) {
        List<String> lines = NowPage.lines(ALL, typed, COLUMNS);
        assertThat(lines).hasSizeBetween(4, LINES).allMatch(l -> l.length() <= COLUMNS);
        assertThat(lines.get(0)).matches("[A-Z].*\\..*");
        assertThat(lines.get(1)).startsWith("1. ");
        assertThat(lines.get(lines.size() - 1))
                .startsWith(ALL.get(0).line())
                .matches(".*(SDS section|Local rules).* decides?\\.");
    }

    /** The line counts wherever it wraps. */
    @ParameterizedTest
    @ValueSource(ints = {20, 40, 60, 80, 100, 200})
    void noWidthLosesAWord(int width) {
        for (Emergency e : ALL) {
            List<String> lines = NowPage.lines(ALL, e.id(), width);
            assertThat(lines).allMatch(l -> l.length() <= width);
            String all = String.join(" ", lines).replaceAll("\\s+", " ");
            e.steps().forEach(s -> assertThat(all).contains(s));
            assertThat(all).startsWith(e.title()).endsWith(e.closing());
        }
    }

    @Test
    void whatFitsNothingIsSaidWithTheLineAndAllTheWords() {
        for (String typed : List.of("zzz", "resin everywhere", "q".repeat(500), "\u001b[31mred\nlines")) {
            List<String> lines = NowPage.lines(ALL, typed, COLUMNS);
            assertThat(lines)
                    .hasSizeLessThanOrEqualTo(LINES)
                    .allMatch(l -> l.length() <= COLUMNS && !l.contains("\u001b"));
            String all = String.join(" ", lines).replaceAll("\\s+", " ");
            assertThat(all).contains("fits nothing I know", ALL.get(0).line());
            ALL.forEach(e -> assertThat(all).contains(e.inShort()));
        }
    }

    @Test
    void theListFitsOneScreenAndNamesEverySituation() {
        List<String> lines = NowPage.lines(ALL, "  ", COLUMNS);
        assertThat(lines).hasSizeLessThanOrEqualTo(24).allMatch(l -> l.length() <= COLUMNS);
        assertThat(lines.get(0)).contains(ALL.get(0).line());
        for (Emergency e : ALL) {
            assertThat(lines).anyMatch(l -> l.startsWith("  " + e.inShort() + " ") && l.endsWith(" " + e.title()));
        }
    }

    @Test
    void theOtherCloseOnesStandBehindTheTitle() {
        assertThat(NowPage.lines(ALL, "hissing", COLUMNS).get(0))
                .isEqualTo("Pressure pot hisses or rises. Not that? Type \"now bulging can\".");
    }
}
