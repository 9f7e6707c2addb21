package pourwright.console;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import pourwright.advice.BadAnswer;
import pourwright.casebook.Forgetting;
import pourwright.casebook.Outcome;
import pourwright.casebook.SavedCases;
import pourwright.casebook.Trouble;
import pourwright.casebook.WholeFile;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.interview.Interviewer;
import pourwright.interview.Sizes;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.DontKnow;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** A conversation: one question at a time, then the answer, then whatever the person asks about it. */
public final class Conversation {
    private static final int SKIP_AFTER = 3;
    private static final int LONGEST_NAME = 100;
    private static final int MOST_NAMED_BACK = 6;
    private static final List<String> WORDS =
            List.of("why", "back", "help", "answers", "change", "enough", "don't know", "quit");
    private static final List<String> REVIEW_WORDS = List.of("change", "back", "answers", "help", "quit");
    private static final List<String> RESULT_WORDS = List.of(
            "answers",
            "change NUMBER",
            "again",
            "define WORD",
            "rule ID",
            "why",
            "cases",
            "save NAME",
            "outcome good",
            "back",
            "quit");

    /** Answers that the stock gives, and that belong to one liquid only. */
    private static final List<String> STOCK = List.of("cans-first", "cans-second");

    private final Door door;
    private final Around around;
    private final Knowledge knowledge;
    private final Path shop;
    private final Keeping keeping;
    private final AnswerReader reader;
    private final Job job;
    private final Deque<String> doubted = new ArrayDeque<>();
    private final Deque<String> asked = new ArrayDeque<>();
    private final Map<String, String> earlier = new HashMap<>();
    private Answers answers;
    private boolean enough;
    private boolean talked;
    private boolean reviewed;
    private boolean outOfTurn;
    /** The liquid whose stock was looked at. */
    private String stockOf = "";

    private Set<String> idle = Set.of();
    private int withoutNeeded;

    /** How a conversation ended. */
    public enum End {
        /** With advice. */
        ADVICE,
        /** With advice to stop. */
        STOP,
        /** With questions left; everything is kept. */
        UNFINISHED,
        /** By Ctrl-C; everything is kept. */
        INTERRUPTED
    }

    /**
     * @param door the way to the person
     * @param job what it is about
     * @param shop the workshop's folder, or null to keep nothing on disk
     * @param start answers already given
     */
    public Conversation(Door door, Job job, Path shop, Answers start) {
        this(door, job, shop, start, new Around(null, () -> ""));
    }

    /**
     * What lies around a conversation.
     *
     * @param examples the folder of the cases that came with the program, or null
     * @param day the day, as 2026-03-01, asked for only when it is written
     */
    public record Around(Path examples, Supplier<String> day) {}

    /**
     * @param door the way to the person
     * @param job what it is about
     * @param shop the workshop's folder, or null to keep nothing on disk
     * @param start answers already given
     * @param around where examples lie, and the day
     */
    public Conversation(Door door, Job job, Path shop, Answers start, Around around) {
        this.around = around;
        this.job = job;
        this.knowledge = job.knowledge();
        this.door = new NowDoor(door, knowledge::emergencies);
        this.shop = shop;
        this.keeping = new Keeping(shop, job.word(), knowledge, this::say);
        this.reader = new AnswerReader(knowledge);
        this.answers = start;
        start.all().keySet().forEach(asked::push);
    }

    /** Talks until the person has the plan and leaves. */
    public End run() {
        try (keeping) {
            return kept();
        }
    }

    private End kept() {
        try {
            keeping.begin(answers);
            job.prepare();
            confirmKit();
            listen();
            return talk();
        } catch (Quit e) {
            say(resumable() ? "Kept. \"pourwright resume\" goes on from here." : "Left." + keeping.lost());
            return End.UNFINISHED;
        } catch (Door.Ended e) {
            return leave(End.UNFINISHED, "The input ended");
        } catch (Door.Interrupted e) {
            return leave(End.INTERRUPTED, "Stopped");
        }
    }

    /** True when there is something to go on from, and all of it is on disk. */
    private boolean resumable() {
        return keeping.kept() && !answers.all().isEmpty();
    }

    private End leave(End end, String how) {
        if (shown != null) {
            if (end == End.INTERRUPTED) {
                say(how + " after the result was shown."
                        + (keeping.kept() ? " \"pourwright resume\" shows it again." : ""));
                return end;
            }
            keeping.end();
            say(how + " after the result was shown.");
            return ended();
        }
        String next = "";
        try {
            Optional<Interviewer.Next> n = job.next(answers);
            if (n.isPresent()) {
                next = " The next question was '" + n.get().question().id() + "'"
                        + (n.get().question().example() == null
                                ? "."
                                : ", for example " + n.get().question().example() + ".");
            }
        } catch (BadAnswer ignored) {
            next = "";
        }
        say(how + "." + next
                + (resumable() ? " Everything is kept: \"pourwright resume\" goes on from here." : keeping.lost()));
        return end;
    }

    private Job.Result shown;
    private Path saved;

    private End ended() {
        return shown.stop() ? End.STOP : End.ADVICE;
    }

    /** Kit that was asked once is shown in one line and taken over on Enter. */
    private void confirmKit() {
        if (!job.usesKit()) {
            return;
        }
        Answers kit = keeping.kit();
        List<String> fresh =
                kit.all().keySet().stream().filter(id -> !answers.has(id)).toList();
        if (fresh.isEmpty()) {
            return;
        }
        say("Your kit as last time (Enter = yes, or \"no\"): "
                + String.join(
                        "; ",
                        fresh.stream()
                                .map(id -> id.replace('-', ' ') + " "
                                        + Page.said(id, kit.all().get(id).answer(), knowledge))
                                .toList())
                + ".");
        if (yes("kit > ", "The kit of a workshop seldom changes. \"no\" asks each part of it again.")) {
            fresh.forEach(id -> {
                Answers.Given g = kit.all().get(id);
                answers = answers.with(id, g.answer(), g.raw());
                keeping.set(id, g.raw(), answers);
            });
            say("  = taken over (\"answers\" shows it, \"change\" alters one)");
        }
    }

    /** What is at hand of the liquid is shown in one line once it is named, and anew when it becomes another. */
    private void confirmStock() {
        String material = answers.choice("material");
        if (material.isEmpty() || material.equals(stockOf)) {
            return;
        }
        if (!stockOf.isEmpty()) {
            STOCK.stream().filter(answers::has).forEach(this::forget);
            STOCK.forEach(earlier::remove);
        }
        stockOf = material;
        Optional<Job.Heard> found = STOCK.stream().anyMatch(answers::has) ? Optional.empty() : job.atHand(answers);
        if (found.isEmpty()) {
            return;
        }
        found.get().lines().forEach(this::say);
        if (found.get().answers().all().isEmpty()) {
            return;
        }
        if (yes(
                "cans > ",
                "A plan that knows the stock says whether it suffices, which can goes first and what it costs.")) {
            found.get().answers().all().forEach((id, g) -> {
                answers = answers.with(id, g.answer(), g.raw());
                keeping.set(id, g.raw(), answers);
            });
            say("  = taken over (\"answers\" shows it, \"change\" alters one)");
        }
    }

    /** A line in the person's own words goes before all questions; what was understood is read back. */
    private void listen() {
        Optional<String> invitation = job.invitation(answers);
        if (invitation.isEmpty()) {
            return;
        }
        say(invitation.get());
        String line = door.ask(job.word() + " > ", List.of()).strip();
        if (line.isEmpty()) {
            return;
        }
        Job.Heard heard = job.hear(line);
        if (heard.lines().isEmpty()) {
            say("None of the words is one I know. Questions will do.");
            return;
        }
        say("Understood:");
        heard.lines().forEach(l -> say("  " + l));
        if (!heard.leftOut().isEmpty()) {
            say(notUnderstood(heard.leftOut()));
        }
        say("Is that right? (Enter = yes, or \"no\" to be asked instead)");
        if (yes("right > ", "Words can mean two things. \"no\" lets all of it go and asks instead.")) {
            job.agreed();
            heard.answers().all().forEach((id, g) -> {
                if (!answers.has(id)) {
                    answers = answers.with(id, g.answer(), g.raw());
                    asked.push(id);
                    keeping.set(id, g.raw(), answers);
                }
            });
        }
    }

    /** Names back what was not understood, so that nobody believes it was. */
    public static String notUnderstood(List<String> stretches) {
        List<String> shown = stretches.stream()
                .limit(MOST_NAMED_BACK)
                .map(s -> "\"" + Clean.quoted(s) + "\"")
                .toList();
        int more = stretches.size() - shown.size();
        return "Not understood, and left out: " + String.join(", ", shown)
                + (more > 0 ? " and " + more + " more." : ".");
    }

    private boolean yes(String prompt, String why) {
        return new Pick(door, prompt, List.of("yes", "no"), why)
                .ask()
                .orElseThrow(Quit::new)
                .equals("yes");
    }

    /** The person leaves from a short question. */
    private static final class Quit extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * All answers once more before the result, so that a slip is mended before it costs a pour; true when the result can
     * be shown.
     */
    private boolean review() {
        reviewed = true;
        say("");
        say("Your answers:");
        Page.answers(answers, knowledge, door.width()).forEach(door::say);
        say("Enter = show the result. Or \"change NUMBER\", \"back\", \"quit\".");
        while (true) {
            String line = door.ask("review > ", REVIEW_WORDS).strip();
            String word = Words.meant(line.toLowerCase(Locale.ROOT), REVIEW_WORDS);
            if (line.isEmpty()
                    || List.of("enough", "yes", "don't know", "dk", "?").contains(word)) {
                return true;
            } else if (word.equals("quit") || word.equals("exit")) {
                throw new Quit();
            } else if (word.equals("answers")) {
                Page.answers(answers, knowledge, door.width()).forEach(door::say);
            } else if (word.equals("back")) {
                back();
                reviewed = false;
                return false;
            } else if (word.startsWith("change") || word.matches("\\d{1,3}")) {
                if (change(
                        word.startsWith("change")
                                ? line.substring(Math.min("change".length(), line.length()))
                                        .strip()
                                : line)) {
                    reviewed = false;
                    return false;
                }
            } else {
                say((word.equals("why") || word.equals("help")
                                ? "A slip is cheaper here than in the cup. "
                                : "\"" + Clean.quoted(line) + "\" is not a word here. ")
                        + "Accepted: Enter (show the result), change NUMBER, answers, back, quit.");
            }
        }
    }

    private End talk() {
        say("Type an answer, or: why, back, help, answers, change, enough, don't know, quit.");
        while (true) {
            confirmStock();
            Optional<Interviewer.Next> next = nextQuestion();
            if (next.isPresent() && (!enough || job.tooEarly(answers).isPresent())) {
                reviewed = false;
                askAgainOnlySoOften(next.get().question());
                askOne(next.get());
                talked = true;
            } else if (!talked || reviewed || job.endsWithItsResult() || review()) {
                shown = job.result(answers, door.width(), door.plain());
                Optional<End> end = result();
                if (end.isPresent()) {
                    return end.get();
                }
            }
        }
    }

    /** What nothing can be said without is asked again after "don't know", but not for ever. */
    private void askAgainOnlySoOften(Question q) {
        if (!answers.has(q.id())) {
            return;
        }
        say(job.tooEarly(answers).orElse("This answer is needed: nothing can be said without it."));
        if (++withoutNeeded >= SKIP_AFTER) {
            throw new Quit();
        }
    }

    /** The next question; answers that cannot both be true are settled first. */
    private Optional<Interviewer.Next> nextQuestion() {
        while (true) {
            try {
                Optional<Job.Doubt> doubt = doubted.isEmpty() ? job.doubt(answers) : Optional.empty();
                if (doubt.isPresent()) {
                    say(doubt.get().say());
                    doubt.get().questions().forEach(id -> {
                        forget(id);
                        doubted.add(id);
                    });
                }
                if (!doubted.isEmpty()) {
                    Question q = knowledge.question(doubted.remove()).orElseThrow();
                    return Optional.of(new Interviewer.Next(
                            q, List.of("Two answers cannot both be true, so both are asked again.")));
                }
                return job.next(answers);
            } catch (BadAnswer e) {
                say(e.getMessage());
                forget(e.field());
                // What cannot be is not offered again: Enter alone would go round in circles.
                earlier.remove(e.field());
            }
        }
    }

    /** Asks until the question is answered or the person turns elsewhere, or the person turns elsewhere. */
    private void askOne(Interviewer.Next next) {
        Question q = next.question();
        show(next);
        int failures = 0;
        int empty = 0;
        String doubtful = "";
        List<String> meanings = List.of();
        while (true) {
            String line = door.ask(q.id() + " > ", offered(q)).strip();
            String word = line.toLowerCase(Locale.ROOT);
            if (line.isEmpty()) {
                String before = earlier.get(q.id());
                if (before != null) {
                    line = before;
                } else if (++empty >= SKIP_AFTER) {
                    line = "don't know";
                } else {
                    say("Nothing was typed. Answer, or type \"don't know\".");
                    continue;
                }
            } else if (word.equals("quit") || word.equals("exit") || word.equals("stop")) {
                throw new Quit();
            } else if (word.equals("why") || word.equals("why?")) {
                next.reasons().forEach(this::say);
                job.settles(q, answers, door.width()).forEach(door::say);
                continue;
            } else if (word.startsWith("define ")) {
                define(line.substring("define ".length()).strip());
                continue;
            } else if (word.equals("help")) {
                help(q);
                continue;
            } else if (word.equals("answers")) {
                Page.answers(answers, knowledge, door.width()).forEach(door::say);
                say("\"change 3\" or \"change " + firstAnswered() + "\" alters one.");
                continue;
            } else if (word.equals("enough")) {
                Optional<String> early = job.tooEarly(answers);
                if (early.isPresent()) {
                    say(early.get());
                    continue;
                }
                // Who says "enough" wants the result and no more questions, not even about the answers.
                enough = true;
                reviewed = true;
                return;
            } else if (word.equals("back")) {
                if (!outOfTurn) {
                    back();
                }
                return;
            } else if (word.startsWith("change ") || word.equals("change")) {
                if (change(line.substring("change".length()).strip())) {
                    return;
                }
                continue;
            }
            if (aside(line)) {
                return;
            }
            if (!meanings.isEmpty() && line.matches("\\d")) {
                int n = Integer.parseInt(line);
                if (n >= 1 && n <= meanings.size()) {
                    line = meanings.get(n - 1);
                }
            }
            if (together(q, line)) {
                return;
            }
            AnswerReader.Outcome outcome = reader.atPrompt(q, line);
            if (!(outcome instanceof AnswerReader.Understood) && !meanings.isEmpty()) {
                // "45" was asked about, and "minutes" answers that.
                String whole = doubtful + " " + line;
                if (reader.atPrompt(q, whole) instanceof AnswerReader.Understood u) {
                    outcome = u;
                    line = whole;
                }
            }
            if (outcome instanceof AnswerReader.Understood u) {
                accept(q, u.answer(), line);
                return;
            }
            AnswerReader.Again again = (AnswerReader.Again) outcome;
            say(again.sentence());
            meanings = again.meanings();
            doubtful = line;
            for (int i = 0; i < meanings.size(); i++) {
                say("  " + (i + 1) + ". " + meanings.get(i));
            }
            if (++failures >= SKIP_AFTER) {
                say("Type \"help\" for how to find it, or \"don't know\" to go on without.");
            }
        }
    }

    /** Takes what answers no question but changes the job; true when the line was that. */
    private boolean aside(String line) {
        Optional<Job.Heard> heard = job.aside(line, answers);
        heard.ifPresent(h -> {
            h.answers().all().forEach((id, g) -> {
                answers = answers.with(id, g.answer(), g.raw());
                keeping.set(id, g.raw(), answers);
            });
            h.lines().forEach(l -> say("  = " + l));
        });
        return heard.isPresent();
    }

    /** Takes "20 x 15 x 12 cm" as the answers to several questions; false when it is not that. */
    private boolean together(Question first, String line) {
        List<String> sizes = first.together().isEmpty() ? List.of() : Sizes.of(line);
        List<Question> questions = new ArrayList<>(List.of(first));
        first.together().forEach(id -> questions.add(knowledge.question(id).orElseThrow()));
        if (sizes.size() < 2 || sizes.size() > questions.size()) {
            return false;
        }
        List<Answer> read = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            if (!(reader.atPrompt(questions.get(i), sizes.get(i)) instanceof AnswerReader.Understood u)) {
                return false;
            }
            read.add(u.answer());
        }
        for (int i = 0; i < sizes.size(); i++) {
            say(questions.get(i).id() + " > " + sizes.get(i));
            accept(questions.get(i), read.get(i), sizes.get(i));
        }
        return true;
    }

    private void show(Interviewer.Next next) {
        Question q = next.question();
        say("");
        String before = earlier.get(q.id());
        // The help says what a picture shows: where it has no room it is left out whole.
        boolean room = q.picture().stream().allMatch(l -> l.length() + 2 <= door.width());
        if (room && !door.plain()) {
            q.picture().forEach(l -> door.say("  " + l));
        }
        say(q.ask() + (q.several() ? " (one or more)" : "") + (before == null ? "" : "  (Enter = " + before + ")"));
        if (!q.choices().isEmpty()) {
            for (int i = 0; i < q.choices().size(); i++) {
                Question.Choice c = q.choices().get(i);
                say("  " + (i + 1) + ". " + c.text() + (c.text().equals(c.id()) ? "" : " [" + c.id() + "]"));
            }
        } else if (q.example() != null) {
            say("  for example " + q.example());
        }
    }

    private void help(Question q) {
        say(q.help());
        if (q.kind().equals("quantity")) {
            say("Accepted: " + Show.quantity(siOf(q, q.min()), q.unit(), dimension(q)) + " to "
                    + Show.quantity(siOf(q, q.max()), q.unit(), dimension(q))
                    + ", in any usual unit; \"about\" and ranges are fine.");
        }
        if (q.kind().equals("material")) {
            knowledge.materials().values().forEach(m -> say("  " + m.id() + ": " + m.name()));
        }
        say(
                "Words at every prompt: why, back, answers, change NUMBER, enough, don't know, quit. \"why\" gives the reason for"
                        + " the question, \"enough\" the advice with what is known. When something goes wrong at the"
                        + " bench, \"now foam at the rim\" helps at once.");
    }

    private static double siOf(Question q, double value) {
        return UnitBook.toSi(value, q.unit(), dimension(q));
    }

    private static Dimension dimension(Question q) {
        return Dimension.named(q.quantity());
    }

    private void accept(Question q, Answer answer, String line) {
        // A choice typed as a number or a beginning is kept by its id, which means the same for ever.
        String kept = answer instanceof Answer.Choice c
                ? c.id()
                : answer instanceof Answer.Several s ? String.join(", ", s.ids()) : line;
        Object raw = answer instanceof Answer.DontKnow ? null : kept;
        answers = answers.with(q.id(), answer, raw);
        if (!outOfTurn) {
            asked.remove(q.id());
            asked.push(q.id());
        }
        String before = earlier.put(q.id(), answer instanceof Answer.DontKnow ? "don't know" : line);
        keeping.set(q.id(), raw, answers);
        echo(q, answer);
        if (before != null && !before.equals(line)) {
            idleNow();
        }
    }

    /** After an answer was changed: which earlier answers no longer matter. They are kept. */
    private void idleNow() {
        Set<String> now = new TreeSet<>(answers.all().keySet());
        now.removeAll(job.relevant(answers));
        Set<String> fresh = new TreeSet<>(now);
        fresh.removeAll(idle);
        idle = now;
        if (!fresh.isEmpty()) {
            say("  No longer asked for with this change, but kept: " + String.join(", ", fresh) + ".");
        }
    }

    /** Shows what was read, in the person's own unit, so that a slip is seen at once. */
    private void echo(Question q, Answer answer) {
        say("  = " + (answer instanceof Answer.DontKnow ? "don't know" : Page.said(q.id(), answer, knowledge)));
    }

    private void back() {
        if (asked.isEmpty()) {
            say("This is the first question.");
            return;
        }
        forget(asked.pop());
    }

    private void forget(String id) {
        Answers.Given given = answers.all().get(id);
        if (given != null) {
            earlier.put(id, given.raw() == null ? "don't know" : given.raw().toString());
        }
        answers = answers.without(id);
        asked.remove(id);
        enough = false;
        keeping.unset(id, answers);
    }

    /** Takes one answer back so that it is asked again; true when there was such an answer. */
    private boolean change(String which) {
        List<String> ids = new ArrayList<>(answers.all().keySet());
        String id = which;
        if (which.matches("\\d{1,3}")) {
            int n = Integer.parseInt(which);
            id = n >= 1 && n <= ids.size() ? ids.get(n - 1) : "";
        }
        if (!ids.contains(id)) {
            say("Say which answer: \"change 1\" to \"change " + Math.max(1, ids.size())
                    + "\", as \"answers\" numbers them.");
            return false;
        }
        changing(id);
        return true;
    }

    /** Asks one question out of turn; until it is answered anew the old answer stands, and "back" leaves it so. */
    private void changing(String id) {
        knowledge.question(id).ifPresent(q -> {
            Answers.Given given = answers.all().get(id);
            earlier.put(id, given.raw() == null ? "don't know" : given.raw().toString());
            boolean wasEnough = enough;
            outOfTurn = true;
            try {
                askOne(new Interviewer.Next(q, List.of(q.help())));
            } finally {
                outOfTurn = false;
            }
            enough = wasEnough;
        });
    }

    private Optional<End> result() {
        if (job.usesKit()) {
            keeping.remember(answers);
        }
        say("");
        shown.first().forEach(door::say);
        say("");
        say(shown.next());
        if (job.endsWithItsResult()) {
            return Optional.of(ended());
        }
        List<String> offered = resultWords().stream().map(w -> w.split(" ")[0]).toList();
        int width = door.width();
        int nothing = 0;
        while (true) {
            String line = door.ask(job.word() + " > ", offered).strip();
            if (door.width() != width) {
                // A window that was made narrower or wider gets lines that fit it.
                width = door.width();
                shown = job.result(answers, width, door.plain());
            }
            String word = line.toLowerCase(Locale.ROOT);
            nothing = line.isEmpty() || DontKnow.typed(line) ? nothing + 1 : 0;
            if (nothing >= SKIP_AFTER) {
                word = "quit";
            }
            String rest =
                    line.contains(" ") ? line.substring(line.indexOf(' ') + 1).strip() : "";
            String verb = Words.meant(word.contains(" ") ? word.substring(0, word.indexOf(' ')) : word, offered);
            if (verb.equals("what-if") && word.startsWith("what ")) {
                // "what if cup-volume=5 L" is meant, "what do I do first" is not.
                boolean meant = word.startsWith("what if ");
                verb = meant ? verb : word;
                rest = meant ? line.substring("what if ".length()).strip() : rest;
            }
            if (verb.equals("why") && word.startsWith("why not ")) {
                verb = "why-not";
                rest = line.substring("why not ".length()).strip();
            }
            switch (verb) {
                case "quit", "exit" -> {
                    keeping.end();
                    say("Done.");
                    return Optional.of(ended());
                }
                case "answers" -> Page.answers(answers, knowledge, door.width()).forEach(door::say);
                case "again" -> shown.first().forEach(door::say);
                case "define" -> define(rest);
                case "save" -> save(rest);
                case "cases" -> cases();
                case "outcome" -> outcome(rest);
                case "back" -> {
                    shown = null;
                    back();
                    return Optional.empty();
                }
                case "change" -> {
                    if (change(rest)) {
                        shown = null;
                        return Optional.empty();
                    }
                }
                case "rule" ->
                    shown.say(verb, rest)
                            .orElse(new RulePage(knowledge, door.width()).lines(rest, null))
                            .forEach(door::say);
                case "why" -> {
                    Optional<List<String>> why = shown.say(verb, rest);
                    why.ifPresent(lines -> lines.forEach(door::say));
                    if (why.isEmpty()) {
                        say("\"how 1\" explains the first piece of advice, \"how 2\" the second, and so on.");
                    }
                }
                default -> {
                    Optional<List<String>> lines = shown.say(verb, rest);
                    if (lines.isEmpty() && aside(line)) {
                        shown = job.result(answers, door.width(), door.plain());
                        shown.first().forEach(door::say);
                    } else if (lines.isEmpty() && live(verb)) {
                        say("");
                        say(shown.next());
                    } else if (lines.isPresent()) {
                        lines.get().forEach(door::say);
                    } else {
                        say((line.isEmpty() ? "" : "\"" + Clean.quoted(line) + "\" is not a word here. ") + "Words: "
                                + String.join(", ", resultWords()) + ".");
                    }
                }
            }
        }
    }

    /** Does a word with a dialogue of its own. What is left in the middle of it can be gone on with, so nothing is cleared. */
    private boolean live(String verb) {
        Job.Result of = shown;
        shown = null;
        boolean done = of.live(verb, door, (id, text) -> {
            answers = answers.with(id, new Answer.Text(text), text);
            keeping.set(id, text, answers);
        });
        shown = done ? job.result(answers, door.width(), door.plain()) : of;
        return done;
    }

    private List<String> resultWords() {
        List<String> words = new ArrayList<>(shown.words());
        words.addAll(RESULT_WORDS);
        return words;
    }

    private void define(String term) {
        new TermPage(knowledge, door.width()).lines(term).forEach(door::say);
    }

    private void save(String name) {
        String plain = Forgetting.plain(name);
        if (plain.length() > LONGEST_NAME) {
            say("Give the case a shorter name: " + LONGEST_NAME + " letters are the most.");
            return;
        }
        if (plain.isEmpty()) {
            say("Give the case a name: \"save horse ear mould\".");
            return;
        }
        if (shop == null) {
            say("There is no workshop folder to save in.");
            return;
        }
        Path file = shop.resolve("cases").resolve(plain + ".case.json");
        if (Files.exists(file) && !writesOver(file)) {
            say("Nothing was written. \"save\" with another name keeps both.");
            return;
        }
        try {
            WholeFile.write(file, shown.caseText(name));
            saved = file;
            say("Saved as " + file + ". Later, \"outcome " + plain
                    + " good\" or \"bad\" and what you saw tells how it came out.");
        } catch (IOException e) {
            say("The case cannot be saved in " + file.getParent() + ": " + Trouble.why(file.getParent(), e)
                    + ". Nothing else is changed; \"save\" tries again.");
        }
    }

    /** The saved cases that come nearest by what decides. */
    private void cases() {
        List<SavedCases.Saved> all = new SavedCases(shop, around.examples()).of(job.word(), knowledge);
        job.picture(answers)
                .ifPresent(here -> new AlikePage(knowledge, door.width())
                        .lines(here, all, job::picture)
                        .forEach(door::say));
    }

    /** How a case came out: the one named, or the one that was just saved. */
    private void outcome(String line) {
        Optional<Outcome> told = Outcome.read(line);
        if (told.isEmpty() || told.get().name().isEmpty() && saved == null) {
            say(
                    "Say the case and how it came out: \"outcome horse ear good\", or \"outcome horse ear bad pinholes at the"
                            + " tips\".");
            return;
        }
        try {
            Path file = told.get().name().isEmpty()
                    ? saved
                    : new SavedCases(shop, null).named(told.get().name());
            say("Kept: " + told.get().write(file, around.day().get()) + ".");
        } catch (BadAnswer e) {
            say(e.getMessage());
        }
    }

    /** A case that was saved before is not lost on Enter. */
    private boolean writesOver(Path file) {
        say("There is a case of that name already: " + file + ". Write over it? (Enter = no, or \"yes\")");
        return new Pick(
                        door,
                        "save > ",
                        List.of("no", "yes"),
                        "What was saved under this name before would be gone. \"no\" leaves it as it is.")
                .ask()
                .orElse("no")
                .equals("yes");
    }

    private String firstAnswered() {
        return answers.all().isEmpty()
                ? "material"
                : answers.all().keySet().iterator().next();
    }

    private static List<String> offered(Question q) {
        List<String> words = new ArrayList<>(WORDS);
        q.choices().forEach(c -> words.add(c.id()));
        return words;
    }

    private void say(String text) {
        if (text.isEmpty()) {
            door.say("");
            return;
        }
        String indent = text.startsWith("  ") ? "  " : "";
        Wrap.text(text.strip(), door.width(), indent, indent.isEmpty() ? "" : "    ")
                .forEach(door::say);
    }
}
