package pourwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;

/** A workshop's folder of a test, and the word {@code shop} in it. */
abstract class Yard {
    @TempDir
    Path dir;

    final Ran shop(String... words) {
        return at("yard", "", words);
    }

    /** The same with lines that are typed. */
    final Ran typing(String typed, String... words) {
        return at("yard", typed, words);
    }

    /** The same in another folder. */
    final Ran at(String folder, String typed, String... words) {
        List<String> args = new ArrayList<>(List.of("shop"));
        args.addAll(List.of(words));
        args.addAll(List.of("--shop", dir.resolve(folder).toString()));
        return Ran.with(typed, Map.of(), args.toArray(String[]::new));
    }

    /** A file of the folder; the folder it lies in is made. */
    final Path file(String name) throws IOException {
        Path f = dir.resolve("yard").resolve(name);
        Files.createDirectories(f.getParent());
        return f;
    }

    /** Lines as a person types them. */
    static String typed(String... lines) {
        return String.join("\n", lines) + "\n";
    }

    /** All that was said, in one line. */
    static String flat(Ran r) {
        return (r.out() + r.err()).replaceAll("\\s+", " ");
    }
}
