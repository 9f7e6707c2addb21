package pourwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import pourwright.rulebook.RuleCard;

/** A short name for exactly these bytes: two programs that show the same one give the same advice. */
final class Fingerprint {
    private static final int SHOWN_BYTES = 6;

    private final MessageDigest digest;

    private Fingerprint() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Of the JSON files of a folder and of the folders in it, by their names and contents. */
    static String ofFolder(Path dir) {
        try (Stream<Path> walk = Files.walk(dir)) {
            List<Path> files =
                    walk.filter(f -> f.toString().endsWith(".json")).sorted().toList();
            Fingerprint f = new Fingerprint();
            for (Path file : files) {
                f.add(dir.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
            return f.shown();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Of the texts that the rules were built from. */
    static String ofRules(Collection<RuleCard> cards) {
        TreeSet<String> names = new TreeSet<>();
        cards.forEach(c -> names.add("/pourwright/rules/" + c.folder() + "/" + c.id() + ".drl"));
        Fingerprint f = new Fingerprint();
        for (String name : names) {
            try (InputStream in = Fingerprint.class.getResourceAsStream(name)) {
                if (in == null) {
                    throw new IllegalStateException("the text of the rule " + name + " was not built in");
                }
                f.add(name, in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return f.shown();
    }

    private void add(String name, byte[] content) {
        digest.update(name.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
        digest.update(content);
        digest.update((byte) 0);
    }

    private String shown() {
        return HexFormat.of().formatHex(digest.digest(), 0, SHOWN_BYTES);
    }
}
