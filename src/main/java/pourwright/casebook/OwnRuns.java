package pourwright.casebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pourwright.knowledge.Json;
import pourwright.knowledge.Overlay;
import pourwright.knowledge.OwnRun;

/** The workshop's own runs on disk, one line each. A line that cannot be read stays as it is and counts for nothing. */
public final class OwnRuns {
    private static final int MOST_BYTES = 1_000_000;

    private OwnRuns() {}

    /**
     * Adds a run; one that began at the same moment is replaced.
     *
     * @throws IOException when the file cannot be read or written; it then stands as it was
     */
    public static void keep(Path shop, OwnRun run) throws IOException {
        Path file = shop.resolve(Overlay.OWN_RUNS);
        List<String> lines = new ArrayList<>();
        if (Files.isRegularFile(file)) {
            WholeFile.text(file, MOST_BYTES).lines().filter(l -> !l.isBlank()).forEach(lines::add);
        }
        String same = "\"began\":" + Json.write(Json.object().textNode(run.began()));
        lines.removeIf(l -> l.contains(same));
        lines.add(run.line());
        WholeFile.write(file, String.join("\n", lines) + "\n");
    }
}
