package pourwright.cli;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jline.terminal.Terminal;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.casebook.OwnRuns;
import pourwright.casebook.ShopLock;
import pourwright.casebook.StockAnswers;
import pourwright.casebook.Trouble;
import pourwright.console.AsciiDoor;
import pourwright.console.Conversation;
import pourwright.console.DiagnoseJob;
import pourwright.console.Door;
import pourwright.console.JLineDoor;
import pourwright.console.Job;
import pourwright.console.KitJob;
import pourwright.console.NowDoor;
import pourwright.console.Pick;
import pourwright.console.PipeDoor;
import pourwright.console.PlanJob;
import pourwright.console.VentsJob;
import pourwright.console.Wrap;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.StockList;
import pourwright.stock.Can;

/** Opens the right door to the person and talks. */
final class Talk {
    private static final int USUAL_WIDTH = 80;
    private static final int NARROWEST = 20;
    private static final int WIDEST = 500;

    private Talk() {}

    /** The console: offers to resume what was left, then asks what it is about. */
    static ExitCode console(Program program, SharedOptions shared) {
        Path shop = program.shop(shared.shop);
        return with(program, shared, door -> {
            String greeting =
                    "Pourwright plans a pour, looks for vents or finds what went wrong, and says why. It does not"
                            + " replace the safety data sheet.";
            Wrap.text(greeting, door.width(), "", "").forEach(door::say);
            Optional<Unfinished> left = Unfinished.in(shop);
            if (left.isPresent()) {
                switch (left.get().ask(door)) {
                    case LEAVE -> {
                        return Conversation.End.UNFINISHED;
                    }
                    case GO_ON -> {
                        return goOn(program, shared, door, shop, Answers.NONE);
                    }
                    case ANEW -> {}
                }
            }
            Wrap.text(
                            "Plan a pour, look for vents, diagnose a bad part, test the vacuum kit, or learn? (Enter = plan, or \"vents\", \"diagnose\", \"kit\", \"learn\")",
                            door.width(),
                            "",
                            "")
                    .forEach(door::say);
            // Not before: the first question needs none of it, and reading it would keep the line editor waiting.
            Future<Knowledge> reading = Later.readSoon(() -> program.knowledgeOfWorkshop(shared));
            Optional<String> said = new Pick(
                            door,
                            "word > ",
                            List.of("plan", "vents", "diagnose", "kit", "learn"),
                            "A plan is for a pour still to come. Vents are for a mould still to be made. A diagnosis is for a"
                                    + " part that came out wrong. A test of the kit takes readings of its gauge. The course is for"
                                    + " new staff.")
                    .ask();
            if (said.isEmpty()) {
                return Conversation.End.UNFINISHED;
            }
            if (said.get().equals("learn")) {
                return LearnCommand.learning(program, shared, door).run("", null);
            }
            Job job = job(said.get(), program, shared, () -> Later.ready(reading));
            return new Conversation(door, job, shop, Answers.NONE, around(program)).run();
        });
    }

    /** The job of a word, for whoever has its answers already. */
    static Job jobOf(String word, Program program, SharedOptions shared) {
        return job(word, program, shared, () -> program.knowledgeOfWorkshop(shared));
    }

    private static Job job(String word, Program program, SharedOptions shared, Supplier<Knowledge> knowledge) {
        return switch (word) {
            case "diagnose" -> new DiagnoseJob(new Diagnoser(program.knowledgeForDiagnosis(shared, true)));
            case "vents" -> new VentsJob(knowledge.get(), new MeshFiles(null), advice -> {});
            case "kit" ->
                new KitJob(
                        KnowledgeReader.withObservations(program.knowledgeFolder(shared), knowledge.get()),
                        new KitKeeping(program.shop(shared.shop), program.today(), true, true));
            default -> planJob(program, shared, knowledge.get());
        };
    }

    private static PlanJob planJob(Program program, SharedOptions shared, Knowledge knowledge) {
        Path shop = program.shop(shared.shop);
        return new PlanJob(
                knowledge,
                program.clock(),
                run -> {
                    if (shop == null) {
                        return "";
                    }
                    try {
                        OwnRuns.keep(shop, run);
                        return "Kept as a run of your own: the next plan with this material and kit reckons with it.";
                    } catch (IOException e) {
                        return "This run cannot be kept in " + shop + ": " + Trouble.why(shop, e) + ".";
                    }
                },
                new PlanJob.Shelf() {
                    @Override
                    public Map<String, List<Can>> of(String material) {
                        return StockAnswers.of(StockList.read(shop, null), material, LocalDate.parse(program.today()));
                    }

                    @Override
                    public String ending() {
                        return shared.shop == null ? "" : " --shop \"" + shop + "\"";
                    }
                },
                (c, rest) ->
                        program.sheets(shared, knowledge, new MeshFiles(null)).typed(c, rest),
                (c, rest) ->
                        CardFile.typed(c, rest, knowledge, Versions.line(knowledge, program.knowledgeFolder(shared))));
    }

    /** The cases that came with the program, and the day. */
    private static Conversation.Around around(Program program) {
        return new Conversation.Around(program.casesFolder(), program::today);
    }

    /** A conversation that was left. */
    record Left(Job job, Answers answers) {}

    /** The conversation that was left in a workshop's folder, if there is one. */
    static Optional<Left> left(Program program, SharedOptions shared, Path shop) {
        // What another console has open now was not left.
        if (!Journal.standsIn(shop) || ShopLock.isHeld(shop)) {
            return Optional.empty();
        }
        Job job = jobLeft(program, shared, shop);
        return new Journal(shop, job.word())
                .unfinished(new AnswersJson(job.knowledge()))
                .map(answers -> new Left(job, answers));
    }

    /** Goes on with what was left; what was given now is added where that has no answer of its own. */
    private static Conversation.End goOn(Program program, SharedOptions shared, Door door, Path shop, Answers given) {
        Optional<Left> left = left(program, shared, shop);
        // Where no answer of it can be read any more, the conversation says so and asks for them again.
        Job job = left.isPresent() ? left.get().job() : jobLeft(program, shared, shop);
        Answers answers = left.isPresent() ? left.get().answers() : Answers.NONE;
        List<String> passedOver = new ArrayList<>();
        for (var e : given.all().entrySet()) {
            if (answers.has(e.getKey()) || job.knowledge().question(e.getKey()).isEmpty()) {
                passedOver.add(e.getKey());
            } else {
                answers = answers.with(
                        e.getKey(), e.getValue().answer(), e.getValue().raw());
            }
        }
        if (!passedOver.isEmpty()) {
            String text =
                    "Given now and not taken over: " + String.join(", ", passedOver) + ". \"change\" alters an answer.";
            Wrap.text(text, door.width(), "", "").forEach(door::say);
        }
        return new Conversation(door, job, shop, answers, around(program)).run();
    }

    private static Job jobLeft(Program program, SharedOptions shared, Path shop) {
        return job(Journal.wordLeft(shop), program, shared, () -> program.knowledgeOfWorkshop(shared));
    }

    /** Begins a conversation, once it is clear what becomes of one that was left. From a pipe nobody can be asked. */
    private static Conversation.End begin(
            Program program, SharedOptions shared, Door door, Path shop, Supplier<Job> job, Answers start) {
        Optional<Unfinished> left = door.person() ? Unfinished.in(shop) : Optional.empty();
        Unfinished.Then then = left.isPresent() ? left.get().ask(door) : Unfinished.Then.ANEW;
        return switch (then) {
            case LEAVE -> Conversation.End.UNFINISHED;
            case GO_ON -> goOn(program, shared, door, shop, start);
            case ANEW -> new Conversation(door, job.get(), shop, start, around(program)).run();
        };
    }

    /** Straight into a plan, with answers already given. */
    static ExitCode plan(Program program, SharedOptions shared, Supplier<Knowledge> knowledge, Answers start) {
        Future<Knowledge> reading = Later.read(knowledge);
        Path shop = program.shop(shared.shop);
        return with(
                program,
                shared,
                door -> begin(
                        program, shared, door, shop, () -> planJob(program, shared, Later.ready(reading)), start));
    }

    /** Straight into the search for trapped air, with answers already given. */
    static ExitCode vents(Program program, SharedOptions shared, Supplier<VentsJob> job, Answers start) {
        Future<VentsJob> reading = Later.read(job);
        Path shop = program.shop(shared.shop);
        return with(program, shared, door -> begin(program, shared, door, shop, () -> Later.ready(reading), start));
    }

    /** Straight into a diagnosis, with answers already given, and the family of the liquid or nothing. */
    static ExitCode diagnose(
            Program program,
            SharedOptions shared,
            Supplier<DiagnosticKnowledge> knowledge,
            Answers start,
            String family) {
        Future<DiagnosticKnowledge> reading = Later.read(knowledge);
        Path shop = program.shop(shared.shop);
        return with(
                program,
                shared,
                door -> begin(
                        program,
                        shared,
                        door,
                        shop,
                        () -> new DiagnoseJob(new Diagnoser(Later.ready(reading)), family),
                        start));
    }

    /** Straight into a job, with answers already given. */
    static ExitCode job(Program program, SharedOptions shared, Job job, Answers start) {
        return job(program, shared, job, program.shop(shared.shop), start);
    }

    /** The same with the folder to keep everything in, or null to keep nothing. */
    static ExitCode job(Program program, SharedOptions shared, Job job, Path shop, Answers start) {
        return with(program, shared, door -> new Conversation(door, job, shop, start, around(program)).run());
    }

    /** A talk through a door. */
    @FunctionalInterface
    interface Through {
        Conversation.End run(Door door);
    }

    /** Opens a door, talks, closes it; the terminal is restored whatever happens. */
    static ExitCode with(Program program, SharedOptions shared, Through talk) {
        boolean dumb = shared.plain
                || program.environment("TERM").equals("dumb")
                || program.environment("TERM").isEmpty();
        boolean tests = program.in() != System.in;
        Thread editor = dumb || tests ? null : JLineDoor.prepare();
        boolean terminal = !tests && Terminals.atBothEnds();
        if (!dumb && terminal) {
            try (Terminal opened = Terminals.open(program.environment("TERM"));
                    JLineDoor door = door(opened, editor)) {
                // While a line is edited the editor sees Ctrl-C first; at any other moment this does.
                opened.handle(Terminal.Signal.INT, signal -> program.interrupted());
                return code(guarded(program, shared, legible(program, door), talk));
            } catch (IOException | IllegalStateException e) {
                // No usable terminal after all: lines will do.
                return code(guarded(program, shared, legible(program, pipe(program, width(program), false)), talk));
            }
        }
        if (!tests) {
            SystemSignals.on("INT", program::interrupted);
        }
        int width = terminal ? widthOfTerminal(program) : width(program);
        PipeDoor lines = pipe(program, width, !terminal);
        ExitCode code = code(guarded(program, shared, terminal ? legible(program, lines) : lines, talk));
        program.out().flush();
        return code;
    }

    private static JLineDoor door(Terminal opened, Thread editor) {
        try {
            editor.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return new JLineDoor(opened);
    }

    /** A terminal whose language settings name no Unicode is spoken to in plain characters. */
    private static Door legible(Program program, Door door) {
        String set = Stream.of("LC_ALL", "LC_CTYPE", "LANG")
                .map(program::environment)
                .filter(v -> !v.isEmpty())
                .findFirst()
                .orElse("")
                .toLowerCase(Locale.ROOT);
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        return windows || set.contains("utf-8") || set.contains("utf8") ? door : new AsciiDoor(door);
    }

    private static Conversation.End guarded(Program program, SharedOptions shared, Door door, Through talk) {
        try {
            // Also at the questions that come before a conversation.
            return talk.run(new NowDoor(door, () -> KnowledgeReader.emergencies(program.knowledgeFolder(shared))));
        } catch (Door.Ended e) {
            return Conversation.End.UNFINISHED;
        } catch (Door.Interrupted e) {
            return Conversation.End.INTERRUPTED;
        }
    }

    private static PipeDoor pipe(Program program, int width, boolean echo) {
        return new PipeDoor(new InputStreamReader(program.in(), StandardCharsets.UTF_8), program.out(), width, echo);
    }

    /** The width of a terminal whose lines are read plainly; it is opened for the question and closed again. */
    private static int widthOfTerminal(Program program) {
        if (program.environment("COLUMNS").isEmpty()) {
            try (Terminal opened = Terminals.open(program.environment("TERM"))) {
                int columns = opened.getSize().getColumns();
                if (columns > 0) {
                    return Math.min(WIDEST, Math.max(NARROWEST, columns));
                }
            } catch (IOException | IllegalStateException e) {
                return USUAL_WIDTH;
            }
        }
        return width(program);
    }

    static int width(Program program) {
        String columns = program.environment("COLUMNS");
        if (columns.matches("\\d{1,4}")) {
            return Math.min(WIDEST, Math.max(NARROWEST, Integer.parseInt(columns)));
        }
        return USUAL_WIDTH;
    }

    private static ExitCode code(Conversation.End end) {
        return switch (end) {
            case ADVICE -> ExitCode.ADVICE;
            case STOP -> ExitCode.STOP;
            case UNFINISHED -> ExitCode.UNFINISHED;
            case INTERRUPTED -> ExitCode.INTERRUPTED;
        };
    }
}
