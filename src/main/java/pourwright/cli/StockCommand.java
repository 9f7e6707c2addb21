package pourwright.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.ShopLock;
import pourwright.casebook.StockJson;
import pourwright.casebook.StockTyped;
import pourwright.casebook.Trouble;
import pourwright.casebook.WholeFile;
import pourwright.console.Clean;
import pourwright.console.Conversation;
import pourwright.console.Door;
import pourwright.console.StockPage;
import pourwright.console.Wrap;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.StockCan;
import pourwright.knowledge.StockList;
import pourwright.stock.Cans;

/** What the workshop has of each material: lists it, and keeps it up to date. */
@Command(
        name = "stock",
        header = {
            "  pourwright stock                              # every can, oldest first",
            "  pourwright stock add material=tin-silicone part=base left=\"3.2 kg\" \\",
            "      opened=2026-09-01 price=\"48 EUR\" for=\"5 kg\"",
            "  pourwright stock use 3 \"818 g\"                # taken out of can 3",
            "  pourwright stock set 3 left=\"2.3 kg\"",
            "  pourwright stock drop 3"
        },
        description = "List your cans: what is at hand for plans to count on, and keep it up to date.",
        footer = "Also: bought=, best-before=. A day is 2026-03-01, today, or 95 d (ago).")
final class StockCommand implements Callable<Integer> {
    private static final String WORDS = "add, use, set, drop, or nothing to list what is there";

    private final Program program;

    @Parameters(paramLabel = "WORD", arity = "0..*", description = "add, use, set or drop, and what it speaks of.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--json", description = "Print the list as one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    private Path shop;
    private Knowledge knowledge;
    private LocalDate today;

    StockCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        shop = program.shop(shared.shop);
        knowledge = program.knowledgeOfWorkshop(shared);
        today = LocalDate.parse(program.today());
        String verb = words.isEmpty() ? "list" : words.get(0).toLowerCase(Locale.ROOT);
        List<String> rest = words.isEmpty() ? List.of() : words.subList(1, words.size());
        if (asJson && !verb.equals("list")) {
            throw new BadAnswer("json", "--json lists the stock; leave \"" + verb + "\" out.");
        }
        return switch (verb) {
            case "list" -> list();
            case "add" -> add(StockTyped.fields(rest));
            case "use" -> use(rest);
            case "set" -> set(rest);
            case "drop" -> drop(rest);
            default ->
                throw new BadAnswer(
                        "stock",
                        "\"" + Clean.quoted(words.get(0)) + "\" is not a word of the stock. Accepted: " + WORDS + ".");
        };
    }

    private StockList stock() {
        return StockList.read(shop, program.knowledgeFolder(shared).resolve("schemas"));
    }

    private int list() {
        List<StockCan> cans = StockPage.ordered(stock(), today);
        Map<Integer, List<String>> warnings = new TreeMap<>();
        cans.forEach(c -> warnings.put(c.id(), StockPage.warnings(c, knowledge, today)));
        if (asJson) {
            program.out().println(Json.write(StockJson.of(cans, warnings, today)));
            return ExitCode.ADVICE.code();
        }
        if (cans.isEmpty()) {
            say("No can is kept in " + shop + ". The first goes in with, for example:", "");
            program.out().println("  pourwright stock add material=tin-silicone part=base left=\"3.2 kg\"");
        }
        for (StockCan c : cans) {
            say(StockPage.line(c, knowledge, today), "    ");
            warnings.get(c.id())
                    .forEach(w -> Wrap.text(w, Talk.width(program), "  look: ", "    ")
                            .forEach(program.out()::println));
        }
        return ExitCode.ADVICE.code();
    }

    private void say(String text, String rest) {
        Wrap.text(text, Talk.width(program), "", rest).forEach(program.out()::println);
    }

    private int add(Map<String, String> typed) {
        if (missing(typed).isEmpty()) {
            return added(typed);
        }
        if (shared.noInput) {
            throw lacking(typed);
        }
        return Talk.with(program, shared, door -> {
                    if (!door.person()) {
                        throw lacking(typed);
                    }
                    Map<String, String> all = new TreeMap<>(typed);
                    while (!missing(all).isEmpty()) {
                        String field = missing(all).get(0);
                        Optional<String> said = asked(door, field, all);
                        if (said.isEmpty()) {
                            door.say("Left. Nothing was added.");
                            return Conversation.End.UNFINISHED;
                        }
                        all.put(field, said.get());
                    }
                    added(all);
                    return Conversation.End.ADVICE;
                })
                .code();
    }

    /** Asks until what was typed can be read; nothing when the person leaves. */
    private Optional<String> asked(Door door, String field, Map<String, String> sofar) {
        door.say(
                switch (field) {
                    case "material" -> "Which liquid is it? For example tin-silicone.";
                    case "part" ->
                        "Which of its cans? "
                                + String.join(" or ", material(sofar).mix().names()) + ".";
                    default -> "How much is left in it? For example 3.2 kg.";
                });
        while (true) {
            String line = door.ask(field + " > ", List.of()).strip();
            if (List.of("quit", "exit", "stop").contains(line.toLowerCase(Locale.ROOT))) {
                return Optional.empty();
            }
            try {
                Map<String, String> tried = new TreeMap<>(sofar);
                tried.put(field, line);
                tried.putIfAbsent("material", "tin-silicone");
                tried.putIfAbsent("left", "1 kg");
                StockTyped reader = new StockTyped(knowledge, today);
                if (field.equals("material")) {
                    reader.material(line);
                } else if (field.equals("part")) {
                    reader.added(1, tried);
                } else {
                    reader.kg("left", line);
                }
                return Optional.of(line);
            } catch (BadAnswer e) {
                Wrap.text(e.getMessage(), door.width(), "", "    ").forEach(door::say);
            }
        }
    }

    private MaterialClass material(Map<String, String> typed) {
        return new StockTyped(knowledge, today).material(typed.get("material"));
    }

    private List<String> missing(Map<String, String> typed) {
        List<String> missing = new ArrayList<>();
        if (!typed.containsKey("material")) {
            missing.add("material");
        }
        if (!typed.containsKey("part") && typed.containsKey("material") && StockTyped.inTwoCans(material(typed))) {
            missing.add("part");
        }
        if (!typed.containsKey("left")) {
            missing.add("left");
        }
        return missing;
    }

    private BadAnswer lacking(Map<String, String> typed) {
        return new BadAnswer(
                "stock",
                "Missing: " + String.join(", ", missing(typed))
                        + ". For example \"pourwright stock add material=tin-silicone part=base left='3.2 kg'\".");
    }

    private int added(Map<String, String> typed) {
        edit(all -> {
            StockCan can = new StockTyped(knowledge, today).added(all.next(), typed);
            if (can.leftKg().signum() == 0) {
                throw new BadAnswer("left", "left: an empty can is not kept. For example left=\"3.2 kg\".");
            }
            List<StockCan> more = new ArrayList<>(all.cans());
            more.add(can);
            shown("Added ", can, ". Write its number on it.");
            return new StockList(all.next() + 1, more);
        });
        return ExitCode.ADVICE.code();
    }

    private void shown(String first, StockCan can, String last) {
        say(first + StockPage.line(can, knowledge, today) + last, "    ");
    }

    private int use(List<String> rest) {
        if (rest.size() < 2) {
            throw new BadAnswer(
                    "stock", "Say which can, and how much was taken out of it: \"pourwright stock use 3 '818 g'\".");
        }
        BigDecimal taken = new StockTyped(knowledge, today).kg("use", String.join(" ", rest.subList(1, rest.size())));
        if (taken.signum() == 0) {
            throw new BadAnswer("use", "use: nothing was taken, so nothing changed. For example \"818 g\".");
        }
        edit(all -> {
            StockCan can = one(all, rest.get(0));
            BigDecimal left = can.leftKg().subtract(taken);
            if (left.signum() < 0) {
                throw new BadAnswer(
                        "use",
                        "Can " + can.id() + " holds " + Cans.mass(can.leftKg().doubleValue()) + ", so "
                                + Cans.mass(taken.doubleValue())
                                + " cannot come out of it. Nothing was changed; \"stock set " + can.id()
                                + " left=...\" mends a wrong amount.");
            }
            if (left.signum() == 0) {
                say("Can " + can.id() + " is empty now, and off the list.", "");
                return without(all, can);
            }
            StockCan now = can.withLeft(left);
            boolean opens = can.opened() == null;
            if (opens) {
                now = new StockTyped(knowledge, today).changed(now, Map.of("opened", "today"));
            }
            shown(opens ? "Opened today: " : "", now, ".");
            return replaced(all, now);
        });
        return ExitCode.ADVICE.code();
    }

    private int set(List<String> rest) {
        if (rest.size() < 2) {
            throw new BadAnswer("stock", "Say which can, and what is so: \"pourwright stock set 3 left='2.3 kg'\".");
        }
        Map<String, String> typed = StockTyped.fields(rest.subList(1, rest.size()));
        edit(all -> {
            StockCan now = new StockTyped(knowledge, today).changed(one(all, rest.get(0)), typed);
            shown("", now, ".");
            return replaced(all, now);
        });
        return ExitCode.ADVICE.code();
    }

    private int drop(List<String> rest) {
        if (rest.size() != 1) {
            throw new BadAnswer("stock", "Say which can: \"pourwright stock drop 3\".");
        }
        StockCan can = one(stock(), rest.get(0));
        if (shared.noInput) {
            throw new BadAnswer("no-input", "With --no-input nothing can be confirmed, so the can stays on the list.");
        }
        return Talk.with(program, shared, door -> {
                    Wrap.text(StockPage.line(can, knowledge, today), door.width(), "", "    ")
                            .forEach(door::say);
                    String sure = "drop " + can.id();
                    Wrap.text(
                                    "Type \"" + sure + "\" to take it off the list. Anything else leaves it.",
                                    door.width(),
                                    "",
                                    "")
                            .forEach(door::say);
                    if (!door.ask("sure > ", List.of()).strip().equalsIgnoreCase(sure)) {
                        door.say("Nothing was changed.");
                        return Conversation.End.UNFINISHED;
                    }
                    edit(all -> without(all, one(all, rest.get(0))));
                    door.say("Can " + can.id() + " is off the list.");
                    return Conversation.End.ADVICE;
                })
                .code();
    }

    private static StockCan one(StockList all, String typed) {
        return all.cans().stream()
                .filter(c -> Integer.toString(c.id()).equals(typed.strip()))
                .findFirst()
                .orElseThrow(() -> new BadAnswer(
                        "stock",
                        "No can has the number \"" + Clean.quoted(typed) + "\". "
                                + (all.cans().isEmpty()
                                        ? "No can is on the list."
                                        : "On the list are: "
                                                + String.join(
                                                        ", ",
                                                        all.cans().stream()
                                                                .map(c -> Integer.toString(c.id()))
                                                                .toList())
                                                + ".")));
    }

    private static StockList without(StockList all, StockCan can) {
        return new StockList(
                all.next(), all.cans().stream().filter(c -> c.id() != can.id()).toList());
    }

    private static StockList replaced(StockList all, StockCan now) {
        return new StockList(
                all.next(),
                all.cans().stream().map(c -> c.id() == now.id() ? now : c).toList());
    }

    /** Reads, changes and writes while no other console can. */
    private void edit(UnaryOperator<StockList> change) {
        try {
            Files.createDirectories(shop);
            Optional<ShopLock> free = ShopLock.take(shop);
            if (free.isEmpty()) {
                throw new BadAnswer("stock", "Another console is open in " + shop + ". Close that one first.");
            }
            ShopLock held = free.get();
            try {
                WholeFile.write(
                        shop.resolve(StockList.FILE), change.apply(stock()).text());
            } finally {
                held.close();
            }
        } catch (IOException e) {
            throw new BadAnswer("stock", "The stock cannot be kept in " + shop + ": " + Trouble.why(shop, e) + ".");
        }
    }
}
