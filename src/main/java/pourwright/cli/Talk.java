package pourwright.cli;

import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.Signals;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.casebook.ShopLock;
import pourwright.console.AsciiDoor;
import pourwright.console.Conversation;
import pourwright.console.DiagnoseJob;
import pourwright.console.Door;
import pourwright.console.JLineDoor;
import pourwright.console.Job;
import pourwright.console.Pick;
import pourwright.console.PipeDoor;
import pourwright.console.PlanJob;
import pourwright.console.VentsJob;
import pourwright.console.Wrap;
import pourwright.diagnosis.Diagnoser;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Knowledge;

/** Opens the right door to the person and talks. */
final class Talk {
    private static final int USUAL_WIDTH = 80;
    private static final int NARROWEST = 20;
    private static final int WIDEST = 500;

    private Talk() {}

    /** The console: offers to resume what was left, then asks what it is about. */
    static ExitCode console(Program program, SharedOptions shared) {
        Future<Knowledge> reading = Later.read(() -> program.knowledgeOfWorkshop(shared));
        Path shop = program.shop(shared.shop);
        return with(program, shared, door -> {
            String greeting =
                    "Pourwright plans a pour, looks for vents or finds what went wrong, and says why. It does not"
                            + " replace the safety data sheet.";
            Wrap.text(greeting, door.width(), "", "").forEach(door::say);
            Optional<Left> left = left(program, shared, shop);
            if (left.isPresent()) {
                int kept = left.get().answers().all().size();
                String sentence = "There is an unfinished " + left.get().name() + " with " + kept
                        + (kept == 1 ? " answer." : " answers.");
                Wrap.text(sentence + " Go on with it? (Enter = yes, or \"no\")", door.width(), "", "")
                        .forEach(door::say);
                Optional<String> said = new Pick(
                                door,
                                "resume > ",
                                List.of("yes", "no"),
                                "Answers of an earlier conversation are kept. \"no\" begins anew and lets them go.")
                        .ask();
                if (said.isEmpty()) {
                    return Conversation.End.UNFINISHED;
                }
                if (said.get().equals("yes")) {
                    return new Conversation(
                                    door, left.get().job(), shop, left.get().answers())
                            .run();
                }
            }
            Wrap.text(
                            "Plan a pour, look for vents, or diagnose a bad part? (Enter = plan, or \"vents\", \"diagnose\")",
                            door.width(),
                            "",
                            "")
                    .forEach(door::say);
            Optional<String> said = new Pick(
                            door,
                            "word > ",
                            List.of("plan", "vents", "diagnose"),
                            "A plan is for a pour still to come. Vents are for a mould still to be made. A diagnosis is for a"
                                    + " part that came out wrong.")
                    .ask();
            if (said.isEmpty()) {
                return Conversation.End.UNFINISHED;
            }
            Job job = job(said.get(), program, shared, () -> Later.ready(reading));
            return new Conversation(door, job, shop, Answers.NONE).run();
        });
    }

    private static Job job(String word, Program program, SharedOptions shared, Supplier<Knowledge> knowledge) {
        return switch (word) {
            case "diagnose" -> new DiagnoseJob(new Diagnoser(program.knowledgeForDiagnosis(shared, true)));
            case "vents" -> new VentsJob(knowledge.get(), new MeshFiles(null), advice -> {});
            default -> new PlanJob(knowledge.get());
        };
    }

    /** A conversation that was left. */
    record Left(Job job, Answers answers) {
        String name() {
            return Job.called(job.word());
        }
    }

    /** The conversation that was left in a workshop's folder, if there is one. */
    static Optional<Left> left(Program program, SharedOptions shared, Path shop) {
        // What another console has open now was not left.
        if (!Journal.standsIn(shop) || ShopLock.isHeld(shop)) {
            return Optional.empty();
        }
        Job job = job(Journal.wordLeft(shop), program, shared, () -> program.knowledgeOfWorkshop(shared));
        return new Journal(shop, job.word())
                .unfinished(new AnswersJson(job.knowledge()))
                .map(answers -> new Left(job, answers));
    }

    /** Straight into a plan, with answers already given. */
    static ExitCode plan(Program program, SharedOptions shared, Supplier<Knowledge> knowledge, Answers start) {
        Future<Knowledge> reading = Later.read(knowledge);
        Path shop = program.shop(shared.shop);
        return with(
                program, shared, door -> new Conversation(door, new PlanJob(Later.ready(reading)), shop, start).run());
    }

    /** Straight into a diagnosis, with answers already given. */
    static ExitCode diagnose(
            Program program, SharedOptions shared, Supplier<DiagnosticKnowledge> knowledge, Answers start) {
        Future<DiagnosticKnowledge> reading = Later.read(knowledge);
        Path shop = program.shop(shared.shop);
        return with(
                program,
                shared,
                door -> new Conversation(door, new DiagnoseJob(new Diagnoser(Later.ready(reading))), shop, start)
                        .run());
    }

    /** Straight into a job, with answers already given. */
    static ExitCode job(Program program, SharedOptions shared, Job job, Answers start) {
        return job(program, shared, job, program.shop(shared.shop), start);
    }

    /** The same with the folder to keep everything in, or null to keep nothing. */
    static ExitCode job(Program program, SharedOptions shared, Job job, Path shop, Answers start) {
        return with(program, shared, door -> new Conversation(door, job, shop, start).run());
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
        boolean terminal = !tests && isTerminal();
        if (!tests) {
            // While a line is edited the editor sees Ctrl-C first; at any other moment this does.
            Signals.register("INT", program::interrupted);
        }
        if (!dumb && terminal) {
            try (Terminal opened = terminal();
                    JLineDoor door = new JLineDoor(opened)) {
                opened.handle(Terminal.Signal.INT, signal -> program.interrupted());
                return code(guarded(legible(program, door), talk));
            } catch (IOException | IllegalStateException e) {
                // No usable terminal after all: lines will do.
                return code(guarded(legible(program, pipe(program, width(program), false)), talk));
            }
        }
        int width = terminal ? widthOfTerminal(program) : width(program);
        PipeDoor lines = pipe(program, width, !terminal);
        ExitCode code = code(guarded(terminal ? legible(program, lines) : lines, talk));
        program.out().flush();
        return code;
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

    private static Conversation.End guarded(Door door, Through talk) {
        try {
            return talk.run(door);
        } catch (Door.Ended e) {
            return Conversation.End.UNFINISHED;
        } catch (Door.Interrupted e) {
            return Conversation.End.INTERRUPTED;
        }
    }

    /** Whether both ends are a terminal. From JDK 22 on a console exists even without one; it must be asked. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isTerminal() {
        Object console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    private static Terminal terminal() throws IOException {
        return TerminalBuilder.builder()
                .system(true)
                .dumb(false)
                .graphemeCluster(false)
                .encoding(StandardCharsets.UTF_8)
                .build();
    }

    private static PipeDoor pipe(Program program, int width, boolean echo) {
        return new PipeDoor(new InputStreamReader(program.in(), StandardCharsets.UTF_8), program.out(), width, echo);
    }

    /** The width of a terminal whose lines are read plainly; it is opened for the question and closed again. */
    private static int widthOfTerminal(Program program) {
        if (program.environment("COLUMNS").isEmpty()) {
            try (Terminal opened = terminal()) {
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
