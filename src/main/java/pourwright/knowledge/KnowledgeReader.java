package pourwright.knowledge;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
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
            questions.addAll(object(file).list("questions", Readings::question));
        }
        Map<String, MaterialClass> materials = new TreeMap<>();
        for (Path file : jsonFiles("materials")) {
            MaterialClass m = Tree.whole(object(file), Readings::material);
            if (!file.getFileName().toString().equals(m.id() + ".json")) {
                throw new KnowledgeFault(name(file) + ": the id '" + m.id() + "' must be the file's name");
            }
            materials.put(m.id(), m);
        }
        Map<String, Guideline> guidelines = new TreeMap<>();
        for (Path file : jsonFiles("guidelines")) {
            object(file).map("guidelines", Readings::guideline).forEach((id, g) -> {
                if (guidelines.put(id, g) != null) {
                    throw new KnowledgeFault(name(file) + ": the guideline '" + id + "' stands in two files");
                }
            });
        }
        Tree cautions = object(dir.resolve("cautions.json"));
        Map<String, Agent> agents = new LinkedHashMap<>();
        object(dir.resolve("inhibition.json")).list("agents", Readings::agent).forEach(a -> agents.put(a.id(), a));
        return new Knowledge(
                List.copyOf(questions),
                byId(questions),
                Collections.unmodifiableMap(materials),
                Collections.unmodifiableMap(guidelines),
                object(dir.resolve("sources.json")).map("sources", Readings::source),
                cautions.map("cautions", Readings::caution),
                cautions.text("closing"),
                object(dir.resolve("glossary.json")).map("terms", Readings::term),
                object(dir.resolve("pumps.json")).map("pumps", Readings::pump),
                object(dir.resolve("choices-of-process.json")).map("processes", Readings::process),
                Collections.unmodifiableMap(agents),
                object(dir.resolve("steps.json")).map("steps", Readings::step));
    }

    private static Map<String, Question> byId(List<Question> questions) {
        Map<String, Question> byId = new HashMap<>();
        questions.forEach(q -> byId.put(q.id(), q));
        return Collections.unmodifiableMap(byId);
    }

    private Tree object(Path file) {
        return new Tree(tree(file, name(file)), name(file) + " at ");
    }

    private List<Path> jsonFiles(String folder) {
        try (Stream<Path> files = Files.list(dir.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        } catch (IOException e) {
            throw new KnowledgeFault("the knowledge folder '" + dir.resolve(folder) + "' cannot be read");
        }
    }

    /** Reads one JSON file as a tree, with a plain sentence for each way it can be broken. */
    static JsonNode tree(Path file, String name) {
        try {
            return Json.read(Files.readString(file, StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new KnowledgeFault(name + ", line " + Json.line(e) + ": not valid JSON");
        } catch (IOException e) {
            throw new KnowledgeFault(name + " cannot be read");
        }
    }

    private String name(Path file) {
        return dir.relativize(file).toString().replace('\\', '/');
    }
}
