package pourwright.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * The build checks the shipped knowledge against its schemas and seals it with a digest of every file. While the seal
 * fits, a start need not check the shape again; one changed byte and it does.
 */
public final class Seal {
    private static final String FILE = "checked.sha256";

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
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            List<Path> files = walk.filter(Files::isRegularFile)
                    .filter(f -> !f.getFileName().toString().equals(FILE))
                    .sorted()
                    .toList();
            for (Path f : files) {
                sha.update(dir.relativize(f).toString().replace('\\', '/').getBytes(StandardCharsets.UTF_8));
                sha.update(Files.readAllBytes(f));
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
