package pourwright.rules;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** The rules as files: one text and one file of cases each. */
final class RuleFiles {
    static final Path ROOT = Path.of("rules");
    static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    static final Knowledge OF_KITS = KnowledgeReader.withObservations(Path.of("knowledge"), KNOWLEDGE);
    static final DiagnosticKnowledge DIAGNOSTIC = KnowledgeReader.forDiagnosis(Path.of("knowledge"), KNOWLEDGE);

    private RuleFiles() {}

    /** One rule's files. */
    record RuleFile(String id, String folder, Path text, Path cases) {
        String read() {
            try {
                return Files.readString(text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        JsonNode readCases() {
            try {
                return Json.read(Files.readString(cases));
            } catch (IOException e) {
                throw new UncheckedIOException(cases.toString(), e);
            }
        }

        boolean evidence() {
            return folder.equals("diagnosis");
        }

        /** True when it judges the test of a kit, which is no plan. */
        boolean ofKits() {
            return folder.equals("kit");
        }

        @Override
        public String toString() {
            return folder + "/" + id;
        }
    }

    static List<RuleFile> all() {
        List<RuleFile> all = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(ROOT)) {
            walk.filter(p -> p.toString().endsWith(".drl")).sorted().forEach(p -> {
                String id = p.getFileName().toString().replaceFirst("\\.drl$", "");
                all.add(new RuleFile(
                        id, p.getParent().getFileName().toString(), p, p.resolveSibling(id + ".cases.json")));
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }
}
