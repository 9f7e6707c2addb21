import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Run by the build from its source: takes out of the bill of materials what only the build needs, and puts right the licences
 * that the plugin guessed from a name such as "BSD". It stops the build when a library is not listed, or has no SPDX id or
 * no text of its licence.
 */
final class Bill {
    private Bill() {}

    /** Arguments: the whole bill, the bill to write, the folder of libraries, the unpacked licences, the index of the others. */
    public static void main(String[] args) throws IOException {
        ObjectMapper json = new ObjectMapper();
        JsonNode bill = json.readTree(Path.of(args[0]).toFile());
        Path texts = Path.of(args[3]);
        Path index = Path.of(args[4]);
        Set<String> shipped = new TreeSet<>();
        try (DirectoryStream<Path> jars = Files.newDirectoryStream(Path.of(args[2]), "*-[0-9]*.jar")) {
            jars.forEach(jar -> shipped.add(jar.getFileName().toString().replaceFirst("\\.jar$", "")));
        }
        Map<String, String[]> known = new TreeMap<>();
        for (String line : Files.readAllLines(index)) {
            if (!line.startsWith("#")) {
                known.put(line.split(" ")[0], line.split(" "));
            }
        }

        Set<String> listed = new TreeSet<>();
        Set<String> gone = new HashSet<>();
        for (Iterator<JsonNode> all = bill.get("components").iterator(); all.hasNext(); ) {
            ObjectNode component = (ObjectNode) all.next();
            String name = component.get("name").asText();
            String jar = name + "-" + component.get("version").asText();
            if (!shipped.contains(jar)) {
                gone.add(component.get("bom-ref").asText());
                all.remove();
                continue;
            }
            listed.add(jar);
            if (known.containsKey(name)) {
                ArrayNode licences = component.putArray("licenses");
                licences.addObject().putObject("license").put("id", known.get(name)[1]);
            }
            for (JsonNode licence : component.path("licenses")) {
                require(licence.path("license").has("id") || licence.has("expression"), name + " has no SPDX id.");
            }
            require(component.path("licenses").size() > 0, name + " has no licence.");
            require(hasText(texts.resolve(jar + "-jar").resolve("META-INF"), index, known.get(name)), name + " has no text.");
        }
        require(listed.equals(shipped), "Listed " + listed + ", shipped " + shipped + ".");
        for (Iterator<JsonNode> all = bill.get("dependencies").iterator(); all.hasNext(); ) {
            JsonNode one = all.next();
            if (gone.contains(one.get("ref").asText())) {
                all.remove();
                continue;
            }
            for (Iterator<JsonNode> on = one.path("dependsOn").iterator(); on.hasNext(); ) {
                if (gone.contains(on.next().asText())) {
                    on.remove();
                }
            }
        }
        DefaultPrettyPrinter lines = new DefaultPrettyPrinter();
        lines.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        Files.writeString(Path.of(args[1]), json.writer(lines).writeValueAsString(bill) + "\n");
    }

    /** Whether the library's own text was unpacked, or lies beside the index. */
    private static boolean hasText(Path own, Path index, String[] known) throws IOException {
        if (known != null) {
            return Files.size(index.resolveSibling(known[2])) > 0;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(own, "LICENSE*")) {
            return files.iterator().hasNext();
        }
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException("bill of materials: " + otherwise);
        }
    }
}
