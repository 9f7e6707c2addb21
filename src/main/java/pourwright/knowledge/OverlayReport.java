package pourwright.knowledge;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/**
 * Everything a workshop's folder changes in the knowledge, and everything in it that cannot stand. Unlike {@link Overlay},
 * which stops at the first fault, it goes on and lists all.
 */
public final class OverlayReport {
    private static final String FAR = "own-value-far";

    /** Ends of names that say which of two guidelines is the lower. */
    private static final String[][] IN_ORDER = {
        {"-low", "-high"},
        {"-least", "-most"},
        {"-lowest", "-highest"},
        {"-coolest", "-hottest"},
        {"-best", "-worst"},
        {"-small", "-large"},
        {"-easy", "-warn"},
        {"-warn", "-limit"},
        {"-warn", "-refuse"},
        {"-good", "-weak"},
        {"-slight", "-moderate"},
        {"-moderate", "-strong"},
        {"-strong", "-decisive"}
    };

    private final Knowledge shipped;
    private final Path shop;
    private final Path schemas;
    private final List<Entry> entries = new ArrayList<>();

    /** What an entry is. */
    public enum Kind {
        /** Something of the workshop's stands in place of what was shipped, or beside it. */
        OVERRIDE,
        /** It stands, but it is far from what is usual. */
        FAR_OFF,
        /** It cannot stand. */
        CONFLICT
    }

    /**
     * One thing found.
     *
     * @param kind what it is
     * @param where the file, from the workshop's folder
     * @param say a sentence
     * @param guideline the guideline it is about, or empty
     */
    public record Entry(Kind kind, String where, String say, String guideline) {}

    private OverlayReport(Knowledge shipped, Path shop, Path schemas) {
        this.shipped = shipped;
        this.shop = shop;
        this.schemas = schemas;
    }

    /**
     * All that a workshop's folder changes, and all its faults.
     *
     * @param shipped the knowledge without any workshop's
     */
    public static List<Entry> of(Knowledge shipped, Path shop, Path schemas) {
        OverlayReport r = new OverlayReport(shipped, shop, schemas);
        r.guidelines();
        r.materials();
        r.runs();
        r.stock();
        if (r.entries.stream().noneMatch(e -> e.kind() == Kind.CONFLICT)) {
            try {
                Overlay.of(shipped, shop, schemas);
            } catch (KnowledgeFault e) {
                r.conflict(
                        "", e.getMessage().replace(shop + shop.getFileSystem().getSeparator(), "") + ".");
            }
        }
        return List.copyOf(r.entries);
    }

    private void conflict(String where, String say) {
        entries.add(new Entry(Kind.CONFLICT, where, say, ""));
    }

    private void guidelines() {
        Path file = shop.resolve("guidelines.json");
        if (!Files.isRegularFile(file)) {
            return;
        }
        JsonNode tree;
        try {
            tree = KnowledgeReader.tree(file, "guidelines.json");
            Schemas.check(tree, schemas.resolve("guidelines.schema.json"), "guidelines.json");
        } catch (KnowledgeFault e) {
            conflict("guidelines.json", e.getMessage());
            return;
        }
        Map<String, Guideline> own = new Tree(tree, "guidelines.json at ").map("guidelines", Readings::guideline);
        own.forEach(this::guideline);
        crossed(own);
    }

    /** Guidelines that stand in an order as shipped, and no longer do with the workshop's own. */
    private void crossed(Map<String, Guideline> own) {
        Map<String, Guideline> all = new TreeMap<>(shipped.guidelines());
        own.forEach((id, g) -> all.computeIfPresent(id, (i, old) -> sameKind(g.unit(), old.unit()) ? g : old));
        for (String[] ends : IN_ORDER) {
            for (String lower : all.keySet()) {
                if (!lower.endsWith(ends[0])) {
                    continue;
                }
                String upper = lower.substring(0, lower.length() - ends[0].length()) + ends[1];
                Guideline a = shipped.guidelines().get(lower);
                Guideline b = shipped.guidelines().get(upper);
                boolean ordered = b != null
                        && Knowledge.dimensionOf(a.unit()) == Knowledge.dimensionOf(b.unit())
                        && a.si() < b.si();
                if (ordered && all.get(lower).si() > all.get(upper).si()) {
                    conflict(
                            "guidelines.json",
                            "'" + lower + "' is " + shown(all.get(lower)) + " and so above '" + upper + "', which is "
                                    + shown(all.get(upper)) + ". They contradict each other.");
                }
            }
        }
    }

    private void guideline(String id, Guideline own) {
        Guideline old = shipped.guidelines().get(id);
        String where = "guidelines.json";
        if (old == null) {
            conflict(
                    where,
                    "There is no guideline '" + id + "' (any more). \"shop guideline " + id
                            + " --drop\" takes it out.");
            return;
        }
        if (!sameKind(own.unit(), old.unit())) {
            conflict(where, "'" + id + "' is in " + own.unit() + ", and the shipped one is in " + old.unit() + ".");
            return;
        }
        if (old.safety() && (old.tighter().equals("lower") ? own.si() > old.si() : own.si() < old.si())) {
            conflict(
                    where,
                    "'" + id + "' guards safety: it may be made " + old.tighter() + " than " + shown(old)
                            + ", not looser, and yours is " + shown(own) + ".");
            return;
        }
        entries.add(new Entry(
                Kind.OVERRIDE,
                where,
                "'" + id + "' is " + shown(own) + " instead of " + shown(old) + ". " + old.note(),
                id));
        double far = shipped.guidelineSi(FAR);
        if (old.si() != 0 && (own.si() / old.si() > far || own.si() / old.si() < 1 / far)) {
            entries.add(new Entry(
                    Kind.FAR_OFF,
                    where,
                    "'" + id + "' is far from what is usual: " + shown(old) + ". Is the unit right?",
                    id));
        }
    }

    private static boolean sameKind(String a, String b) {
        try {
            return UnitBook.knows(a, Knowledge.dimensionOf(b));
        } catch (IllegalStateException e) {
            return false;
        }
    }

    private static String shown(Guideline g) {
        return Show.quantity(g.si(), g.unit(), Knowledge.dimensionOf(g.unit()));
    }

    private void materials() {
        Path folder = shop.resolve("materials");
        if (!Files.isDirectory(folder)) {
            return;
        }
        Map<String, String> words = new HashMap<>();
        shipped.materials().values().forEach(m -> m.says().forEach(w -> words.put(w.toLowerCase(Locale.ROOT), m.id())));
        try (Stream<Path> files = Files.list(folder)) {
            for (Path f :
                    files.filter(x -> x.toString().endsWith(".json")).sorted().toList()) {
                material(f, words);
            }
        } catch (IOException e) {
            conflict("materials", "The folder cannot be read.");
        }
    }

    private void material(Path file, Map<String, String> words) {
        String where = "materials/" + file.getFileName();
        JsonNode tree;
        try {
            tree = KnowledgeReader.tree(file, where);
        } catch (KnowledgeFault e) {
            conflict(where, e.getMessage());
            return;
        }
        String id = tree.path("id").asText();
        MaterialClass base = shipped.materials().get(tree.path("class").asText());
        if (base == null) {
            conflict(where, "There is no class '" + tree.path("class").asText() + "' (any more).");
            return;
        }
        if (shipped.materials().containsKey(id)) {
            conflict(where, "The id '" + id + "' is that of a shipped class. Give it another.");
            return;
        }
        Map<String, Value> own;
        try {
            own = new Tree(tree, where + " at ").map("values", Readings::value);
        } catch (KnowledgeFault | IllegalArgumentException e) {
            conflict(where, e.getMessage());
            return;
        }
        try {
            Overlay.material(shipped, file, where);
        } catch (KnowledgeFault e) {
            // Also what only the reader of a plan asks for, such as a name.
            conflict(where, e.getMessage());
            return;
        }
        for (JsonNode w : tree.path("says")) {
            String other = words.put(w.asText().toLowerCase(Locale.ROOT), id);
            if (other != null && !other.equals(id)) {
                conflict(where, "The word '" + w.asText() + "' also means " + other + ".");
            }
        }
        entries.add(new Entry(
                Kind.OVERRIDE,
                where,
                "'" + id + "' is " + base.name() + " with " + own.size() + (own.size() == 1 ? " value" : " values")
                        + " of its own.",
                ""));
        own.forEach((name, v) -> value(where, name, v, base));
    }

    private void value(String where, String name, Value v, MaterialClass base) {
        if (!ClassValues.names().contains(name)) {
            conflict(where, "A material has no value '" + name + "'.");
            return;
        }
        Dimension d = ClassValues.dimension(name);
        if (!UnitBook.knows(v.unit(), d)) {
            conflict(where, "'" + v.unit() + "' is not a unit of '" + name + "'. Usual: " + d.usualUnits() + ".");
            return;
        }
        String is = name + " " + range(v, d);
        Value usual = base.values().get(name);
        if (usual == null) {
            entries.add(new Entry(Kind.OVERRIDE, where, is + "; the class says nothing of it.", ""));
            return;
        }
        entries.add(new Entry(Kind.OVERRIDE, where, is + "; the class says " + range(usual, d) + ".", ""));
        if (isFar(v, usual, d, shipped)) {
            entries.add(new Entry(
                    Kind.FAR_OFF,
                    where,
                    is + " is far off its class, " + range(usual, d) + ". Read the sheet again.",
                    ""));
        }
    }

    /** True when a value of a data sheet lies far outside the range of its class. */
    public static boolean isFar(Value own, Value usual, Dimension d, Knowledge k) {
        double far = k.guidelineSi(FAR);
        double v = own.si(d).typical();
        double low = usual.si(d).low();
        double high = usual.si(d).high();
        if (d == Dimension.TEMPERATURE) {
            double apart = k.guidelineSi("own-temperature-far");
            return v < low - apart || v > high + apart;
        }
        // A shrinkage may be negative: gypsum grows. Then a factor says nothing.
        return low > 0 && (v < low / far || v > high * far);
    }

    private static String range(Value v, Dimension d) {
        return v.low() == v.high()
                ? Show.quantity(v.si(d).typical(), v.unit(), d)
                : Show.range(v.si(d).low(), v.si(d).typical(), v.si(d).high(), v.unit(), d);
    }

    private void runs() {
        Path file = shop.resolve(Overlay.OWN_RUNS);
        if (!Files.isRegularFile(file)) {
            return;
        }
        try {
            List<String> lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.isBlank())
                    .toList();
            long read = lines.stream().filter(l -> OwnRun.of(l).isPresent()).count();
            if (read > 0) {
                entries.add(new Entry(
                        Kind.OVERRIDE,
                        Overlay.OWN_RUNS,
                        read + (read == 1 ? " followed plan corrects" : " followed plans correct") + " the estimates.",
                        ""));
            }
            if (read < lines.size()) {
                conflict(
                        Overlay.OWN_RUNS,
                        (lines.size() - read) + " of its lines cannot be read and count for nothing.");
            }
        } catch (IOException e) {
            conflict(Overlay.OWN_RUNS, "It cannot be read.");
        }
    }

    private void stock() {
        try {
            StockList.read(shop, schemas).cans().stream()
                    .map(StockCan::material)
                    .distinct()
                    .filter(m -> !shipped.materials().containsKey(m)
                            && !Files.isRegularFile(shop.resolve("materials").resolve(m + ".json")))
                    .forEach(m -> conflict(StockList.FILE, "A can is of '" + m + "', which is no material here."));
        } catch (KnowledgeFault e) {
            conflict(StockList.FILE, e.getMessage());
        }
    }
}
