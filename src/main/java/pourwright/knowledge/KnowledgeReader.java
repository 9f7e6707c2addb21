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
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Reads a knowledge folder. Shape is checked by the JSON Schemas, meaning by {@link KnowledgeChecks}; a folder whose
 * seal still fits was checked by the build and is not checked against the schemas again.
 */
public final class KnowledgeReader {
    private static final String EMERGENCIES = "emergencies.json";

    private final Path dir;
    private final boolean sealed;

    private KnowledgeReader(Path dir, boolean sealed) {
        this.dir = dir;
        this.sealed = sealed;
    }

    /**
     * Reads and checks a knowledge folder. Where its seal fits, the build has checked these very bytes: then only the
     * questions are read at once, and the rest when somebody first looks into it.
     *
     * @throws KnowledgeFault when a file is missing, broken or contradicts another
     */
    public static Knowledge read(Path dir) {
        return Seal.fits(dir) ? new KnowledgeReader(dir, true).readAll() : readAndCheckAll(dir);
    }

    /** The same, checking every file against its schema whether it was sealed or not. */
    public static Knowledge readAndCheckAll(Path dir) {
        Schemas.check(dir);
        Knowledge knowledge = new KnowledgeReader(dir, false).readAll();
        KnowledgeChecks.check(knowledge);
        DiagnosticKnowledge seen = forDiagnosis(dir, knowledge);
        LessonChecks.check(new KnowledgeReader(dir, false).lessons(), seen.base(), seen.causes());
        return knowledge;
    }

    private Knowledge readAll() {
        List<Question> questions = new ArrayList<>();
        for (String file : List.of("plan.json", "single-figures.json", "mesh.json", "kit.json")) {
            questions.addAll(object(dir.resolve("questions").resolve(file)).list("questions", Readings::question));
        }
        Tree cautions = object(dir.resolve("cautions.json"));
        return new Knowledge(
                List.copyOf(questions),
                byId(questions),
                when(this::materials),
                when(this::guidelines),
                when(() -> object(dir.resolve("sources.json")).map("sources", Readings::source)),
                cautions.map("cautions", Readings::caution),
                cautions.text("closing"),
                when(() -> object(dir.resolve("glossary.json")).map("terms", Readings::term)),
                when(() -> object(dir.resolve("pumps.json")).map("pumps", Readings::pump)),
                when(() -> object(dir.resolve("choices-of-process.json")).map("processes", Readings::process)),
                when(this::agents),
                when(() -> object(dir.resolve("steps.json")).map("steps", Readings::step)),
                when(() -> object(dir.resolve("decisions.json")).map("decisions", Readings::decision)),
                remedies(),
                sealed ? new LazyList<>(this::emergencies) : emergencies(),
                List.of(),
                Set.of());
    }

    /** At once, or when it is first looked into. */
    private <V> Map<String, V> when(Supplier<Map<String, V>> reading) {
        return sealed ? new Lazily<>(reading) : reading.get();
    }

    private List<Remedy> remedies() {
        Supplier<List<Remedy>> reading =
                () -> object(dir.resolve("remedies.json")).list("remedies", Readings::remedy);
        return sealed ? new LazyList<>(reading) : reading.get();
    }

    private List<Emergency> emergencies() {
        return Tree.whole(object(dir.resolve(EMERGENCIES)), t -> {
            String line = t.text("line");
            return t.list("emergencies", e -> Readings.emergency(e, line));
        });
    }

    /**
     * The emergencies alone. Help must not hang on another file: where the seal does not fit, only this one is
     * checked, and a source that is missing is left to {@link #readAndCheckAll}.
     *
     * @throws KnowledgeFault when the file is missing or broken
     */
    public static List<Emergency> emergencies(Path dir) {
        KnowledgeReader reader = new KnowledgeReader(dir, true);
        if (Seal.fits(dir)) {
            return reader.emergencies();
        }
        Schemas.check(dir, EMERGENCIES);
        List<Emergency> all = reader.emergencies();
        new EmergencyChecks(all).check();
        return all;
    }

    private Map<String, MaterialClass> materials() {
        Map<String, MaterialClass> materials = new TreeMap<>();
        for (Path file : jsonFiles("materials")) {
            MaterialClass m = Tree.whole(object(file), Readings::material);
            if (!file.getFileName().toString().equals(m.id() + ".json")) {
                throw new KnowledgeFault(name(file) + ": the id '" + m.id() + "' must be the file's name");
            }
            materials.put(m.id(), m);
        }
        return Collections.unmodifiableMap(materials);
    }

    private Map<String, Guideline> guidelines() {
        Map<String, Guideline> guidelines = new TreeMap<>();
        for (Path file : jsonFiles("guidelines")) {
            object(file).map("guidelines", Readings::guideline).forEach((id, g) -> {
                if (guidelines.put(id, g) != null) {
                    throw new KnowledgeFault(name(file) + ": the guideline '" + id + "' stands in two files");
                }
            });
        }
        return Collections.unmodifiableMap(guidelines);
    }

    private Map<String, Agent> agents() {
        Map<String, Agent> agents = new LinkedHashMap<>();
        object(dir.resolve("inhibition.json")).list("agents", Readings::agent).forEach(a -> agents.put(a.id(), a));
        return Collections.unmodifiableMap(agents);
    }

    private Map<String, Cause> causes() {
        Map<String, Cause> causes = new TreeMap<>();
        for (Path file : jsonFiles("causes")) {
            Cause c = Tree.whole(object(file), Readings::cause);
            if (!file.getFileName().toString().equals(c.id() + ".json")) {
                throw new KnowledgeFault(name(file) + ": the id '" + c.id() + "' must be the file's name");
            }
            causes.put(c.id(), c);
        }
        return Collections.unmodifiableMap(causes);
    }

    /**
     * Reads what only a diagnosis needs, on top of the knowledge already read.
     *
     * @param base the knowledge of the same folder, perhaps with a workshop's laid over it
     * @throws KnowledgeFault when a file is missing, broken or contradicts another
     */
    public static DiagnosticKnowledge forDiagnosis(Path dir, Knowledge base) {
        // The same folder: where its seal fitted, the build has checked these files too.
        KnowledgeReader reader = new KnowledgeReader(dir, base.isLazy());
        List<Question> observations =
                reader.object(dir.resolve("questions/diagnose.json")).list("questions", Readings::question);
        List<Question> all = new ArrayList<>(base.questions());
        all.addAll(observations);
        BaseRates rates = Tree.whole(reader.object(dir.resolve("diagnosis/base-rates.json")), Readings::baseRates);
        DiagnosticKnowledge k = new DiagnosticKnowledge(
                base.withQuestionsById(byId(all)), observations, reader.when(reader::causes), rates);
        if (!reader.sealed) {
            DiagnosisChecks.check(k);
        }
        return k;
    }

    /**
     * Adds the questions about what is seen, so that a test of a kit asks them in the same words as a diagnosis.
     *
     * @param base the knowledge of the same folder
     */
    public static Knowledge withObservations(Path dir, Knowledge base) {
        List<Question> all = new ArrayList<>(base.questions());
        all.addAll(new KnowledgeReader(dir, base.isLazy())
                .object(dir.resolve("questions/diagnose.json"))
                .list("questions", Readings::question));
        return base.withQuestionsById(byId(all));
    }

    /**
     * The lessons of the course, which only who learns asks for. Their meaning is checked by {@link #readAndCheckAll}.
     *
     * @throws KnowledgeFault when a file is missing or broken
     */
    public static Lessons lessons(Path dir) {
        KnowledgeReader reader = new KnowledgeReader(dir, true);
        if (!Seal.fits(dir)) {
            Schemas.check(dir);
        }
        return reader.lessons();
    }

    private Lessons lessons() {
        List<Lesson> lessons = new ArrayList<>();
        for (Path file : jsonFiles("lessons")) {
            Lesson l = Tree.whole(object(file), Readings::lesson);
            if (!file.getFileName().toString().endsWith("-" + l.id() + ".json")) {
                throw new KnowledgeFault(name(file) + ": the id '" + l.id() + "' must end the file's name");
            }
            lessons.add(l);
        }
        Map<String, Lesson.Misconception> beliefs = new LinkedHashMap<>();
        Tree all = object(dir.resolve("misconceptions.json"));
        all.object("misconceptions")
                .names()
                .forEach(id -> beliefs.put(
                        id, Tree.whole(all.object("misconceptions").object(id), t -> Readings.misconception(id, t))));
        return new Lessons(lessons, Collections.unmodifiableMap(beliefs));
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
