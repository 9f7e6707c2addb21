package pourwright.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a rule asks and what it concludes, read from the text it was built from. The compiled rule no longer shows it.
 *
 * @param card what the rule says about itself
 * @param written the conditions as they were written
 * @param when the same, read; they hold together
 * @param then what it concludes when they do
 */
public record RuleText(RuleCard card, String written, List<Condition> when, List<Call> then) {
    private static final Pattern COMMENT = Pattern.compile("(?m)//[^\\n]*$|/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern PARTS =
            Pattern.compile("^when\\b(.*?)^then\\b(.*?)^end\\b", Pattern.DOTALL | Pattern.MULTILINE);
    private static final String STRING = "\"(?:[^\"\\\\]|\\\\.)*\"";
    private static final Pattern CALL =
            Pattern.compile("advice\\s*\\.\\s*(\\w+)\\s*\\(\\s*(" + STRING + "(?:\\s*,\\s*" + STRING + ")*)\\s*\\)");
    private static final Pattern QUOTED = Pattern.compile(STRING);

    public RuleText {
        when = List.copyOf(when);
        then = List.copyOf(then);
    }

    /**
     * One conclusion.
     *
     * @param verb the verb of {@link Advice}
     * @param words what was handed to it
     */
    public record Call(String verb, List<String> words) {
        public Call {
            words = List.copyOf(words);
        }
    }

    /** The text of a rule of the book. */
    public static RuleText of(RuleCard card) {
        String name = "/pourwright/rules/" + card.folder() + "/" + card.id() + ".drl";
        try (InputStream in = RuleText.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the text of the rule " + name + " was not built in");
            }
            return of(card, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RuleText of(RuleCard card, String text) {
        Matcher m = PARTS.matcher(COMMENT.matcher(text).replaceAll(""));
        if (!m.find()) {
            throw new IllegalArgumentException("the rule " + card.id() + " has no when and then");
        }
        List<Call> calls = new ArrayList<>();
        Matcher call = CALL.matcher(m.group(2));
        while (call.find()) {
            calls.add(new Call(
                    call.group(1),
                    QUOTED.matcher(call.group(2))
                            .results()
                            .map(r -> r.group()
                                    .substring(1, r.group().length() - 1)
                                    .replace("\\\"", "\""))
                            .toList()));
        }
        String written = m.group(1).strip().replaceAll("\\s+", " ");
        return new RuleText(card, written, ConditionParser.parse(m.group(1)), calls);
    }
}
