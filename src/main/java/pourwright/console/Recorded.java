package pourwright.console;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.facts.Answers;

/**
 * A case told again as the conversation a person would have had: each question is answered from the case, what the case
 * does not say with "don't know", and then the details are asked for.
 */
public final class Recorded implements Door {
    private static final int WIDTH = 80;
    private static final String PROMPT_END = " > ";
    private static final Map<String, List<String>> AFTERWARDS = Map.of(
            "plan", List.of("how 1", "more", "cautions", "quit"),
            "vents", List.of("how 1", "more", "cautions", "quit"),
            "kit", List.of("how 1", "readings", "quit"),
            "diagnose", List.of("how 1", "prevent 1", "otherwise", "cautions", "quit"));

    private final Answers script;
    private final List<String> lines = new ArrayList<>();
    private final Iterator<String> afterwards;

    private final Job job;
    private boolean invited;

    private Recorded(Answers script, Job job) {
        this.script = script;
        this.job = job;
        this.invited = job.invitation(Answers.NONE).isPresent();
        List<String> words = new ArrayList<>(AFTERWARDS.get(job.word()));
        if (script.has("cans-first") || script.has("cans-second")) {
            words.add(1, "stock");
        }
        this.afterwards = words.iterator();
    }

    /** The transcript, lines ended with a line feed. */
    public static String transcript(Answers answers, Job job) {
        Job told = job instanceof PlanJob plan ? plan.having(answers) : job;
        Recorded door = new Recorded(answers, told);
        new Conversation(door, told, null, Answers.NONE).run();
        return String.join("\n", door.lines) + "\n";
    }

    @Override
    public String ask(String prompt, List<String> words) {
        String id = prompt.substring(0, prompt.length() - PROMPT_END.length());
        String answer;
        if (id.equals("review") || id.equals("cans")) {
            answer = "";
        } else if (invited) {
            // The case holds answers, not the line they may have come from.
            invited = false;
            answer = "";
        } else if (id.equals(job.word())) {
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

    private final Set<String> answered = new HashSet<>();

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
