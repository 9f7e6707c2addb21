package pourwright.console;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;

/** A person made of a script: types the next line, whatever is asked, and remembers all that was shown. */
final class ScriptedDoor implements Door {
    private final Function<String, String> typist;
    private final int width;
    private final boolean plain;
    final List<String> lines = new ArrayList<>();
    final List<String> prompts = new ArrayList<>();

    /**
     * @param typist the prompt's id to the line that is typed; null when the input ends
     * @param width columns
     * @param plain whether columns are left out
     */
    ScriptedDoor(Function<String, String> typist, int width, boolean plain) {
        this.typist = typist;
        this.width = width;
        this.plain = plain;
    }

    static ScriptedDoor typing(String... script) {
        Iterator<String> next = List.of(script).iterator();
        return new ScriptedDoor(prompt -> next.hasNext() ? next.next() : null, 80, false);
    }

    /** Answers questions by id; every other question is not known, and the plan is left at once. */
    static ScriptedDoor answering(java.util.Map<String, String> answers) {
        return new ScriptedDoor(id -> id.equals("plan") ? "quit" : answers.getOrDefault(id, "don't know"), 80, false);
    }

    @Override
    public String ask(String prompt, List<String> words) {
        String id = prompt.replace(" > ", "");
        prompts.add(id);
        String line = typist.apply(id);
        if (line == null) {
            throw new Ended();
        }
        lines.add(prompt + line);
        return line;
    }

    @Override
    public void say(String line) {
        lines.add(line);
    }

    @Override
    public int width() {
        return width;
    }

    @Override
    public boolean plain() {
        return plain;
    }

    /** Everything shown, on one line each, spaces joined, so that wrapping does not matter. */
    String all() {
        return String.join(" ", lines).replaceAll("\\s+", " ");
    }
}
