package pourwright.knowledge;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Reads a knowledge folder. Shape is checked by the JSON Schemas, meaning by {@link KnowledgeChecks}; a folder whose
 * seal still fits was checked by the build and is not checked against the schemas again.
 */
public final class KnowledgeReader {
    private final Path dir;

    private KnowledgeReader(Path dir) {
        this.dir = dir;
    }

    /**
     * Reads and checks a knowledge folder.
     *
     * @throws KnowledgeFault when a file is missing, broken or contradicts another
     */
    public static Knowledge read(Path dir) {
        if (!Seal.fits(dir)) {
            Schemas.check(dir);
        }
        Knowledge knowledge = new KnowledgeReader(dir).readAll();
        KnowledgeChecks.check(knowledge);
        return knowledge;
    }

    /** The same, checking every file against its schema whether it was sealed or not. */
    public static Knowledge readAndCheckAll(Path dir) {
        Schemas.check(dir);
        Knowledge knowledge = new KnowledgeReader(dir).readAll();
        KnowledgeChecks.check(knowledge);
        return knowledge;
    }

    private Knowledge readAll() {
        List<Question> questions = new ArrayList<>();
        for (Path file : jsonFiles("questions")) {
            for (JsonNode q : tree(file).get("questions")) {
                questions.add(bind(q, Question.class, file));
            }
        }
        Map<String, MaterialClass> materials = new TreeMap<>();
        for (Path file : jsonFiles("materials")) {
            MaterialClass m = bind(tree(file), MaterialClass.class, file);
            if (!file.getFileName().toString().equals(m.id() + ".json")) {
                throw new KnowledgeFault(name(file) + ": the id '" + m.id() + "' must be the file's name");
            }
            materials.put(m.id(), m);
        }
        Map<String, Guideline> guidelines = new TreeMap<>();
        for (Path file : jsonFiles("guidelines")) {
            Map<String, Guideline> some = map(tree(file).get("guidelines"), Guideline.class, file);
            some.forEach((id, g) -> {
                if (guidelines.put(id, g) != null) {
                    throw new KnowledgeFault(name(file) + ": the guideline '" + id + "' stands in two files");
                }
            });
        }
        Path cautions = dir.resolve("cautions.json");
        return new Knowledge(
                List.copyOf(questions),
                Collections.unmodifiableMap(materials),
                Collections.unmodifiableMap(guidelines),
                part("sources.json", "sources", Source.class),
                part("cautions.json", "cautions", Caution.class),
                tree(cautions).get("closing").asText(),
                part("glossary.json", "terms", Term.class),
                part("pumps.json", "pumps", PumpKind.class),
                part("choices-of-process.json", "processes", Process.class),
                agents(),
                part("steps.json", "steps", StepWords.class));
    }

    private Map<String, Agent> agents() {
        Path file = dir.resolve("inhibition.json");
        Map<String, Agent> agents = new LinkedHashMap<>();
        for (JsonNode a : tree(file).get("agents")) {
            Agent agent = bind(a, Agent.class, file);
            agents.put(agent.id(), agent);
        }
        return Collections.unmodifiableMap(agents);
    }

    private <T> Map<String, T> part(String file, String field, Class<T> type) {
        Path path = dir.resolve(file);
        return map(tree(path).get(field), type, path);
    }

    private <T> Map<String, T> map(JsonNode node, Class<T> type, Path file) {
        if (node == null) {
            throw new KnowledgeFault(name(file) + ": its main part is missing");
        }
        Map<String, T> all = new LinkedHashMap<>();
        node.properties().forEach(e -> all.put(e.getKey(), bind(e.getValue(), type, file)));
        return Collections.unmodifiableMap(all);
    }

    private List<Path> jsonFiles(String folder) {
        try (Stream<Path> files = Files.list(dir.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        } catch (IOException e) {
            throw new KnowledgeFault("the knowledge folder '" + dir.resolve(folder) + "' cannot be read");
        }
    }

    private JsonNode tree(Path file) {
        return tree(file, name(file));
    }

    /** Reads one JSON file as a tree, with a plain sentence for each way it can be broken. */
    static JsonNode tree(Path file, String name) {
        try {
            return Json.mapper().readTree(Files.readString(file, StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new KnowledgeFault(name + ", line " + e.getLocation().getLineNr() + ": not valid JSON");
        } catch (IOException e) {
            throw new KnowledgeFault(name + " cannot be read");
        }
    }

    private <T> T bind(JsonNode node, Class<T> type, Path file) {
        return bind(node, type, name(file));
    }

    /** Turns a tree into a record; the fault names the place inside the file. */
    static <T> T bind(JsonNode node, Class<T> type, String name) {
        try {
            return Json.mapper().treeToValue(node, type);
        } catch (JsonMappingException e) {
            StringBuilder at = new StringBuilder();
            e.getPath().forEach(r -> at.append('/').append(r.getFieldName() == null ? r.getIndex() : r.getFieldName()));
            String cause = e.getCause() == null ? e.getOriginalMessage() : e.getCause().getMessage();
            throw new KnowledgeFault(name + (at.isEmpty() ? "" : " at " + at) + ": " + cause);
        } catch (JsonProcessingException e) {
            throw new KnowledgeFault(name + ": " + e.getOriginalMessage());
        }
    }

    private String name(Path file) {
        return dir.relativize(file).toString().replace('\\', '/');
    }
}
