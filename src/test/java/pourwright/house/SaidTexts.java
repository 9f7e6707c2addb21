package pourwright.house;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.knowledge.Json;

/**
 * Everything the program can say: the texts of knowledge and rules, and the sentences in the code.
 *
 * @param where the file, and the part of it
 * @param text the text
 */
record SaidTexts(String where, String text) {
    /** Parts of knowledge that are read or typed, or name something, and are not said as sentences. */
    private static final Set<String> NOT_SAID =
            Set.of("says", "short", "also", "example", "tries", "picture", "names", "unit", "bare", "source", "set");

    private static final Set<String> TALKING = Set.of(
            "cli", "console", "interview", "units", "advice", "diagnosis", "casebook", "remedy", "course", "emergency");
    private static final Pattern QUOTED = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern JOINED = Pattern.compile("\"\\s*\\n?\\s*\\+\\s*\"");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");

    /** Texts of knowledge and rules. */
    static List<SaidTexts> known() {
        List<SaidTexts> all = new ArrayList<>();
        for (Path file : Tree.files()) {
            String name = file.toString().replace('\\', '/');
            if (name.matches("knowledge/(?!schemas/|sources).*\\.json")) {
                walk(name, "", tree(file), all);
            } else if (name.matches("rules/.*\\.drl")) {
                quoted(name, COMMENT.matcher(Tree.text(file)).replaceAll(""), all);
            }
        }
        return all;
    }

    /** Sentences in the code that talks to people: literals with a space that end as a sentence does. */
    static List<SaidTexts> coded() {
        List<SaidTexts> all = new ArrayList<>();
        for (Path file : Tree.files()) {
            Matcher m = Pattern.compile("src/main/java/pourwright/(\\w+)/.*\\.java")
                    .matcher(file.toString().replace('\\', '/'));
            if (m.matches() && TALKING.contains(m.group(1))) {
                String code = COMMENT.matcher(Tree.text(file)).replaceAll("");
                quoted(file.toString(), JOINED.matcher(code).replaceAll(""), all);
            }
        }
        all.removeIf(t -> !t.text.strip().matches("(?s).*[.?]"));
        return all;
    }

    private static JsonNode tree(Path file) {
        try {
            return Json.read(Tree.text(file));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(file + " is no JSON", e);
        }
    }

    private static void walk(String file, String at, JsonNode node, List<SaidTexts> all) {
        if (node.isTextual() && node.textValue().contains(" ")) {
            all.add(new SaidTexts(file + at, node.textValue()));
        }
        for (int i = 0; i < node.size() && node.isArray(); i++) {
            walk(file, at + "/" + i, node.get(i), all);
        }
        node.fieldNames().forEachRemaining(name -> {
            if (!NOT_SAID.contains(name)) {
                walk(file, at + "/" + name, node.get(name), all);
            }
        });
    }

    private static void quoted(String file, String text, List<SaidTexts> all) {
        Matcher m = QUOTED.matcher(text);
        while (m.find()) {
            if (m.group(1).contains(" ")) {
                all.add(new SaidTexts(file, m.group(1).replace("\\\"", "\"").replace("\\u00a0", "\u00a0")));
            }
        }
    }

    List<String> sentences() {
        return Arrays.stream(text.strip().split("(?<=[.!?])\\s+"))
                .filter(s -> !s.isBlank())
                .toList();
    }

    @Override
    public String toString() {
        return where + ": " + text;
    }
}
