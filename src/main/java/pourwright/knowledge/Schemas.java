package pourwright.knowledge;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Checks the shape of knowledge files against the JSON Schemas that lie beside them. */
final class Schemas {
    /** File or folder to its schema. */
    private static final Map<String, String> SCHEMA_OF = Map.ofEntries(
            Map.entry("sources.json", "sources"),
            Map.entry("glossary.json", "glossary"),
            Map.entry("cautions.json", "cautions"),
            Map.entry("inhibition.json", "inhibition"),
            Map.entry("pumps.json", "pumps"),
            Map.entry("choices-of-process.json", "processes"),
            Map.entry("steps.json", "steps"),
            Map.entry("decisions.json", "decisions"),
            Map.entry("remedies.json", "remedies"),
            Map.entry("emergencies.json", "emergencies"),
            Map.entry("materials", "material"),
            Map.entry("guidelines", "guidelines"),
            Map.entry("questions", "questions"),
            Map.entry("causes", "cause"),
            Map.entry("lessons", "lesson"),
            Map.entry("misconceptions.json", "misconceptions"),
            Map.entry("diagnosis", "base-rates"));

    private Schemas() {}

    /** @throws KnowledgeFault for the first file that does not fit, with the place in it */
    static void check(Path dir) {
        try (Stream<Path> walk = Files.walk(dir)) {
            for (Path file : walk.filter(f -> f.toString().endsWith(".json"))
                    .filter(f -> !dir.relativize(f).startsWith("schemas"))
                    .sorted()
                    .toList()) {
                check(dir, dir.relativize(file).toString());
            }
        } catch (IOException e) {
            throw new KnowledgeFault("the knowledge folder '" + dir + "' cannot be read");
        }
    }

    /** Checks one file of a folder, named from there. */
    static void check(Path dir, String name) {
        Path file = dir.resolve(name);
        String schema = SCHEMA_OF.get(dir.relativize(file).getName(0).toString());
        if (schema == null) {
            throw new KnowledgeFault(name + ": no schema says what this file is");
        }
        check(KnowledgeReader.tree(file, name), dir.resolve("schemas").resolve(schema + ".schema.json"), name);
    }

    /** Checks one tree against one schema file. */
    static void check(JsonNode tree, Path schemaFile, String name) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(KnowledgeReader.tree(
                        schemaFile, schemaFile.getFileName().toString()));
        List<Error> errors = schema.validate(tree);
        if (!errors.isEmpty()) {
            Error first = errors.get(0);
            throw new KnowledgeFault(name + " at " + first.getInstanceLocation() + ": " + first.getMessage());
        }
    }
}
