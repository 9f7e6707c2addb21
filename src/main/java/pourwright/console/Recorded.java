package pourwright.console;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;

/**
 * A case told again as the conversation a person would have had: each question is answered from the case, what the case
 * does not say with "don't know", and then the details are asked for.
 */
public final class Recorded implements Door {
    private static final int WIDTH = 80;
    private static final String PROMPT_END = " > ";

    private final Answers script;
    private final List<String> lines = new ArrayList<>();
    private final Iterator<String> afterwards;

    private Recorded(Answers script) {
        this.script = script;
        this.afterwards = List.of("how 1", "more", "cautions", "quit").iterator();
    }

    /** The transcript, lines ended with a line feed. */
    public static String transcript(Answers answers, Knowledge knowledge) {
        Recorded door = new Recorded(answers);
        new Conversation(door, knowledge, null, Answers.NONE).run();
        return String.join("\n", door.lines) + "\n";
    }

    @Override
    public String ask(String prompt, List<String> words) {
        String id = prompt.substring(0, prompt.length() - PROMPT_END.length());
        String answer;
        if (id.equals("plan")) {
            if (!afterwards.hasNext()) {
                throw new Ended();
            }
            answer = afterwards.next();
        } else {
            Answers.Given given = script.all().get(id);
            answer = given == null || given.raw() == null ? "don't know" : typed(given.raw());
            if (answered.contains(id)) {
                // The same question again: what was typed needs its unit at a prompt.
                answer = "don't know";
            }
            answered.add(id);
        }
        lines.add(prompt + answer);
        return answer;
    }

    private final java.util.Set<String> answered = new java.util.HashSet<>();

    private static String typed(Object raw) {
        return raw.toString();
    }

    @Override
    public void say(String line) {
        lines.add(line);
    }

    @Override
    public int width() {
        return WIDTH;
    }

    @Override
    public boolean plain() {
        return false;
    }
}
