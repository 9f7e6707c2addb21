package pourwright.console;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;
import pourwright.testing.Generated;

/** One talk of a simulated person on a fake terminal, with what went amiss in it; it goes on after leaving where it can. */
final class SimulatedTalk {
    /** A person who answers nothing any more is out after so many prompts: three a question, and all questions there are. */
    static final int MOST_PROMPTS_TO_LEAVE = 330;

    /** Between two prompts no page is longer. */
    private static final int MOST_LINES = 3000;

    private static final int MOST_SITTINGS = 3;
    private static final Pattern BROKEN =
            Pattern.compile("NaN|Infinity|Exception|\\(not known\\)|\\{[a-z:-]+}|null|\u00a0");

    private final Generated any;
    private final Knowledge knowledge;
    private final Diagnoser diagnoser;
    private final String word;
    private final Path shop;
    private final BiConsumer<Interviewer.Next, Answers> asked;
    private final StringBuilder shown = new StringBuilder();
    private final List<String> faults = new ArrayList<>();
    private Conversation.End end;
    private int sittings;

    /**
     * @param any the chance
     * @param diagnoser what can rank causes; its base is what a plan knows
     * @param word {@code plan} or {@code diagnose}
     * @param shop the workshop's folder, or null to keep nothing
     * @param asked told of every question with the answers it was asked after
     */
    SimulatedTalk(
            Generated any, Diagnoser diagnoser, String word, Path shop, BiConsumer<Interviewer.Next, Answers> asked) {
        this.any = any;
        this.knowledge = diagnoser.knowledge().base();
        this.diagnoser = diagnoser;
        this.word = word;
        this.shop = shop;
        this.asked = asked;
    }

    /** Talks, leaves, and goes on as long as something is left and sittings remain. */
    SimulatedTalk run(String[] sayings) {
        Answers start = Answers.NONE;
        for (sittings = 1; sittings <= MOST_SITTINGS; sittings++) {
            SimulatedPerson person = new SimulatedPerson(any, knowledge, word, sayings);
            if (!sitting(person, start)) {
                break;
            }
            Optional<Answers> left =
                    shop == null ? Optional.empty() : new Journal(shop, word).unfinished(new AnswersJson(knowledge));
            if (end == Conversation.End.ADVICE || end == Conversation.End.STOP || left.isEmpty()) {
                break;
            }
            start = left.get();
            shown.append("--- resumed with ").append(start.all().keySet()).append('\n');
        }
        return this;
    }

    private boolean sitting(SimulatedPerson person, Answers start) {
        FakeTerminal terminal = new FakeTerminal(person, any.pick(30, 80, 80, 132), any.uniform(0, 1) < 0.2);
        Job plain = word.equals("plan") ? new PlanJob(knowledge) : new DiagnoseJob(diagnoser);
        try {
            end = new Conversation(terminal, new WatchedJob(plain, asked), shop, start).run();
            shown.append("--- ").append(end).append('\n');
            if (!fits(person.leaves(), terminal)) {
                faults.add("ended " + end + ": " + person);
            }
            return true;
        } catch (RuntimeException | StackOverflowError e) {
            StackTraceElement[] trace = e.getStackTrace();
            faults.add(e + " at " + (trace.length == 0 ? "" : trace[0]) + ": " + person);
            return false;
        }
    }

    /** Whether the way out led where it should. */
    private boolean fits(SimulatedPerson.Leaves leaves, FakeTerminal terminal) {
        boolean result = end == Conversation.End.ADVICE || end == Conversation.End.STOP;
        if (terminal.sinceLeaving == 0) {
            // Out while still curious: by Enter or "don't know" three times, where nothing else was left.
            return true;
        }
        return switch (leaves) {
            case BY_RESULT, BY_ENTER, BY_DONT_KNOW, BY_ENOUGH ->
                // Nothing can be said without the liquid of a plan, and then the end must say so.
                result || end == Conversation.End.UNFINISHED && terminal.text.indexOf("needed first") >= 0;
            case BY_QUIT, BY_END_OF_INPUT -> result || end == Conversation.End.UNFINISHED;
            case BY_CTRL_C -> result || end == Conversation.End.INTERRUPTED;
        };
    }

    List<String> faults() {
        return faults;
    }

    Conversation.End end() {
        return end;
    }

    int sittings() {
        return Math.min(sittings, MOST_SITTINGS);
    }

    /** All that was shown and typed. */
    byte[] bytes() {
        return shown.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** A terminal without a screen: it counts prompts and looks at every line. */
    private final class FakeTerminal implements Door {
        private final SimulatedPerson person;
        private final int width;
        private final boolean plain;
        private final StringBuilder text = new StringBuilder();
        private int sinceLeaving;
        private int sincePrompt;

        FakeTerminal(SimulatedPerson person, int width, boolean plain) {
            this.person = person;
            this.width = width;
            this.plain = plain;
        }

        @Override
        public String ask(String prompt, List<String> words) {
            sincePrompt = 0;
            if (person.leaving() && ++sinceLeaving > MOST_PROMPTS_TO_LEAVE) {
                throw new IllegalStateException("no way out after " + sinceLeaving + " prompts");
            }
            String line = person.types(prompt.replace(" > ", ""), words);
            if (line == null) {
                throw new Ended();
            }
            shown.append(prompt).append(line).append('\n');
            return line;
        }

        @Override
        public void say(String line) {
            if (++sincePrompt > MOST_LINES) {
                throw new IllegalStateException("talks on and on without a prompt");
            }
            shown.append(line).append('\n');
            text.append(line).append(' ');
            if (BROKEN.matcher(line).find() && !line.contains("\"")) {
                faults.add("said \"" + line + "\": " + person);
            }
        }

        @Override
        public int width() {
            return width;
        }

        @Override
        public boolean plain() {
            return plain;
        }
    }
}
