package pourwright.console;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.advice.Nearest;
import pourwright.casebook.Learners;
import pourwright.casebook.Trouble;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;
import pourwright.knowledge.Question;
import pourwright.teach.Exercise;
import pourwright.teach.Exercises;
import pourwright.teach.Marked;
import pourwright.teach.Progress;
import pourwright.teach.Tried;

/** The course as a talk: a lesson is read, something is foretold and tried, and exercises are done and marked. */
public final class Learning {
    private static final int ROUND = 3;
    private static final int LONGEST_NAME = 40;
    private static final String UNAIDED = "unaided";
    private static final String DIAGNOSIS = "defects";
    private static final List<String> WORDS = List.of("why", "help", "define WORD", "rule ID", "back", "quit");

    private final Door door;
    private final Lessons course;
    private final Exercises exercises;
    private final Knowledge knowledge;
    private final AnswerReader reader;
    private final LessonPage page;
    private final ExercisePage exercisePage;
    private final Keep keep;
    private final int run;
    private final Diagnoser diagnoser;
    private long seed;
    private boolean open;
    private Progress progress = new Progress("", List.of());

    /**
     * Where progress is kept.
     *
     * @param learners null to keep nothing
     * @param day today, as 2026-03-01
     */
    public record Keep(Learners learners, String day) {}

    /** The learner leaves the course. */
    private static final class Quit extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** The learner goes back to the list of lessons. */
    private static final class Back extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** @param seed of the first draw; each exercise takes the next */
    public Learning(Door door, Lessons course, Exercises exercises, Diagnoser diagnoser, Keep keep, long seed) {
        this.door = door;
        this.course = course;
        this.exercises = exercises;
        this.diagnoser = diagnoser;
        this.knowledge = diagnoser.knowledge().base();
        this.reader = new AnswerReader(knowledge);
        this.page = new LessonPage(course, diagnoser, door.width());
        this.exercisePage = new ExercisePage(knowledge, door.width());
        this.keep = keep;
        this.run = (int) Math.round(knowledge.guidelineSi("lesson-mastery"));
        this.seed = seed;
    }

    /**
     * Talks until the learner leaves.
     *
     * @param name of the learner, or empty to ask for it
     * @param first the lesson to begin with, or null for the list
     */
    public Conversation.End run(String name, Lesson first) {
        try {
            say("A course of " + course.lessons().size()
                    + " short lessons. Each has something to try; then the advisor marks your exercises.");
            introduce(name);
            if (first != null) {
                inside(() -> lesson(first));
            }
            while (true) {
                inside(this::choose);
            }
        } catch (Door.Ended e) {
            say("The input ended." + kept());
            return Conversation.End.UNFINISHED;
        } catch (Door.Interrupted e) {
            say("Stopped." + kept());
            return Conversation.End.INTERRUPTED;
        } catch (Quit e) {
            say(progress.name().isEmpty() ? "Left." : "Left. What you have done is kept.");
            return Conversation.End.ADVICE;
        }
    }

    /** What becomes of the work so far when the talk is cut off. */
    private String kept() {
        return (progress.name().isEmpty()
                        ? ""
                        : " What you have done is kept; \"pourwright learn\" goes on from there.")
                + (open ? " The exercise that was open does not count." : "");
    }

    /** Does something from which "back" leads to the list. */
    private void inside(Runnable what) {
        try {
            what.run();
        } catch (Back e) {
            open = false;
            say("");
        }
    }

    private void introduce(String given) {
        String name = given;
        if (name.isEmpty() && keep.learners() != null) {
            List<String> names = names();
            say("What is your name? It keeps your progress. (Enter = keep nothing)"
                    + (names.isEmpty() ? "" : " Here before: " + String.join(", ", names) + "."));
            name = ask("name > ", names, "Your trainer sees who has mastered what. \"pourwright forget\" deletes it.");
        }
        String plain = Clean.text(name).strip();
        if (plain.isEmpty() || keep.learners() == null) {
            return;
        }
        if (Learners.plain(plain).isEmpty() || plain.length() > LONGEST_NAME) {
            say("\"" + Clean.quoted(plain) + "\" cannot be the name of a file. Accepted: 1 to " + LONGEST_NAME
                    + " characters with a letter or digit in them. Nothing is kept.");
            return;
        }
        try {
            progress = keep.learners().read(plain);
            if (!progress.events().isEmpty()) {
                say("Welcome back, " + Clean.quoted(progress.name()) + ".");
            }
        } catch (IOException e) {
            say("What was kept of " + Clean.quoted(plain) + " cannot be read: "
                    + Trouble.why(keep.learners().file(plain), e) + ". Nothing is kept now.");
        }
    }

    private List<String> names() {
        try {
            return keep.learners().names();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** The list of lessons, and what to do next. */
    private void choose() {
        Lesson next = course.lessons().stream()
                .filter(l -> progress.standing(l, run) != Progress.Standing.MASTERED)
                .findFirst()
                .orElse(course.lessons().get(0));
        say("");
        course.lessons().forEach(l -> say("  " + l.order() + ". " + l.title() + standing(l)));
        say("Which lesson? (Enter = " + next.order() + ") Or \"exercise 3\" for exercises alone, \"unaided\" for a"
                + " diagnosis without a list, \"progress\", \"quit\".");
        String said = ask(
                "learn > ",
                List.of("exercise", UNAIDED, "progress"),
                "The lessons build on each other, but any of them can be read alone.");
        String word = said.toLowerCase(Locale.ROOT).strip();
        if (word.isEmpty()) {
            lesson(next);
        } else if (word.equals("progress")) {
            new TrainerPage(course, run, door.width()).person(named()).forEach(door::say);
        } else if (word.equals(UNAIDED)) {
            exercise(course.find(DIAGNOSIS).orElseThrow(), "Without a list of causes.", true);
        } else if (word.startsWith("exercise")) {
            String of = word.substring("exercise".length()).strip();
            Optional<Lesson> l = of.isEmpty() ? Optional.of(next) : course.find(of);
            l.ifPresentOrElse(this::exercises, () -> unknown(of));
        } else {
            course.find(word.replace(' ', '-')).ifPresentOrElse(this::lesson, () -> unknown(said));
        }
    }

    private Progress named() {
        return progress.name().isEmpty() ? new Progress("Somebody without a name", progress.events()) : progress;
    }

    private void unknown(String typed) {
        say("There is no lesson \"" + Clean.quoted(typed) + "\". Accepted: 1 to "
                + course.lessons().size() + ", \"exercise 1\", \"unaided\", \"progress\" or \"quit\".");
    }

    private String standing(Lesson l) {
        return switch (progress.standing(l, run)) {
            case NOT_BEGUN -> "";
            case UNDER_WAY -> " (" + progress.run(l) + " of " + run + " in a row)";
            case MASTERED -> " (mastered)";
        };
    }

    private void lesson(Lesson l) {
        say("");
        page.text(l).forEach(door::say);
        note(new Progress.Event(keep.day(), l.id(), "", "", 0, false, false, List.of()));
        l.experiments().forEach(this::experiment);
        say("");
        page.believed(l).forEach(door::say);
        say("");
        say("Exercises now? (Enter = yes, or \"no\")");
        if (pick("exercises > ", List.of("yes", "no"), "What one has to decide oneself is remembered.")
                .equals("yes")) {
            exercises(l);
        }
    }

    private void experiment(Lesson.Experiment e) {
        Tried tried = new Tried(e, diagnoser);
        say("");
        say("Try it. " + e.says());
        page.outcome(e, e.first()).forEach(door::say);
        Optional<Tried.Way> way = tried.way();
        way.ifPresent(w -> {
            say(e.foretell());
            String said = pick(
                    "foretell > ",
                    List.of("don't know", "more", "less", "same"),
                    "Whoever has foretold something remembers what came.");
            String is = w.name().toLowerCase(Locale.ROOT);
            say(
                    said.equals(is)
                            ? "Right: " + is + "."
                            : said.equals("don't know") ? "It is " + is + "." : "No: " + is + ".");
        });
        page.outcome(e, e.then()).forEach(door::say);
        say(e.notice());
        tryMore(e, tried);
    }

    /** The learner sets other values until a bare Enter. */
    private void tryMore(Lesson.Experiment e, Tried tried) {
        Question q = knowledge.question(e.vary()).orElseThrow();
        say("Another " + e.vary().replace('-', ' ') + (q.choices().isEmpty() ? "" : ", one of " + ids(q))
                + "? (Enter = go on, \"how\" = the formula)");
        while (true) {
            String typed = ask(e.vary() + " > ", List.of("how"), q.help());
            if (typed.isEmpty()) {
                return;
            }
            if (typed.equalsIgnoreCase("how")) {
                page.how(e).forEach(door::say);
                continue;
            }
            AnswerReader.Outcome read = reader.atPrompt(q, typed);
            if (read instanceof AnswerReader.Understood u) {
                if (u.answer() instanceof Answer.DontKnow) {
                    return;
                }
                Answers answers = tried.answers(e.first()).with(q.id(), u.answer(), typed);
                page.outcome(e, tried, answers).forEach(door::say);
            } else if (read instanceof AnswerReader.Again again) {
                say(again.sentence());
            }
        }
    }

    private static String ids(Question q) {
        return String.join(", ", q.choices().stream().map(Question.Choice::id).toList());
    }

    private void exercises(Lesson l) {
        for (int n = 1; n <= ROUND; n++) {
            exercise(l, "Exercise " + n + " of " + ROUND + ". " + l.title() + ".", false);
        }
        int in = progress.run(l);
        say("");
        say(
                progress.standing(l, run) == Progress.Standing.MASTERED
                        ? "The last " + run + " were right: this lesson is mastered."
                        : in + " in a row right; " + run + " in a row master the lesson. \"exercise " + l.order()
                                + "\" gives new ones.");
        if (!l.rules().isEmpty()) {
            say("To read on: "
                    + String.join(
                            ", ",
                            l.rules().stream().map(r -> "\"rule " + r + "\"").toList()) + ".");
        }
    }

    private void exercise(Lesson l, String title, boolean unaided) {
        long now = seed++;
        say("");
        Optional<Exercise> drawn = exercises.draw(l, now, unaided);
        if (drawn.isEmpty()) {
            say("No case fits an exercise here. Cases that you save are drawn from as well.");
            return;
        }
        Exercise e = drawn.get();
        say(title);
        exercisePage.story(e).forEach(door::say);
        open = true;
        List<Answer> replies = new ArrayList<>();
        for (Question part : e.parts()) {
            exercisePage.ask(e, part).forEach(door::say);
            replies.add(reply(part));
        }
        open = false;
        Marked m = exercises.mark(e, replies);
        exercisePage.marks(e, m).forEach(door::say);
        for (String b : m.misconceptions()) {
            page.believed(b, "Behind it there is often this").forEach(door::say);
        }
        note(new Progress.Event(
                keep.day(),
                l.id(),
                e.kind().name().toLowerCase(Locale.ROOT),
                e.from().name(),
                now,
                m.right(),
                unaided,
                m.misconceptions()));
    }

    private Answer reply(Question part) {
        while (true) {
            String typed = ask(part.id() + " > ", List.of("don't know"), part.help());
            if (typed.isEmpty()) {
                say("A reply is needed, or \"don't know\".");
                continue;
            }
            Optional<Answer> read =
                    part.choices().size() > ExercisePage.listed() ? named(part, typed) : picked(part, typed);
            if (read.isPresent()) {
                return read.get();
            }
        }
    }

    private Optional<Answer> picked(Question part, String typed) {
        AnswerReader.Outcome read = reader.atPrompt(part, typed);
        if (read instanceof AnswerReader.Understood u) {
            return Optional.of(u.answer());
        }
        say(((AnswerReader.Again) read).sentence());
        return Optional.empty();
    }

    /** One of many that are not listed: a number picks none, and what comes near is named. */
    private Optional<Answer> named(Question part, String typed) {
        boolean number = typed.matches("\\d+");
        AnswerReader.Outcome read = number ? null : reader.atPrompt(part, typed);
        if (read instanceof AnswerReader.Understood u) {
            return Optional.of(u.answer());
        }
        List<String> near = read instanceof AnswerReader.Again again
                        && !again.meanings().isEmpty()
                ? again.meanings()
                : Nearest.of(
                        typed,
                        part.choices().stream().collect(Collectors.toMap(Question.Choice::id, Question.Choice::text)));
        String which = near.stream()
                .flatMap(id -> part.choice(id).stream())
                .map(c -> "\"" + c.text() + "\"")
                .collect(Collectors.joining(" or "));
        say(
                which.isEmpty()
                        ? "No cause is called \"" + Clean.quoted(typed)
                                + "\". Say what it was in other words, or \"don't know\"."
                        : "\"" + Clean.quoted(typed) + "\" could be " + which + ". Which? Or say it in other words.");
        return Optional.empty();
    }

    private void note(Progress.Event e) {
        progress = progress.with(e);
        if (progress.name().isEmpty()) {
            return;
        }
        try {
            keep.learners().add(progress.name(), e);
        } catch (IOException x) {
            say("Your progress cannot be kept: " + Trouble.why(keep.learners().file(progress.name()), x) + ".");
        }
    }

    /** One of a few words, the first on a bare Enter. The words that work everywhere work here too. */
    private String pick(String prompt, List<String> words, String why) {
        return new Pick(new LearnersDoor(why), prompt, words, why).ask().orElseThrow(Quit::new);
    }

    /** A door at which the words that work everywhere in the course are answered before anything else sees them. */
    private final class LearnersDoor extends DoorAround {
        private final String why;

        LearnersDoor(String why) {
            super(Learning.this.door);
            this.why = why;
        }

        @Override
        public String ask(String prompt, List<String> words) {
            return Learning.this.ask(prompt, words, why);
        }
    }

    /** Asks for one line; the words that work everywhere are answered here. */
    private String ask(String prompt, List<String> words, String why) {
        List<String> offered = new ArrayList<>(words);
        offered.addAll(WORDS);
        while (true) {
            String typed = door.ask(prompt, offered).strip();
            String word = typed.toLowerCase(Locale.ROOT);
            if (word.equals("quit") || word.equals("exit")) {
                throw new Quit();
            } else if (word.equals("back")) {
                throw new Back();
            } else if (word.equals("why") || word.equals("why?")) {
                say(why);
            } else if (word.equals("help")) {
                say("Type an answer, or: " + String.join(", ", offered) + ". \"back\" leads to the list of lessons.");
            } else if (word.equals("define") || word.startsWith("define ")) {
                new TermPage(knowledge, door.width())
                        .lines(typed.substring("define".length()))
                        .forEach(door::say);
            } else if (word.equals("rule") || word.startsWith("rule ")) {
                new RulePage(knowledge, door.width())
                        .lines(typed.substring("rule".length()), null)
                        .forEach(door::say);
            } else {
                return typed;
            }
        }
    }

    private void say(String text) {
        if (text.isEmpty()) {
            door.say("");
            return;
        }
        String indent = text.startsWith("  ") ? "  " : "";
        Wrap.text(text.strip(), door.width(), indent, indent + (indent.isEmpty() ? "" : "   "))
                .forEach(door::say);
    }
}
