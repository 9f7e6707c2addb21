package pourwright.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * The build checks the shipped knowledge against its schemas and seals it with a checksum over every file. While the
 * seal fits, a start need not check the shape again; one changed byte and it does. It guards against slips, not malice.
 */
public final class Seal {
    private static final String FILE = "checked.sum";

    private Seal() {}

    /** Writes the seal of a folder that was checked. */
    public static void write(Path dir) throws IOException {
        Files.writeString(dir.resolve(FILE), digest(dir) + "\n", StandardCharsets.UTF_8);
    }

    /** True when the folder is byte for byte the one that was sealed. */
    static boolean fits(Path dir) {
        Path seal = dir.resolve(FILE);
        try {
            return Files.isRegularFile(seal)
                    && Files.readString(seal, StandardCharsets.UTF_8).strip().equals(digest(dir));
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private static String digest(Path dir) throws IOException {
        try (Stream<Path> walk = Files.walk(dir)) {
            CRC32 sum = new CRC32();
            List<Path> files = walk.filter(Files::isRegularFile)
                    .filter(f -> !f.getFileName().toString().equals(FILE))
                    .sorted()
                    .toList();
            long bytes = 0;
            for (Path f : files) {
                byte[] content = Files.readAllBytes(f);
                sum.update(dir.relativize(f).toString().replace('\\', '/').getBytes(StandardCharsets.UTF_8));
                sum.update(content);
                bytes += content.length;
            }
            return files.size() + " files, " + bytes + " bytes, sum " + Long.toHexString(sum.getValue());
        }
    }
}
