package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code --version} says is enough to tell two programs apart that would advise differently. */
class VersionsTest {
    private static final Pattern SHOWN =
            Pattern.compile("pourwright .+\nrule book ([0-9a-f]{12}): (\\d+) rules\nknowledge ([0-9a-f]{12}): .+\n");

    @TempDir
    Path dir;

    private static Matcher version(String... more) {
        Ran ran = Ran.of(Stream.concat(Stream.of("--version"), Stream.of(more)).toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isZero();
        Matcher m = SHOWN.matcher(ran.out());
        assertThat(m.matches()).as(ran.out()).isTrue();
        return m;
    }

    @Test
    void rulesAreCountedAndNamedByTheirTexts() throws IOException {
        Matcher shown = version();
        try (Stream<Path> rules = Files.walk(Path.of("rules"))) {
            long files = rules.filter(f -> f.toString().endsWith(".drl")).count();
            assertThat(Integer.parseInt(shown.group(2))).isEqualTo((int) files);
        }
        assertThat(version().group(1)).isEqualTo(shown.group(1));
    }

    @Test
    void oneChangedNumberInTheKnowledgeIsAnotherVersion() throws IOException {
        Path copy = dir.resolve("knowledge");
        List<Path> all;
        try (Stream<Path> walk = Files.walk(Path.of("knowledge"))) {
            all = walk.toList();
        }
        for (Path from : all) {
            Files.copy(from, copy.resolve(Path.of("knowledge").relativize(from).toString()));
        }
        String here = version().group(3);
        assertThat(version("--knowledge", copy.toString()).group(3)).isEqualTo(here);
        Path changed = copy.resolve("guidelines/degas.json");
        String text = Files.readString(changed);
        Files.writeString(changed, text.replaceFirst("\"value\": (\\d)", "\"value\": 1$1"));
        assertThat(version("--knowledge", copy.toString()).group(3)).isNotEqualTo(here);
    }
}
