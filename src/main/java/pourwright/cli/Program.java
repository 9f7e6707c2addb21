package pourwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;
import pourwright.advice.BadAnswer;
import pourwright.console.VentsJob;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeFault;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Overlay;
import pourwright.rulebook.RuleBook;

/** What every command needs: streams, environment, where the knowledge lies; and what becomes of faults. */
final class Program {
    /** Words that consult: the rule bases are built while the command line and the knowledge are read. */
    private static final Set<String> NEED_RULES = Set.of(
            "plan", "vents", "kit", "resume", "replay", "rules", "stock", "ask", "rule", "learn", "cases", "shop",
            "card");

    private final InputStream in;
    private final PrintStream out;
    private final PrintStream err;
    private final Map<String, String> environment;

    private final Clock clock;
    /** Looked up only where a day is written: reading the zones takes longer than the first question. */
    private final Supplier<ZoneId> zone;

    Program(InputStream in, PrintStream out, PrintStream err, Map<String, String> environment) {
        this(in, out, err, environment, Clock.systemUTC(), ZoneId::systemDefault);
    }

    Program(InputStream in, PrintStream out, PrintStream err, Map<String, String> environment, Clock clock) {
        this(in, out, err, environment, clock, clock::getZone);
    }

    private Program(
            InputStream in,
            PrintStream out,
            PrintStream err,
            Map<String, String> environment,
            Clock clock,
            Supplier<ZoneId> zone) {
        this.clock = clock;
        this.zone = zone;
        this.in = in;
        this.out = new CleanPrint(out);
        this.err = new CleanPrint(err);
        this.environment = environment;
    }

    int run(String[] args) {
        if (talksAtOnce(args)) {
            return talk(args);
        }
        boolean helps = List.of(args).contains("--help") || List.of(args).contains("-h");
        if (NEED_RULES.contains(args[0]) && !helps) {
            RuleBook.prepare();
        }
        CommandLine line = commandLine(args[0]);
        if (helps) {
            HelpPage.arrange(line);
        }
        line.setOut(new PrintWriter(new OutputStreamWriter(out, UTF_8), true));
        line.setErr(new PrintWriter(new OutputStreamWriter(err, UTF_8), true));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setParameterExceptionHandler((e, a) -> {
            err.println(sentence(e.getMessage()) + " \"pourwright " + path(e.getCommandLine())
                    + "--help\" shows how it is used.");
            return ExitCode.BAD_INPUT.code();
        });
        line.setExecutionExceptionHandler((e, cl, parsed) -> failed(e).code());
        return line.execute(args);
    }

    /**
     * The command line with the word that is called for, or with all words where it is none of them: reading a word's
     * options takes milliseconds.
     */
    CommandLine commandLine(String called) {
        CommandLine line = new CommandLine(new RootCommand(this));
        Map<String, Supplier<Object>> words = words();
        boolean named = words.containsKey(called);
        words.forEach((word, command) -> {
            if (!named || word.equals(called)) {
                line.addSubcommand(word, command.get());
            }
        });
        return line;
    }

    /**
     * The ways a person usually begins: nothing at all, or {@code plan}, {@code diagnose} or {@code vents} alone. They need no reading
     * of options, which would keep the first question waiting.
     */
    private static boolean talksAtOnce(String[] args) {
        return args.length == 0
                || args.length == 1 && Set.of("plan", "diagnose", "vents").contains(args[0]);
    }

    private int talk(String[] args) {
        SharedOptions usual = new SharedOptions();
        try {
            if (args.length == 0) {
                return Talk.console(this, usual).code();
            }
            return switch (args[0]) {
                case "plan" ->
                    Talk.plan(this, usual, () -> knowledgeOfWorkshop(usual), Answers.NONE)
                            .code();
                case "vents" ->
                    Talk.vents(
                                    this,
                                    usual,
                                    () -> new VentsJob(knowledgeOfWorkshop(usual), new MeshFiles(null), advice -> {}),
                                    Answers.NONE)
                            .code();
                default ->
                    Talk.diagnose(this, usual, () -> knowledgeForDiagnosis(usual, true), Answers.NONE, "")
                            .code();
            };
        } catch (RuntimeException e) {
            return failed(e).code();
        }
    }

    private Map<String, Supplier<Object>> words() {
        Map<String, Supplier<Object>> words = new LinkedHashMap<>();
        words.put("plan", () -> new PlanCommand(this));
        words.put("diagnose", () -> new DiagnoseCommand(this));
        words.put("vents", () -> new VentsCommand(this));
        words.put("kit", () -> new KitCommand(this));
        words.put("stock", () -> new StockCommand(this));
        words.put("now", () -> new NowCommand(this));
        words.put("learn", () -> new LearnCommand(this));
        words.put("cases", () -> new CasesCommand(this));
        words.put("outcome", () -> new OutcomeCommand(this));
        words.put("figure", () -> new FigureCommand(this));
        words.put("ask", () -> new AskCommand(this));
        words.put("define", () -> new DefineCommand(this));
        words.put("rule", () -> new RuleCommand(this));
        words.put("questions", () -> new QuestionsCommand(this));
        words.put("rules", () -> new RulesCommand(this));
        words.put("shop", () -> new ShopCommand(this));
        words.put("card", () -> new CardCommand(this));
        words.put("check", () -> new CheckCommand(this));
        words.put("resume", () -> new ResumeCommand(this));
        words.put("forget", () -> new ForgetCommand(this));
        words.put("replay", () -> new ReplayCommand(this));
        words.put("generate", () -> new GenerateCommand(this));
        return words;
    }

    private static String path(CommandLine cl) {
        return cl.getParent() == null ? "" : cl.getCommandName() + " ";
    }

    private static String sentence(String message) {
        String plain = message.replaceAll("\\p{Cntrl}", " ").strip();
        return plain.endsWith(".") ? plain : plain + ".";
    }

    /** One sentence for what went wrong; nobody is shown a stack trace. */
    ExitCode failed(Exception e) {
        if (e instanceof BadAnswer b) {
            err.println(b.getMessage().replace('\u00a0', ' '));
            return ExitCode.BAD_INPUT;
        }
        if (e instanceof KnowledgeFault f) {
            err.println("The knowledge cannot be used. " + f.getMessage());
            return ExitCode.BAD_INPUT;
        }
        err.println("Pourwright met a fault of its own (" + e.getClass().getSimpleName()
                + "). Nothing you typed is lost. Please report what you did.");
        if ("1".equals(environment.get("POURWRIGHT_TRACE"))) {
            e.printStackTrace(err);
        }
        return ExitCode.FAULT;
    }

    /** Ctrl-C while no line is being edited: it is answered at once, and what is on disk stays there. */
    void interrupted() {
        out.println();
        out.println("Stopped. What was kept stays: \"pourwright resume\" goes on from here.");
        System.exit(ExitCode.INTERRUPTED.code());
    }

    /** Writes plans as sheets. */
    SheetFile sheets(SharedOptions shared, Knowledge knowledge, MeshFiles meshes) {
        return new SheetFile(knowledge, meshes, Versions.line(knowledge, knowledgeFolder(shared)));
    }

    /** The day, as 2026-03-01. */
    String today() {
        return LocalDate.ofInstant(clock.instant(), zone.get()).toString();
    }

    /** The time, for whoever follows a plan. */
    InstantSource clock() {
        return clock;
    }

    InputStream in() {
        return in;
    }

    PrintStream out() {
        return out;
    }

    PrintStream err() {
        return err;
    }

    String environment(String name) {
        return environment.getOrDefault(name, "");
    }

    /** The program's own folder, as the launcher says. */
    private static Path home() {
        return Path.of(System.getProperty("pourwright.home", "."));
    }

    /** The folder of the cases that came with the program. */
    Path casesFolder() {
        return home().resolve("transcripts-of-cases");
    }

    /** The folder of the shipped knowledge. */
    Path knowledgeFolder(SharedOptions shared) {
        return shared.knowledge == null ? home().resolve("knowledge") : shared.knowledge;
    }

    /** The shipped knowledge, with a workshop's laid over it where one was named. */
    Knowledge knowledge(SharedOptions shared) {
        Path dir = knowledgeFolder(shared);
        Knowledge shipped = KnowledgeReader.read(dir);
        return shared.shop == null ? shipped : Overlay.of(shipped, shared.shop, dir.resolve("schemas"));
    }

    /** The same for a conversation, which always knows its workshop. */
    Knowledge knowledgeOfWorkshop(SharedOptions shared) {
        Path dir = knowledgeFolder(shared);
        return Overlay.of(KnowledgeReader.read(dir), shop(shared.shop), dir.resolve("schemas"));
    }

    /** What a diagnosis knows; with the workshop's own where one was named or where it talks. */
    DiagnosticKnowledge knowledgeForDiagnosis(SharedOptions shared, boolean talks) {
        Path dir = knowledgeFolder(shared);
        return KnowledgeReader.forDiagnosis(dir, talks ? knowledgeOfWorkshop(shared) : knowledge(shared));
    }

    /** The workshop's folder: named, or under the user's configuration folder. */
    Path shop(Path named) {
        if (named != null) {
            return named;
        }
        String config = environment("XDG_CONFIG_HOME");
        if (!config.isBlank()) {
            return Path.of(config).resolve("pourwright");
        }
        String user = environment("HOME");
        return Path.of(user.isBlank() ? System.getProperty("user.home", ".") : user)
                .resolve(".config/pourwright");
    }
}
