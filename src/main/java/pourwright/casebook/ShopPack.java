package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
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
 * A workshop's folder as one file: JSON with the lines of each file by its name. Lines, because one long string would meet
 * the reader's limit, and a person can read them. Only names that this program reads go in or
 * come out, so nothing can land elsewhere; a conversation under way and the lock stay behind. The same folder gives the same
 * bytes.
 */
public final class ShopPack {
    /** How the folders begin in which an import keeps what it replaced. */
    static final String ASIDE = "before-import-";

    private static final int FORMAT = 1;
    private static final int MOST_BYTES = 20_000_000;
    private static final int MOST_FILE_BYTES = 4_000_000;
    private static final int MOST_FILES = 5000;
    private static final Pattern NAME = Pattern.compile(
            "guidelines\\.json|kit\\.json|stock\\.json|runs\\.jsonl|kit-tests\\.jsonl|materials/[a-z0-9][a-z0-9-]{0,99}\\.json"
                    + "|cases/[a-z0-9][a-z0-9-]{0,99}\\.case\\.json|learners/[\\p{L}\\p{N}][\\p{L}\\p{N}-]{0,99}\\.jsonl");

    /** What stays behind without a word: talk under way, the lock, what was set aside. */
    private static final Pattern BEHIND =
            Pattern.compile("unfinished.*|console\\.lock|before-import-.*|.*\\.(?:new|unreadable)");

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
        new TreeMap<>(files).forEach((name, text) -> {
            ArrayNode lines = all.putArray(name);
            for (String line : text.split("\n", -1)) {
                lines.add(line);
            }
        });
        return Json.pretty(out) + "\n";
    }

    /** Names of files in the folder that stay behind: no part of it, or named as this program names none. */
    public static List<String> left(Path shop) throws IOException {
        try (Stream<Path> walk = Files.walk(shop, 2)) {
            return walk.filter(f -> !Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
                    .map(f -> shop.relativize(f).toString().replace('\\', '/'))
                    .filter(n ->
                            !NAME.matcher(n).matches() && !BEHIND.matcher(n).matches())
                    .sorted()
                    .toList();
        }
    }

    /**
     * Reads such a file.
     *
     * @throws BadAnswer when it is none, naming what in it is wrong
     */
    public static Map<String, String> read(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadAnswer("import", "There is no file " + file + ".");
        }
        String text;
        try {
            text = WholeFile.text(file, MOST_BYTES);
        } catch (CharacterCodingException e) {
            throw new BadAnswer("import", file + " is not text.");
        } catch (IOException e) {
            throw new BadAnswer("import", file + " cannot be read, or is larger than 20 MB.");
        }
        return read(text, file.toString());
    }

    /**
     * Reads the text of such a file.
     *
     * @param file what it is called in a fault
     * @throws BadAnswer when it is none, naming what in it is wrong
     */
    public static Map<String, String> read(String text, String file) {
        JsonNode tree;
        try {
            tree = Json.read(text);
        } catch (StreamConstraintsException e) {
            throw new BadAnswer(
                    "import",
                    file + ", line " + Json.line(e)
                            + ": this is larger, deeper or longer in one line than can be read.");
        } catch (JsonProcessingException e) {
            throw new BadAnswer("import", file + ", line " + Json.line(e) + ": this is not valid JSON.");
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
            if (all.size() >= MOST_FILES) {
                throw new BadAnswer("import", file + " holds more than " + MOST_FILES + " files.");
            }
            all.put(e.getKey(), lines(e.getValue(), file + ": \"" + e.getKey() + "\""));
        }
        return all;
    }

    private static String lines(JsonNode value, String where) {
        List<String> lines = new ArrayList<>();
        value.forEach(l -> {
            if (l.isTextual() && l.textValue().indexOf('\n') < 0) {
                lines.add(l.textValue());
            }
        });
        if (!value.isArray() || lines.isEmpty() || lines.size() != value.size()) {
            throw new BadAnswer("import", where + " is no list of lines. Nothing was changed.");
        }
        return String.join("\n", lines);
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
            while (Files.exists(shop.resolve(ASIDE + n))) {
                n++;
            }
            aside = shop.resolve(ASIDE + n);
            for (String name : replaced) {
                WholeFile.write(aside.resolve(name), old.get(name));
            }
        }
        write(files, shop);
        return aside;
    }
}
