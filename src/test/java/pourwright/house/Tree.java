package pourwright.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of the project as they stand, without what a build or a version store puts beside them. */
final class Tree {
    static final Path ROOT = Path.of("").toAbsolutePath();

    private Tree() {}

    static List<Path> files() {
        try (Stream<Path> walk = Files.walk(ROOT)) {
            return walk.filter(Files::isRegularFile)
                    .map(ROOT::relativize)
                    .filter(f -> !f.startsWith("target") && !f.startsWith(".git"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(ROOT.resolve(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " is no UTF-8 text", e);
        }
    }
}
