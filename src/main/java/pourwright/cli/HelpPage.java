package pourwright.cli;

import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import pourwright.console.Wrap;

/** The order of every word's help: examples first, and the exit codes last. It fits one screen of 24 lines. */
final class HelpPage {
    static final int WIDTH = 80;
    private static final int OPTION_COLUMN = 20;
    private static final int WORD_COLUMN = 11;
    private static final int HALF = WIDTH / 2;
    private static final int MANY = 14;
    /** What the options of every job do, where there is no room for a line each. */
    private static final Map<String, String> SHORT = Map.of(
            "--answers", " FILE (JSON, - is standard input)",
            "--case", " FILE (a saved case)",
            "--json", " (print JSON)",
            "--shop", " DIR (your folder)",
            "--plain", " (no columns)",
            "--no-input", " (never ask)");

    private static final String EXIT_CODES = "exitCodes";

    private HelpPage() {}

    /** Arranges the help of a command and of all words under it. */
    static void arrange(CommandLine line) {
        UsageMessageSpec usage = line.getCommandSpec().usageMessage();
        usage.headerHeading("Examples:%n");
        usage.synopsisHeading("Usage: ");
        usage.abbreviateSynopsis(line.getSubcommands().isEmpty());
        usage.commandListHeading("Words:%n");
        usage.sortOptions(false);
        usage.width(WIDTH);
        usage.longOptionsMaxWidth(OPTION_COLUMN);
        line.getHelpSectionMap().put(EXIT_CODES, h -> exitCodes());
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_OPTION_LIST, h -> options(h, line.getCommandSpec()));
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, h -> words(line));
        line.setHelpSectionKeys(List.of(
                UsageMessageSpec.SECTION_KEY_HEADER_HEADING,
                UsageMessageSpec.SECTION_KEY_HEADER,
                UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING,
                UsageMessageSpec.SECTION_KEY_SYNOPSIS,
                UsageMessageSpec.SECTION_KEY_DESCRIPTION,
                UsageMessageSpec.SECTION_KEY_PARAMETER_LIST,
                UsageMessageSpec.SECTION_KEY_OPTION_LIST,
                UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING,
                UsageMessageSpec.SECTION_KEY_COMMAND_LIST,
                UsageMessageSpec.SECTION_KEY_FOOTER,
                EXIT_CODES));
        line.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
        line.getSubcommands().values().forEach(HelpPage::arrange);
    }

    /** The beginning of a description, up to the first full stop or colon. */
    static String inShort(UsageMessageSpec usage) {
        return usage.description()[0].split("[.:]", 2)[0] + ".";
    }

    /** Each word with what it does, in short; two that follow each other share a line where both have room. */
    private static String words(CommandLine line) {
        StringBuilder out = new StringBuilder();
        int open = 0;
        for (Map.Entry<String, CommandLine> e : line.getSubcommands().entrySet()) {
            UsageMessageSpec usage = e.getValue().getCommandSpec().usageMessage();
            if (usage.hidden()) {
                continue;
            }
            String name = e.getKey();
            String text = "  " + name + " ".repeat(WORD_COLUMN - name.length()) + inShort(usage);
            // Two short ones share a line, so that all words stay on one screen.
            boolean shares = open > 0 && text.length() < HALF;
            if (shares) {
                out.append(" ".repeat(HALF - open)).append(text.strip());
            } else {
                out.append(out.isEmpty() ? "" : "\n").append(text);
            }
            open = !shares && text.length() < HALF ? text.length() : 0;
        }
        return out + "\n";
    }

    /** Where a word has many options of its own, those that every job takes are named in a line. */
    private static String options(Help help, CommandSpec spec) {
        List<OptionSpec> own = spec.options().stream().filter(o -> !usual(o)).toList();
        Help.Layout layout = help.createDefaultLayout();
        boolean many =
                spec.options().size() > MANY && own.size() < spec.options().size();
        layout.addOptions(many ? own : spec.options(), help.createDefaultParamLabelRenderer());
        if (!many) {
            return layout.toString();
        }
        String names = spec.options().stream()
                .filter(o -> usual(o) && !o.hidden())
                .map(o -> (o.longestName() + SHORT.getOrDefault(o.longestName(), "")).replace(' ', '\u00a0'))
                .collect(Collectors.joining(", "));
        return layout + String.join("\n", Wrap.text(names + ".", WIDTH, "Also ", "  ")) + "\n";
    }

    private static boolean usual(OptionSpec option) {
        Object owner = option.userObject();
        return owner instanceof Field field
                && (field.getDeclaringClass() == JobCommand.class || field.getDeclaringClass() == SharedOptions.class);
    }

    private static String exitCodes() {
        String all = Arrays.stream(ExitCode.values())
                .map(e -> e.code() + "\u00a0" + e.inShort().replace(' ', '\u00a0'))
                .collect(Collectors.joining(", "));
        return String.join("\n", Wrap.text(all + ".", WIDTH, "Exit codes: ", "  ")) + "\n";
    }
}
