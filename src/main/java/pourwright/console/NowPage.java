package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.emergency.EmergencyFinder;
import pourwright.knowledge.Emergency;

/** What to do first when something goes wrong at the bench, in at most five lines of 80 columns. */
public final class NowPage {
    private static final int USUAL_WIDTH = 80;

    private NowPage() {}

    /** The lines for what was typed: the situation it means, or all of them where nothing was typed. */
    public static List<String> lines(List<Emergency> all, String typed, int width) {
        if (typed.isBlank()) {
            return list(all, width);
        }
        return new EmergencyFinder(all)
                .find(typed)
                .map(found -> help(found, width))
                .orElseGet(() -> unknown(all, typed, width));
    }

    private static List<String> help(EmergencyFinder.Found found, int width) {
        List<String> out = new ArrayList<>(Wrap.text(first(found, Math.max(width, USUAL_WIDTH)), width, "", "  "));
        List<String> steps = found.taken().steps();
        for (int i = 0; i < steps.size(); i++) {
            out.addAll(Wrap.text(steps.get(i), width, (i + 1) + ". ", "   "));
        }
        out.addAll(Wrap.text(found.taken().closing(), width, "", "  "));
        return out;
    }

    /** What was taken, and as many of the other close ones as one line holds. */
    private static String first(EmergencyFinder.Found found, int room) {
        String line = found.taken().title() + ".";
        String lead = " Not that? Type \"now ";
        for (Emergency other : found.others()) {
            String longer = line + lead + other.inShort() + "\"";
            if (longer.length() + 1 > room) {
                break;
            }
            line = longer;
            lead = ", \"now ";
        }
        return line.equals(found.taken().title() + ".") ? line : line + ".";
    }

    private static List<String> unknown(List<Emergency> all, String typed, int width) {
        List<String> out = new ArrayList<>(Wrap.text(
                "\"" + Clean.quoted(typed.strip()) + "\" fits nothing I know. " + line(all), width, "", "  "));
        String words =
                all.stream().map(e -> e.inShort().replace(' ', Wrap.JOIN)).collect(Collectors.joining(", "));
        out.addAll(Wrap.text("Type \"now\" and one of these: " + words + ".", width, "", "  "));
        return out;
    }

    private static List<String> list(List<Emergency> all, int width) {
        int column = all.stream().mapToInt(e -> e.inShort().length()).max().orElse(0) + 2;
        List<String> out = new ArrayList<>(Wrap.text("Type \"now\" and what you see. " + line(all), width, "", "  "));
        for (Emergency e : all) {
            out.addAll(Wrap.text(
                    e.title(),
                    width,
                    "  " + e.inShort() + " ".repeat(column - e.inShort().length()),
                    "    "));
        }
        return out;
    }

    private static String line(List<Emergency> all) {
        return Optional.of(all)
                .filter(a -> !a.isEmpty())
                .map(a -> a.get(0).line())
                .orElse("");
    }
}
