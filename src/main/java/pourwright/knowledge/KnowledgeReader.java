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
        for (String file : List.of("plan.json", "single-figures.json", "mesh.json")) {
            questions.addAll(object(dir.resolve("questions").resolve(file)).list("questions", Readings::question));
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
                object(dir.resolve("steps.json")).map("steps", Readings::step),
                object(dir.resolve("decisions.json")).map("decisions", Readings::decision));
    }

    /**
     * Reads what only a diagnosis needs, on top of the knowledge already read.
     *
     * @param base the knowledge of the same folder, perhaps with a workshop's laid over it
     * @throws KnowledgeFault when a file is missing, broken or contradicts another
     */
    public static DiagnosticKnowledge forDiagnosis(Path dir, Knowledge base) {
        KnowledgeReader reader = new KnowledgeReader(dir);
        List<Question> observations =
                reader.object(dir.resolve("questions/diagnose.json")).list("questions", Readings::question);
        List<Question> all = new ArrayList<>(base.questions());
        all.addAll(observations);
        Map<String, Cause> causes = new TreeMap<>();
        for (Path file : reader.jsonFiles("causes")) {
            Cause c = Tree.whole(reader.object(file), Readings::cause);
            if (!file.getFileName().toString().equals(c.id() + ".json")) {
                throw new KnowledgeFault(reader.name(file) + ": the id '" + c.id() + "' must be the file's name");
            }
            causes.put(c.id(), c);
        }
        BaseRates rates = Tree.whole(reader.object(dir.resolve("diagnosis/base-rates.json")), Readings::baseRates);
        DiagnosticKnowledge k = new DiagnosticKnowledge(
                base.withQuestionsById(byId(all)), observations, Collections.unmodifiableMap(causes), rates);
        DiagnosisChecks.check(k);
        return k;
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
