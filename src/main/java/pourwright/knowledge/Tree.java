package pourwright.knowledge;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * One object of a knowledge file, read strictly: a part that is missing, of the wrong kind or unknown is a fault that
 * names the file and the place. Written by hand because binding by reflection took a third of every start.
 */
final class Tree {
    private final JsonNode node;
    private final String where;
    private final Set<String> taken = new HashSet<>();

    Tree(JsonNode node, String where) {
        if (node == null || !node.isObject()) {
            throw new KnowledgeFault(where + ": expected an object");
        }
        this.node = node;
        this.where = where;
    }

    String where() {
        return where;
    }

    private JsonNode take(String name) {
        taken.add(name);
        JsonNode value = node.get(name);
        return value == null || value.isNull() ? null : value;
    }

    private JsonNode need(String name) {
        JsonNode value = take(name);
        if (value == null) {
            throw new KnowledgeFault(where + ": '" + name + "' is missing");
        }
        return value;
    }

    String text(String name) {
        JsonNode value = need(name);
        if (!value.isTextual()) {
            throw new KnowledgeFault(where + "/" + name + ": expected a text");
        }
        return value.textValue();
    }

    String textOr(String name, String otherwise) {
        return take(name) == null ? otherwise : text(name);
    }

    double number(String name) {
        JsonNode value = need(name);
        if (!value.isNumber()) {
            throw new KnowledgeFault(where + "/" + name + ": expected a number");
        }
        return value.doubleValue();
    }

    Double numberOrNull(String name) {
        return take(name) == null ? null : Double.valueOf(number(name));
    }

    boolean flag(String name, boolean otherwise) {
        JsonNode value = take(name);
        if (value != null && !value.isBoolean()) {
            throw new KnowledgeFault(where + "/" + name + ": expected true or false");
        }
        return value == null ? otherwise : value.booleanValue();
    }

    List<String> texts(String name) {
        JsonNode array = take(name);
        if (array == null) {
            return List.of();
        }
        List<String> all = new ArrayList<>();
        for (JsonNode value : array) {
            if (!value.isTextual()) {
                throw new KnowledgeFault(where + "/" + name + ": expected a list of texts");
            }
            all.add(value.textValue());
        }
        return List.copyOf(all);
    }

    /** The parts of this object, by name. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** A map of texts, in the order of the file. */
    Map<String, String> strings(String name) {
        Tree object = object(name);
        Map<String, String> all = new LinkedHashMap<>();
        object.names().forEach(n -> all.put(n, object.text(n)));
        return Collections.unmodifiableMap(all);
    }

    /** A map of numbers, in the order of the file. */
    Map<String, Double> numbers(String name) {
        Tree object = object(name);
        Map<String, Double> all = new LinkedHashMap<>();
        object.names().forEach(n -> all.put(n, object.number(n)));
        return Collections.unmodifiableMap(all);
    }

    Tree object(String name) {
        return new Tree(need(name), where + "/" + name);
    }

    boolean has(String name) {
        return take(name) != null;
    }

    /** The objects of a list. */
    <T> List<T> list(String name, Function<Tree, T> read) {
        JsonNode array = take(name);
        if (array == null) {
            return List.of();
        }
        List<T> all = new ArrayList<>();
        int i = 0;
        for (JsonNode value : array) {
            all.add(whole(new Tree(value, where + "/" + name + "/" + i++), read));
        }
        return List.copyOf(all);
    }

    /** The objects of a map, in the order of the file. */
    <T> Map<String, T> map(String name, Function<Tree, T> read) {
        Tree object = object(name);
        Map<String, T> all = new LinkedHashMap<>();
        object.node
                .properties()
                .forEach(e ->
                        all.put(e.getKey(), whole(new Tree(e.getValue(), object.where + "/" + e.getKey()), read)));
        return Collections.unmodifiableMap(all);
    }

    /** Reads the whole of an object and faults what was not asked for. */
    static <T> T whole(Tree tree, Function<Tree, T> read) {
        T value;
        try {
            value = read.apply(tree);
        } catch (IllegalArgumentException | IllegalStateException e) {
            throw new KnowledgeFault(tree.where + ": " + e.getMessage());
        }
        tree.node.fieldNames().forEachRemaining(n -> {
            if (!tree.taken.contains(n)) {
                throw new KnowledgeFault(tree.where + ": '" + n + "' is not known here");
            }
        });
        return value;
    }
}
