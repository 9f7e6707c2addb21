package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is the old one or the new one, never half of one. */
class WholeFileTest {
    @TempDir
    Path dir;

    @Test
    void aFileIsMadeWithItsFolders() throws IOException {
        Path file = dir.resolve("a/b/c.txt");
        WholeFile.write(file, "20 °C ½\n");
        assertThat(file).hasContent("20 °C ½\n");
    }

    @Test
    void aLongerFileIsReplacedWholeAndNothingLiesBeside() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "x".repeat(100_000));
        WholeFile.write(file, "short");
        assertThat(Files.readString(file)).isEqualTo("short");
        try (Stream<Path> all = Files.list(dir)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void whatAKillLeftBesideIsWrittenOver() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "old");
        Files.writeString(dir.resolve("c.txt.new"), "half of somethi".repeat(100));
        WholeFile.write(file, "new");
        assertThat(Files.readString(file)).isEqualTo("new");
    }

    @Test
    void aWriteThatFailsLeavesTheOldFile() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "old");
        Files.createDirectory(dir.resolve("c.txt.new"));
        assertThatThrownBy(() -> WholeFile.write(file, "new")).isInstanceOf(IOException.class);
        assertThat(Files.readString(file)).isEqualTo("old");
    }
}
