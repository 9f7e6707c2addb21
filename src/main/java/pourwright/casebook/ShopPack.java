package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pourwright.advice.BadAnswer;
import pourwright.knowledge.Json;

/**
 * A workshop's folder as one file: JSON with the text of each file by its name. Only names that this program reads go in or
 * come out, so nothing can land elsewhere; a conversation under way and the lock stay behind. The same folder gives the same
 * bytes.
 */
public final class ShopPack {
    private static final int FORMAT = 1;
    private static final int MOST_BYTES = 20_000_000;
    private static final int MOST_FILE_BYTES = 4_000_000;
    private static final int MOST_FILES = 5000;
    private static final Pattern NAME = Pattern.compile(
            "guidelines\\.json|kit\\.json|stock\\.json|runs\\.jsonl|kit-tests\\.jsonl|materials/[a-z0-9][a-z0-9-]{0,99}\\.json"
                    + "|cases/[a-z0-9][a-z0-9-]{0,99}\\.case\\.json|learners/[\\p{L}\\p{N}][\\p{L}\\p{N}-]{0,99}\\.jsonl");

    private ShopPack() {}

    /** The files of a workshop's folder that belong to it, by name. */
    public static Map<String, String> files(Path shop) throws IOException {
        Map<String, String> all = new TreeMap<>();
        if (!Files.isDirectory(shop)) {
            return all;
        }
        try (Stream<Path> walk = Files.walk(shop, 2)) {
            for (Path f : walk.toList()) {
                String name = shop.relativize(f).toString().replace('\\', '/');
                if (NAME.matcher(name).matches() && Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS)) {
                    all.put(name, WholeFile.text(f, MOST_FILE_BYTES));
                }
            }
        }
        return all;
    }

    /** The text of the one file. */
    public static String text(Map<String, String> files) {
        ObjectNode out = Json.object();
        out.put("format", FORMAT);
        ObjectNode all = out.putObject("workshop");
        new TreeMap<>(files).forEach(all::put);
        return Json.pretty(out) + "\n";
    }

    /**
     * Reads such a file.
     *
     * @throws BadAnswer when it is none, naming what in it is wrong
     */
    public static Map<String, String> read(Path file) {
        JsonNode tree;
        try {
            tree = Json.read(WholeFile.text(file, MOST_BYTES));
        } catch (JsonProcessingException e) {
            throw new BadAnswer("import", file + ", line " + Json.line(e) + ": this is not valid JSON.");
        } catch (IOException e) {
            throw new BadAnswer("import", file + " cannot be read, or is larger than 20 MB.");
        }
        if (tree.path("format").asInt() != FORMAT || !tree.path("workshop").isObject()) {
            throw new BadAnswer("import", file + " is no workshop in one file: \"shop export\" makes one.");
        }
        Map<String, String> all = new TreeMap<>();
        for (Map.Entry<String, JsonNode> e : tree.path("workshop").properties()) {
            if (!NAME.matcher(e.getKey()).matches()) {
                throw new BadAnswer(
                        "import",
                        file + ": \"" + shortened(e.getKey())
                                + "\" is no file of a workshop's folder. Nothing was changed.");
            }
            if (!e.getValue().isTextual() || all.size() >= MOST_FILES) {
                throw new BadAnswer(
                        "import", file + ": \"" + e.getKey() + "\" is no text, or there are too many files.");
            }
            all.put(e.getKey(), e.getValue().textValue());
        }
        return all;
    }

    private static String shortened(String name) {
        String plain = name.replaceAll("\\p{Cntrl}", " ");
        return plain.length() > 60 ? plain.substring(0, 60) + "\u2026" : plain;
    }

    /** Writes files into a folder. */
    public static void write(Map<String, String> files, Path folder) throws IOException {
        for (Map.Entry<String, String> e : files.entrySet()) {
            WholeFile.write(folder.resolve(e.getKey()), e.getValue());
        }
    }

    /**
     * Puts files into a workshop's folder. What one replaces is kept in a folder of its own.
     *
     * @return the folder with what was replaced; null when nothing was
     */
    public static Path replace(Map<String, String> files, Path shop) throws IOException {
        Map<String, String> old = files(shop);
        List<String> replaced = new ArrayList<>();
        for (Map.Entry<String, String> e : files.entrySet()) {
            if (old.containsKey(e.getKey()) && !old.get(e.getKey()).equals(e.getValue())) {
                replaced.add(e.getKey());
            }
        }
        Path aside = null;
        if (!replaced.isEmpty()) {
            int n = 1;
            while (Files.exists(shop.resolve("before-import-" + n))) {
                n++;
            }
            aside = shop.resolve("before-import-" + n);
            for (String name : replaced) {
                WholeFile.write(aside.resolve(name), old.get(name));
            }
        }
        write(files, shop);
        return aside;
    }
}
