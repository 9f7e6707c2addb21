package pourwright.knowledge;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import pourwright.facts.Basis;

/**
 * A workshop's own folder laid over the shipped knowledge: its guidelines and its materials. It is data and cannot do
 * anything; a guideline of safety can be tightened here, never loosened.
 */
public final class Overlay {
    private static final String GUIDELINES = "guidelines.json";
    private static final String MATERIALS = "materials";
    /** One line for each plan that was followed at the bench. */
    public static final String OWN_RUNS = "runs.jsonl";

    private static final long MOST_RUN_BYTES = 1_000_000;

    private final Knowledge shipped;
    private final Path shop;

    private Overlay(Knowledge shipped, Path shop) {
        this.shipped = shipped;
        this.shop = shop;
    }

    /**
     * The shipped knowledge with the workshop's laid over it; the shipped one when the folder holds none of
     * {@code guidelines.json}, {@code materials/} and {@code runs.jsonl}.
     *
     * @throws KnowledgeFault when a file cannot be used
     */
    public static Knowledge of(Knowledge shipped, Path shop, Path schemas) {
        if (!Files.isRegularFile(shop.resolve(GUIDELINES))
                && !Files.isDirectory(shop.resolve(MATERIALS))
                && !Files.isRegularFile(shop.resolve(OWN_RUNS))) {
            return shipped;
        }
        Overlay o = new Overlay(shipped, shop);
        Map<String, Guideline> guidelines = o.guidelines(schemas);
        Map<String, MaterialClass> materials = o.materials();
        Knowledge all = new Knowledge(
                shipped.questions(),
                shipped.questionsById(),
                Collections.unmodifiableMap(materials),
                Collections.unmodifiableMap(guidelines),
                shipped.sources(),
                shipped.cautions(),
                shipped.closing(),
                shipped.terms(),
                shipped.pumps(),
                shipped.processes(),
                shipped.agents(),
                shipped.steps(),
                shipped.decisions(),
                shipped.remedies(),
                shipped.emergencies(),
                o.ownRuns(),
                shipped.leftOut());
        KnowledgeChecks.check(all);
        return all;
    }

    private Map<String, Guideline> guidelines(Path schemas) {
        Map<String, Guideline> all = new TreeMap<>(shipped.guidelines());
        Path file = shop.resolve(GUIDELINES);
        if (Files.isRegularFile(file)) {
            var tree = KnowledgeReader.tree(file, file.toString());
            Schemas.check(tree, schemas.resolve("guidelines.schema.json"), file.toString());
            new Tree(tree, file + " at ").map("guidelines", Readings::guideline).forEach((id, own) -> {
                Guideline old = all.get(id);
                if (old == null) {
                    throw new KnowledgeFault(file + ": there is no guideline '" + id
                            + "' to set. \"pourwright shop check\" says what to do");
                }
                if (old.safety() && (old.tighter().equals("lower") ? own.si() > old.si() : own.si() < old.si())) {
                    throw new KnowledgeFault(file + ": '" + id + "' is a guideline of safety. It may be made "
                            + old.tighter() + " than " + old.value() + " " + old.unit() + ", not looser");
                }
                Guideline kept = new Guideline(
                        own.value(), own.unit(), own.source(), own.note(), old.safety(), old.tighter(), "workshop");
                all.put(id, kept);
            });
        }
        return all;
    }

    /** A line that cannot be read counts for nothing: a kill may have cut it short. */
    private List<OwnRun> ownRuns() {
        Path file = shop.resolve(OWN_RUNS);
        if (!Files.isRegularFile(file)) {
            return List.of();
        }
        try {
            if (Files.size(file) > MOST_RUN_BYTES) {
                throw new KnowledgeFault(file + " is larger than one megabyte. Move it away to begin anew");
            }
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                    .lines()
                    .flatMap(l -> OwnRun.of(l).stream())
                    .toList();
        } catch (IOException e) {
            throw new KnowledgeFault("the file " + file + " cannot be read");
        }
    }

    private Map<String, MaterialClass> materials() {
        Map<String, MaterialClass> all = new TreeMap<>(shipped.materials());
        Path folder = shop.resolve(MATERIALS);
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path f : files.filter(x -> x.toString().endsWith(".json"))
                        .sorted()
                        .toList()) {
                    Tree tree = new Tree(KnowledgeReader.tree(f, f.toString()), f + " at ");
                    MaterialClass own = Tree.whole(tree, this::own);
                    if (all.put(own.id(), own) != null) {
                        throw new KnowledgeFault(f + ": the id '" + own.id() + "' is taken");
                    }
                }
            } catch (IOException e) {
                throw new KnowledgeFault("the folder " + folder + " cannot be read");
            }
        }
        return all;
    }

    /**
     * One file of a workshop's materials, read as a plan reads it.
     *
     * @throws KnowledgeFault when it cannot be used
     */
    static MaterialClass material(Knowledge shipped, Path file, String name) {
        Overlay o = new Overlay(shipped, file.getParent());
        return Tree.whole(new Tree(KnowledgeReader.tree(file, name), name + " at "), o::own);
    }

    /** A workshop's material: a class, refined by what its data sheet says. */
    private MaterialClass own(Tree t) {
        String name = t.text("class");
        MaterialClass base = shipped.materials().get(name);
        if (base == null) {
            throw new KnowledgeFault(t.where() + "/class: there is no class '" + name + "'");
        }
        Map<String, Value> values = new LinkedHashMap<>(base.values());
        t.map("values", Readings::value).forEach((id, v) -> values.put(id, v.with(Basis.DATA_SHEET)));
        List<String> says = t.texts("says");
        return new MaterialClass(
                t.text("id"),
                t.text("name"),
                says,
                base.family(),
                base.vacuum(),
                Set.copyOf(base.traits()),
                base.mix(),
                values,
                base.permission(),
                t.textOr("note", null));
    }
}
