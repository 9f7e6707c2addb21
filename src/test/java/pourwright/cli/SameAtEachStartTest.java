package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pourwright.console.RealProgram;

/**
 * The same answers give the same bytes, whenever the program starts. Java draws the order of some of its maps anew at each
 * start, so one process cannot show it.
 */
class SameAtEachStartTest {
    private static final int STARTS = 4;

    @Test
    void aPlanAsJsonIsTheSameTextEachTime() throws IOException, InterruptedException {
        Set<String> texts = new LinkedHashSet<>();
        for (int start = 0; start < STARTS; start++) {
            Process process =
                    RealProgram.start(List.of(), Map.of(), "plan", "--answers", "src/main/app/training.json", "--json");
            texts.add(new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            assertThat(process.waitFor()).isBetween(0, 1);
        }
        assertThat(texts).hasSize(1).first().asString().contains("\"vacuum-hold\"");
    }
}
