package pourwright.figures;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import pourwright.facts.Answer;
import pourwright.facts.Answers;

/** The kit of a job in one line, the same for the same kit: what was measured with one says nothing about another. */
public final class KitName {
    private static final List<String> PARTS =
            List.of("chamber-volume", "pump-kind", "pump-speed", "hose-bore", "hose-length");

    private KitName() {}

    /** The parts that were answered, SI, three digits; empty when none was. */
    public static String of(Answers answers) {
        StringJoiner name = new StringJoiner(" ");
        for (String part : PARTS) {
            answers.get(part).ifPresent(a -> {
                if (a instanceof Answer.Quantity q) {
                    name.add(part + "=" + String.format(Locale.ROOT, "%.3g", q.si().typical()));
                } else if (a instanceof Answer.Choice ch) {
                    name.add(part + "=" + ch.id());
                }
            });
        }
        return name.toString();
    }
}
