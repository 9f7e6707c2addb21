package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pourwright.advice.BadAnswer;
import pourwright.ask.RuleProse;
import pourwright.casebook.CaseChange;
import pourwright.casebook.Forgetting;
import pourwright.casebook.Kit;
import pourwright.casebook.Learners;
import pourwright.console.Clean;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Overlay;
import pourwright.knowledge.OverlayReport;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleText;

/** The check of a workshop's folder: what it changes, what cannot stand, and which of its cases would be advised otherwise now. */
final class ShopReport {
    private final Program program;
    private final SharedOptions shared;
    private final Path shop;
    private final Knowledge shipped;
    private final List<OverlayReport.Entry> entries;
    private final Map<String, List<String>> changed = new LinkedHashMap<>();
    private int same;

    /** @param shop the folder to look at */
    ShopReport(Program program, SharedOptions shared, Path shop, Knowledge shipped) {
        this.program = program;
        this.shared = shared;
        this.shop = shop;
        this.shipped = shipped;
        this.entries = new ArrayList<>(
                OverlayReport.of(shipped, shop, program.knowledgeFolder(shared).resolve("schemas")));
        kit();
    }

    private void kit() {
        try {
            new Kit(shop, shipped).remembered();
        } catch (IOException e) {
            String why = e.getCause() instanceof BadAnswer b ? b.getMessage() : "It cannot be read.";
            fault("kit.json", why);
        }
    }

    /** Notes a fault; the file is named from the folder, wherever that lies. */
    private void fault(String where, String say) {
        String folder = shop + shop.getFileSystem().getSeparator();
        entries.add(new OverlayReport.Entry(OverlayReport.Kind.CONFLICT, where, say.replace(folder, ""), ""));
    }

    /** True when something cannot stand. */
    boolean faulty() {
        return entries.stream().anyMatch(e -> e.kind() == OverlayReport.Kind.CONFLICT);
    }

    /** What is said of a guideline that is far from the usual. */
    List<String> farOff(String guideline) {
        return entries.stream()
                .filter(e ->
                        e.kind() == OverlayReport.Kind.FAR_OFF && e.guideline().equals(guideline))
                .map(OverlayReport.Entry::say)
                .toList();
    }

    /** The faults, each as a sentence with its file. */
    List<String> faults() {
        return entries.stream()
                .filter(e -> e.kind() == OverlayReport.Kind.CONFLICT)
                .map(e -> (e.where().isEmpty() ? "" : e.where() + ": ") + Clean.text(e.say()))
                .toList();
    }

    private Replayer replayer() {
        Path schemas = program.knowledgeFolder(shared).resolve("schemas");
        return new Replayer(program, shared, faulty() ? shipped : Overlay.of(shipped, shop, schemas));
    }

    private List<String> names() {
        try {
            return Forgetting.cases(shop);
        } catch (IOException e) {
            fault("cases", "The folder cannot be read.");
            return List.of();
        }
    }

    /** Reads the workshop's cases and records without judging them: what cannot be read is a fault. */
    void read() {
        Replayer replayer = replayer();
        for (String name : names()) {
            try {
                replayer.read(shop.resolve("cases").resolve(name + ".case.json"));
            } catch (BadAnswer e) {
                fault("cases/" + name + ".case.json", e.getMessage());
            }
        }
        try {
            new Learners(shop).names();
        } catch (IOException e) {
            fault(Learners.FOLDER, "A file there cannot be read.");
        }
    }

    /** Runs the workshop's cases again, by its own knowledge; by the shipped one when its own cannot stand. */
    void replay() {
        Replayer replayer = replayer();
        for (String name : names()) {
            Path file = shop.resolve("cases").resolve(name + ".case.json");
            try {
                Replayer.Replayed r = replayer.replay(file);
                CaseChange c = CaseChange.between(r.expected(), r.now(), r.speaks(), Set.of());
                if (c.none()) {
                    same++;
                } else {
                    changed.put(name, c.lines());
                }
            } catch (BadAnswer e) {
                fault("cases/" + name + ".case.json", e.getMessage());
            }
        }
    }

    /** The exit code: faults before differences. */
    ExitCode code() {
        return faulty() ? ExitCode.BAD_INPUT : changed.isEmpty() ? ExitCode.ADVICE : ExitCode.STOP;
    }

    /** All of it as sentences. */
    List<String> lines() {
        List<String> out = new ArrayList<>();
        Map<String, List<String>> readers = readers();
        section(out, OverlayReport.Kind.OVERRIDE, "What the workshop sets itself:", readers);
        section(out, OverlayReport.Kind.FAR_OFF, "Far from what is usual:", readers);
        section(out, OverlayReport.Kind.CONFLICT, "What cannot stand:", readers);
        if (entries.isEmpty()) {
            out.add("The workshop sets nothing itself: the shipped knowledge holds.");
        }
        if (!changed.isEmpty()) {
            out.add("Cases that would be advised otherwise now:");
            changed.forEach((name, lines) -> lines.forEach(l -> out.add("  " + name + ": " + l + ".")));
        }
        out.add(same + " of " + (same + changed.size()) + " saved cases are advised as when they were saved.");
        return out;
    }

    private void section(List<String> out, OverlayReport.Kind kind, String title, Map<String, List<String>> readers) {
        List<OverlayReport.Entry> some =
                entries.stream().filter(e -> e.kind() == kind).toList();
        if (some.isEmpty()) {
            return;
        }
        out.add(title);
        for (OverlayReport.Entry e : some) {
            List<String> rules =
                    kind == OverlayReport.Kind.OVERRIDE && !e.guideline().isEmpty()
                            ? readers.getOrDefault(e.guideline(), List.of())
                            : List.of();
            out.add("  " + (e.where().isEmpty() ? "" : e.where() + ": ") + Clean.text(e.say())
                    + (rules.isEmpty() ? "" : " Read by the rules " + String.join(", ", rules) + "."));
        }
    }

    /** Which rules read each guideline. */
    private Map<String, List<String>> readers() {
        Map<String, List<String>> out = new TreeMap<>();
        RuleProse prose = new RuleProse(shipped, Map.of());
        RuleBook.allCards()
                .sorted()
                .forEach(c -> prose.guidelines(RuleText.of(c))
                        .forEach(g ->
                                out.computeIfAbsent(g, x -> new ArrayList<>()).add(c.id())));
        return out;
    }

    /** All of it as JSON. */
    String json() {
        ObjectNode out = Json.object();
        Map<String, List<String>> readers = readers();
        for (OverlayReport.Kind kind : OverlayReport.Kind.values()) {
            String name = kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            ArrayNode array = out.putArray(name);
            entries.stream().filter(e -> e.kind() == kind).forEach(e -> {
                ObjectNode one = array.addObject();
                one.put("file", e.where());
                one.put("say", e.say());
                if (!e.guideline().isEmpty()) {
                    one.put("guideline", e.guideline());
                    readers.getOrDefault(e.guideline(), List.of()).forEach(one.putArray("rules")::add);
                }
            });
        }
        ObjectNode cases = out.putObject("cases-changed");
        changed.forEach((name, lines) -> lines.forEach(cases.withArray(name)::add));
        out.put("cases-same", same);
        return Json.write(out);
    }
}
