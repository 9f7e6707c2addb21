package pourwright.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(dir)) {
            return all.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatAKillLeftBesideIsInNobodysWay() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "old");
        Files.writeString(dir.resolve("c.txt.0.new"), "half of somethi".repeat(100));
        Files.createDirectory(dir.resolve("c.txt.1.new"));
        WholeFile.write(file, "new");
        assertThat(Files.readString(file)).isEqualTo("new");
        assertThat(names()).containsExactly("c.txt", "c.txt.0.new", "c.txt.1.new");
    }

    @Test
    void aDiskThatIsFullAtAnyByteLeavesTheOldFileAndNothingBeside() throws IOException {
        Path file = dir.resolve("c.txt");
        String text = "twelve bytes";
        for (int room = 0; room < text.length(); room++) {
            WholeFile.write(file, "old");
            FullDisk disk = new FullDisk(room);
            assertThatThrownBy(() -> WholeFile.write(file, text, disk))
                    .as("room for %d bytes", room)
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("space");
            assertThat(Files.readString(file)).isEqualTo("old");
            assertThat(names()).containsExactly("c.txt");
        }
        WholeFile.write(file, text, new FullDisk(text.length()));
        assertThat(Files.readString(file)).isEqualTo(text);
    }

    @Test
    void whatDidNotReachTheDiskDoesNotReplaceTheOldFile() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "old");
        FullDisk disk = new FullDisk(1000);
        disk.forces = false;
        assertThatThrownBy(() -> WholeFile.write(file, "new", disk)).isInstanceOf(IOException.class);
        assertThat(Files.readString(file)).isEqualTo("old");
        assertThat(names()).containsExactly("c.txt");
    }

    @Test
    void aRenameThatFailsLeavesWhatWasThere() throws IOException {
        Path file = dir.resolve("c.txt");
        Files.createDirectories(file.resolve("not-empty"));
        assertThatThrownBy(() -> WholeFile.write(file, "new")).isInstanceOf(IOException.class);
        assertThat(file.resolve("not-empty")).isDirectory();
        assertThat(names()).containsExactly("c.txt");
    }

    @Test
    void aFolderThatCannotBeMadeIsAFaultOfItsOwn() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "old");
        assertThatThrownBy(() -> WholeFile.write(file.resolve("deeper.txt"), "new"))
                .isInstanceOf(IOException.class);
        assertThat(Files.readString(file)).isEqualTo("old");
    }

    /** Two programs at one file: it is always the whole of one of the two texts. */
    @Test
    void twoWritersNeverMix() throws Exception {
        Path file = dir.resolve("c.txt");
        List<String> texts = List.of("a".repeat(20_000), "b".repeat(30_000));
        WholeFile.write(file, texts.get(0));
        ExecutorService two = Executors.newFixedThreadPool(2);
        List<Future<?>> work = texts.stream()
                .<Future<?>>map(text -> two.submit(() -> {
                    for (int n = 0; n < 40; n++) {
                        WholeFile.write(file, text);
                    }
                    return null;
                }))
                .toList();
        while (!work.stream().allMatch(Future::isDone)) {
            assertThat(texts).contains(Files.readString(file));
        }
        for (Future<?> w : work) {
            w.get();
        }
        two.shutdown();
        assertThat(names()).containsExactly("c.txt");
    }

    @Test
    void aFileThatIsTooLargeIsNotRead() throws IOException {
        Path file = dir.resolve("c.txt");
        WholeFile.write(file, "12345");
        assertThat(WholeFile.text(file, 5)).isEqualTo("12345");
        assertThatThrownBy(() -> WholeFile.text(file, 4)).isInstanceOf(IOException.class);
    }
}
