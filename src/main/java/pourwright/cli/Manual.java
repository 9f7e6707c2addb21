package pourwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page in roff, from the same definitions as the help. */
final class Manual {
    /** Variables the program or its launcher reads, and what for. */
    private static final List<String[]> ENVIRONMENT = List.of(
            new String[] {"COLUMNS", "Columns to wrap at, where the output is no terminal that says so itself."},
            new String[] {"TERM", "A terminal that is dumb or has no name gets plain lines."},
            new String[] {"XDG_CONFIG_HOME", "The workshop's folder is \"pourwright\" in it; else in ~/.config."},
            new String[] {"JAVA_HOME", "The Java to run on; else the first on the path."},
            new String[] {"POURWRIGHT_TRACE", "1 shows the stack trace of a program fault."});

    private final List<String> out = new ArrayList<>();

    private Manual() {}

    /** The page for a command line that is arranged as the help is. */
    static String of(CommandLine all) {
        Manual page = new Manual();
        page.write(all);
        return String.join("\n", page.out) + "\n";
    }

    private void write(CommandLine all) {
        CommandSpec root = all.getCommandSpec();
        out.add(".TH POURWRIGHT 1 \"\" \"Pourwright\" \"Pourwright\"");
        head("NAME");
        text("pourwright - console advisor for people who cast two-part liquids and degas them");
        head("SYNOPSIS");
        synopsis("pourwright");
        all.getSubcommands().forEach((name, word) -> {
            if (!word.getCommandSpec().usageMessage().hidden()) {
                out.add(".br");
                synopsis(word.getHelp().synopsis(0).strip());
            }
        });
        head("DESCRIPTION");
        for (String line : root.usageMessage().description()) {
            text(line);
        }
        text("A word alone talks it through and asks one question at a time. Answers can be given as id=value; a number"
                + " without a unit is taken in the question's own.");
        examples(root);
        head("OPTIONS");
        text("Every word takes these; --version goes without a word.");
        Set<String> everywhere = new TreeSet<>();
        root.options().stream().filter(o -> !o.hidden()).forEach(o -> {
            option(o);
            everywhere.addAll(List.of(o.names()));
        });
        head("WORDS");
        all.getSubcommands().forEach((name, word) -> {
            if (!word.getCommandSpec().usageMessage().hidden()) {
                word(name, word.getCommandSpec(), everywhere);
            }
        });
        head("EXIT STATUS");
        for (ExitCode code : ExitCode.values()) {
            tagged(bold(Integer.toString(code.code())), code.says());
        }
        head("ENVIRONMENT");
        ENVIRONMENT.forEach(e -> tagged(bold(e[0]), e[1]));
        head("FILES");
        tagged(
                "\\fI~/.config/pourwright\\fR",
                "The workshop's folder: kit, cases, own materials and guidelines, and the unfinished conversation.");
    }

    private void word(String name, CommandSpec spec, Set<String> everywhere) {
        out.add(".SS " + escaped(name));
        for (String line : spec.usageMessage().description()) {
            text(line);
        }
        for (PositionalParamSpec p : spec.positionalParameters()) {
            tagged("\\fI" + escaped(p.paramLabel()) + "\\fR", String.join(" ", p.description()));
        }
        spec.options().stream()
                .filter(o -> !o.hidden() && !everywhere.containsAll(List.of(o.names())))
                .forEach(this::option);
        for (String line : spec.usageMessage().footer()) {
            out.add(".PP");
            text(line);
        }
        examples(spec);
    }

    private void option(OptionSpec o) {
        String names =
                String.join(", ", Arrays.stream(o.names()).map(Manual::bold).toList());
        String value = o.arity().max() > 0 ? "=\\fI" + escaped(o.paramLabel()) + "\\fR" : "";
        tagged(names + value, String.join(" ", o.description()));
    }

    private void examples(CommandSpec spec) {
        out.add(".PP");
        out.add("Examples:");
        out.add(".PP");
        out.add(".nf");
        for (String line : spec.usageMessage().header()) {
            out.add(escaped(line));
        }
        out.add(".fi");
    }

    private void head(String title) {
        out.add(".SH " + title);
    }

    private void synopsis(String line) {
        text(line);
    }

    private void tagged(String tag, String text) {
        out.add(".TP");
        out.add(tag);
        text(text);
    }

    private void text(String line) {
        out.add(escaped(line));
    }

    private static String bold(String text) {
        return "\\fB" + escaped(text) + "\\fR";
    }

    /** Roff takes a backslash, a leading point and a leading quote as its own, and a bare hyphen as a typographic one. */
    private static String escaped(String text) {
        String plain = text.replace("\\", "\\e").replace("-", "\\-").replace('\u00a0', ' ');
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
