package pourwright.console;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A short question with two or three words for an answer, asked outside the order of the questions. */
public final class Pick {
    private static final int HELP_AFTER = 3;

    private final Door door;
    private final String prompt;
    private final List<String> words;
    private final String why;

    /**
     * @param prompt such as {@code kit > }
     * @param words the answers, the one that Enter means first
     * @param why the reason for asking, as sentences
     */
    public Pick(Door door, String prompt, List<String> words, String why) {
        this.door = door;
        this.prompt = prompt;
        this.words = List.copyOf(words);
        this.why = why;
    }

    /** Asks until one of the words is picked; none when the person quits. */
    public Optional<String> ask() {
        int failures = 0;
        while (true) {
            String typed = door.ask(prompt, words).strip();
            String said = typed.toLowerCase(Locale.ROOT);
            if (said.isEmpty()) {
                return Optional.of(words.get(0));
            }
            switch (said) {
                case "quit", "exit" -> {
                    return Optional.empty();
                }
                case "why", "why?" -> say(why);
                case "help" -> say(accepted() + " \"why\" says why this is asked, \"quit\" leaves.");
                case "back", "answers", "change", "enough" -> say("There is nothing to go back to here. " + accepted());
                case "don't know", "dk", "?" -> {
                    return Optional.of(words.get(0));
                }
                default -> {
                    Optional<String> picked = read(said);
                    if (picked.isPresent()) {
                        return picked;
                    }
                    say("\"" + Clean.quoted(typed) + "\" is not an answer here. " + accepted() + " For example \""
                            + words.get(1) + "\".");
                    if (++failures >= HELP_AFTER) {
                        say("Enter alone is enough to go on.");
                    }
                }
            }
        }
    }

    private Optional<String> read(String said) {
        if (said.matches("\\d") && Integer.parseInt(said) >= 1 && Integer.parseInt(said) <= words.size()) {
            return Optional.of(words.get(Integer.parseInt(said) - 1));
        }
        List<String> some = words.stream().filter(w -> w.startsWith(said)).toList();
        if (some.size() == 1) {
            return Optional.of(some.get(0));
        }
        if (words.contains("yes") && List.of("yep", "yeah", "ok", "sure").contains(said)) {
            return Optional.of("yes");
        }
        return words.contains("no") && said.equals("nope") ? Optional.of("no") : Optional.empty();
    }

    private String accepted() {
        return "Accepted: " + String.join(", ", words) + " (Enter = " + words.get(0) + ").";
    }

    private void say(String text) {
        Wrap.text(text, door.width(), "", "    ").forEach(door::say);
    }
}
