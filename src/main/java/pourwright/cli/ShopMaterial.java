package pourwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.casebook.OwnMaterial;
import pourwright.console.Door;
import pourwright.console.Pick;
import pourwright.console.Wrap;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Value;

/** Asks for a material of the workshop's own, field by field from its data sheet. */
final class ShopMaterial {
    private final Door door;
    private final Knowledge knowledge;

    ShopMaterial(Door door, Knowledge knowledge) {
        this.door = door;
        this.knowledge = knowledge;
    }

    /** What was said once more before it is written. */
    private static final class Left extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** The material; nothing when the person left. */
    Optional<OwnMaterial> ask() {
        try {
            return Optional.of(asked());
        } catch (Left e) {
            return Optional.empty();
        }
    }

    private OwnMaterial asked() {
        OwnMaterial m = new OwnMaterial(knowledge);
        say(
                "A material of your own, from its data sheet. \"don't know\" leaves a value to its class, \"back\" goes one back,"
                        + " \"quit\" leaves without writing.");
        until("name", "What do you call it? For example yard blue.", m::name);
        until(
                "class",
                "Which class is it? " + String.join(", ", knowledge.materials().keySet()) + ".",
                t -> m.base(id(t)));
        until("says", "What else do you call it at the bench? Commas between. (Enter = nothing else)", m::says);
        List<String> fields = m.fields();
        Map<String, Value> values = new LinkedHashMap<>();
        int i = 0;
        while (i < fields.size()) {
            String field = fields.get(i);
            say(field.replace('-', ' ') + "? The class says " + m.usual(field) + ".");
            String line = door.ask(field + " > ", List.of("don't know", "back", "quit"))
                    .strip();
            String word = line.toLowerCase(Locale.ROOT);
            if (List.of("quit", "exit", "stop").contains(word)) {
                throw new Left();
            } else if (word.equals("back")) {
                i = Math.max(0, i - 1);
            } else if (word.equals("why") || word.equals("help")) {
                say(
                        "A value from the sheet stands in for the class's range, so every figure that rests on it is sharper.");
            } else {
                try {
                    Optional<Value> v = line.isEmpty() ? Optional.empty() : m.read(field, line);
                    if (v.isPresent() && m.isFar(field, v.get()) && !sure(m, field)) {
                        continue;
                    }
                    v.ifPresentOrElse(x -> values.put(field, x), () -> values.remove(field));
                    i++;
                } catch (BadAnswer e) {
                    say(e.getMessage());
                }
            }
        }
        values.forEach(m::set);
        return m;
    }

    /** A class by its id, its name, or a word for it. */
    private String id(String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        return knowledge.materials().values().stream()
                .filter(c -> c.id().equals(word)
                        || c.name().equalsIgnoreCase(word)
                        || c.says().stream().anyMatch(s -> s.equalsIgnoreCase(word)))
                .findFirst()
                .map(c -> c.id())
                .orElse(word);
    }

    private boolean sure(OwnMaterial m, String field) {
        say("That is far off the class, " + m.usual(field)
                + ". Read the sheet again: is it right? (Enter = no, or \"yes\")");
        return new Pick(door, "sure > ", List.of("no", "yes"), "A slip of a unit here would spoil every plan with it.")
                .ask()
                .orElseThrow(Left::new)
                .equals("yes");
    }

    /** Takes what was typed, or refuses it with a sentence. */
    private interface Taker {
        void take(String typed);
    }

    private void until(String field, String ask, Taker taker) {
        say(ask);
        while (true) {
            String line = door.ask(field + " > ", List.of("quit")).strip();
            if (List.of("quit", "exit", "stop").contains(line.toLowerCase(Locale.ROOT))) {
                throw new Left();
            }
            try {
                taker.take(line);
                return;
            } catch (BadAnswer e) {
                say(e.getMessage());
            }
        }
    }

    private void say(String text) {
        Wrap.text(text, door.width(), "", "    ").forEach(door::say);
    }
}
