package pourwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.OwnGuidelines;
import pourwright.casebook.OwnMaterial;
import pourwright.casebook.ShopLock;
import pourwright.casebook.ShopPack;
import pourwright.casebook.Trouble;
import pourwright.casebook.WholeFile;
import pourwright.console.Clean;
import pourwright.console.Conversation;
import pourwright.console.Door;
import pourwright.console.Pick;
import pourwright.console.Wrap;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Overlay;
import pourwright.knowledge.Value;
import pourwright.units.Show;

/** The workshop's own folder: what is in it, its own materials and guidelines, its check, and all of it as one file. */
@Command(
        name = "shop",
        header = {
            "  pourwright shop                               # what your folder holds",
            "  pourwright shop init                          # make it",
            "  pourwright shop material                      # one of your own, from its data sheet",
            "  pourwright shop guideline damp-air 55 --why \"we foam earlier\"",
            "  pourwright shop check                         # overrides, conflicts, cases advised anew",
            "  pourwright shop export yard.json              # and: shop import yard.json"
        },
        description = "Keep your own workshop: its materials, guidelines and cases.",
        footer = "\"shop guideline\" lists all; \"--drop\" puts the shipped one back.")
final class ShopCommand implements Callable<Integer> {
    private static final String WORDS =
            "init, material, guideline, check, export, import, or nothing to see what is there";

    private final Program program;

    @Parameters(paramLabel = "WORD", arity = "0..*", description = "What to do, and with what.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--why", paramLabel = "TEXT", description = "Why a guideline is set so.")
    private String why = "";

    @Option(names = "--drop", description = "Put the shipped guideline back.")
    private boolean drop;

    @Option(names = "--yes", description = "Import or write over without asking.")
    private boolean yes;

    @Option(names = "--json", description = "Print the check as JSON.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    private Path shop;

    ShopCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() throws IOException {
        shop = program.shop(shared.shop);
        String verb = words.isEmpty() ? "" : words.get(0).toLowerCase(Locale.ROOT);
        List<String> rest = words.isEmpty() ? List.of() : words.subList(1, words.size());
        if (asJson && !verb.equals("check")) {
            throw new BadAnswer("json", "--json prints the check: \"pourwright shop check --json\".");
        }
        try {
            return done(verb, rest);
        } catch (UncheckedIOException e) {
            throw new BadAnswer(
                    "shop", "The folder " + shop + " cannot be read: " + Trouble.why(shop, e.getCause()) + ".");
        } catch (IOException e) {
            throw new BadAnswer("shop", "The folder " + shop + " cannot be read: " + Trouble.why(shop, e) + ".");
        } catch (InvalidPathException e) {
            throw new BadAnswer(verb, "\"" + Clean.quoted(e.getInput()) + "\" is no name of a file.");
        }
    }

    private int done(String verb, List<String> rest) throws IOException {
        return switch (verb) {
            case "" -> look();
            case "init" -> init();
            case "material" -> material(rest);
            case "guideline" -> guideline(rest);
            case "check" -> check();
            case "export" -> export(file(rest, verb));
            case "import" -> imported(file(rest, verb));
            default ->
                throw new BadAnswer(
                        "shop",
                        "\"" + Clean.quoted(words.get(0)) + "\" is not a word of the shop. Accepted: " + WORDS + ".");
        };
    }

    private static Path file(List<String> rest, String verb) {
        if (rest.size() != 1) {
            throw new BadAnswer(verb, "Name one file: \"pourwright shop " + verb + " yard.json\".");
        }
        return Path.of(rest.get(0));
    }

    private Knowledge shipped() {
        return KnowledgeReader.read(program.knowledgeFolder(shared));
    }

    private int look() throws IOException {
        if (!Files.isDirectory(shop)) {
            say("There is no folder " + shop
                    + " yet. \"pourwright shop init\" makes it; so does the first answer of a plan.");
            return ExitCode.ADVICE.code();
        }
        say("Your workshop is " + shop + ".");
        Map<String, String> files = ShopPack.files(shop);
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String name : files.keySet()) {
            String what = name.startsWith("materials/")
                    ? "own materials"
                    : name.startsWith("cases/") ? "saved cases" : name.startsWith("learners/") ? "learners" : "";
            if (!what.isEmpty()) {
                counts.merge(what, 1, Integer::sum);
            }
        }
        counts.forEach((what, n) -> say("  " + what + ": " + n));
        lines(files, "runs.jsonl", "followed plans");
        lines(files, "kit-tests.jsonl", "tests of the kit");
        for (String name : List.of("guidelines.json", "kit.json", "stock.json")) {
            if (files.containsKey(name)) {
                say("  " + name.replace(".json", "") + ": kept");
            }
        }
        if (Files.isRegularFile(shop.resolve("unfinished.jsonl"))) {
            say("  a conversation was left: \"pourwright resume\" goes on with it");
        }
        if (files.isEmpty()) {
            say("  nothing yet");
        }
        say("Words: " + WORDS + ".");
        return ExitCode.ADVICE.code();
    }

    private void lines(Map<String, String> files, String name, String what) {
        if (files.containsKey(name)) {
            say("  " + what + ": "
                    + files.get(name).lines().filter(l -> !l.isBlank()).count());
        }
    }

    private int init() {
        try {
            Path above = shop.toAbsolutePath().getParent();
            Path top = above == null || above.getParent() == null ? above : above.getParent();
            if (top != null && !Files.exists(top)) {
                throw new NoSuchFileException(top.toString());
            }
            boolean there = Files.isDirectory(shop);
            for (String folder : List.of("materials", "cases", "learners")) {
                Files.createDirectories(shop.resolve(folder));
            }
            say(there ? shop + " was there already: nothing in it was changed." : "Made: " + shop + ".");
            say(
                    "Next: \"pourwright shop material\" for a liquid of your own, \"pourwright shop guideline\" for your own"
                            + " thresholds, or just \"pourwright\".");
            return ExitCode.ADVICE.code();
        } catch (IOException e) {
            throw new BadAnswer("shop", "The folder " + shop + " cannot be made: " + Trouble.why(shop, e) + ".");
        }
    }

    private int material(List<String> rest) {
        Knowledge knowledge = program.knowledgeOfWorkshop(shared);
        if (!rest.isEmpty() || shared.noInput) {
            OwnMaterial m = new OwnMaterial(knowledge, shipped().materials().keySet());
            Map<String, String> fields = fields(rest);
            m.name(need(fields, "name"));
            m.base(need(fields, "class"));
            m.says(fields.getOrDefault("says", ""));
            fields.forEach((f, typed) -> {
                if (!List.of("name", "class", "says").contains(f)) {
                    m.read(f, typed).ifPresent(v -> {
                        m.set(f, v);
                        warn(m, f, v);
                    });
                }
            });
            if (m.empty()) {
                throw new BadAnswer(
                        "material",
                        "Give one value of its sheet at least: " + String.join(", ", m.fields())
                                + ". For example pot-life=\"45 min\".");
            }
            if (Files.exists(target(m)) && !yes) {
                throw new BadAnswer("name", target(m) + " is there already: another name, or --yes to write over it.");
            }
            return written(m).code();
        }
        return Talk.with(program, shared, door -> {
                    Optional<OwnMaterial> m;
                    try {
                        m = new ShopMaterial(
                                        door, knowledge, shipped().materials().keySet())
                                .ask();
                    } catch (Door.Ended e) {
                        m = Optional.empty();
                    }
                    if (m.isPresent() && m.get().empty()) {
                        Wrap.text(
                                        "Without a value from its sheet it would be no other than its class.",
                                        door.width(),
                                        "",
                                        "  ")
                                .forEach(door::say);
                    }
                    boolean write = m.isPresent()
                            && !m.get().empty()
                            && (!Files.exists(target(m.get())) || over(door, target(m.get())));
                    if (!write) {
                        door.say("Nothing was written.");
                        return Conversation.End.UNFINISHED;
                    }
                    return written(m.get()) == ExitCode.ADVICE ? Conversation.End.ADVICE : Conversation.End.UNFINISHED;
                })
                .code();
    }

    private static boolean over(Door door, Path file) {
        Wrap.text("There is " + file + " already. Write over it? (Enter = no, or \"yes\")", door.width(), "", "  ")
                .forEach(door::say);
        return new Pick(door, "over > ", List.of("no", "yes"), "What stands there would be gone.")
                .ask()
                .orElse("no")
                .equals("yes");
    }

    private Path target(OwnMaterial m) {
        return shop.resolve("materials").resolve(m.id() + ".json");
    }

    private void warn(OwnMaterial m, String field, Value v) {
        if (m.isFar(field, v)) {
            say("Far off its class: " + field + ", which is " + m.usual(field) + " there. Read the sheet again.");
        }
    }

    private static Map<String, String> fields(List<String> rest) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String w : rest) {
            int at = w.indexOf('=');
            if (at <= 0) {
                throw new BadAnswer(
                        "material", "\"" + Clean.quoted(w) + "\" is no field. For example pot-life=\"45 min\".");
            }
            fields.put(
                    w.substring(0, at).strip().toLowerCase(Locale.ROOT),
                    w.substring(at + 1).strip());
        }
        return fields;
    }

    private static String need(Map<String, String> fields, String name) {
        if (!fields.containsKey(name)) {
            throw new BadAnswer(
                    name,
                    "'" + name
                            + "' is needed: shop material name=\"yard blue\" class=tin-silicone pot-life=\"45 min\".");
        }
        return fields.get(name);
    }

    /** Writes it only when the whole workshop can still be read with it. */
    private ExitCode written(OwnMaterial m) {
        Path file = target(m);
        try {
            Path trial = Files.createTempDirectory("pourwright-shop");
            try {
                ShopPack.write(ShopPack.files(shop), trial);
                WholeFile.write(trial.resolve("materials").resolve(m.id() + ".json"), m.text());
                Overlay.of(shipped(), trial, program.knowledgeFolder(shared).resolve("schemas"));
            } finally {
                delete(trial);
            }
            WholeFile.write(file, m.text());
        } catch (IOException e) {
            throw new BadAnswer("material", file + " cannot be written: " + Trouble.why(shop, e) + ".");
        }
        say("Written: " + file + ". Use it with \"pourwright plan material=" + m.id() + "\".");
        return ExitCode.ADVICE;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path p : walk.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(p);
            }
        }
    }

    private int guideline(List<String> rest) {
        OwnGuidelines own = new OwnGuidelines(shop, shipped());
        if (rest.isEmpty()) {
            Knowledge k = program.knowledgeOfWorkshop(shared);
            k.guidelines().forEach((id, g) -> say(line(id, g)));
            return ExitCode.ADVICE.code();
        }
        String id = rest.get(0);
        if (drop) {
            own.drop(id);
            say("'" + id + "' is as shipped again.");
            return ExitCode.ADVICE.code();
        }
        Guideline old = own.shipped(id);
        if (rest.size() == 1) {
            say(line(id, program.knowledgeOfWorkshop(shared).guidelines().getOrDefault(id, old)));
            return ExitCode.ADVICE.code();
        }
        say(own.set(id, String.join(" ", rest.subList(1, rest.size())), why));
        new ShopReport(program, shared, shop, shipped()).farOff(id).forEach(this::say);
        say("\"pourwright shop check\" shows what it changes.");
        return ExitCode.ADVICE.code();
    }

    private static String line(String id, Guideline g) {
        return id + ": " + Show.quantity(g.si(), g.unit(), Knowledge.dimensionOf(g.unit()))
                + (g.owner().equals("workshop") ? " (set by your workshop)" : "")
                + (g.safety() ? " (guards safety: only " + g.tighter() + ")" : "") + ". " + g.note();
    }

    private int check() {
        if (!Files.isDirectory(shop)) {
            throw new BadAnswer("shop", "There is no folder " + shop + ". \"pourwright shop init\" makes it.");
        }
        ShopReport report = new ShopReport(program, shared, shop, shipped());
        report.replay();
        if (asJson) {
            program.out().println(report.json());
        } else {
            report.lines().forEach(this::say);
        }
        return report.code().code();
    }

    private int export(Path file) {
        try {
            Map<String, String> files = ShopPack.files(shop);
            if (files.isEmpty()) {
                throw new BadAnswer("export", "There is nothing in " + shop + " to export.");
            }
            if (Files.exists(file) && !yes) {
                throw new BadAnswer("export", file + " is there already: another name, or --yes to write over it.");
            }
            String text = ShopPack.text(files);
            try {
                ShopPack.read(text, file.toString());
            } catch (BadAnswer e) {
                throw new BadAnswer(
                        "export",
                        "The folder is too large for one file that could be read again. \"pourwright forget\" makes it"
                                + " smaller. " + e.getMessage());
            }
            WholeFile.write(file, text);
            List<String> left = ShopPack.left(shop);
            if (!left.isEmpty()) {
                say("Left out, as pourwright names no file so: " + Clean.text(String.join(", ", left)) + ".");
            }
            say(
                    files.size() + (files.size() == 1 ? " file is" : " files are") + " in " + file
                            + ". It holds names of learners, where there are any. \"pourwright shop import\" reads it elsewhere.");
            return ExitCode.ADVICE.code();
        } catch (IOException e) {
            throw new BadAnswer("export", "The export failed: " + Trouble.why(shop, e) + ".");
        }
    }

    private int imported(Path file) throws IOException {
        Map<String, String> files = ShopPack.read(file);
        Path trial = Files.createTempDirectory("pourwright-shop");
        try {
            Map<String, String> old = ShopPack.files(shop);
            ShopPack.write(old, trial);
            ShopPack.write(files, trial);
            ShopReport report = new ShopReport(program, shared, trial, shipped());
            report.read();
            List<String> faults = new ArrayList<>(report.faults());
            // What was wrong in the folder before is no fault of the file.
            ShopReport before = new ShopReport(program, shared, shop, shipped());
            before.read();
            faults.removeAll(before.faults());
            if (!faults.isEmpty()) {
                faults.forEach(this::say);
                throw new BadAnswer(
                        "import", "Nothing was changed: what stands above must be mended in " + file + " first.");
            }
            for (Map.Entry<String, String> e : files.entrySet()) {
                String was = old.get(e.getKey());
                say("  " + e.getKey() + ": "
                        + (was == null ? "new" : was.equals(e.getValue()) ? "the same as yours" : "replaces yours"));
            }
        } finally {
            delete(trial);
        }
        if (yes) {
            return put(files);
        }
        if (shared.noInput) {
            throw new BadAnswer("no-input", "With --no-input, --yes says that it may be put in. Nothing was changed.");
        }
        return Talk.with(program, shared, door -> {
                    door.say("Put all this into " + shop + "? (Enter = no, or \"yes\")");
                    boolean sure = new Pick(
                                    door,
                                    "import > ",
                                    List.of("no", "yes"),
                                    "What is replaced is kept in a folder of its own.")
                            .ask()
                            .orElse("no")
                            .equals("yes");
                    if (!sure) {
                        door.say("Nothing was changed.");
                        return Conversation.End.UNFINISHED;
                    }
                    put(files);
                    return Conversation.End.ADVICE;
                })
                .code();
    }

    private int put(Map<String, String> files) {
        try {
            Files.createDirectories(shop);
            Optional<ShopLock> free = ShopLock.take(shop);
            if (free.isEmpty()) {
                throw new BadAnswer("import", "Another console is open in " + shop + ". Close that one first.");
            }
            ShopLock held = free.get();
            try {
                Path aside = ShopPack.replace(files, shop);
                say("Put in: " + files.size() + (files.size() == 1 ? " file" : " files") + " into " + shop + "."
                        + (aside == null ? "" : " What was replaced is in " + aside.getFileName() + "."));
            } finally {
                held.close();
            }
            return ExitCode.ADVICE.code();
        } catch (IOException e) {
            throw new BadAnswer("import", "The folder " + shop + " cannot be written: " + Trouble.why(shop, e) + ".");
        }
    }

    private void say(String text) {
        String indent = text.startsWith("  ") ? "  " : "";
        Wrap.text(text.strip(), Talk.width(program), indent, indent + "  ").forEach(program.out()::println);
    }
}
