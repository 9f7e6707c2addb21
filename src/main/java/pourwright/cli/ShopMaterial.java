package pourwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.advice.BadAnswer;
import pourwright.casebook.OwnMaterial;
import pourwright.console.Door;
import pourwright.console.Pick;
import pourwright.console.Wrap;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Value;

/** Asks for a material of the workshop's own, field by field from its data sheet. */
final class ShopMaterial {
    /** What is asked before the values, as the class decides which values there are. */
    private static final List<String> FIRST = List.of("name", "class", "says");

    private static final Map<String, String> WHY = Map.of(
            "name",
            "Plans and cases call the material by this name, and so does its file.",
            "class",
            "The class stands in for whatever the sheet does not say, and decides which rules speak.",
            "says",
            "Whatever you type here is understood as this material in a plan.");

    private final Door door;
    private final Knowledge knowledge;
    private final Set<String> classes;
    private final OwnMaterial material;
    private final Map<String, Value> values = new LinkedHashMap<>();
    private String base = "";

    /** True when a value was not confirmed, so its field is asked once more. */
    private boolean again;

    /**
     * @param knowledge with the workshop's own laid over it
     * @param classes ids of the classes that came with the program
     */
    ShopMaterial(Door door, Knowledge knowledge, Set<String> classes) {
        this.door = door;
        this.knowledge = knowledge;
        this.classes = new TreeSet<>(classes);
        this.material = new OwnMaterial(knowledge, classes);
    }

    /** The material; nothing when the person left. */
    Optional<OwnMaterial> ask() {
        say(
                "A material of your own, from its data sheet. \"don't know\" leaves a value to its class, \"back\" goes one back,"
                        + " \"why\" says what it is for, \"quit\" leaves without writing.");
        int at = 0;
        while (at < FIRST.size() || at - FIRST.size() < material.fields().size()) {
            String field = at < FIRST.size() ? FIRST.get(at) : material.fields().get(at - FIRST.size());
            say(question(field));
            String line = door.ask(field + " > ", List.of("don't know", "back", "why", "quit"))
                    .strip();
            switch (line.toLowerCase(Locale.ROOT)) {
                case "quit", "exit", "stop" -> {
                    return Optional.empty();
                }
                case "back" -> at = Math.max(0, at - 1);
                case "why", "why?", "help" ->
                    say(
                            WHY.getOrDefault(
                                    field,
                                    "A value from the sheet stands in for the class's range, so every figure that rests on it is sharper."));
                default -> {
                    try {
                        if (!taken(field, line)) {
                            return Optional.empty();
                        }
                        at += again ? 0 : 1;
                    } catch (BadAnswer e) {
                        say(e.getMessage());
                    }
                }
            }
        }
        values.forEach(material::set);
        return Optional.of(material);
    }

    /** Takes what was typed; false when the person left at the question whether it is right. */
    private boolean taken(String field, String line) {
        again = false;
        boolean unknown = List.of("don't know", "dk", "?").contains(line.toLowerCase(Locale.ROOT));
        switch (field) {
            case "name" -> material.name(unknown ? "" : line);
            case "class" -> klass(unknown ? "" : id(line));
            case "says" -> material.says(unknown ? "" : line);
            default -> {
                Optional<Value> v = line.isEmpty() ? Optional.empty() : material.read(field, line);
                if (v.isPresent() && material.isFar(field, v.get())) {
                    Optional<String> sure = sure(field);
                    again = sure.isPresent() && !sure.get().equals("yes");
                    if (sure.isEmpty() || again) {
                        return sure.isPresent();
                    }
                }
                v.ifPresentOrElse(x -> values.put(field, x), () -> values.remove(field));
            }
        }
        return true;
    }

    private void klass(String id) {
        material.base(id);
        if (!id.equals(base)) {
            // Values are kept in the units of their class.
            values.clear();
        }
        base = id;
    }

    private String question(String field) {
        return switch (field) {
            case "name" -> "What do you call it? For example yard blue.";
            case "class" -> "Which class is it? " + String.join(", ", classes) + ".";
            case "says" -> "What else do you call it at the bench? Commas between. (Enter = nothing else)";
            default -> field.replace('-', ' ') + "? The class says " + material.usual(field) + ".";
        };
    }

    /** A class by its id, its name, or a word for it. */
    private String id(String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        return knowledge.materials().values().stream()
                .filter(c -> classes.contains(c.id()))
                .filter(c -> c.id().equals(word)
                        || c.name().equalsIgnoreCase(word)
                        || c.says().stream().anyMatch(s -> s.equalsIgnoreCase(word)))
                .findFirst()
                .map(c -> c.id())
                .orElse(word);
    }

    private Optional<String> sure(String field) {
        say("That is far off the class, " + material.usual(field)
                + ". Read the sheet again: is it right? (Enter = no, or \"yes\")");
        return new Pick(door, "sure > ", List.of("no", "yes"), "A slip of a unit here would spoil every plan with it.")
                .ask();
    }

    private void say(String text) {
        Wrap.text(text, door.width(), "", "    ").forEach(door::say);
    }
}
