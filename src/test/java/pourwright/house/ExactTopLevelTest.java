package pourwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever opens the folder sees seven things, and where everything goes. */
class ExactTopLevelTest {
    private static final Set<String> WANTED =
            Set.of("pom.xml", "README.md", "DEVELOPERS.md", "src", "rules", "knowledge", "transcripts-of-cases");

    @Test
    void theTopLevelHoldsExactlyWhatItShould() throws IOException {
        try (Stream<java.nio.file.Path> entries = Files.list(Tree.ROOT)) {
            Set<String> found = entries.map(e -> e.getFileName().toString())
                    .filter(n -> !n.startsWith(".") && !n.equals("target"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertThat(found).isEqualTo(new TreeSet<>(WANTED));
        }
    }
}
