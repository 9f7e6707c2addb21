package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import pourwright.console.FigurePage;
import pourwright.figures.FigureDef;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;

/** Completion for shells: words, options, figures, and the ids and choices of answers. */
final class Completion {
    private final CommandSpec root;
    private final Map<String, CommandSpec> words = new LinkedHashMap<>();
    private final Map<String, List<String>> ids = new LinkedHashMap<>();
    private final Map<String, List<String>> choices = new LinkedHashMap<>();
    private final List<String> figures;
    private final List<String> units;

    Completion(CommandLine all, DiagnosticKnowledge knowledge) {
        root = all.getCommandSpec();
        all.getSubcommands().forEach((name, word) -> {
            if (!word.getCommandSpec().usageMessage().hidden()) {
                words.put(name, word.getCommandSpec());
            }
        });
        List<String> ofJob =
                knowledge.base().questions().stream().map(Question::id).toList();
        Set<String> ofPart = new LinkedHashSet<>(
                knowledge.observations().stream().map(Question::id).toList());
        ofPart.addAll(ofJob);
        ids.put("plan", ofJob);
        ids.put("figure", ofJob);
        ids.put("diagnose", List.copyOf(ofPart));
        Stream.concat(knowledge.base().questions().stream(), knowledge.observations().stream())
                .forEach(q -> {
                    List<String> known = q.kind().equals("material")
                            ? List.copyOf(knowledge.base().materials().keySet())
                            : q.choices().stream().map(Question.Choice::id).toList();
                    if (!known.isEmpty()) {
                        choices.putIfAbsent(q.id(), known);
                    }
                });
        figures = FigurePage.topics().values().stream()
                .flatMap(List::stream)
                .map(FigureDef::id)
                .toList();
        Set<String> usual = new LinkedHashSet<>();
        for (Dimension d : Dimension.values()) {
            Arrays.stream(d.usualUnits().split(", "))
                    .filter(u -> !u.contains(" "))
                    .forEach(usual::add);
        }
        units = List.copyOf(usual);
    }

    /** For bash, which cuts a word at the equals sign. */
    String bash() {
        List<String> out = new ArrayList<>(List.of(
                "# Completion of pourwright for bash, written by \"pourwright generate completion bash\".",
                "_pourwright() {",
                "    local cur=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} word=${COMP_WORDS[1]} id= offered=",
                "    if [ \"$cur\" = \"=\" ]; then id=$before cur=; fi",
                "    if [ \"$before\" = \"=\" ]; then id=${COMP_WORDS[COMP_CWORD-2]}; fi",
                "    if [ -n \"$id\" ]; then",
                "        case $id in"));
        choices.forEach((id, known) -> out.add("            " + id + ") offered=" + quoted(known) + " ;;"));
        out.add("        esac");
        out.add("        COMPREPLY=($(compgen -W \"$offered\" -- \"$cur\"))");
        out.add("        return");
        out.add("    fi");
        out.add("    case $before in");
        valued().forEach(
                        (options, action) -> out.add("        " + options + ") " + bashAction(action) + "; return ;;"));
        out.add("    esac");
        out.add("    if [ \"$COMP_CWORD\" -eq 1 ]; then");
        out.add("        offered=" + quoted(first()));
        out.add("    else");
        out.add("        case $word in");
        words.forEach((name, spec) -> {
            out.add("            " + name + ")");
            out.add("                offered=" + quoted(options(spec)));
            if (name.equals("figure")) {
                out.add("                if [ \"$COMP_CWORD\" -eq 2 ]; then offered+=\" \"" + quoted(figures)
                        + "; else offered+=\" \"" + quoted(equals(ids.get(name))) + "; fi");
            } else if (ids.containsKey(name)) {
                out.add("                offered+=\" \"" + quoted(equals(ids.get(name))));
            }
            out.add("                ;;");
        });
        out.add("        esac");
        out.add("    fi");
        out.add("    COMPREPLY=($(compgen -W \"$offered\" -- \"$cur\"))");
        takesFiles()
                .forEach((name, action) -> out.add(
                        "    if [ \"$word\" = " + name + " ] && [ \"$COMP_CWORD\" -gt 1 ]; then COMPREPLY+=($(compgen "
                                + action + " -- \"$cur\")); fi"));
        out.add("    case ${COMPREPLY[0]} in *=) compopt -o nospace 2>/dev/null ;; esac");
        out.add("}");
        out.add("complete -F _pourwright pourwright");
        return lines(out);
    }

    /** For zsh. */
    String zsh() {
        List<String> out = new ArrayList<>(List.of(
                "#compdef pourwright",
                "# Completion of pourwright for zsh, written by \"pourwright generate completion zsh\".",
                "_pourwright() {",
                "    local -a offered",
                "    case $words[CURRENT-1] in"));
        valued().forEach((options, action) -> out.add("        " + options + ") " + zshAction(action) + "; return ;;"));
        out.add("    esac");
        out.add("    if (( CURRENT == 2 )); then");
        out.add("        offered=(");
        words.forEach(
                (name, spec) -> out.add("            '" + name + ":" + HelpPage.inShort(spec.usageMessage()) + "'"));
        out.add("        )");
        out.add("        _describe word offered");
        out.add("        compadd -- " + String.join(" ", options(root)));
        out.add("        return");
        out.add("    fi");
        out.add("    case $words[CURRENT] in");
        choices.forEach((id, known) -> out.add(
                "        " + id + "=*) compset -P '*='; compadd -- " + String.join(" ", known) + "; return ;;"));
        out.add("    esac");
        out.add("    case $words[2] in");
        words.forEach((name, spec) -> {
            out.add("        " + name + ")");
            out.add("            compadd -- " + String.join(" ", options(spec)));
            String answers = ids.containsKey(name) ? "compadd -S '' -- " + String.join(" ", equals(ids.get(name))) : "";
            if (name.equals("figure")) {
                out.add("            if (( CURRENT == 3 )); then compadd -- " + String.join(" ", figures) + "; else "
                        + answers + "; fi");
            } else if (!answers.isEmpty()) {
                out.add("            " + answers);
            }
            if (takesFiles().containsKey(name)) {
                out.add("            " + zshAction(takesFiles().get(name)));
            }
            out.add("            ;;");
        });
        out.add("    esac");
        out.add("}");
        out.add("_pourwright \"$@\"");
        return lines(out);
    }

    private List<String> first() {
        List<String> first = new ArrayList<>(words.keySet());
        first.addAll(options(root));
        return first;
    }

    private static List<String> options(CommandSpec spec) {
        return spec.options().stream()
                .filter(o -> !o.hidden())
                .flatMap(o -> Arrays.stream(o.names()))
                .toList();
    }

    private static List<String> equals(List<String> names) {
        return names.stream().map(n -> n + "=").toList();
    }

    /** Options that take a value, joined as a shell's pattern, and how the value is completed. */
    private Map<String, String> valued() {
        Map<String, Set<String>> byAction = new LinkedHashMap<>();
        Stream.concat(Stream.of(root), words.values().stream())
                .flatMap(w -> w.options().stream())
                .filter(o -> !o.hidden() && o.arity().max() > 0)
                .forEach(o -> byAction.computeIfAbsent(action(o), a -> new LinkedHashSet<>())
                        .addAll(List.of(o.names())));
        Map<String, String> out = new LinkedHashMap<>();
        byAction.forEach((action, names) -> out.put(String.join("|", names), action));
        return out;
    }

    private static String action(OptionSpec o) {
        if (o.type() == Path.class) {
            return o.paramLabel().equals("DIR") ? "-d" : "-f";
        }
        return o.paramLabel().equals("UNIT") ? "units" : "";
    }

    /** Words whose own arguments are files or folders. */
    private Map<String, String> takesFiles() {
        Map<String, String> out = new LinkedHashMap<>();
        words.forEach((name, spec) -> spec.positionalParameters().stream()
                .filter(p -> p.paramLabel().equals("FILE") || p.paramLabel().equals("DIR"))
                .forEach(p -> out.put(name, p.paramLabel().equals("DIR") ? "-d" : "-f")));
        return out;
    }

    private String bashAction(String action) {
        return switch (action) {
            case "-d", "-f" -> "COMPREPLY=($(compgen " + action + " -- \"$cur\"))";
            case "units" -> "COMPREPLY=($(compgen -W " + quoted(units) + " -- \"$cur\"))";
            default -> "COMPREPLY=()";
        };
    }

    private String zshAction(String action) {
        return switch (action) {
            case "-d" -> "_files -/";
            case "-f" -> "_files";
            case "units" ->
                "compadd -- "
                        + String.join(" ", units.stream().map(Completion::apart).toList());
            default -> "_message value";
        };
    }

    private static String apart(String word) {
        return "'" + word + "'";
    }

    private static String quoted(List<String> all) {
        return apart(String.join(" ", all));
    }

    private static String lines(List<String> all) {
        return String.join("\n", all) + "\n";
    }
}
